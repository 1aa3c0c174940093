import { askBoxes } from '../../geometry/box-index.ts';
import { flatBox } from '../../geometry/boxes.ts';
import { add, cross, distance, dot, scale, sub } from '../../geometry/vec.ts';
import { intoWall, type Standing, wallLength } from '../../geometry/wall-frame.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Wall } from '../../plan/records/building.ts';
import type { Xy } from '../../plan/records/parts.ts';
import { FREE_MM, OFF_WALL_MM } from './reach-figures.ts';
import { type WayGraph, WayNet, type WayPiece } from './reach-net.ts';
import { openingFinder } from './reach-openings.ts';
import { type Foot, OUTSIDE, type RingEdge, ringsOf } from './reach-rings.ts';

const HAIR_MM = 1;
/** Faces that look at each other: the cosine between them is under this. */
const FACING = -0.95;

const flat = (p: Xy) => ({ x: p.x, y: p.y, z: 0 });
const boxed = (a: Xy, b: Xy) => flatBox([a, b]);

/** Where two lines cross within both; undefined where they do not. */
function crossing(a: Xy, b: Xy, c: Xy, d: Xy): Xy | undefined {
  const [p, q] = [sub(b, a), sub(d, c)];
  const det = cross(p, q);
  if (Math.abs(det) < 1e-9) return undefined;
  const t = cross(sub(c, a), q) / det;
  const u = cross(sub(c, a), p) / det;
  return t >= 0 && t <= 1 && u >= 0 && u <= 1 ? add(a, scale(p, t)) : undefined;
}

function inBody(wall: Wall, p: Xy): boolean {
  const { u, v } = intoWall(wall, flat(p));
  return u >= 0 && u <= wallLength(wall) && Math.abs(v) <= wall.thicknessMm / 2;
}

/**
 * Every way a pipe could be drawn on one storey between the places asked for: along the faces of walls at their
 * stand-off, straight through walls from face to face (never one shared with another dwelling), and square off a wall
 * across the open to what stands free. Looked up by box, so that it grows with the walls and no faster.
 */
