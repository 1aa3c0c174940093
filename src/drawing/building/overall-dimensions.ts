import { direction, sub, turned, unit } from '../../geometry/vec.ts';
import { intoWall, wallLength } from '../../geometry/wall-frame.ts';
import type { Wall } from '../../plan/records/building.ts';
import type { Measures, Vec, Wish } from '../display-list.ts';
import { clipLine } from './clip-line.ts';
import { solidRings } from './wall-bodies.ts';

/** Inside the outermost face by this much the rooms are cut to measure them. */
const INSIDE_MM = 300;
/** Narrower than this it is a cupboard or a duct: left to be asked for. */
const LEAST_MM = 600;
const AWAY_MM = 8;
/** A place lies on a face within this; a wall that stands less across the way cannot be pushed along it. */
const FACE_MM = 1;
const LEAST_ACROSS = 0.9;

function clear(rings: readonly (readonly Vec[])[], through: Vec, way: Vec): [number, number][] {
  const solid = clipLine(rings, through, way).map(([a, b]): [number, number] => [
    a[0] * way[0] + a[1] * way[1],
    b[0] * way[0] + b[1] * way[1],
  ]);
  const gaps: [number, number][] = [];
  solid.forEach(([from], i) => {
    const before = solid[i - 1];
    if (before && from - before[1] >= LEAST_MM) gaps.push([before[1], from]);
  });
  return gaps;
}

const turnBy =
  (quarters: number) =>
  ([x, y]: Vec): Vec => {
    const p = turned({ x, y }, direction(90 * quarters));
    return [p.x, p.y];
  };

/** The wall whose face bounds a clear size at a place: the one that lies most across the way, and has its face there. */
function boundedBy(walls: readonly Wall[], at: Vec, way: Vec): string | undefined {
  let best: { id: string; across: number } | undefined;
  for (const wall of walls) {
    const { u, v } = intoWall(wall, { x: at[0], y: at[1], z: 0 });
    if (u < -FACE_MM || u > wallLength(wall) + FACE_MM || Math.abs(Math.abs(v) - wall.thicknessMm / 2) > FACE_MM)
      continue;
    const d = unit(sub(wall.b, wall.a));
    const across = Math.abs(d.x * way[1] - d.y * way[0]);
    if (!best || across > best.across) best = { id: wall.id, across };
  }
  return best && best.across > LEAST_ACROSS ? best.id : undefined;
}

/**
 * Clear sizes of the rooms along the lower and the left edge of the house, from finished face to finished face: of the
 * house as it lies when it is turned by so many right angles, told in its own directions.
 */
export function overallDimensions(walls: readonly Wall[], quarters = 0): Wish[] {
  const [there, back] = [turnBy(quarters), turnBy(-quarters)];
  const rings = solidRings(walls).map((ring) => ring.map(there));
  const pts = rings.flat();
  if (pts.length === 0) return [];
  const minX = Math.min(...pts.map((p) => p[0]));
  const minY = Math.min(...pts.map((p) => p[1]));
  const thickest = Math.max(...walls.map((w) => w.thicknessMm));
  const inside = thickest + INSIDE_MM;
  const unsure = walls.some((w) => w.sureness === 'assumed');
  /** Between which walls it is told: sizes are cut inside the edge along which they are drawn. */
  const between = (low: Vec, high: Vec): { measures?: Measures } => {
    const mm = Math.hypot(high[0] - low[0], high[1] - low[1]);
    const way: Vec = mm === 0 ? [1, 0] : [(high[0] - low[0]) / mm, (high[1] - low[1]) / mm];
    const [from, upTo] = [boundedBy(walls, low, way), boundedBy(walls, high, way)];
    return from === undefined || upTo === undefined || from === upTo
      ? {}
      : { measures: { of: 'clear', low: from, high: upTo, way } };
  };
  const wish = (a: Vec, b: Vec, side: Vec, cut: readonly [Vec, Vec], mm: number): Wish => ({
    w: 'dimension',
    a: back(a),
    b: back(b),
    side: back(side),
    awayMm: AWAY_MM,
    text: Math.round(mm).toString(),
    unsure,
    ...between(back(cut[0]), back(cut[1])),
  });
  const across = clear(rings, [minX, minY + inside], [1, 0]).map(([from, upTo]) => {
    const y = minY + inside;
    return wish(
      [from, minY],
      [upTo, minY],
      [0, -1],
      [
        [from, y],
        [upTo, y],
      ],
      upTo - from,
    );
  });
  const upright = clear(rings, [minX + inside, minY], [0, 1]).map(([from, upTo]) => {
    const x = minX + inside;
    return wish(
      [minX, from],
      [minX, upTo],
      [-1, 0],
      [
        [x, from],
        [x, upTo],
      ],
      upTo - from,
    );
  });
  return [...across, ...upright];
}
