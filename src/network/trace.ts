import type { Tube } from '../plan/records/pipework.ts';
import type { Span } from './network.ts';

/** Where a circuit starts or is used: a connection of a point. */
export interface TraceEnd {
  readonly vertex: string;
  readonly point: string;
  readonly connection: string;
}

/** A pipe end that feeds nothing: open, capped off, its point gone, or at a point of which nothing more is known. */
export interface DeadEnd {
  readonly vertex: string;
  readonly why: 'open' | 'capped' | 'gone' | 'noPart';
}

/**
 * Pipe of one tube between two places where something changes: a tee, a size, an unseen stretch, a service, an end.
 * `legs`, `from` and `to` are in the way it flows; on a ring, away from the source by the shorter way.
 */
export interface Section {
  /** Id of its first leg in the way it flows. */
  readonly id: string;
  readonly kind: 'leg' | 'stretch';
  readonly legs: readonly string[];
  readonly service: string;
  readonly runs: readonly string[];
  readonly from: string;
  readonly to: string;
  readonly tube: Tube;
  readonly lengthMm: Span;
  /** The next section towards the root: the source, or where a gathering circuit ends. Null at the root. */
  readonly parent: string | null;
  /** Flows towards the root (return, condensate, discharge) and not away from it. */
  readonly gathers: boolean;
  /** Vertices of the ends beyond it, seen from the root: where it feeds to, or gathers from. Sorted. */
  readonly serves: readonly string[];
  /** On a ring: which way and how much flows is not told by the tree. */
  readonly onRing: boolean;
  /** False where its part of the circuit has no figures: two sources, or two services at one place. */
  readonly sound: boolean;
}

/** A ring: the sections round it, the one that closes it last. */
export interface Ring {
  readonly sections: readonly string[];
  readonly edges: readonly string[];
  readonly vertices: readonly string[];
}

export type IllegalKind =
  | 'ring'
  | 'twoSources'
  | 'twoServices'
  | 'wrongConnection'
  | 'noSource'
  | 'deadEnd'
  | 'sizeUnknown'
  | 'unresolved';

/** Something the trace could not take as drawn. `runs` and `points` are what a finding may hang on. */
export interface Illegal {
  readonly kind: IllegalKind;
  readonly runs: readonly string[];
  readonly points: readonly string[];
  readonly edges: readonly string[];
  /** The first is where to look. */
  readonly vertices: readonly string[];
  /** One sentence for the screen. */
  readonly say: string;
}

/** Where a circuit goes, from its source to its ends. */
export interface Trace {
  readonly circuit: string;
  readonly sources: readonly TraceEnd[];
  readonly ends: readonly TraceEnd[];
  readonly deadEnds: readonly DeadEnd[];
  /** Parents come before what hangs on them. */
  readonly sections: readonly Section[];
  readonly sectionOf: ReadonlyMap<string, string>;
  readonly rings: readonly Ring[];
  /** Edges no source reaches. */
  readonly unreached: readonly string[];
  readonly illegal: readonly Illegal[];
  /** Sections between the root and a vertex, in the way it flows. Empty where it is not reached. */
  pathTo(vertex: string): readonly Section[];
}
