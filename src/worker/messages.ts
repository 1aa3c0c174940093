import type { Case, Plan } from '../plan/plan.ts';
import type { Report } from '../report/report.ts';
import type { SumAnswer, SumCard } from '../report/sum-card.ts';

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
