import { createStore } from 'zustand/vanilla';
import type { Outcome } from '../../../report/finding.ts';
import type { GroupBy } from './group-findings.ts';

/** How the findings are looked at: it holds until the page is closed, and is no part of the job. */
export const findingsLook = createStore<{ readonly by: GroupBy; readonly hidden: ReadonlySet<Outcome> }>(() => ({
  by: 'worst',
  hidden: new Set(),
}));

export const groupBy = (by: GroupBy): void => findingsLook.setState({ by });

/** Shows or hides the findings of one kind. */
export function toggleOutcome(outcome: Outcome): void {
  const hidden = new Set(findingsLook.getState().hidden);
  if (!hidden.delete(outcome)) hidden.add(outcome);
  findingsLook.setState({ hidden });
}

export const showAll = (): void => findingsLook.setState({ hidden: new Set() });
