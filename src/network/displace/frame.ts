import { nodePlace } from '../../geometry/places.ts';
import { sub3 } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import type { Incidence } from './incidence.ts';

/** Two ways in plan at right angles, and up: the ways the pipes of a move run in. */
export interface Axes {
  readonly along: (v: Xyz) => Triple;
  readonly house: (t: Triple) => Xyz;
}
export type Triple = readonly [number, number, number];
export type AxisIndex = 0 | 1 | 2;
export const AXES: readonly AxisIndex[] = [0, 1, 2];

const SHEET: Axes = { along: (v) => [v.x, v.y, v.z], house: ([x, y, z]) => ({ x, y, z }) };

function turned(c: number, s: number): Axes {
  return {
    along: (v) => [v.x * c + v.y * s, v.y * c - v.x * s, v.z],
    house: ([p, q, z]) => ({ x: p * c - q * s, y: p * s + q * c, z }),
  };
}

const MOST_LOOKED_AT = 64;

/**
 * The sheet's own axes, unless the first level pipe met from the start nodes lies along neither: then that pipe's.
 * Looks outwards over a few dozen legs and no further.
 */
export function axesFor(plan: Plan, at: Incidence, start: readonly string[]): Axes {
  const queue = [...start];
  const seen = new Set(queue);
  for (const [i, id] of queue.entries()) {
    if (i >= MOST_LOOKED_AT) break;
    for (const leg of at.legsAt(id)) {
      const other = leg.a === id ? leg.b : leg.a;
      const [here, there] = [plan.nodes[id], plan.nodes[other]];
      const a = here && nodePlace(plan, here)?.at;
      const b = there && nodePlace(plan, there)?.at;
      const v = a && b && sub3(b, a);
      if (v && (Math.abs(v.x) > COINCIDENT_MM || Math.abs(v.y) > COINCIDENT_MM)) {
        if (Math.abs(v.x) <= COINCIDENT_MM || Math.abs(v.y) <= COINCIDENT_MM) return SHEET;
        const flat = Math.hypot(v.x, v.y);
        // Offsets at 45 to the sheet are common in a house that is square to it.
        if (Math.abs(Math.abs(v.x) - Math.abs(v.y)) > COINCIDENT_MM) return turned(v.x / flat, v.y / flat);
      }
      if (!seen.has(other)) {
        seen.add(other);
        queue.push(other);
      }
    }
  }
  return SHEET;
}
