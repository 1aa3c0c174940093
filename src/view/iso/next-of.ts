import type { IsoHit } from '../../drawing/iso/iso-hit.ts';
import type { Selected } from '../../editor/editor-api.ts';
import type { Plan } from '../../plan/plan.ts';

/**
 * What a tap chooses: the first under the finger; where that is chosen already, the next under it, and after the last the
 * whole run of the first pipe. Null where nothing lies there.
 */
export function nextOf(plan: Plan, hits: readonly IsoHit[], selection: readonly Selected[]): Selected | null {
  const pipe = hits.find((h) => h.map === 'legs' || h.map === 'stretches');
  const run = pipe && (pipe.map === 'legs' ? plan.legs[pipe.id]?.run : plan.stretches[pipe.id]?.run);
  const may: Selected[] = run === undefined ? [...hits] : [...hits, { map: 'runs', id: run }];
  const [only] = selection;
  const at = selection.length === 1 ? may.findIndex((h) => h.map === only?.map && h.id === only.id) : -1;
  return may[(at + 1) % may.length] ?? null;
}
