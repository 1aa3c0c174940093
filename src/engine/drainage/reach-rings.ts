import { bodiesOf, wallsOf } from '../../geometry/bodies.ts';
import { askBoxes, type BoxTree, boxTree } from '../../geometry/box-index.ts';
import { type Box3, flatBox } from '../../geometry/boxes.ts';
import { insideOutline, type Outline, signedArea } from '../../geometry/outlines.ts';
import { outlineOf } from '../../geometry/polygons.ts';
import { rememberByRecords } from '../../geometry/remember.ts';
import { add, cross, distance, dot, left, scale, sub, unit } from '../../geometry/vec.ts';
import type { Standing } from '../../geometry/wall-frame.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Wall } from '../../plan/records/building.ts';
import type { Xy } from '../../plan/records/parts.ts';
import { OFF_WALL_MM } from './reach-figures.ts';

/** Outside of every closed space; closed spaces are counted from 0. */
export const OUTSIDE = -1;

/** A straight piece of the line a pipe takes along the face of walls. */
export interface RingEdge {
  readonly index: number;
  readonly ring: number;
  readonly region: number;
  readonly a: Xy;
  readonly b: Xy;
  /** Unit vector into the wall it follows. */
  readonly toWall: Xy;
  readonly lengthMm: number;
}

/** The lines a pipe can follow on one floor, and which space a place lies in. */
export interface Rings {
  readonly edges: readonly RingEdge[];
  readonly tree: BoxTree<{ readonly edge: RingEdge; readonly box: Box3 }>;
  /** True where some space is closed, so that inside and outside can be told apart. */
  readonly closed: boolean;
  regionAt(p: Xy): number;
  /** Every place within reach on the edges of a region, or of all, the nearest first; the very nearest however far. */
  feet(p: Xy, region: number | null, reachMm: number): readonly Foot[];
}

/** Past this every edge is looked at. */
const FAR_MM = 50_000;

const around = (p: Xy, by: number): Box3 => flatBox([p], by);

/** Corners nearer than this are one, and edges shorter than it none. */
const HAIR_MM = 1;

function cleaned(outline: Outline): Xy[] {
  const apart = outline.filter((p, i) => distance(p, outline[(i + 1) % outline.length] ?? p) > HAIR_MM);
  return apart.filter((p, i) => {
    const before = apart[(i + apart.length - 1) % apart.length] ?? p;
    const after = apart[(i + 1) % apart.length] ?? p;
    return Math.abs(cross(unit(sub(p, before)), unit(sub(after, p)))) > 1e-6;
  });
}

interface Side {
  readonly on: Xy;
  readonly way: Xy;
  /** Unit vector away from the wall. */
  readonly off: Xy;
}

function meet(p: Side, q: Side): Xy {
  const det = cross(p.way, q.way);
  return Math.abs(det) < 1e-9 ? q.on : add(p.on, scale(p.way, cross(sub(q.on, p.on), q.way) / det));
}

/** The outline moved off its walls; sides that vanish in the moving (a nib, a narrow niche) are left out. */
function moved(outline: Outline, offMm: number, inwards: boolean): { a: Xy; b: Xy; off: Xy }[] {
  const corners = cleaned(outline);
  const turn = signedArea(corners) > 0 === inwards ? 1 : -1;
  let sides: Side[] = corners.map((a, i) => {
    const way = unit(sub(corners[(i + 1) % corners.length] ?? a, a));
    const off = scale(left(way), turn);
    return { on: add(a, scale(off, offMm)), way, off };
  });
  for (;;) {
    const now = sides;
    const at = (i: number): Side => now[(i + now.length) % now.length] as Side;
    const made = now.map((s, i) => ({ a: meet(at(i - 1), s), b: meet(s, at(i + 1)), off: s.off, side: s }));
    const kept = made.filter((e) => dot(sub(e.b, e.a), e.side.way) > HAIR_MM);
    if (kept.length === made.length || kept.length < 3) return kept.length < 3 ? [] : kept;
    sides = kept.map((e) => e.side);
  }
}

