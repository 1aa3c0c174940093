import { rememberWhile } from '../../geometry/remember.ts';
import { type Plan, RECORD_MAPS, type RecordMap } from '../../plan/plan.ts';
import { type Given, give } from '../given.ts';
import { type HotWay, hotWays } from './hot-ways.ts';

/** Is any surveyed pipe hot? Without one the house as it stands is not built a second time. */
const hasOldHot = (plan: Plan): boolean => {
  const isHot = (run: string): boolean => plan.runs[run]?.service === 'hot';
  return (
    Object.values(plan.legs).some((l) => l.option === null && isHot(l.run)) ||
    Object.values(plan.stretches).some((s) => isHot(s.run))
  );
};

/** What neither stands in a house nor says how it is worked. */
const BESIDE = new Set<RecordMap>(['options', 'groups', 'acknowledgements', 'listEdits', 'blobRefs']);
const READ = RECORD_MAPS.filter((map) => !BESIDE.has(map));

const isSurveyed = (record: object): boolean => !('option' in record) || record.option === null;

/** Drawing in an option leaves the house as it stands alone, so its ways are asked for once. */
const waysBefore = rememberWhile(
  (plan: Plan) => [
    plan.basis,
    plan.job,
    ...READ.flatMap((map) => [map, ...Object.values(plan[map]).filter(isSurveyed)]),
  ],
  (plan): ReadonlyMap<string, HotWay> => {
    const found = hasOldHot(plan) ? hotWays(give(plan, { option: null, when: 'before' })) : [];
    return new Map(found.map((w) => [`${w.end.point}/${w.end.connection}`, w]));
  },
);

/** Hot ways of the house as it is, by "point/connection". Empty where none is drawn. */
export const hotBefore = (given: Given): ReadonlyMap<string, HotWay> => waysBefore(given.plan);
