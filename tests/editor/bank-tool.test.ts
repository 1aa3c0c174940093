import { describe, expect, test } from 'vitest';
import { readBank } from '../../src/network/bank/read-bank.ts';
import { leastGapOf } from '../network/bank-drawn.ts';
import { endsOf, FIVE, lineOf, planOf, radiusOf, withBoiler } from './bank-job.ts';
import { handOn, press } from './hand.ts';

/** A boiler at x 3000 by the wall, and the tool in hand at the height of the void. */
function begun() {
  const { editor, boiler } = withBoiler({ x: 3000, y: 0, z: 1100 });
  editor.setTool('bank');
  editor.setInHand({ height: { from: 'floor', of: 'ground', mm: 2500 } });
  return { editor, boiler, hand: handOn(editor) };
}

const runsOf = (editor: ReturnType<typeof begun>['editor']) => Object.keys(planOf(editor).runs);

describe('the tool for banks', () => {
  test('lays the runs in hand with the second tap, and goes on with each corner, a step each', () => {
    const { editor, hand } = begun();
    hand.tap(0, 4000);
    expect(editor.store.getState().history.undo).toHaveLength(1);
    hand.tap(2000, 4000);
    hand.tap(2000, 1000);
    const { history, toolState } = editor.store.getState();
    expect(history.undo.slice(1)).toEqual(['lay bank of 5', 'carry on bank']);
    expect(toolState).toBe('aiming');
    const plan = planOf(editor);
    const [group] = Object.values(plan.groups);
    expect(group?.members).toHaveLength(5);
    expect(readBank(plan, group?.id ?? '')?.path).toEqual([
      { x: 0, y: 4000, z: 2500 },
      { x: 2000, y: 4000, z: 2500 },
      { x: 2000, y: 1000, z: 2500 },
    ]);
  });

  test('a tap on the boiler ends each at its own tail', () => {
    const { editor, hand } = begun();
    hand.tap(0, 500);
    hand.tap(2200, 500);
    hand.tap(3000, -81);
    const plan = planOf(editor);
    const runs = runsOf(editor);
    expect(Object.values(plan.groups)).toHaveLength(1);
    expect(runs.map((r) => endsOf(plan, r)[1]).sort()).toEqual(['cold', 'flow', 'gas', 'hot', 'return']);
    expect(
      leastGapOf(
        runs.map((r) => lineOf(plan, r)),
        runs.map((r) => radiusOf(plan, r)),
      ),
    ).toBeGreaterThan(20);
    expect(editor.store.getState().toolState).toBe('idle');
  });

  test('starts at a boiler: nothing is laid until there is a straight part', () => {
    const { editor, hand } = begun();
    editor.setInHand({ height: { from: 'floor', of: 'ground', mm: 150 } });
    hand.tap(3000, -81);
    hand.tap(2200, 900);
    expect(runsOf(editor)).toEqual([]);
    hand.tap(2200, 3500);
    const plan = planOf(editor);
    expect(runsOf(editor).map((r) => endsOf(plan, r)[0])).toEqual(['gas', 'flow', 'return', 'cold', 'hot']);
  });

  test('a height changed in between is a drop of the whole bank', () => {
    const { editor, hand } = begun();
    hand.tap(0, 4000);
    hand.tap(2000, 4000);
    editor.setInHand({ height: { from: 'floor', of: 'ground', mm: 300 } });
    hand.tap(2000, 1000);
    const [group] = Object.keys(planOf(editor).groups);
    expect(readBank(planOf(editor), group ?? '')?.path.map((p) => p.z)).toEqual([2500, 2500, 300, 300]);
  });

  test('a typed length along an arrow, Backspace step by step, Enter keeps it open', () => {
    const { editor, hand } = begun();
    hand.tap(0, 4000);
    press(editor, '2', '5', '0', '0', 'ArrowRight', 'Enter');
    press(editor, '1', '2', '0', '0', 'ArrowDown', 'Enter');
    const path = () =>
      readBank(planOf(editor), Object.keys(planOf(editor).groups)[0] ?? '')?.path.map((p) => [p.x, p.y]);
    expect(path()).toEqual([
      [0, 4000],
      [2500, 4000],
      [2500, 2800],
    ]);
    press(editor, 'Backspace');
    expect(path()).toEqual([
      [0, 4000],
      [2500, 4000],
    ]);
    press(editor, 'Backspace');
    expect(runsOf(editor)).toEqual([]);
    press(editor, '1', '0', '0', '0', 'ArrowRight', 'Enter', 'Enter');
    expect(path()).toEqual([
      [0, 4000],
      [1000, 4000],
    ]);
    expect(editor.store.getState().toolState).toBe('idle');
    hand.tap(1000, 4000);
    hand.tap(1000, 1500);
    expect(path()).toHaveLength(3);
    expect(Object.keys(planOf(editor).groups)).toHaveLength(1);
  });

  test('shows each member in its own beat, and says why it cannot be laid', () => {
    const { editor, hand } = begun();
    hand.tap(0, 4000);
    hand.play('move 2000,4000');
    const { draft } = editor.store.getState();
    expect(draft?.lines.map((l) => l.beat)).toEqual(expect.arrayContaining(['gas', 'hot', 'cold']));
    expect(draft?.lines).toHaveLength(FIVE.length);
    expect(draft?.labels.map((l) => l.text)).toEqual(['2000', 'H · C · HR · HF · G']);
    hand.tap(2000, 4000);
    hand.play('move 2000,3890');
    expect(editor.store.getState().caught).toMatch(/no room to turn/);
    const before = planOf(editor);
    hand.tap(2000, 3890);
    expect(planOf(editor)).toBe(before);
    expect(editor.store.getState().said?.text).toMatch(/no room to turn/);
  });

  test('a second finger leaves no mark', () => {
    const { editor, hand } = begun();
    hand.tap(0, 4000);
    hand.play('down 2000,4000 second up lift');
    expect(runsOf(editor)).toEqual([]);
  });
});

describe('a leg of a bank that is dragged', () => {
  test('takes those beside it along, and the corners still nest', () => {
    const { editor, hand } = begun();
    hand.tap(0, 4000);
    hand.tap(2000, 4000);
    hand.tap(2000, 1000);
    press(editor, 'Enter');
    editor.setTool('select');
    const [group] = Object.keys(planOf(editor).groups);
    hand.play('down 2000,2500 move 2100,2500 move 2300,2500 up');
    const { history, plan } = editor.store.getState();
    expect(history.undo).toHaveLength(4);
    const path = readBank(plan, group ?? '')?.path.map((p) => [p.x, p.y]);
    expect(path).toEqual([
      [0, 4000],
      [2300, 4000],
      [2300, 1000],
    ]);
    expect(readBank(plan, group ?? '')?.members).toHaveLength(5);
  });
});
