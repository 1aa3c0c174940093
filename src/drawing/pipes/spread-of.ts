import type { Shift, Spread, Vec } from '../display-list.ts';
import type { DrawnLeg } from './drawn-leg.ts';
import { type Joint, outOf, parallel } from './joints.ts';

export type Shifts = ReadonlyMap<DrawnLeg, Shift>;

const still = (leg: DrawnLeg): Shift => {
  const [x, y] = outOf(leg, leg.vertexA);
  return { n: [-y, x], gaps: [], index: 0, anchor: 0.5 };
};

const direction = (shift: Shift): Vec => shift.n;

/**
 * How a leg's end moves: with its own line, and to where that meets the line of the first other leg that is not in line
 * with it. Undefined where neither moves.
 */
export function endSpread(leg: DrawnLeg, joint: Joint | undefined, shifts: Shifts): Spread | undefined {
  const own = shifts.get(leg);
  const others = (joint?.flat ?? []).filter((l) => l !== leg);
  const mine = own ?? still(leg);
  const across = others.find((l) => !parallel(direction(shifts.get(l) ?? still(l)), direction(mine)));
  const its = across && shifts.get(across);
  if (!own && !its) {
    // In line with a leg that moves, this one's end goes with it, so that the line is not torn.
    const inLine = others.map((l) => shifts.get(l)).find((s) => s !== undefined);
    return inLine ? [inLine] : undefined;
  }
  return across ? [mine, its ?? still(across)] : [mine];
}

/** How a place where legs meet moves: undefined where none of them does. */
export function jointSpread(joint: Joint | undefined, shifts: Shifts): Spread | undefined {
  for (const leg of joint?.flat ?? []) {
    const spread = endSpread(leg, joint, shifts);
    if (spread) return spread;
  }
  return undefined;
}

/** Two spreads that move alike have one key: what a fragment leans on. */
export const spreadKey = (spread: Spread | undefined): string =>
  spread
    ? spread
        .map((s) => `${s.n.map((x) => x.toFixed(4))}/${s.gaps.map((g) => g.toFixed(1))}/${s.index}/${s.anchor}`)
        .join(' ')
    : '';
