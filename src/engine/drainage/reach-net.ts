import { add, scale, sub, unit } from '../../geometry/vec.ts';
import type { Xy } from '../../plan/records/parts.ts';
import type { OpeningPass } from './reach-openings.ts';
import { footOn, type RingEdge } from './reach-rings.ts';

/** A straight piece of a way: along a face, across to or from it, through a wall, or in the open, where it has to lie low. */
export interface WayPiece {
  readonly a: Xy;
  readonly b: Xy;
  readonly mm: number;
  readonly how: 'along' | 'across' | 'through' | 'open';
  /** Null where the plan has no closed space to be outside of. */
  readonly outside: boolean | null;
  /** The closed space it lies in, or goes into. */
  readonly region: number;
  readonly passes: readonly OpeningPass[];
}

export interface Link {
  readonly to: number;
  readonly pieces: readonly WayPiece[];
}

/** Places by number, and what joins them. */
export interface WayGraph {
  readonly links: readonly (readonly Link[])[];
  /** Node of each place asked for, in the order they were given. */
  readonly terminals: readonly number[];
  /** Space each of them stands in. */
  readonly regions: readonly number[];
  /** False for two spaces of which one belongs to another dwelling. */
  sameDwelling(a: number, b: number): boolean;
}

/** Nodes on one edge nearer than this are one. */
const ONE_PLACE_MM = 5;

export interface Station {
  readonly node: number;
  readonly alongMm: number;
  readonly at: Xy;
}

const turnedBack = (p: WayPiece): WayPiece => ({
  ...p,
  a: p.b,
  b: p.a,
  passes: p.passes.map((o) => ({ ...o, fromMm: p.mm - o.toMm, toMm: p.mm - o.fromMm })).reverse(),
});

/** The graph while it is made: nodes that stand on the edges of rings share their place. */
export class WayNet {
  readonly links: Link[][] = [];
  private readonly places: Xy[] = [];
  private readonly stations = new Map<number, Station[]>();
  private readonly corners = new Map<string, number>();

  node(at: Xy): number {
    this.links.push([]);
    return this.places.push(at) - 1;
  }

  /** The node on an edge at a place; the corner of two edges is one node. */
  station(edge: RingEdge, at: Xy): number {
    const { alongMm } = footOn(edge, at);
    const on = this.on(edge);
    const there = on.find((s) => Math.abs(s.alongMm - alongMm) < ONE_PLACE_MM);
    if (there) return there.node;
    const key = `${edge.ring} ${at.x} ${at.y}`;
    const node = this.corners.get(key) ?? this.node(at);
    this.corners.set(key, node);
    const s = { node, alongMm, at: add(edge.a, scale(unit(sub(edge.b, edge.a)), alongMm)) };
    this.stations.set(
      edge.index,
      [...on, s].sort((p, q) => p.alongMm - q.alongMm),
    );
    return node;
  }

  /** In order along the edge. */
  on(edge: RingEdge): readonly Station[] {
    return this.stations.get(edge.index) ?? [];
  }

  place(node: number): Xy {
    return this.places[node] as Xy;
  }

  join(from: number, to: number, pieces: readonly WayPiece[]): void {
    const long = pieces.filter((p) => p.mm > 0);
    this.links[from]?.push({ to, pieces: long });
    this.links[to]?.push({ to: from, pieces: long.map(turnedBack).reverse() });
  }
}
