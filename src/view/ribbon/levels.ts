import { assumptions } from '../../catalogue/assumptions.ts';
import type { RibbonLevel } from '../../drawing/ribbon.ts';
import { ceilingZ, floorZ } from '../../geometry/heights.ts';
import type { Plan } from '../../plan/plan.ts';
import type { HeightRef } from '../../plan/records/parts.ts';

/** Floor and ceiling of a storey above the datum, and how thick what lies between storeys is. */
export interface StoreyHeights {
  readonly floor: number;
  readonly ceiling: number;
  readonly buildUpMm: number;
}

/** Where what lies over a storey's ceiling ends: the floor above it, else as thick as its own build-up. */
export function overCeiling(plan: Plan, heights: StoreyHeights): number {
  const above = Object.values(plan.storeys)
    .map((s) => s.floorMm)
    .filter((z) => z > heights.ceiling);
  return above.length > 0 ? Math.min(...above) : heights.ceiling + heights.buildUpMm;
}

/** Null where the storey is not there. */
export function storeyHeights(plan: Plan, storey: string): StoreyHeights | null {
  const record = plan.storeys[storey];
  const floor = floorZ(plan, storey);
  const ceiling = ceilingZ(plan, storey);
  if (!record || floor === undefined || ceiling === undefined) return null;
  return { floor, ceiling, buildUpMm: record.buildUpMm };
}

/** Heights that work often stands at, offered beside those of the house itself. */
export function usualHeights(storey: string): readonly { readonly label: string; readonly height: HeightRef }[] {
  const { skirting, worktop } = assumptions();
  const off = (mm: number): HeightRef => ({ from: 'floor', of: storey, mm });
  return [
    { label: 'skirting', height: off(skirting.mm) },
    { label: 'worktop', height: off(worktop.mm) },
  ];
}

/** The reference a height is set from: a level it is caught by, else so many mm off the floor, in tens. */
export function heightAt(
  levels: readonly RibbonLevel[],
  storey: string,
  floor: number,
  z: number,
  catchMm: number,
): HeightRef {
  let best: RibbonLevel | null = null;
  for (const l of levels) {
    const off = Math.abs(l.z - z);
    if (off <= catchMm && (best === null || off < Math.abs(best.z - z))) best = l;
  }
  return best?.height ?? { from: 'floor', of: storey, mm: Math.round((z - floor) / 10) * 10 };
}

/** A hand that comes this near to a level means it. */
export const CATCH_PX = 9;

export const sameHeight = (a: HeightRef, b: HeightRef): boolean =>
  a.from === b.from &&
  a.of === b.of &&
  a.mm === b.mm &&
  (a.from === 'connection' ? a.connection : null) === (b.from === 'connection' ? b.connection : null);

/** The place a height is, in words: its own name where it is one of the levels ("worktop"), else what it is taken from. */
export function sayWorkHeight(plan: Plan, levels: readonly RibbonLevel[], ref: HeightRef): string {
  return levels.find((l) => sameHeight(l.height, ref))?.label ?? sayHeight(plan, ref);
}

/** Where a height stands, in words: "150 off floor", "top of Hall false ceiling". */
export function sayHeight(plan: Plan, ref: HeightRef): string {
  const off = Math.round(ref.mm);
  if (ref.from === 'floor') return off < 0 ? `${-off} below the floor` : `${off} off floor`;
  if (ref.from === 'ceiling')
    return off === 0 ? 'at the ceiling' : `${Math.abs(off)} ${off < 0 ? 'below' : 'over'} ceiling`;
  if (ref.from === 'voidTop' || ref.from === 'voidBottom') {
    const name = ref.of === null ? 'void' : plan.voids[ref.of]?.name || 'void';
    const edge = ref.from === 'voidTop' ? 'top' : 'bottom';
    return off === 0 ? `${edge} of ${name}` : `${Math.abs(off)} ${off < 0 ? 'below' : 'over'} ${edge} of ${name}`;
  }
  if (ref.from === 'connection') return 'height of the tail';
  return `${off} above datum`;
}
