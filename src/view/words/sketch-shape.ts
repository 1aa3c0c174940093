import { nodePlace } from '../../geometry/places.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';

/** A run as a small sketch from the side: px, y down. */
export interface SketchShape {
  readonly lines: readonly {
    readonly leg: string;
    readonly a: readonly [number, number];
    readonly b: readonly [number, number];
    readonly say: string;
  }[];
  readonly ends: readonly { readonly point: string; readonly at: readonly [number, number]; readonly above: boolean }[];
}

/** Depth is shown this much shorter than width: the sketch is looked at from a little above. */
const DEPTH = 0.42;
const LEVEL_MM = 20;

/** Turned about the upright by an angle and looked at from the side. */
export function projected(at: Xyz, turnDeg: number): readonly [number, number] {
  const a = (turnDeg * Math.PI) / 180;
  const across = at.x * Math.cos(a) - at.y * Math.sin(a);
  const deep = at.x * Math.sin(a) + at.y * Math.cos(a);
  return [across, at.z + deep * DEPTH];
}

/** The sketch of a run within a box of px; null where nothing of it has a place. */
export function sketchOf(
  plan: Plan,
  run: string,
  turnDeg: number,
  width: number,
  height: number,
  margin: number,
): SketchShape | null {
  const legs = Object.values(plan.legs).filter((l) => l.run === run);
  const placed = legs.flatMap((leg) => {
    const [a, b] = [plan.nodes[leg.a], plan.nodes[leg.b]].map((n) => n && nodePlace(plan, n)?.at);
    return a && b ? [{ leg, a, b }] : [];
  });
  if (placed.length === 0) return null;
  const flat = placed.map(({ leg, a, b }) => ({
    leg,
    a3: a,
    b3: b,
    a: projected(a, turnDeg),
    b: projected(b, turnDeg),
  }));
  const xs = flat.flatMap((l) => [l.a[0], l.b[0]]);
  const ys = flat.flatMap((l) => [l.a[1], l.b[1]]);
  const [minX, maxX, minY, maxY] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const k = Math.min(
    (width - 2 * margin) / Math.max(maxX - minX, 1),
    (height - 2 * margin) / Math.max(maxY - minY, 1),
    0.2,
  );
  const to = ([x, y]: readonly [number, number]): readonly [number, number] => [
    width / 2 + (x - (minX + maxX) / 2) * k,
    height / 2 - (y - (minY + maxY) / 2) * k,
  ];
  const lines = flat.map(({ leg, a, b, a3, b3 }) => {
    const level = Math.hypot(a3.x - b3.x, a3.y - b3.y);
    return { leg: leg.id, a: to(a), b: to(b), say: level > LEVEL_MM ? String(Math.round(level)) : '' };
  });
  const ends = flat.flatMap(({ leg, a, b, a3, b3 }) =>
    [
      { node: leg.a, at: a, other: b3.z, own: a3.z },
      { node: leg.b, at: b, other: a3.z, own: b3.z },
    ].flatMap(({ node, at, other, own }) => {
      const place = plan.nodes[node]?.place;
      return place?.on === 'connection' ? [{ point: place.point, at: to(at), above: own > other }] : [];
    }),
  );
  return { lines, ends };
}
