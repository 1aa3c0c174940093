import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Case } from '../../plan/plan.ts';
import type { Report } from '../../report/report.ts';

/** The last report that may be shown, and whether it is still the answer to what is drawn. */
export interface ReportState {
  readonly report: Report | null;
  /** True while the drawing is newer than the report: its figures stay, in a paler ink. */
  readonly waiting: boolean;
  readonly failed: string | null;
}

export interface ReportJoin {
  readonly store: StoreApi<ReportState>;
  /** The drawing is now this plan at this revision and case: every other report is stale from here on. */
  expect(plan: string, revision: number, chosen: Case): void;
  /** A report came. It is shown at once, after the gesture, or never if the drawing has moved on. */
  arrive(report: Report): void;
  fail(revision: number, why: string): void;
  gestureStarts(): void;
  gestureEnds(): void;
}

const sameCase = (a: Case, b: Case): boolean => a.option === b.option && a.when === b.when;

/**
 * Joins reports to the document: a stale one is dropped, and one that comes while a finger is down waits until it is
 * lifted, so that nothing moves under the hand.
 */
export function createReportJoin(): ReportJoin {
  const store = createStore<ReportState>(() => ({ report: null, waiting: false, failed: null }));
  let wanted: { plan: string; revision: number; chosen: Case } | null = null;
  let held: Report | null = null;
  let gestures = 0;

  const isWanted = (r: Report): boolean =>
    wanted !== null && r.plan === wanted.plan && r.revision === wanted.revision && sameCase(r.case, wanted.chosen);
  const show = (report: Report): void => store.setState({ report, waiting: false, failed: null });

  return {
    store,
    expect(plan, revision, chosen) {
      wanted = { plan, revision, chosen };
      held = null;
      store.setState({ waiting: true });
    },
    arrive(report) {
      if (!isWanted(report)) return;
      if (gestures > 0) held = report;
      else show(report);
    },
    fail(revision, why) {
      if (wanted?.revision === revision) store.setState({ waiting: false, failed: why });
    },
    gestureStarts() {
      gestures += 1;
    },
    gestureEnds() {
      gestures = Math.max(0, gestures - 1);
      if (gestures > 0 || held === null) return;
      const report = held;
      held = null;
      if (isWanted(report)) show(report);
    },
  };
}
