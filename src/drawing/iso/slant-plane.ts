import type { Xyz } from '../../plan/records/parts.ts';
import type { Item, LineStyle, Vec } from '../display-list.ts';
import { PEN } from '../look/tokens.ts';
import { flat } from './iso-plane.ts';

/** Off an axis by less than this part of its length a leg is read as lying along it. */
const ALONG = 0.03;
/** Between the hatching lines, in mm of paper, and how small the scale may be for them. */
const STEP_MM = 1.6;
const EDGE: LineStyle = { ink: 'leader', pen: PEN.dimension, dash: [], fit: false };
const HATCH: LineStyle = { ink: 'hatch', pen: PEN.batten, dash: [], fit: false };
const MOST_LINES = 60;

/** The axes that a way goes along: what is told of it on the others is too little to be seen. */
export function axesOf(way: Xyz): readonly ('x' | 'y' | 'z')[] {
  const l = Math.hypot(way.x, way.y, way.z);
  return (['x', 'y', 'z'] as const).filter((axis) => Math.abs(way[axis]) > ALONG * l);
}

const line = (a: Xyz, b: Xyz, style: LineStyle): Item => ({ t: 'line', pts: [flat(a), flat(b)], style });
const between = (a: Xyz, b: Xyz, t: number): Xyz => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
  z: a.z + (b.z - a.z) * t,
});

/** A triangle `a`, `corner`, `b` with its right angle at `corner`, hatched along the side from the corner to `b`. */
function hatched(a: Xyz, corner: Xyz, b: Xyz, mmPerPaperMm: number): Item[] {
  const [p, q] = [flat(a), flat(corner)] as readonly [Vec, Vec];
  const base = Math.hypot(p[0] - q[0], p[1] - q[1]) / mmPerPaperMm;
  const n = Math.min(MOST_LINES, Math.floor(base / STEP_MM));
  const items = [line(a, corner, EDGE), line(corner, b, EDGE)];
  for (let i = 1; i < n; i++) items.push(line(between(a, corner, i / n), between(a, b, i / n), HATCH));
  return items;
}

/**
 * What shows how a leg lies that goes along no axis (ISO 6412-2): where it stands in an upright plane its shadow on the
 * level, hatched upright; where it lies level its way along two axes, hatched along the second; where neither, both.
 * Told along the axes of the drawing. Nothing for a leg that lies along an axis.
 */
export function slantPlane(a: Xyz, b: Xyz, mmPerPaperMm: number): Item[] {
  const way = { x: b.x - a.x, y: b.y - a.y, z: b.z - a.z };
  const axes = axesOf(way);
  if (axes.length < 2) return [];
  // The shadow lies at the level of the lower end.
  const [low, high] = way.z >= 0 ? [a, b] : [b, a];
  const under: Xyz = { x: high.x, y: high.y, z: low.z };
  const items = axes.includes('z') ? hatched(low, under, high, mmPerPaperMm) : [];
  if (axes.includes('x') && axes.includes('y')) {
    const corner: Xyz = { x: under.x, y: low.y, z: low.z };
    items.push(...hatched(low, corner, under, mmPerPaperMm));
  }
  return items;
}
