import type { Place } from '../geometry/places.ts';
import type { Case, Plan } from '../plan/plan.ts';
import type { Range, SeenOrAssumed, Xyz } from '../plan/records/parts.ts';
import type { Leg, Tube } from '../plan/records/pipework.ts';
import type { Alive } from './cases.ts';
import type { Kinds } from './kinds.ts';

/** A length with its doubt in mm. `hi` null: nothing bounds it. `value` null: no best single figure (an unseen stretch). */
export interface Span {
  readonly lo: number;
  readonly hi: number | null;
  readonly value: number | null;
}

/** Where pipes meet. Nodes on one connection are one vertex; a free node is a vertex of its own. */
export interface Vertex {
  /** The free node's id, or "point/connection". */
  readonly id: string;
  /** Sorted. */
  readonly nodes: readonly string[];
  /** Null where it leans on something that is gone or has no height. */
  readonly place: Place | null;
  /** The point it is a connection of, while that point stands; null for a free node. */
  readonly point: string | null;
  readonly connection: string | null;
  /** Service of the connection. */
  readonly service: string | null;
  /** Unit vector the pipe leaves the connection along. */
  readonly facing: Xyz | null;
  /** A connection whose point has been taken away in this case: the pipe ends in the air. */
  readonly gone: { readonly point: string; readonly connection: string } | null;
  /** Live legs and stretches that end here, sorted by id. */
  readonly edges: readonly string[];
  /** Live items, sorted by id. */
  readonly items: readonly string[];
  /** A cap stands here: something that was cut off met a live pipe. */
  readonly capped: boolean;
  /** Tubes of the pipes cut off here, in the order of their ids. */
  readonly cutOff: readonly Tube[];
}

/** A live leg or stretch. */
export interface Edge {
  readonly id: string;
  readonly kind: 'leg' | 'stretch';
  readonly run: string;
  readonly service: string;
  /** What is traced together: the service itself for heating, its system for the rest. */
  readonly circuit: string;
  readonly a: string;
  readonly b: string;
  readonly tube: Tube;
  readonly insulation: Leg['insulation'];
  readonly lengthMm: Span;
  /** Unseen bends of a stretch; null for a leg, whose turns stand at its vertices. */
  readonly bends: Range | null;
  /** Unit vector out of `a` into the pipe, and out of `b` into the pipe. Null for a stretch or where a place is missing. */
  readonly intoA: Xyz | null;
  readonly intoB: Xyz | null;
  readonly sureness: SeenOrAssumed;
  readonly state: 'new' | 'there';
}

export interface Network {
  readonly plan: Plan;
  readonly case: Case;
  readonly alive: Alive;
  readonly kinds: Kinds;
  readonly vertices: ReadonlyMap<string, Vertex>;
  readonly edges: ReadonlyMap<string, Edge>;
  /** Node id to vertex id, for live nodes. */
  readonly vertexOf: ReadonlyMap<string, string>;
  /** Run id to its live edges, sorted by id. */
  readonly edgesOfRun: ReadonlyMap<string, readonly string[]>;
}

/** The end of an edge that is not `vertex`; the same vertex where the edge closes on itself. */
export function otherEnd(edge: Edge, vertex: string): string {
  return edge.a === vertex ? edge.b : edge.a;
}

/** Unit vector out of `vertex` into the edge. */
export function into(edge: Edge, vertex: string): Xyz | null {
  return edge.a === vertex ? edge.intoA : edge.intoB;
}

export const sameTube = (a: Tube, b: Tube): boolean => a.kind === b.kind && a.size === b.size;
