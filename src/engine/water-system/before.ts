import type { Plan } from '../../plan/plan.ts';
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

/** Hot ways of the house as it is, by "point/connection". Empty where none is drawn. */
export function hotBefore(given: Given): ReadonlyMap<string, HotWay> {
  const { plan } = given;
  const found = hasOldHot(plan) ? hotWays(give(plan, { option: null, when: 'before' })) : [];
  return new Map(found.map((w) => [`${w.end.point}/${w.end.connection}`, w]));
}