export function wayGraph(plan: Plan, storey: string, standing: Standing, asked: readonly Xy[]): WayGraph {
  const rings = ringsOf(plan, storey, standing);
  const openings = openingFinder(plan, storey, standing);
  const walls = Object.values(plan.walls).filter((w) => w.storey === storey && standing.has(w.id));
  const party = walls.filter((w) => w.party === true);
  const throughMm = Math.max(0, ...walls.map((w) => w.thicknessMm)) + 2 * OFF_WALL_MM + HAIR_MM;
  const index = askBoxes(rings.tree);
  const net = new WayNet();
  const dwellings = new Together();
  const fields: (Foot & { readonly terminal: number; readonly region: number; readonly p: Xy })[] = [];

  const piece = (a: Xy, b: Xy, how: WayPiece['how'], region: number): WayPiece => {
    const outside = rings.closed ? region === OUTSIDE : null;
    return { a, b, mm: distance(a, b), how, outside, region, passes: openings.passed(a, b) };
  };
  const inParty = (p: Xy): boolean => party.some((w) => inBody(w, p));
  const clear = (a: Xy, b: Xy): boolean =>
    index.search(boxed(a, b)).every(({ edge }) => {
      const hit = crossing(a, b, edge.a, edge.b);
      return !hit || distance(hit, a) < HAIR_MM || distance(hit, b) < HAIR_MM;
    });

  const cast = (edge: RingEdge, at: Xy): void => {
    const far = add(at, scale(edge.toWall, throughMm));
    let best: { edge: RingEdge; at: Xy; mm: number } | undefined;
    for (const { edge: other } of index.search(boxed(at, far))) {
      const hit = dot(other.toWall, edge.toWall) < FACING ? crossing(at, far, other.a, other.b) : undefined;
      const mm = hit ? distance(at, hit) : 0;
      if (hit && mm > 2 * OFF_WALL_MM && (!best || mm < best.mm)) best = { edge: other, at: hit, mm };
    }
    if (!best || inParty(scale(add(at, best.at), 0.5))) return;
    const [from, to] = [net.station(edge, at), net.station(best.edge, best.at)];
    const inside = edge.region === OUTSIDE ? best.edge.region : edge.region;
    if (edge.region !== OUTSIDE && best.edge.region !== OUTSIDE) dwellings.join(edge.region, best.edge.region);
    net.join(from, to, [piece(net.place(from), net.place(to), 'through', inside)]);
  };

  for (const edge of rings.edges) for (const at of [edge.a, edge.b]) net.station(edge, at);
  for (const edge of rings.edges) for (const at of [edge.a, edge.b]) cast(edge, at);

  const terminals = asked.map((p) => net.node(p));
  const regions = asked.map((p) => rings.regionAt(p));
  asked.forEach((p, i) => {
    const terminal = terminals[i] ?? 0;
    const region = regions[i] ?? OUTSIDE;
    const [first, ...others] = rings.feet(p, region, FREE_MM);
    const feet = first ? [first, ...others.filter((f) => clear(p, f.at))] : [];
    for (const { edge, at } of feet) {
      const on = net.station(edge, at);
      net.join(terminal, on, [
        piece(p, net.place(on), distance(p, net.place(on)) > FREE_MM ? 'open' : 'across', region),
      ]);
      cast(edge, at);
    }
    const [nearest] = feet;
    if (nearest && nearest.offMm > FREE_MM) fields.push({ ...nearest, terminal, region, p });
  });
  // What stands free is met square off the wall and then along it, from wherever the wall is left.
  for (const { edge, p, region, terminal } of fields) {
    for (const { node, at } of net.on(edge)) {
      const turn = add(at, scale(edge.toWall, dot(sub(p, at), edge.toWall)));
      if (distance(turn, p) < HAIR_MM || !clear(at, turn) || !clear(turn, p)) continue;
      net.join(node, terminal, [piece(at, turn, 'open', region), piece(turn, p, 'open', region)]);
    }
  }
  if (rings.edges.length === 0) joinBare(net, terminals, piece);

  for (const edge of rings.edges) {
    const on = net.on(edge);
    on.slice(1).forEach((b, i) => {
      const a = on[i];
      if (!a || a.node === b.node) return;
      const behind = add(scale(add(a.at, b.at), 0.5), scale(edge.toWall, OFF_WALL_MM + HAIR_MM));
      if (edge.region === OUTSIDE && inParty(behind)) return;
      net.join(a.node, b.node, [piece(a.at, b.at, 'along', edge.region)]);
    });
  }
  // Spaces that hang together only over the outside are one dwelling, unless some wall is shared with another.
  const sameDwelling = (a: number, b: number): boolean => party.length === 0 || dwellings.of(a) === dwellings.of(b);
  return { links: net.links, terminals, regions, sameDwelling };
}

/** Which spaces hang together. */
class Together {
  private readonly into = new Map<number, number>();

  of(space: number): number {
    const next = this.into.get(space);
    return next === undefined ? space : this.of(next);
  }

  join(a: number, b: number): void {
    const [p, q] = [this.of(a), this.of(b)];
    if (p !== q) this.into.set(Math.max(p, q), Math.min(p, q));
  }
}

/** On a page with no wall: square, across first and then up. */
function joinBare(
  net: WayNet,
  terminals: readonly number[],
  piece: (a: Xy, b: Xy, how: WayPiece['how'], region: number) => WayPiece,
): void {
  terminals.forEach((from, i) => {
    for (const to of terminals.slice(i + 1)) {
      const [a, b] = [net.place(from), net.place(to)];
      const turn = { x: b.x, y: a.y };
      net.join(from, to, [piece(a, turn, 'across', OUTSIDE), piece(turn, b, 'across', OUTSIDE)]);
    }
  });
}
