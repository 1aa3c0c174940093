import { services } from '../../catalogue/services.ts';
import type { Void } from '../../plan/records/building.ts';
import type { Row } from '../../report/section.ts';
import type { Given } from '../given.ts';
import { supportEvery } from '../materials/clips.ts';
import { saySize, sayTubeKind } from '../say-names.ts';

/** Clip spacing of the sizes that are clipped under or along the joists of a void, one row a kind and size. */
export function supportRows(given: Given, space: Void): Row[] {
  const rows = new Map<string, Extract<Row, { kind: 'fact' }>>();
  for (const part of given.voidParts) {
    const { edge } = part.pipe;
    if (part.space.id !== space.id || edge.state !== 'new') continue;
    // A pipe held by the holes it goes through needs no clip there.
    if (part.joists.some((j) => j.passes === 'through' && j.angleDeg > 0)) continue;
    if (edge.intoA === null || Math.abs(edge.intoA.z) > Math.SQRT1_2) continue;
    const system = services.get(edge.service)?.system ?? edge.service;
    const every = supportEvery(edge, system, given.plan.basis.editions);
    if (every === undefined || every.is !== 'known') continue;
    const what = `${sayTubeKind(edge.tube)} ${saySize(edge.tube)}${system === 'gas' ? ', gas' : ''}`;
    const { lo, hi, value, unit, digits, sureness } = every;
    rows.set(what, {
      kind: 'fact',
      label: `Clips for ${what}`,
      figure: { lo, hi, value, unit, digits, sureness },
      say: 'apart at most, along the joists or under them',
      ids: [...new Set([...(rows.get(what)?.ids ?? []), edge.run])],
    });
  }
  return [...rows].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, row]) => row);
}
