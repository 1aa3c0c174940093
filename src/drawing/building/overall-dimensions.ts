import { direction, turned } from '../../geometry/vec.ts';
import type { Wall } from '../../plan/records/building.ts';
import type { Vec, Wish } from '../display-list.ts';
import { clipLine } from './clip-line.ts';
import { solidRings } from './wall-bodies.ts';

/** Inside the outermost face by this much the rooms are cut to measure them. */
const INSIDE_MM = 300;
/** Narrower than this it is a cupboard or a duct: left to be asked for. */
const LEAST_MM = 600;
const AWAY_MM = 8;

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
  const wish = (a: Vec, b: Vec, side: Vec, mm: number): Wish => ({
    w: 'dimension',
    a: back(a),
    b: back(b),
    side: back(side),
    awayMm: AWAY_MM,
    text: Math.round(mm).toString(),
    unsure,
  });
  const across = clear(rings, [minX, minY + inside], [1, 0]).map(([from, upTo]) =>
    wish([from, minY], [upTo, minY], [0, -1], upTo - from),
  );
  const upright = clear(rings, [minX + inside, minY], [0, 1]).map(([from, upTo]) =>
    wish([minX, from], [minX, upTo], [-1, 0], upTo - from),
  );
  return [...across, ...upright];
}
