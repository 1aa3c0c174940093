import { Heap } from '../../network/heap.ts';
import { AGAINST, CLEAR_MM, HOLE_MM, IN_THE_WAY_MM } from './reach-figures.ts';
import type { WayGraph, WayPiece } from './reach-net.ts';
import { OUTSIDE } from './reach-rings.ts';

/** On which side of the outside walls a way is sought. */
export type Wish = 'inside' | 'outside';

/** What the height of the pipe does to a way while it is sought. */
export interface FallFrom {
  readonly z: number;
  readonly mmPerM: number;
  readonly floorZ: number;
}

interface Label {
  readonly node: number;
  readonly cost: number;
  readonly mm: number;
  readonly before: Label | null;
  readonly pieces: readonly WayPiece[];
}

/** Openings on a piece that lie in the way of a pipe at the height it has fallen to. */
function inTheWay(piece: WayPiece, mm: number, fall: FallFrom, avoid: ReadonlySet<string>): number {
  return piece.passes.filter(({ opening, toMm }) => {
    const z = fall.z - ((mm + toMm) * fall.mmPerM) / 1000;
    const over = z >= opening.topZ + CLEAR_MM;
    const under = opening.bottomZ - CLEAR_MM > fall.floorZ;
    return !over && (!under || avoid.has(opening.opening));
  }).length;
}

function costOf(piece: WayPiece, mm: number, wish: Wish, fall: FallFrom, avoid: ReadonlySet<string>): number {
  const against = piece.outside !== null && piece.outside !== (wish === 'outside');
  const hole = piece.how === 'through' ? HOLE_MM : 0;
  return piece.mm * (against ? AGAINST : 1) + hole + IN_THE_WAY_MM * inTheWay(piece, mm, fall, avoid);
}

function piecesOf(label: Label): WayPiece[] {
  const found: WayPiece[] = [];
  for (let at: Label | null = label; at; at = at.before) found.unshift(...at.pieces);
  return found;
}

/** The cheapest way from one terminal to each wanted other; null where there is none. Ways end at a terminal. */
export function waysFrom(
  graph: WayGraph,
  from: number,
  to: readonly number[],
  wish: Wish,
  fall: FallFrom,
  avoid: ReadonlySet<string>,
): (readonly WayPiece[] | null)[] {
  const start = graph.terminals[from];
  const ends = new Set(graph.terminals);
  const wanted = to.map((t) => graph.terminals[t] ?? -1);
  const left = new Set(wanted);
  const done = new Map<number, Label>();
  const home = graph.regions[from] ?? OUTSIDE;
  /** In rooms of somebody else. */
  const isElsewhere = (p: WayPiece): boolean =>
    home !== OUTSIDE && p.outside === false && !graph.sameDwelling(home, p.region);
  const heap = new Heap<Label>((p, q) => p.cost < q.cost || (p.cost === q.cost && p.node < q.node));
  if (start !== undefined) heap.push({ node: start, cost: 0, mm: 0, before: null, pieces: [] });
  for (let label = heap.pop(); label && left.size > 0; label = heap.pop()) {
    if (done.has(label.node)) continue;
    done.set(label.node, label);
    left.delete(label.node);
    if (label.node !== start && ends.has(label.node)) continue;
    for (const { to, pieces } of graph.links[label.node] ?? []) {
      if (done.has(to) || pieces.some(isElsewhere)) continue;
      let { cost, mm } = label;
      for (const piece of pieces) {
        cost += costOf(piece, mm, wish, fall, avoid);
        mm += piece.mm;
      }
      heap.push({ node: to, cost, mm, before: label, pieces });
    }
  }
  return wanted.map((t) => {
    const label = done.get(t);
    return label && t !== start ? piecesOf(label) : null;
  });
}
