import type { SheetJob } from '../../src/drawing/sheet/sheet.ts';
import { evaluate } from '../../src/engine/evaluate.ts';
import { listGroups } from '../../src/files/format/list-sheet.ts';
import type { Case, Plan } from '../../src/plan/plan.ts';

/** A plan as sheets are made of it, on a day that does not change. */
export function sheetJob(plan: Plan, chosen: Case): SheetJob {
  const report = evaluate(plan, chosen);
  return { plan, chosen, report, list: listGroups(report.lines), today: '2026-05-04' };
}
