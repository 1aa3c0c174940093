import { resolveHeight } from '../../geometry/heights.ts';
import { insideArea } from '../../geometry/outlines.ts';
import { nodePlace } from '../../geometry/places.ts';
import type { Plan } from '../../plan/plan.ts';
import type { HeightRef } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import { heightOf } from '../commands/place-arg.ts';
import type { Assumptions } from '../editor-api.ts';
import { assumedFrom } from '../in-hand.ts';
import type { Told } from './told-run.ts';

/** A height that is told by a word instead of by digits. */
export type HeightWord = 'to void' | 'boiler tail' | 'off floor' | 'same height';
export const HEIGHT_WORDS: readonly HeightWord[] = ['to void', 'boiler tail', 'off floor', 'same height'];

/** The middle of a drawn void over or under a place, the nearest one that way. */
function drawnVoid(
  plan: Plan,
  storey: string,
  x: number,
  y: number,
  z: number,
  dir: 'up' | 'down',
): HeightRef | undefined {
  const found = Object.values(plan.voids).flatMap((v) => {
    const [lo, hi] = [v.bottom && resolveHeight(plan, v.bottom), v.top && resolveHeight(plan, v.top)];
    if (!lo || !hi || v.storey !== storey || !insideArea({ x, y }, v.outline, v.holes)) return [];
    const mm = (hi.z - lo.z) / 2;
    const on = lo.z + mm;
    return (dir === 'up' ? on > z : on < z)
      ? [{ away: Math.abs(on - z), ref: { from: 'voidBottom', of: v.id, mm } as const }]
      : [];
  });
  return found.sort((a, b) => a.away - b.away)[0]?.ref;
}

/** Void of the table, taken from the ceiling so that it follows when that is measured; downwards the floor's build-up. */
function assumedVoid(plan: Plan, storey: string, dir: 'up' | 'down', a: Assumptions): HeightRef {
  if (dir === 'down') {
    const deep = plan.storeys[storey]?.buildUpMm ?? a.buildUpMm;
    return assumedFrom('floor', storey, { mm: -deep / 2, lo: -deep, hi: 0 });
  }
  const { mm, lo, hi } = a.inVoid;
  return assumedFrom('ceiling', storey, { mm: mm - a.ceilingMm, lo: lo - a.ceilingMm, hi: hi - a.ceilingMm });
}

/** The last height a run went level at before the one it is at. */
function lastLevel(plan: Plan, told: Told | undefined, z: number): HeightRef | undefined {
  for (const step of [...(told?.steps ?? [])].reverse()) {
    const node = plan.nodes[step.from];
    const at = node && nodePlace(plan, node)?.at;
    if (node && at && Math.abs(at.z - z) > COINCIDENT_MM) return heightOf(node);
  }
  return undefined;
}

/** The height that a word means at a place; undefined where it means none there ("same height" before there were two). */
export function heightOfWord(
  word: HeightWord,
  plan: Plan,
  here: { readonly x: number; readonly y: number; readonly z: number; readonly storey: string },
  dir: 'up' | 'down',
  a: Assumptions,
  told?: Told,
): HeightRef | undefined {
  const { storey } = here;
  if (word === 'to void')
    return drawnVoid(plan, storey, here.x, here.y, here.z, dir) ?? assumedVoid(plan, storey, dir, a);
  if (word === 'boiler tail') return assumedFrom('floor', storey, a.boilerTail);
  if (word === 'off floor') return { from: 'floor', of: storey, mm: a.offFloorMm };
  return lastLevel(plan, told, here.z);
}

const isAbout = (h: HeightRef, other: HeightRef): boolean =>
  h.from === other.from && Math.abs(h.mm - other.mm) < COINCIDENT_MM && h.assumed?.lo === other.assumed?.lo;

/** The word for a height a run goes to, where one fits: read back from the document, since words are not stored. */
export function wordOfHeight(plan: Plan, height: HeightRef, storey: string, a: Assumptions): string | undefined {
  if (height.from === 'voidBottom' || height.from === 'voidTop') return 'to void';
  if (isAbout(height, assumedVoid(plan, storey, 'up', a)) || isAbout(height, assumedVoid(plan, storey, 'down', a)))
    return 'to void';
  if (isAbout(height, assumedFrom('floor', storey, a.boilerTail))) return 'boiler tail';
  if (isAbout(height, { from: 'floor', of: storey, mm: a.offFloorMm })) return `${a.offFloorMm} off floor`;
  return undefined;
}
