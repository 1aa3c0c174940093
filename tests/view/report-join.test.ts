import { describe, expect, test } from 'vitest';
import type { Case } from '../../src/plan/plan.ts';
import type { Report } from '../../src/report/report.ts';
import { createReportJoin } from '../../src/view/app/report-store.ts';

const after: Case = { option: 'a', when: 'after' };
const before: Case = { option: null, when: 'before' };

const reportOf = (revision: number, chosen: Case = after, plan = 'p'): Report => ({
  format: 'kickset-report',
  version: 1,
  plan,
  revision,
  case: chosen,
  findings: [],
  sections: [],
  pieces: [],
  lines: [],
  legs: [],
  runs: [],
  reach: [],
  flueFaces: [],
  rules: [],
  sources: [],
  counts: { stop: 0, check: 0, note: 0, cantTell: 0 },
});

function joined(revision = 1) {
  const join = createReportJoin();
  join.expect('p', revision, after);
  return { join, shown: () => join.store.getState().report?.revision ?? null, state: () => join.store.getState() };
}

describe('a report is joined to the document', () => {
  test('shown when it is the answer to what is drawn', () => {
    const { join, shown, state } = joined();
    expect(state().waiting).toBe(true);
    join.arrive(reportOf(1));
    expect(shown()).toBe(1);
    expect(state().waiting).toBe(false);
  });

  test('dropped when the drawing, the case or the job has moved on', () => {
    const { join, shown } = joined(2);
    join.arrive(reportOf(1));
    join.arrive(reportOf(2, before));
    join.arrive(reportOf(2, after, 'another'));
    expect(shown()).toBeNull();
  });

  test('the last figures stay while new ones are waited for', () => {
    const { join, shown, state } = joined();
    join.arrive(reportOf(1));
    join.expect('p', 2, after);
    expect(shown()).toBe(1);
    expect(state().waiting).toBe(true);
  });

  test('held while a finger is down, and shown when the last one lifts', () => {
    const { join, shown } = joined();
    join.gestureStarts();
    join.gestureStarts();
    join.arrive(reportOf(1));
    join.gestureEnds();
    expect(shown()).toBeNull();
    join.gestureEnds();
    expect(shown()).toBe(1);
  });

  test('held, then overtaken by a commit of the same gesture: never shown', () => {
    const { join, shown } = joined();
    join.gestureStarts();
    join.arrive(reportOf(1));
    join.expect('p', 2, after);
    join.gestureEnds();
    expect(shown()).toBeNull();
    join.arrive(reportOf(2));
    expect(shown()).toBe(2);
  });

  test('a failure of the newest ask is told, one of an older ask is not', () => {
    const { join, state } = joined(2);
    join.fail(1, 'old');
    expect(state().failed).toBeNull();
    join.fail(2, 'new');
    expect(state()).toMatchObject({ failed: 'new', waiting: false });
    join.arrive(reportOf(2));
    expect(state().failed).toBeNull();
  });
});
