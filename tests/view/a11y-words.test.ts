import { describe, expect, test } from 'vitest';
import '../../src/editor/later/later.ts';
import type { Finding, Outcome } from '../../src/report/finding.ts';
import { sayCursor } from '../../src/view/a11y/say-cursor.ts';
import { sayFindings } from '../../src/view/a11y/say-findings.ts';
import { readTable } from '../../src/view/help/key-table.ts';
import { drawn } from '../editor/drawn.ts';

const finding = (key: string, outcome: Outcome, title: string): Finding => ({
  rule: key,
  key,
  outcome,
  lifeSafety: false,
  topic: 't',
  ids: [],
  legs: [],
  title,
  why: '',
  todo: '',
  found: null,
  wanted: null,
  wantedIs: null,
  at: null,
  more: 0,
  missing: [],
  working: null,
  cites: [],
  unverified: false,
});

describe('findings that came and went', () => {
  const a = finding('a', 'stop', 'Gas drop over');
  const b = finding('b', 'check', 'Joist cut');
  const c = finding('c', 'note', 'Sleeve');
  const d = finding('d', 'note', 'Lagging');

  test('are named, new ones first', () => {
    expect(sayFindings([], [a])).toBe('New: stop, Gas drop over.');
    expect(sayFindings([b], [a])).toBe('New: stop, Gas drop over. Gone: check, Joist cut.');
    expect(sayFindings([a, b], [a, b])).toBe('');
  });

  test('turned worse or milder are told with what they were', () => {
    expect(sayFindings([a], [{ ...a, outcome: 'check' }])).toBe('Now: check, Gas drop over, was stop.');
  });

  test('more than three are counted', () => {
    expect(sayFindings([], [a, b, c, d])).toBe('New: stop, Gas drop over; check, Joist cut; note, Sleeve; and 1 more.');
    expect(sayFindings([d], [a, b, c])).toBe('New: stop, Gas drop over; check, Joist cut; note, Sleeve. Gone: 1.');
  });
});

describe('the cross in words', () => {
  const stateAt = (at: readonly [number, number]) => {
    const { editor } = drawn();
    editor.setCamera('plan', { centre: [2000, 1500], mmPerPx: 5 });
    editor.store.setState({ cursor: { pane: 'plan', at, stepMm: 100, held: false, n: 1 } });
    return editor.store.getState();
  };

  test('where it is in its room, measured from the inside corner', () => {
    expect(sayCursor(stateAt([2450, 550]))).toBe('2400 right, 500 up in kitchen.');
  });

  test('what lies under it, a pipe with its height', () => {
    const state = stateAt([2000, 1500]);
    const leg = Object.values(state.plan.legs).find((l) => {
      const run = state.plan.runs[l.run];
      return run?.service === 'cold';
    });
    const a = leg && state.plan.nodes[leg.a]?.place;
    expect(a?.on).toBe('storey');
    if (a?.on !== 'storey') return;
    const said = sayCursor(stateAt([a.x, a.y]));
    expect(said).toMatch(/over: .*Cold 22 (at|from) \d+/);
  });

  test('nothing where no cross is shown', () => {
    const { editor } = drawn();
    expect(sayCursor(editor.store.getState())).toBe('');
  });
});

describe('keys kept on the device', () => {
  test('are read back, and nonsense is left alone', () => {
    expect(readTable(null)).toEqual({ changes: {}, signs: true });
    expect(readTable('{"changes":{"tool:run":{"key":"q"},"x":5},"signs":false}')).toEqual({
      changes: { 'tool:run': { key: 'q', ctrl: false, shift: false } },
      signs: false,
    });
    expect(readTable('[')).toEqual({ changes: {}, signs: true });
    expect(readTable('{"changes":null}')).toEqual({ changes: {}, signs: true });
  });
});
