import { RECORD_MAPS, type RecordMap } from '../../plan/plan.ts';
import type { Given } from '../given.ts';

const PIPEWORK = new Set<RecordMap>([
  'runs',
  'nodes',
  'legs',
  'stretches',
  'items',
  'groups',
  'acknowledgements',
  'listEdits',
  'blobRefs',
]);
const READ = RECORD_MAPS.filter((map) => !PIPEWORK.has(map));

/** All that an answer about the building and its points can rest on: the same records, the same answer, whatever is piped. */
export const standsOn = ({ plan, case: of }: Given): readonly unknown[] => [
  of.option,
  of.when,
  plan.basis,
  ...READ.map((map) => plan[map]),
];