interface Shape {
  readonly region: number;
  readonly outline: Outline;
  readonly box: Box3;
}

interface Kept extends Omit<Rings, 'regionAt' | 'feet'> {
  readonly tree: BoxTree<{ readonly edge: RingEdge; readonly box: Box3 }>;
  /** Closed spaces, and the outlines of what is built. */
  readonly faceTree: BoxTree<Shape>;
}

const remembered = rememberByRecords((walls: readonly Wall[]): Kept => {
  const { union } = bodiesOf(walls);
  const faces = union.flatMap((polygon) => polygon.slice(1).map(outlineOf));
  const outer = union
    .map((polygon) => outlineOf(polygon[0] ?? []))
    .filter((o) => o[0] && !faces.some((f) => insideOutline(o[0] as Xy, f)));
  const made = [
    ...faces.map((f, i) => ({ region: i, sides: moved(f, OFF_WALL_MM, true) })),
    ...outer.map((o) => ({ region: OUTSIDE, sides: moved(o, OFF_WALL_MM, false) })),
  ];
  const edges: RingEdge[] = [];
  made.forEach(({ region, sides }, ring) => {
    for (const { a, b, off } of sides) {
      edges.push({ index: edges.length, ring, region, a, b, toWall: scale(off, -1), lengthMm: distance(a, b) });
    }
  });
  const tree = boxTree(edges.map((edge) => ({ edge, box: flatBox([edge.a, edge.b]) })));
  const shapes: Shape[] = [
    ...faces.map((outline, region) => ({ region, outline, box: flatBox(outline) })),
    ...outer.map((outline) => ({ region: OUTSIDE, outline, box: flatBox(outline) })),
  ];
  return { edges, tree, faceTree: boxTree(shapes), closed: faces.length > 0 };
});

/** The lines along every face of the walls of a storey, at their stand-off. */
export function ringsOf(plan: Plan, storey: string, standing: Standing): Rings {
  const rings = remembered(wallsOf(plan, storey, standing));
  const [near, inFaces] = [askBoxes(rings.tree), askBoxes(rings.faceTree)];
  const feet = (p: Xy, region: number | null, reachMm: number): Foot[] => {
    for (let reach = reachMm; ; reach *= 4) {
      const all = reach > FAR_MM ? rings.edges : near.search(around(p, reach)).map(({ edge }) => edge);
      const found = all
        .filter((e) => region === null || e.region === region)
        .map((e) => footOn(e, p))
        .sort((m, n) => m.offMm - n.offMm || m.edge.index - n.edge.index);
      const [first] = found;
      if (first && (first.offMm <= reach || reach > FAR_MM))
        return [first, ...found.slice(1).filter((f) => f.offMm <= reachMm)];
      if (reach > FAR_MM) return [];
    }
  };
  return {
    ...rings,
    feet,
    regionAt(p) {
      const over = inFaces.search(flatBox([p])).filter(({ outline }) => insideOutline(p, outline));
      const face = over.find((f) => f.region !== OUTSIDE);
      if (face) return face.region;
      // Neither in a room nor outside the house: in a wall, and so at its nearest face.
      return over.length > 0 ? (feet(p, null, OFF_WALL_MM)[0]?.edge.region ?? OUTSIDE) : OUTSIDE;
    },
  };
}

/** Place on an edge nearest to a place, how far along it, and how far off. */
export interface Foot {
  readonly edge: RingEdge;
  readonly at: Xy;
  readonly alongMm: number;
  readonly offMm: number;
}

export function footOn(edge: RingEdge, p: Xy): Foot {
  const way = unit(sub(edge.b, edge.a));
  const alongMm = Math.min(edge.lengthMm, Math.max(0, dot(sub(p, edge.a), way)));
  const at = add(edge.a, scale(way, alongMm));
  return { edge, at, alongMm, offMm: distance(p, at) };
}
