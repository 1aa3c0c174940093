import { describe, expect, test } from 'vitest';
import { between } from '../../src/report/quantity.ts';
import type { Report } from '../../src/report/report.ts';
import type { Row, State } from '../../src/report/section.ts';
import { nearestColumns, wordsAnswer } from '../../src/view/words/answer-columns.ts';
import { keyFor } from '../../src/view/words/typed-keys.ts';

type Choice = Extract<Row, { kind: 'choice' }>;
const choice = (label: string, state: State, chosen = false): Choice => ({
  kind: 'choice',
  label,
  figure: between(0.1, 0.2, 'mbar', 2),
  bar: null,
  state,
  room: null,
  chosen,
  change: [],
  ids: [],
});
const columns = (...states: State[]) =>
  states.map((state, i) => ({ size: String(i), row: choice(`${i} all the way`, state) }));

const reportWith = (rows: readonly Row[]): Report => ({
  format: 'kickset-report',
  version: 1,
  plan: 'p',
  revision: 1,
  case: { option: null, when: 'before' },
  findings: [],
  sections: [{ id: 'gas-drop', title: 'Gas drop', order: 10, answer: '', state: 'pass', rows }],
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

describe('three sizes side by side', () => {
  const sizes = (...states: State[]) => nearestColumns(columns(...states)).map((c) => c.size);

  test('the smallest that passes stands in the middle', () => {
    expect(sizes('stop', 'stop', 'check', 'pass', 'pass', 'pass')).toEqual(['2', '3', '4']);
  });
  test('at either end as many as fit', () => {
    expect(sizes('pass', 'pass', 'pass', 'pass')).toEqual(['0', '1', '2']);
    expect(sizes('stop', 'stop', 'stop', 'pass')).toEqual(['1', '2', '3']);
  });
  test('where none passes, the largest', () => {
    expect(sizes('stop', 'stop', 'stop', 'stop')).toEqual(['1', '2', '3']);
  });
  test('fewer than three are all shown', () => {
    expect(sizes('stop', 'pass')).toEqual(['0', '1']);
  });
});

describe('the answer of the page', () => {
  test('is nothing without a gas section', () => {
    expect(wordsAnswer(null)).toBeNull();
    expect(wordsAnswer({ ...reportWith([]), sections: [] })).toBeNull();
  });

  test('takes whole routes as columns, leaves single sections out, and keeps the first limit', () => {
    const bar = { figure: between(0.4, 0.8, 'mbar', 2), limit: 1, state: 'pass' } as const;
    const answer = wordsAnswer(
      reportWith([
        { kind: 'answer', label: 'Boiler', of: '', figure: bar.figure, bar, say: 'passes', room: null, ids: [] },
        choice('28, then 22', 'pass', true),
        choice('22 all the way', 'pass'),
        choice('22 here', 'pass'),
        { kind: 'assumed', say: 'Boiler: 30 kW class', ids: [] },
      ]),
    );
    expect(answer?.columns.map((c) => c.size)).toEqual(['22']);
    expect(answer).toMatchObject({ limit: 1, unit: 'mbar', assumed: ['Boiler: 30 kW class'] });
  });
});

describe('typing into the pad', () => {
  const keys = ['digit 7', 'up', 'keep', 'rub'].map((id) => ({ id, label: id, group: 'digit' as const }));
  test('a key stands for what the pad offers, and for nothing else', () => {
    expect(keyFor('7', keys)).toBe('digit 7');
    expect(keyFor('ArrowUp', keys)).toBe('up');
    expect(keyFor('Enter', keys)).toBe('keep');
    expect(keyFor('Backspace', keys)).toBe('rub');
    expect(keyFor('8', keys)).toBeNull();
    expect(keyFor('ArrowLeft', keys)).toBeNull();
    expect(keyFor('x', keys)).toBeNull();
  });
});
