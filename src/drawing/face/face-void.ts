import { resolveHeight } from '../../geometry/heights.ts';
import { joistLines } from '../../geometry/joist-lines.ts';
import { direction } from '../../geometry/vec.ts';
import { type VoidHeights, voidHeights } from '../../geometry/void-stretches.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Void } from '../../plan/records/building.ts';
import { boxOnSide } from '../building/box-on-wall.ts';
import { DOUBLED } from '../building/joist-items.ts';
import { outlineRings } from '../building/void-rings.ts';
import type { Fragment, Item, LineStyle, PainterGroup, Vec, Wish } from '../display-list.ts';
import { makeFragment } from '../fragments/fragment.ts';
import { PEN } from '../look/tokens.ts';
import type { FacePlane } from '../pipes/plane.ts';
import { type Across, cutBy, cutLine, rectangle } from './face-wall.ts';
import { joistSection, joistStyle } from './joist-section.ts';

const EDGE: LineStyle = { ink: 'wallEdge', pen: PEN.opening, dash: [], fit: false };
const HIDDEN: LineStyle = { ink: 'wallEdge', pen: PEN.opening, dash: [1.6, 0.8], fit: false };

/** z of a void's own joists; undefined where nobody told. */
export function joistZ(plan: Plan, v: Void): { low: number; high: number } | undefined {
  const depth = v.joists?.depthMm;
  const low = v.joists?.bottom ? resolveHeight(plan, v.joists.bottom)?.z : undefined;
  return low === undefined || depth === null || depth === undefined ? undefined : { low, high: low + depth };
}

const level = (cut: Across, z: number, style: LineStyle): Item => ({
  t: 'line',
  pts: [
    [cut.from, z],
    [cut.upTo, z],
  ],
  style,
});

/** A boxing seen from before its wall, or a chase let into it: all its edges, and how deep it is. */
function box(plan: Plan, v: Void, plane: FacePlane, heights: VoidHeights): Fragment | undefined {
  const { view } = plane;
  const wall = view.kind === 'face' ? plan.walls[view.wall] : undefined;
  const on = wall && view.kind === 'face' ? boxOnSide(wall, view.side, v) : undefined;
  if (!wall || !on || view.kind !== 'face') return undefined;
  const ring = rectangle({ from: on.fromS, upTo: on.toS }, heights.bottom, heights.top);
  const edge = v.sureness === 'assumed' ? HIDDEN : EDGE;
  const item: Item = { t: 'area', rings: [ring], fill: 'void', edge };
  const at: Vec = [(on.fromS + on.toS) / 2, (heights.bottom + heights.top) / 2];
  const second = `${Math.round(on.depthMm)} deep`;
  const words: Wish = { w: 'name', at, text: v.name === '' ? v.kind : v.name, second, ring, small: true };
  return makeFragment(v.id, 'voids', 'void', [item], [words]);
}

/** A slab cut through: hatched, with the lines between its layers. */
function slab(v: Void, cuts: readonly Across[], { bottom, top }: VoidHeights): Item[] {
  return cuts.flatMap((cut): Item[] => {
    const items: Item[] = [{ t: 'area', rings: [rectangle(cut, bottom, top)], fill: 'slab', edge: EDGE }];
    let z = top;
    for (const { thicknessMm } of v.layers ?? []) {
      z -= thicknessMm;
      if (z > bottom) items.push(level(cut, z, EDGE));
    }
    return items;
  });
}

function layerWishes(v: Void, cuts: readonly Across[], { bottom, top }: VoidHeights): Wish[] {
  const cut = cuts[0];
  let z = top;
  return (v.layers ?? []).flatMap(({ what, thicknessMm }): Wish[] => {
    const middle = z - thicknessMm / 2;
    z -= thicknessMm;
    if (!cut || middle < bottom) return [];
    const at: Vec = [cut.upTo, middle];
    return [{ w: 'flag', at, what: `${what} ${Math.round(thicknessMm)}`, how: null, rank: 9, clearMm: 0.5 }];
  });
}

/** Joists where they meet the face: cut through, or seen along. */
function joistsOn(plan: Plan, v: Void, plane: FacePlane, cuts: readonly Across[]): Item[] {
  const line = cutLine(plan, plane);
  const z = joistZ(plan, v);
  const { joists } = v;
  if (!joists || !z || !line) return [];
  const style = joistStyle(joists);
  const way = direction(joists.wayDeg);
  const alongFace = Math.abs(way.x * line.way[0] + way.y * line.way[1]) > ALONG;
  if (alongFace) return cuts.flatMap((cut) => [z.low, z.high].map((at) => level(cut, at, style)));
  const half = (joists.breadthMm ?? 0) / 2;
  return joistLines(v).flatMap(({ a, b, what }): Item[] => {
    const p = crossing([a.x, a.y], [b.x, b.y], line);
    const u = p && plane.at({ x: p[0], y: p[1], z: 0 })[0];
    if (u === undefined || u < plane.from || u > plane.upTo) return [];
    const middles = what === DOUBLED ? [u - half, u + half] : [u];
    return middles.flatMap((m) => joistSection(joists.kind, { from: m - half, upTo: m + half }, z.low, z.high, style));
  });
}

/** What lies over the ceiling or under the floor is drawn on the floors that are cut there, not beneath them. */
function layerOf(plane: FacePlane, { bottom, top }: VoidHeights): PainterGroup {
  return bottom >= plane.ceilingZ - 1 || top <= plane.floorZ + 1 ? 'joist' : 'void';
}

/** A void may go on past the end of the wall: what lies there belongs to another face. */
const onWall = (cuts: readonly Across[], { from, upTo }: FacePlane): Across[] =>
  cuts.map((c) => ({ from: Math.max(c.from, from), upTo: Math.min(c.upTo, upTo) })).filter((c) => c.upTo - c.from > 1);

/** A void where it meets a face: a wash between its heights, its joists cut or seen along. */
export function faceVoid(plan: Plan, v: Void, plane: FacePlane): Fragment {
  const line = cutLine(plan, plane);
  const heights = voidHeights(plan, v);
  if (!line || !heights) return makeFragment(v.id, 'voids', 'void', []);
  const boxed = box(plan, v, plane, heights);
  if (boxed) return boxed;
  const { bottom, top } = heights;
  const layer = layerOf(plane, heights);
  const cuts = onWall(cutBy(outlineRings(v), line, plane), plane);
  if (v.kind === 'slab')
    return makeFragment(v.id, 'voids', layer, slab(v, cuts, heights), layerWishes(v, cuts, heights));
  const washes = cuts.flatMap((cut): Item[] => [
    { t: 'area', rings: [rectangle(cut, bottom, top)], fill: 'void' },
    level(cut, bottom, EDGE),
    ...(layer === 'joist' ? [level(cut, top, EDGE)] : []),
  ]);
  return makeFragment(v.id, 'voids', layer, [...washes, ...joistsOn(plan, v, plane, cuts)]);
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
