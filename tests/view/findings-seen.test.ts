import { describe, expect, test } from 'vitest';
import { emptyPlan } from '../../src/plan/empty-plan.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { acknowledged } from '../../src/report/acknowledged.ts';
import type { Finding } from '../../src/report/finding.ts';
import { between, exact, type Quantity } from '../../src/report/quantity.ts';
import { sayCounts } from '../../src/view/panels/chapters.ts';
import { keyed } from '../../src/view/panels/keyed.ts';

const finding = (found: Quantity | null, wantedIs: Finding['wantedIs']): Finding => ({
  rule: 'r',
  key: 'r|a|',
  outcome: 'stop',
  lifeSafety: false,
  topic: 't',
  ids: ['a'],
  legs: [],
  title: '',
  why: '',
  todo: '',
  found,
  wanted: null,
  wantedIs,
  at: null,
  more: 0,
  missing: [],
  working: null,
  cites: [],
  unverified: false,
});

function seenWith(found: { lo: number; hi: number | null; unit: string } | null): Plan {
  const plan = emptyPlan({ id: 'p', name: '', storey: 's', option: 'o', ceilingMm: 2400, buildUpMm: 250 });
  return {
    ...plan,
    acknowledgements: { n: { id: 'n', key: 'r|a|', note: 'agreed', by: '', on: null, found, wanted: null } },
  };
}

describe('a finding somebody has seen', () => {
  test('is found by its key alone', () => {
    expect(acknowledged(seenWith(null), finding(null, null))?.said.note).toBe('agreed');
    expect(acknowledged(seenWith(null), { ...finding(null, null), key: 'r|b|' })).toBeNull();
  });

  test('opens again when a clearance has shrunk, not when it has grown', () => {
    const plan = seenWith({ lo: 10, hi: 10, unit: 'mm' });
    expect(acknowledged(plan, finding(exact(4, 'mm', 0), 'atLeast'))?.worse).toBe(true);
    expect(acknowledged(plan, finding(exact(12, 'mm', 0), 'atLeast'))?.worse).toBe(false);
    expect(acknowledged(plan, finding(exact(10.2, 'mm', 0), 'atLeast'))?.worse).toBe(false);
  });

  test('opens again when a drop has grown, or is no longer bounded', () => {
    const plan = seenWith({ lo: 1, hi: 1.2, unit: 'mbar' });
    expect(acknowledged(plan, finding(between(1, 1.3, 'mbar', 2), 'atMost'))?.worse).toBe(true);
    expect(acknowledged(plan, finding(between(1, null, 'mbar', 2), 'atMost'))?.worse).toBe(true);
    expect(acknowledged(plan, finding(between(0.8, 1.1, 'mbar', 2), 'atMost'))?.worse).toBe(false);
  });

  test('opens again when it is measured in something else', () => {
    const plan = seenWith({ lo: 1, hi: 1, unit: 'mm' });
    expect(acknowledged(plan, finding(exact(1, 'mbar', 2), 'atMost'))?.worse).toBe(true);
  });
});

describe('counts in words', () => {
  const counts = { stop: 1, check: 2, note: 4, cantTell: 1 };
  test('the worst two', () => {
    expect(sayCounts(counts)).toBe('1 stop, 2 check');
    expect(sayCounts({ stop: 0, check: 0, note: 0, cantTell: 0 })).toBe('none');
    expect(sayCounts({ stop: 0, check: 0, note: 1, cantTell: 0 })).toBe('1 note');
  });
});

test('members of a list that say the same have keys of their own', () => {
  expect(keyed(['a', 'b', 'a'], (s) => s).map((k) => k.key)).toEqual(['a#1', 'b#1', 'a#2']);
});
