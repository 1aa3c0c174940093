import type { Plan } from '../../plan/plan.ts';
import type { Job } from '../../plan/records/basis.ts';
import { refuse } from './define-command.ts';

/** The lists of the job card. */
export const JOB_LISTS = ['permissions', 'readings', 'holdPoints', 'tests', 'unsafe'] as const;
export type JobList = (typeof JOB_LISTS)[number];
type Line<L extends JobList> = NonNullable<Job[L]>[number];

/** Writes a line of a list of the job: over the one at `at`, else after the last. */
export function writeLine<L extends JobList>(draft: Plan, list: L, at: number | undefined, line: Line<L>): void {
  const lines: Line<L>[] = [...((draft.job[list] as Line<L>[] | undefined) ?? [])];
  if (at === undefined) lines.push(line);
  else if (at < lines.length) lines[at] = line;
  else refuse('That line is no longer there.');
  Reflect.set(draft.job, list, lines);
}

/** Takes a line out. A list without lines is left out of the job altogether, as it was before the first. */
export function dropLine(draft: Plan, list: JobList, at: number): void {
  const lines = [...(draft.job[list] ?? [])];
  if (at >= lines.length) refuse('That line is no longer there.');
  lines.splice(at, 1);
  if (lines.length === 0) Reflect.deleteProperty(draft.job, list);
  else Reflect.set(draft.job, list, lines);
}
