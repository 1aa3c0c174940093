import { describe, expect, test } from 'vitest';
import { checkInputs, sums } from '../../src/engine/evaluate.ts';

/** Every figure is the caller's own: there is no table to name. */
const ARITHMETIC: ReadonlySet<string> = new Set(['cut-length']);

describe.each([...sums.values()])('$id', (sum) => {
  test('gives its own example within what is stated', () => {
    const { values, result, within } = sum.example;
    const working = sum.work(values);
    const last = working.result;
    expect(working.missing).toEqual([]);
    const middle = last === null ? Number.NaN : (last.value ?? (last.lo + (last.hi ?? Number.NaN)) / 2);
    expect(Math.abs(middle - result)).toBeLessThanOrEqual(within);
  });

  test('a working names the tables it rests on unless the caller gave every figure', () => {
    if (ARITHMETIC.has(sum.id)) return;
    const { cv: _cv, radius: _radius, ...asked } = sum.example.values;
    const cites = sum.work(asked).steps.flatMap((s) => s.cites);
    expect(cites.length).toBeGreaterThan(0);
  });

  test('its inputs are told apart and checked in words', () => {
    expect(new Set(sum.inputs.map((i) => i.key)).size).toBe(sum.inputs.length);
    const words = Object.fromEntries(Object.entries(sum.example.values).map(([k, v]) => [k, String(v)]));
    expect(checkInputs(sum, words)).toEqual({ ok: true, values: sum.example.values });
    const wrong = checkInputs(sum, { ...words, nonsense: '1' });
    expect(wrong.ok ? '' : wrong.why).toContain('nonsense');
    const required = sum.inputs.find((i) => i.required);
    const { [required?.key ?? '']: _, ...without } = words;
    const missing = checkInputs(sum, without);
    expect(missing.ok ? '' : missing.why).toContain(`needs ${required?.key}`);
  });
});
