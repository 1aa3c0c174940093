import * as fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import { type Case, type Plan, planSchema } from '../../src/plan/plan.ts';
import { danglingReferences } from '../../src/plan/references.ts';
import { byWorst, findingKey, OUTCOMES } from '../../src/report/finding.ts';
import type { Report } from '../../src/report/report.ts';
import { arbitraryPlan } from '../fixtures/arbitrary-plan.ts';
import { arbitraryNetwork } from './arbitrary-network.ts';
import { demoNames, demoPlan } from './demo-file.ts';

const bytes = (plan: Plan, chosen: Case): string => JSON.stringify(evaluate(plan, chosen));
const caseOf = (plan: Plan): Case => ({ option: Object.keys(plan.options)[0] ?? null, when: 'after' });

function* numbersIn(value: unknown, path: string): Generator<[path: string, n: number]> {
  if (typeof value === 'number') yield [path, value];
  else if (value !== null && typeof value === 'object')
    for (const [key, inner] of Object.entries(value)) yield* numbersIn(inner, `${path}.${key}`);
}

/** Many plans are made and evaluated: on a busy machine that takes longer than a test is usually given. */
const SLOWLY = { timeout: 60_000 };

/** Decimals a report may carry: the smallest figure in it is a volume in m3 with four digits, kept to one more. */
const DECIMALS = 6;

function checkReport(report: Report, chosen: Case): void {
  expect(JSON.parse(JSON.stringify(report))).toStrictEqual(report);
  expect([...report.findings].sort(byWorst)).toEqual(report.findings);
  expect(new Set(report.findings.map((f) => f.key)).size).toBe(report.findings.length);
  for (const f of report.findings) {
    expect(f.key).toBe(findingKey(f.rule, f.ids, chosen.when === 'after' ? chosen.option : 'before'));
    expect(`${f.title} ${f.why} ${f.todo}`).not.toMatch(/\{\w+\}|undefined|NaN|Infinity/);
    expect(f.wantedIs === null).toBe(f.wanted === null);
  }
  for (const outcome of OUTCOMES) {
    expect(report.counts[outcome]).toBe(report.findings.filter((f) => f.outcome === outcome).length);
  }
  // A figure the user typed into the list is given back as it was typed.
  const ours = [...numbersIn(report, '')].filter(([path]) => !path.includes('.edited.'));
  const long = ours.filter(([, n]) => Number(n.toFixed(DECIMALS)) !== n);
  expect(long).toEqual([]);
}

describe.each(demoNames)('the demo %s', (name) => {
  const plan = demoPlan(name);

  test('gives the same bytes twice, and from a copy', () => {
    const chosen = caseOf(plan);
    expect(bytes(plan, chosen)).toBe(bytes(plan, chosen));
    expect(bytes(structuredClone(plan), chosen)).toBe(bytes(plan, chosen));
  });

  test.each(['before', 'after'] as const)('%s is a sound report', (when) => {
    const chosen = { ...caseOf(plan), when };
    checkReport(evaluate(plan, chosen), chosen);
  });

  test('gives the same bytes after any edit and its taking back, warm or cold', SLOWLY, () => {
    const chosen = caseOf(plan);
    const first = bytes(plan, chosen);
    for (const leg of someOf(plan.legs)) {
      const edited: Plan = {
        ...plan,
        legs: { ...plan.legs, [leg.id]: { ...leg, tube: { ...leg.tube, size: '35x1.2' } } },
      };
      const warm = bytes(edited, chosen);
      expect(warm).toBe(bytes(structuredClone(edited), chosen));
      expect(bytes(plan, chosen)).toBe(first);
    }
    for (const map of ['nodes', 'points', 'walls', 'storeys'] as const) {
      for (const record of someOf<{ id: string }>(plan[map])) {
        const edited: Plan = { ...plan, [map]: { ...plan[map], [record.id]: moved(record) } };
        expect(bytes(edited, chosen)).toBe(bytes(structuredClone(edited), chosen));
      }
    }
    expect(bytes(plan, chosen)).toBe(first);
  });

  test('follows the order of the records in nothing', () => {
    const chosen = caseOf(plan);
    const turned = Object.fromEntries(
      Object.entries(plan).map(([key, map]) =>
        key === 'storeys' || key === 'basis' || key === 'job' || typeof map !== 'object'
          ? [key, map]
          : [key, Object.fromEntries(Object.entries(map).reverse())],
      ),
    ) as unknown as Plan;
    expect(evaluate(turned, chosen).findings.map((f) => [f.key, f.found, f.at])).toEqual(
      evaluate(plan, chosen).findings.map((f) => [f.key, f.found, f.at]),
    );
  });
});

/** Every fourth record: enough of each kind, in a time that a test may take. */
function someOf<T>(map: Readonly<Record<string, T>>): T[] {
  return Object.values(map).filter((_, i) => i % 4 === 0);
}

/** The same record a little further on: whatever places it has are moved. */
function moved<T>(record: T): T {
  const copy = structuredClone(record) as unknown as Record<string, unknown>;
  for (const key of ['x', 'y', 'alongMm', 'floorMm', 'ceilingMm', 'thicknessMm']) {
    for (const of of [copy, copy.place as Record<string, unknown> | undefined, copy.a as Record<string, unknown>]) {
      if (typeof of === 'object' && of !== null && typeof of[key] === 'number') of[key] += 30;
    }
  }
  return copy as unknown as T;
}

describe('plans as nobody would draw them', () => {
  test('are sound files, so the engine must take them', SLOWLY, () => {
    fc.assert(
      fc.property(arbitraryNetwork, ({ plan }) => {
        expect(v.safeParse(planSchema, plan).issues).toBeUndefined();
        expect(danglingReferences(plan)).toEqual([]);
      }),
      { numRuns: 50 },
    );
  });

  test('never throw, and give a sound report twice over', SLOWLY, () => {
    fc.assert(
      fc.property(arbitraryNetwork, ({ plan, chosen }) => {
        const report = evaluate(plan, chosen);
        checkReport(report, chosen);
        expect(JSON.stringify(evaluate(structuredClone(plan), chosen))).toBe(JSON.stringify(report));
      }),
      { numRuns: 400 },
    );
  });

  test('of any records the file format allows never throw either', SLOWLY, () => {
    fc.assert(
      fc.property(arbitraryPlan, fc.constantFrom('before', 'after'), (plan, when) => {
        const chosen: Case = { option: Object.keys(plan.options)[0] ?? null, when };
        checkReport(evaluate(plan, chosen), chosen);
      }),
      { numRuns: 150 },
    );
  });
});
