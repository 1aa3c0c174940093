import { left, sub, unit } from '../../geometry/vec.ts';
import type { Roof } from '../../plan/records/building.ts';
import type { Vec } from '../display-list.ts';

/** A slope as it lies in plan: along its eaves, and up from them. */
export interface SlopeFrame {
  readonly lengthMm: number;
  readonly along: Vec;
  /** The way it rises. */
  readonly up: Vec;
  /** How far up the outline goes at the most. */
  readonly deepMm: number;
  at(along: number, up: number): Vec;
}

/** Undefined where the eaves have no length. */
export function boundsAlong({ eaves, outline }: Roof): SlopeFrame | undefined {
  const { a, b } = eaves;
  const lengthMm = Math.hypot(b.x - a.x, b.y - a.y);
  if (lengthMm === 0) return undefined;
  const along = unit(sub(b, a));
  const up = left(along);
  const deepMm = Math.max(0, ...outline.map((p) => (p.x - a.x) * up.x + (p.y - a.y) * up.y));
  return {
    lengthMm,
    along: [along.x, along.y],
    up: [up.x, up.y],
    deepMm,
    at: (s, t) => [a.x + along.x * s + up.x * t, a.y + along.y * s + up.y * t],
  };
}
