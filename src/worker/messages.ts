import type { Case, Plan } from '../plan/plan.ts';
import type { Report } from '../report/report.ts';

export interface Ask {
  readonly n: number;
  readonly plan: Plan;
  readonly chosen: Case;
  readonly revision: number;
}

export type Answer =
  | { readonly n: number; readonly ok: true; readonly report: Report }
  | { readonly n: number; readonly ok: false; readonly why: string };
