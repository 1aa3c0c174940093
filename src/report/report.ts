import type { Case, Plan } from '../plan/plan.ts';
import type { Finding } from './finding.ts';
import type { FlueFace } from './flue-face.ts';
import type { Line, Piece } from './piece.ts';
import type { Quantity } from './quantity.ts';
import type { RuleFacts } from './rule-facts.ts';
import type { Section } from './section.ts';
import type { Working } from './working.ts';

/** What a leg or stretch looks like to the panels: sums that belong to one piece of the drawing. */
export interface LegFacts {
  readonly leg: string;
  readonly run: string;
  readonly lengthMm: { readonly lo: number; readonly hi: number };
  readonly equivalentM: { readonly lo: number; readonly hi: number | null } | null;
  readonly dropMbar: { readonly lo: number; readonly hi: number | null } | null;
  readonly flowM3PerH: { readonly lo: number; readonly hi: number } | null;
  readonly fittings: readonly string[];
}

/** A run as a whole: how long, how many turns, and every sum worked out along it, step by step with sources. */
export interface RunFacts {
  readonly run: string;
  readonly name: string;
  readonly service: string;
  readonly lengthM: Quantity;
  readonly bends: string;
  readonly workings: readonly Working[];
}

/** Something in the way of water that must run down, and where. */
export interface ReachBlock {
  readonly what: string;
  /** Runs, points, voids, walls, openings or rooms. */
  readonly ids: readonly string[];
  readonly storey: string;
  readonly at: { readonly x: number; readonly y: number; readonly z: number };
}

/**
 * Can water from this appliance run down to this end by itself? `way` is the way that was tried, as places from the
 * appliance to the end, falling all along; empty where none was found. `arrivesMm` is how far above the end it arrives (below zero: too low).
 */
export interface ReachAnswer {
  readonly appliance: string;
  readonly service: 'condensate' | 'boilerRelief';
  readonly end: string;
  readonly state: 'pass' | 'check' | 'stop' | 'cantTell';
  readonly storey: string;
  readonly way: readonly { readonly x: number; readonly y: number; readonly z: number }[];
  readonly lengthM: Quantity | null;
  /** Of that, outside the outside walls. */
  readonly outsideM: Quantity | null;
  /** What it falls on the way, by the least fall of any edition and by the one the job goes by. */
  readonly dropMm: Quantity | null;
  readonly arrivesMm: Quantity | null;
  /** Lowest its tail may be, above the floor, for this end to be reached; null where height does not help. */
  readonly leastHeightMm: Quantity | null;
  readonly blocks: readonly ReachBlock[];
  readonly say: string;
}

/** Text of a cited document, so that a reader of the report needs no other file. */
export interface CitedSource {
  readonly id: string;
  readonly title: string;
  readonly sureness: string;
}

/** Everything the engine says of one plan in one case. Same plan, same bytes. */
export interface Report {
  readonly format: 'kickset-report';
  readonly version: 1;
  readonly plan: string;
  readonly revision: number;
  readonly case: { readonly option: string | null; readonly when: 'before' | 'after' };
  readonly findings: readonly Finding[];
  /** The rules that speak in the findings, sorted by id. */
  readonly rules: readonly RuleFacts[];
  readonly sections: readonly Section[];
  readonly pieces: readonly Piece[];
  readonly lines: readonly Line[];
  readonly legs: readonly LegFacts[];
  readonly runs: readonly RunFacts[];
  readonly reach: readonly ReachAnswer[];
  readonly flueFaces: readonly FlueFace[];
  readonly sources: readonly CitedSource[];
  readonly counts: { readonly stop: number; readonly check: number; readonly note: number; readonly cantTell: number };
}

/** The port through which everything but the engine asks for a report. An ask that a newer one overtakes gets the newer report. */
export type Evaluator = (plan: Plan, chosen: Case, revision: number) => Promise<Report>;
