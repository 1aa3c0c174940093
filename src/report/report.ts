import type { Case, Plan } from '../plan/plan.ts';
import type { Finding } from './finding.ts';
import type { Line, Piece } from './piece.ts';
import type { Quantity } from './quantity.ts';
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
  readonly sections: readonly Section[];
  readonly pieces: readonly Piece[];
  readonly lines: readonly Line[];
  readonly legs: readonly LegFacts[];
  readonly runs: readonly RunFacts[];
  readonly sources: readonly CitedSource[];
  readonly counts: { readonly stop: number; readonly check: number; readonly note: number; readonly cantTell: number };
}

/** The port through which everything but the engine asks for a report. An ask that a newer one overtakes gets the newer report. */
export type Evaluator = (plan: Plan, chosen: Case, revision: number) => Promise<Report>;
