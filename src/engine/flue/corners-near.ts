import { wallBodies } from '../../geometry/bodies.ts';
import type { Xy } from '../../plan/records/parts.ts';
import { standingBuilding } from '../clearance/crossings.ts';
import type { Given } from '../given.ts';
import { type Candidate, candidate, LOOKED_MM, STEP_MM } from './candidate.ts';
import { gapWithout } from './gaps.ts';
import { neighbourhood } from './neighbourhood.ts';
import type { Terminal } from './terminals.ts';

/** Where the face a terminal comes out of ends: along it, and whether the house turns away or comes forward there. */
export interface Corner {
  readonly x: number;
  readonly inside: boolean;
}

/**
 * The two ends of the line of a ring that passes the origin along x. `ring` in the terminal's frame, closed or not;
 * a step of less than `stepMm` is no corner. Empty where no edge passes there.
 */
export function cornersOf(ring: readonly Xy[], stepMm: number): Corner[] {
  const on = (i: number): Xy | undefined => ring[((i % ring.length) + ring.length) % ring.length];
  const flat = (p: Xy | undefined): boolean => p !== undefined && Math.abs(p.y) <= stepMm;
  const start = ring.findIndex((p, i) => {
    const q = on(i + 1);
    return flat(p) && flat(q) && q !== undefined && Math.min(p.x, q.x) <= 0 && Math.max(p.x, q.x) >= 0 && p.x !== q.x;
  });
  if (start < 0) return [];
  const end = (from: number, by: 1 | -1): Corner[] => {
    let i = from;
    for (let n = 0; n < ring.length && flat(on(i + by)); n += 1) i += by;
    const [here, next] = [on(i), on(i + by)];
    return here && next && !flat(next) ? [{ x: here.x, inside: next.y > here.y }] : [];
  };
  return [...end(start, -1), ...end(start + 1, 1)].sort((a, b) => a.x - b.x);
}

/** At a wall shared with another dwelling the face goes on next door: that is no corner. */
function goesOn(given: Given, t: Terminal, x: number): boolean {
  return neighbourhood(given, t).walls.some((w) => {
    if (w.party !== true || w.storey !== t.point.storey) return false;
    return [w.a, w.b].some((end) => {
      const p = t.local({ ...end, z: t.at.z });
      return Math.abs(p.x - x) <= w.thicknessMm && Math.abs(p.y) <= 2 * w.thicknessMm;
    });
  });
}

/** Does an outline, as seen from above, come near the terminal at all? */
function isBy(t: Terminal, ring: readonly (readonly [number, number])[]): boolean {
  const { x, y } = t.at;
  const near = LOOKED_MM;
  const sides = ring.reduce(
    (s, [px, py]) =>
      [s[0] || px <= x + near, s[1] || px >= x - near, s[2] || py <= y + near, s[3] || py >= y - near] as const,
    [false, false, false, false] as readonly [boolean, boolean, boolean, boolean],
  );
  return sides.every(Boolean);
}

/** Inside and outside corners of the face, on the storey the terminal is drawn in. */
export function cornersNear(given: Given, t: Terminal): Candidate[] {
  const bodies = wallBodies(given.plan, t.point.storey, standingBuilding(given.network)).union;
  const rings = bodies
    .filter((polygon) => polygon[0]?.length && isBy(t, polygon[0]))
    .flatMap((polygon) => polygon.map((ring) => ring.slice(0, -1)));
  return rings
    .flatMap((ring) =>
      cornersOf(
        ring.map(([x, y]) => t.local({ x, y, z: t.at.z })),
        STEP_MM,
      ),
    )
    .flatMap(({ x, inside }): Candidate[] => {
      if (goesOn(given, t, x)) return [];
      const gap = gapWithout('Y', t.body, { ...t.body, minX: x, maxX: x });
      const what = inside ? 'the inside corner' : 'the corner of the building';
      const ids = t.point.place.on === 'wall' ? [t.point.place.wall] : [];
      return gap.mm > LOOKED_MM ? [] : [candidate({ row: 'beside-corner', ids, what, gap })];
    });
}
