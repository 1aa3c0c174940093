import { describe, expect, test } from 'vitest';
import { evaluate, give } from '../../../src/engine/evaluate.ts';
import { primaries, radiators } from '../../../src/engine/rules/heating/circuit-houses.ts';
import section from '../../../src/engine/sections/heating.section.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import type { Row } from '../../../src/report/section.ts';
import { demoNames, demoPlan } from '../demo-file.ts';

const written = (plan: Plan) => {
  const made = section.write(give(plan, { option: 'A', when: 'after' }));
  if (made === null) throw new Error('nothing written');
  return made;
};
const of = <K extends Row['kind']>(rows: readonly Row[], kind: K) =>
  rows.filter((r): r is Extract<Row, { kind: K }> => r.kind === kind);
const words = (r: Row): string => [...('label' in r ? [r.label] : []), ...('say' in r ? [r.say] : [])].join(' ');

describe('the chapter of heating', () => {
  test('answers with the loss of the index circuit beside the head left', () => {
    const made = written(primaries({ metres: 10, boiler: { pumpHeadLeftKPa: 20 } }));
    const [answer] = of(made.rows, 'answer');
    expect(made.state).toBe('pass');
    expect(made.answer).toBe(`${answer?.figure.value?.toFixed(1)} of 20 kPa`);
    expect(answer?.bar.limit).toBe(20);
    expect(answer?.room).toBe(`${(20 - (answer?.figure.value ?? 0)).toFixed(1)} kPa left`);
  });

  test('without the head it holds the loss against nothing', () => {
    const made = written(primaries({ metres: 10 }));
    expect(made.answer).toMatch(/^\d+\.\d kPa to pump$/);
    expect(made.state).toBe('none');
    expect(of(made.rows, 'choice').every((c) => c.bar === null)).toBe(true);
  });

  test('without heat it says so, and what it then takes for granted', () => {
    const made = written(primaries({ heatingKw: null, boiler: { outputKw: null } }));
    expect(made.answer).toBe('heat not told');
    expect(of(made.rows, 'assumed').map((r) => r.say)).toContain(
      'Heat not told of old tails: nor what the boiler gives.',
    );
    const bounded = written(primaries({ heatingKw: null }));
    expect(of(bounded.rows, 'assumed').map((r) => r.say)).toContain(
      'Heat not told of old tails: no more than the 24.0 kW of the boiler.',
    );
  });

  test('sizes and differences stand beside what is drawn', () => {
    const made = written(primaries({ metres: 10, words: { size: '15x0.7' }, boiler: { pumpHeadLeftKPa: 15 } }));
    expect(made.state).toBe('check');
    expect(of(made.rows, 'choice').map((c) => [c.label, c.state, c.chosen])).toEqual([
      ['All 15', 'check', true],
      ['All 22', 'pass', false],
    ]);
    const labels = of(made.rows, 'fact').map((r) => r.label);
    expect(labels).toContain('11 K, older boilers and radiators');
    expect(labels).toContain('5 K, a heat pump');
  });

  test('each radiator with what its lockshield takes up; one row a stretch', () => {
    const made = written(
      radiators(
        [
          { at: 2000, kW: 1 },
          { at: 4000, kW: 1.5 },
        ],
        { pumpHeadLeftKPa: 30 },
      ),
    );
    const facts = of(made.rows, 'fact').filter((r) => r.label === 'Radiator');
    expect(facts).toHaveLength(2);
    expect(facts.filter((r) => r.say.includes('whose lockshield stays open'))).toHaveLength(1);
    expect(facts.filter((r) => /takes up \d+\.\d kPa more: set to kv \d+\.\d\d m3\/h/.test(r.say))).toHaveLength(1);
    // Both ways a primary, what goes on past the first tee, and a tail each.
    expect(of(made.rows, 'fact').filter((r) => r.figure?.unit === 'm/s')).toHaveLength(8);
  });

  test('a radiator of unknown heat leaves the index without a top, and nothing passes', () => {
    const made = written(
      radiators(
        [
          { at: 2000, kW: 1 },
          { at: 4000, kW: null },
        ],
        { pumpHeadLeftKPa: 40 },
      ),
    );
    expect(of(made.rows, 'answer')[0]?.figure.hi).toBeNull();
    expect(made.state).toBe('note');
    expect(of(made.rows, 'choice').every((c) => c.state !== 'pass')).toBe(true);
    expect(of(made.rows, 'fact').some((r) => r.say.includes('lockshield takes up'))).toBe(false);
  });

  test('nothing where no flow is drawn', () => {
    const plan = primaries({});
    expect(section.write(give({ ...plan, runs: {}, legs: {}, nodes: {} }, { option: 'A', when: 'after' }))).toBeNull();
  });
});

describe.each(demoNames)('%s', (name) => {
  const plan = demoPlan(name);
  test.each(Object.keys(plan.options))('%s: whole words, and no finding of heating on ordinary pipework', (option) => {
    const report = evaluate(plan, { option, when: 'after' });
    const chapter = report.sections.find((s) => s.id === 'heating');
    for (const row of chapter?.rows ?? []) expect(words(row)).not.toMatch(/undefined|null|NaN|Infinity| {2}|, ,/);
    const ids = ['heating/pump-head', 'heating/velocity', 'heating/load-unknown', 'heating/no-return'];
    expect(report.findings.filter((f) => ids.includes(f.rule)).map((f) => f.title)).toEqual([]);
  });
});
