import type { Shift, Spread, Vec } from '../display-list.ts';
import { PEN } from '../look/tokens.ts';

const NOWHERE: Vec = [0, 0];

/** How far one line moves along its normal, in mm of the plane, at a scale. Positive along `n`. */
export function shiftMm(shift: Shift, mmPerPaperMm: number): number {
  const least = PEN.bankPitch * mmPerPaperMm;
  let before = 0;
  let whole = 0;
  shift.gaps.forEach((gap, i) => {
    const grown = Math.max(0, least - gap);
    whole += grown;
    if (i < shift.index) before += grown;
  });
  return before - whole * shift.anchor;
}

/** Movement of a place, in mm of the plane: along one normal, or to where two moved lines meet. */
export function spreadMm(spread: Spread | undefined, mmPerPaperMm: number): Vec {
  const [first, second] = spread ?? [];
  if (!first) return NOWHERE;
  const h1 = shiftMm(first, mmPerPaperMm);
  if (!second) return h1 === 0 ? NOWHERE : [first.n[0] * h1, first.n[1] * h1];
  const h2 = shiftMm(second, mmPerPaperMm);
  if (h1 === 0 && h2 === 0) return NOWHERE;
  const det = first.n[0] * second.n[1] - first.n[1] * second.n[0];
  // Nearly one direction: two parallel lines meet nowhere, so the first one is followed.
  if (Math.abs(det) < 0.05) return [first.n[0] * h1, first.n[1] * h1];
  return [(h1 * second.n[1] - h2 * first.n[1]) / det, (first.n[0] * h2 - second.n[0] * h1) / det];
}
