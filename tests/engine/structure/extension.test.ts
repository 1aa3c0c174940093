import { describe, expect, test } from 'vitest';
import { findThreadings } from '../../../src/engine/building/threading.ts';
import { evaluate } from '../../../src/engine/evaluate.ts';
import { give } from '../../../src/engine/given.ts';
import type { Finding } from '../../../src/report/finding.ts';
import type { Row } from '../../../src/report/section.ts';
import { extension } from './extension.ts';

const AFTER = { option: 'A', when: 'after' } as const;
const report = evaluate(extension(), AFTER);
const of = (rule: string, findings: readonly Finding[] = report.findings) => findings.filter((f) => f.rule === rule);
const rows = (plan = extension()): readonly Row[] =>
  evaluate(plan, AFTER).sections.find((s) => s.id === 'floors')?.rows ?? [];
const fact = (label: string, plan = extension()) =>
  rows(plan).find((r): r is Extract<Row, { kind: 'fact' }> => r.kind === 'fact' && r.label === label);

describe('pipes through the joists of an extension', () => {
  test('eleven holes for each of four pipes and three for the hot: 47', () => {
    expect(fact('Holes in all')?.figure?.value).toBe(47);
    const each = (id: string) =>
      rows().flatMap((r) => (r.kind === 'fact' && r.ids.includes(id) ? (r.figure?.value ?? []) : []));
    expect(['D-f1', 'D-r1', 'D-c1'].map((id) => each(id)[0])).toEqual([11, 11, 11]);
    expect([each('D-g1')[0], each('D-g2')[0]]).toEqual([3, 8]);
    expect(each('D-h1')[0]).toBe(3);
  });

  test('59 with the hose of the pump', () => {
    expect(fact('Holes in all', extension({ hose: true }))?.figure?.value).toBe(59);
  });

  test('the band, from either end and in figures of the plan', () => {
    expect(fact('Holes')?.say).toBe('1100 to 1760 from either end: x 3400 to 4060 or x 4940 to 5600');
    expect(fact('Notches in the top')?.say).toBe('308 to 1100 from either end: x 2608 to 3400 or x 5600 to 6392');
  });

  test('a quarter of the depth allows 48, three diameters at 120 allow 40', () => {
    expect(fact('Widest hole by depth')?.figure?.value).toBe(48);
    expect(fact('Widest hole by spacing')?.figure?.value).toBe(40);
    expect(fact('Widest hole by spacing')?.say).toContain('120');
  });

  test('as drawn every hole is in its band and size', () => {
    expect(of('structure/joists').filter((f) => f.ids.includes('DV2'))).toEqual([]);
  });

  test('the gas drops on a joist below the old floor', () => {
    const found = of('structure/joists');
    expect(found.map((f) => [f.outcome, f.ids])).toEqual([['stop', ['D-g1', 'DV1']]]);
    expect(found[0]?.title).toContain('lies along in one of them');
  });

  test('moved 60 towards mid span the flow still fits, and 200 from the end of the band the return does not', () => {
    const plan = extension();
    for (const node of Object.values(plan.nodes)) {
      if (node.place.on === 'storey' && node.place.x === 5220) node.place = { ...node.place, x: 4800 };
    }
    const found = of('structure/joists', evaluate(plan, AFTER).findings).filter((f) => f.ids.includes('DV2'));
    expect(found.map((f) => [f.outcome, f.ids, f.more])).toEqual([['stop', ['D-r1', 'DV2'], 10]]);
    expect(found[0]?.found?.value).toBe(1900);
    expect(found[0]?.todo).toContain('x 4940 to 5600');
  });

  test('one finding a run and space, never one a joist', () => {
    const shallow = evaluate(extension({ change: { depthMm: 95 } }), AFTER);
    const ids = of('structure/joists', shallow.findings).map((f) => f.key);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.filter((k) => k.includes('DV2'))).toHaveLength(6);
  });

  test('rigid tube cannot be got in between joists 450 apart: 400 clear, 275 at the house end', () => {
    const threadings = findThreadings(give(extension(), AFTER));
    const flow = threadings.find((t) => t.meetings[0]?.run === 'D-f1');
    expect(flow?.answer?.longest.value).toBe(400);
    const ends = flow?.answer?.working.steps.map((s) => [s.label, s.result?.value]);
    expect(ends).toContainEqual(['Beyond the last joist, in line', 275]);
    expect(flow?.pipeMm).toBe(4650);
    expect(flow?.answer?.joints).toBe(11);
    const [found, ...rest] = of('structure/threading');
    expect(rest).toEqual([]);
    expect([found?.ids, found?.more]).toEqual([['DV2'], 5]);
    expect(found?.title).toMatch(/^6 rigid pipes: up to /);
    expect(new Set(found?.legs.map((leg) => leg.replace(/-\d+$/, '')))).toEqual(
      new Set(['D-c1', 'D-f1', 'D-g1', 'D-g2', 'D-h1', 'D-r1']),
    );
  });

  test('pipe that bends is got in', () => {
    const plan = extension();
    for (const leg of Object.values(plan.legs)) {
      if (leg.run !== 'D-g1' && leg.run !== 'D-g2') leg.tube = { kind: 'plastic', size: '22' };
    }
    const found = of('structure/threading', evaluate(plan, AFTER).findings);
    expect(found.map((f) => [f.ids, f.more])).toEqual([[['DV2'], 1]]);
  });

  test('cold is told once for all that is warm beside it, and not once it is lagged', () => {
    const found = of('structure/heat-beside-cold');
    expect(found.map((f) => [f.outcome, f.ids])).toEqual([['check', ['D-c1', 'D-r1']]]);
    expect(found[0]?.more).toBeGreaterThan(0);
    const plan = extension();
    for (const leg of Object.values(plan.legs)) {
      if (leg.run === 'D-c1') leg.insulation = { kind: 'foam', thicknessMm: 13 };
    }
    expect(of('structure/heat-beside-cold', evaluate(plan, AFTER).findings)).toEqual([]);
  });

  test('lagged along the nearest stretch only, the next is told of', () => {
    const plan = extension();
    for (const leg of Object.values(plan.legs)) {
      if (leg.id === 'D-c1-5') leg.insulation = { kind: 'foam', thicknessMm: 13 };
    }
    const found = of('structure/heat-beside-cold', evaluate(plan, AFTER).findings);
    expect(found[0]?.found?.value).toBeGreaterThan(28);
  });
});
