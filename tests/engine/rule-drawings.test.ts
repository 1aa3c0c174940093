import { describe, expect, test } from 'vitest';
import { drawSvg } from '../../src/drawing/draw-svg.ts';
import type { Example, Rule } from '../../src/engine/define-rule.ts';
import { evaluate, rules } from '../../src/engine/evaluate.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { Finding } from '../../src/report/finding.ts';

const AFTER = { option: 'A', when: 'after' } as const;
const VIEW = { kind: 'plan', storey: 'ground' } as const;

const said = (plan: Plan, rule: Rule): Finding[] => evaluate(plan, AFTER).findings.filter((f) => f.rule === rule.id);
const drawn = (plan: Plan, findings: readonly Finding[]): string => drawSvg(plan, VIEW, AFTER, 'print', { findings });
const fileOf = (rule: Rule, example: Example): string =>
  `${rule.id}-${example.name.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-')}`.replace('/', '-');

/** Examples that something is said of, at a place that can be drawn. */
const shown = [...rules.values()].flatMap((rule) =>
  rule.examples
    .filter((e) => e.expect !== 'pass' && said(e.given(), rule).some((f) => f.at !== null))
    .map((example) => [fileOf(rule, example), rule, example] as const),
);

describe('an example of a rule, drawn with what is said of it', () => {
  test('there is one of every rule that tells a place', () => {
    const silent = [...rules.values()].filter((rule) => !shown.some(([, r]) => r === rule));
    expect(silent.map((rule) => rule.id)).toEqual([]);
    expect(new Set(shown.map(([file]) => file)).size).toBe(shown.length);
  });

  test.each(shown)('%s', async (file, rule, example) => {
    const plan = example.given();
    const svg = drawn(plan, said(plan, rule));
    expect(svg).not.toBe(drawn(plan, []));
    expect(svg).not.toMatch(/NaN|undefined|Infinity/);
    await expect(svg).toMatchFileSnapshot(`__snapshots__/rules/${file}.svg`);
  });
});
