import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import type { Report } from '../../src/report/report.ts';
import type { Row } from '../../src/report/section.ts';
import { demoNames, demoPlan } from './demo-file.ts';
import { TRUE_FINDINGS } from './demo-findings.ts';

/**
 * What a demo plan is expected to give. With `section` and `row` it is looked for in that row of the report; with
 * `rule`, among the findings, where 'pass' means that nothing is said. `from` tells where the figure comes from.
 */
interface Expected {
  readonly finding: string;
  readonly rule?: string;
  readonly ids?: readonly string[];
  readonly section?: string;
  readonly row?: string;
  readonly outcome: string;
  readonly value: number | null;
  readonly unit: string;
  readonly tolerance: number;
  readonly from: string;
}

const expectedOf = (name: string): Expected[] =>
  JSON.parse(readFileSync(new URL(`../../demo-plans/${name}.expected.json`, import.meta.url), 'utf8'));
const reportOf = (name: string, when: 'before' | 'after'): Report => evaluate(demoPlan(name), { option: 'A', when });
const isTold = (e: Expected): boolean => e.section !== undefined || e.rule !== undefined;

function rowOf(report: Report, e: Expected): Extract<Row, { label: string }> {
  const rows = report.sections.find((s) => s.id === e.section)?.rows ?? [];
  const found = rows.find((r): r is Extract<Row, { label: string }> => 'label' in r && r.label === e.row);
  if (!found) throw new Error(`no row "${e.row}" in ${e.section}`);
  return found;
}

function near(found: number | null | undefined, e: Expected): void {
  expect(Math.abs((found ?? Number.NaN) - (e.value ?? Number.NaN)), e.from).toBeLessThanOrEqual(e.tolerance);
}

function checkRow(report: Report, e: Expected): void {
  const row = rowOf(report, e);
  if (row.kind !== 'answer' && row.kind !== 'choice' && row.kind !== 'fact')
    throw new Error(`${row.kind} has no figure`);
  expect(row.figure?.unit).toBe(e.unit);
  // A note is of what the table alone can say: the high end of what is left open.
  near(e.outcome === 'note' ? row.figure?.hi : (row.figure?.value ?? row.figure?.lo), e);
  const state = row.kind === 'fact' ? 'none' : row.kind === 'choice' ? row.state : row.bar.state;
  if (e.outcome !== 'note') expect(state).toBe(e.outcome);
}

function checkFinding(report: Report, e: Expected): void {
  const ofRule = report.findings.filter((f) => f.rule === e.rule);
  const found = ofRule.filter((f) => (e.ids ?? []).length === 0 || f.ids.join() === e.ids?.join());
  expect(found.map((f) => f.outcome)).toEqual(e.outcome === 'pass' ? [] : [e.outcome]);
  if (e.value === null || e.outcome === 'pass') return;
  expect(found[0]?.found?.unit).toBe(e.unit);
  near(found[0]?.found?.value ?? found[0]?.found?.lo, e);
}

describe.each(demoNames)('the demo %s', (name) => {
  const report = reportOf(name, 'after');

  test.each(
    expectedOf(name)
      .filter(isTold)
      .map((e) => [e.finding, e] as const),
  )('%s', (_finding, e) => {
    if (e.section !== undefined) checkRow(report, e);
    else checkFinding(report, e);
  });

  test.each(['before', 'after'] as const)('%s: nothing is said that is not true', (when) => {
    const said = reportOf(name, when).findings.map((f) => `${f.outcome} ${f.rule} ${f.ids.join()}`);
    const known = TRUE_FINDINGS.filter((t) => t.demo === name && t.when === when);
    expect([...said].sort()).toEqual(known.map((t) => `${t.outcome} ${t.rule} ${t.ids.join()}`).sort());
  });
});

test('the table alone cannot tell the gas drop in 28 of the flat, and says so', () => {
  const notes = reportOf('flat', 'after')
    .sections.find((s) => s.id === 'gas-drop')
    ?.rows.filter((r) => r.kind === 'note');
  expect(notes?.some((n) => n.kind === 'note' && /past the last column \(30 m\)/.test(n.say))).toBe(true);
});

test('what the demos expect and no rule or section tells yet is known', () => {
  const untold = demoNames.flatMap((name) =>
    expectedOf(name)
      .filter((e) => !isTold(e))
      .map((e) => e.finding),
  );
  expect(untold).toEqual([
    'gas in a hall that may be protected',
    'relief ends over a shared path',
    'flue to own kitchen window, edge to edge',
    'flue to the rainwater pipe',
    'flue to the window of the next flat',
    'flue below the sill upstairs',
    'condensate falls to the sink waste',
    'water in that hot pipe',
    'wait for hot at the old tails at 6 litres a minute',
    'bonding conductor found',
    'old flue hidden above the bathroom ceiling, to take out',
    'holes for gas through joists',
    'holes for cold through joists',
    'condensate falls to the soil stack',
    'flue to the fence of the side path',
  ]);
});
