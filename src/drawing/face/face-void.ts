import { resolveHeight } from '../../geometry/heights.ts';
import { joistLines } from '../../geometry/joist-lines.ts';
import { direction } from '../../geometry/vec.ts';
import { voidHeights } from '../../geometry/void-stretches.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Void } from '../../plan/records/building.ts';
import { outlineRings } from '../building/joist-edges.ts';
import type { Item, LineStyle, Vec } from '../display-list.ts';
import { PEN } from '../look/tokens.ts';
import type { FacePlane } from '../pipes/plane.ts';
import { type Across, cutBy, cutLine, rectangle } from './face-wall.ts';

const JOIST: LineStyle = { ink: 'batten', pen: 0.2, dash: [], fit: false };
const EDGE: LineStyle = { ink: 'wallEdge', pen: PEN.opening, dash: [], fit: false };

/** A joist cut through: a box with both diagonals. */
export function joistBox(a: Across, low: number, high: number): Item[] {
  const line = (p: Vec, q: Vec): Item => ({ t: 'line', pts: [p, q], style: JOIST });
  return [
    { t: 'area', rings: [rectangle(a, low, high)], fill: 'paper', edge: JOIST },
    line([a.from, low], [a.upTo, high]),
    line([a.from, high], [a.upTo, low]),
  ];
}

/** z of a void's own joists; undefined where nobody told. */
export function joistZ(plan: Plan, v: Void): { low: number; high: number } | undefined {
  const depth = v.joists?.depthMm;
  const low = v.joists?.bottom ? resolveHeight(plan, v.joists.bottom)?.z : undefined;
  return low === undefined || depth === null || depth === undefined ? undefined : { low, high: low + depth };
}

/** A void where it meets a face: a wash between its heights, its joists cut or seen along. */
export function faceVoid(plan: Plan, v: Void, plane: FacePlane): Item[] {
  const line = cutLine(plan, plane);
  const heights = voidHeights(plan, v);
  if (!line || !heights) return [];
  const { bottom, top } = heights;
  const items: Item[] = [];
  const cuts = cutBy(outlineRings(v), line, plane);
  for (const cut of cuts) {
    items.push({ t: 'area', rings: [rectangle(cut, bottom, top)], fill: 'void' });
    items.push({
      t: 'line',
      pts: [
        [cut.from, bottom],
        [cut.upTo, bottom],
      ],
      style: EDGE,
    });
  }
  const z = joistZ(plan, v);
  if (!v.joists || !z) return items;
  const way = direction(v.joists.wayDeg);
  const alongFace = Math.abs(way.x * line.way[0] + way.y * line.way[1]) > ALONG;
  if (alongFace) {
    for (const cut of cuts)
      for (const level of [z.low, z.high])
        items.push({
          t: 'line',
          pts: [
            [cut.from, level],
            [cut.upTo, level],
          ],
          style: JOIST,
        });
    return items;
  }
  const half = (v.joists.breadthMm ?? 0) / 2;
  for (const { a, b } of joistLines(v)) {
    const p = crossing([a.x, a.y], [b.x, b.y], line);
    if (!p) continue;
    const [u] = plane.at({ x: p[0], y: p[1], z: 0 });
    items.push(...joistBox({ from: u - half, upTo: u + half }, z.low, z.high));
  }
  return items;
}

/** Joists nearer than this cosine to the way of a face are seen along, not cut. */
const ALONG = 0.9;
/** A joist that ends this short of the face still shows its end. */
const SHORT_MM = 100;

/** Where a joist's centreline meets the cut, or would. */
function crossing(a: Vec, b: Vec, line: { through: Vec; way: Vec }): Vec | undefined {
  const n: Vec = [-line.way[1], line.way[0]];
  const side = (p: Vec): number => (p[0] - line.through[0]) * n[0] + (p[1] - line.through[1]) * n[1];
  const [sa, sb] = [side(a), side(b)];
  if (sa * sb > 0 && Math.min(Math.abs(sa), Math.abs(sb)) > SHORT_MM) return undefined;
  const t = sa === sb ? 0 : Math.min(1, Math.max(0, sa / (sa - sb)));
  return [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
}
