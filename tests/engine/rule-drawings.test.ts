import { describe, expect, test } from 'vitest';
import { drawExample, saidBy } from '../../src/cli/book/rule-example.ts';
import { rules } from '../../src/engine/evaluate.ts';

/** Examples that something is said of, at a place that can be drawn. The best of each rule is kept in shared/rules. */
const shown = [...rules.values()].flatMap((rule) =>
  rule.examples.flatMap((example) => {
    if (example.expect === 'pass') return [];
    const findings = saidBy(rule, example.given());
    return findings.some((f) => f.at !== null)
      ? [[`${rule.id}: ${example.name}`, rule, example, findings] as const]
      : [];
  }),
);

describe('an example of a rule, drawn with what is said of it', () => {
  test('there is one of every rule that tells a place', () => {
    const silent = [...rules.values()].filter((rule) => !shown.some(([, r]) => r === rule));
    expect(silent.map((rule) => rule.id)).toEqual([]);
    expect(new Set(shown.map(([name]) => name)).size).toBe(shown.length);
  });

  test.each(shown)('%s', (_name, _rule, example, findings) => {
    const plan = example.given();
    const svg = drawExample(plan, findings);
    expect(svg).not.toBe(drawExample(plan, []));
    expect(svg).not.toMatch(/NaN|undefined|Infinity/);
  });
});
