import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { evaluate, rules } from '../../src/engine/evaluate.ts';
import type { Report } from '../../src/report/report.ts';
import type { Row } from '../../src/report/section.ts';
import { demoNames, demoPlan } from './demo-file.ts';
import { TRUE_FINDINGS } from './demo-findings.ts';

/**
 * What a demo plan is expected to give, after option A where nothing else is told. With `section` and `row` it is looked
 * for in that row of the report, in the section `flue` among the distances of its terminals; with `rule`, among the
 * findings, where 'pass' means that nothing is said. `from` tells where the figure comes from.
 */
interface Expected {
  readonly finding: string;
  readonly option?: string;
  readonly when?: 'before' | 'after';
  readonly rule?: string;
  readonly ids?: readonly string[];
  readonly section?: string;
  /** Heading or answer of the section the row stands under, where one label stands under several. */
  readonly under?: string;
  readonly row?: string;
  /** Part of what the row says. */
  readonly says?: string;
  readonly outcome: string;
  readonly value: number | null;
  readonly unit: string;
  readonly tolerance: number;
  readonly from: string;
}

const expectedOf = (name: string): Expected[] =>
  JSON.parse(readFileSync(new URL(`../../demo-plans/${name}.expected.json`, import.meta.url), 'utf8'));
const reports = new Map<string, Report>();
function reportOf(name: string, when: 'before' | 'after', option: string): Report {
  const key = `${name} ${when} ${option}`;
  const report = reports.get(key) ?? evaluate(demoPlan(name), { option, when });
  reports.set(key, report);
  return report;
}
const isTold = (e: Expected): boolean => e.section !== undefined || e.rule !== undefined;

function rowOf(report: Report, e: Expected): Extract<Row, { label: string }> {
  const all = report.sections.find((s) => s.id === e.section)?.rows ?? [];
  const start =
    e.under === undefined
      ? 0
      : all.findIndex((r) => (r.kind === 'heading' || r.kind === 'answer') && r.label === e.under) + 1;
  if (e.under !== undefined && start === 0) throw new Error(`no heading "${e.under}" in ${e.section}`);
  const rows = all.slice(start);
  const found = rows.find((r): r is Extract<Row, { label: string }> => 'label' in r && r.label === e.row);
  if (!found) throw new Error(`no row "${e.row}" in ${e.section}`);
  return found;
}

function near(found: number | null | undefined, e: Expected): void {
  expect(Math.abs((found ?? Number.NaN) - (e.value ?? Number.NaN)), e.from).toBeLessThanOrEqual(e.tolerance);
}

function checkFlue(report: Report, e: Expected): void {
  const of = report.flueFaces.flatMap((face) => face.distances.map((d) => ({ ...d, ids: [face.terminal, ...d.ids] })));
  const found = of.filter((d) => d.label === e.row && [...d.ids].sort().join() === e.ids?.join());
  expect(found.map((d) => d.state)).toEqual([e.outcome]);
  expect(found[0]?.found.unit).toBe(e.unit);
  near(found[0]?.found.value ?? found[0]?.found.lo, e);
  expect(found[0]?.say).toContain(e.says ?? '');
}

function checkRow(report: Report, e: Expected): void {
  const row = rowOf(report, e);
  if (row.kind === 'heading') throw new Error('a heading has no figure');
  const words = row.kind === 'choice' ? row.room : row.kind === 'sum' ? row.how : row.say;
  if (e.says !== undefined) expect(words).toContain(e.says);
  if (e.value !== null && row.kind !== 'verdict') {
    const figure = row.kind === 'sum' ? row.result : row.figure;
    expect(figure?.unit).toBe(e.unit);
    // A note is of what the table alone can say: the high end of what is left open.
    near(e.outcome === 'note' ? figure?.hi : (figure?.value ?? figure?.lo), e);
  }
  const state = row.kind === 'answer' ? row.bar.state : 'state' in row ? row.state : 'none';
  if (e.outcome !== 'note') expect(state).toBe(e.outcome);
}

function checkFinding(report: Report, e: Expected): void {
  // A rule that is not there would say nothing of anything.
  expect(rules.has(e.rule ?? ''), e.rule).toBe(true);
  const ofRule = report.findings.filter((f) => f.rule === e.rule);
  const found = ofRule.filter((f) => (e.ids ?? []).length === 0 || f.ids.join() === e.ids?.join());
  expect(found.map((f) => f.outcome)).toEqual(e.outcome === 'pass' ? [] : [e.outcome]);
  if (e.value === null || e.outcome === 'pass') return;
  expect(found[0]?.found?.unit).toBe(e.unit);
  near(found[0]?.found?.value ?? found[0]?.found?.lo, e);
}

describe.each(demoNames)('the demo %s', (name) => {
  test.each(
    expectedOf(name)
      .filter(isTold)
      .map((e) => [e.finding, e] as const),
  )('%s', (_finding, e) => {
    const report = reportOf(name, e.when ?? 'after', e.option ?? 'A');
    if (e.section === 'flue') checkFlue(report, e);
    else if (e.section !== undefined) checkRow(report, e);
    else checkFinding(report, e);
  });

  const cases = Object.keys(demoPlan(name).options).flatMap((o) => [['before', o] as const, ['after', o] as const]);
  test.each(cases)('%s %s: nothing is said that is not true', (when, option) => {
    const said = reportOf(name, when, option).findings.map((f) => `${f.outcome} ${f.rule} ${f.ids.join()}`);
    const known = TRUE_FINDINGS.filter((t) => t.demo === name && t.when === when && t.option === option);
    expect([...said].sort()).toEqual(known.map((t) => `${t.outcome} ${t.rule} ${t.ids.join()}`).sort());
  });
});

test('the table alone cannot tell the gas drop in 28 of the flat, and says so', () => {
  const notes = reportOf('flat', 'after', 'A')
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
  expect(untold).toEqual([]);
});
