import type { Case, Plan } from '../plan/plan.ts';
import type { Report } from '../report/report.ts';
import type { SumAnswer, SumCard } from '../report/sum-card.ts';
import type { Difference, Tally } from '../report/tally.ts';

export interface Ask {
  readonly n: number;
  readonly plan: Plan;
  readonly chosen: Case;
  readonly revision: number;
}

export type Answer =
  | { readonly n: number; readonly ok: true; readonly report: Report }
  | { readonly n: number; readonly ok: false; readonly why: string };

/** Sums without a drawing: all there are, or one worked out. */
export type SumsAsk =
  | { readonly n: number; readonly sums: 'list' }
  | { readonly n: number; readonly sums: string; readonly told: Readonly<Record<string, string>> };

export type SumsAnswer =
  | { readonly n: number; readonly cards: readonly SumCard[] }
  | { readonly n: number; readonly answer: SumAnswer };

/** For a comparison: the figures of one case, or what differs between two. */
export type CompareAsk = { readonly n: number; readonly plan: Plan } & (
  | { readonly compare: 'tally'; readonly chosen: Case }
  | { readonly compare: 'differences'; readonly from: Case; readonly to: Case }
);

export type CompareAnswer = { readonly n: number } & (
  | { readonly tally: Tally }
  | { readonly differences: readonly Difference[] }
  | { readonly why: string }
);
