import { describe, expect, test } from 'vitest';
import type { Editor } from '../../src/editor/editor-api.ts';
import { nodePlace } from '../../src/geometry/places.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { house } from '../network/house.ts';
import { editorOf, handOn, press } from './hand.ts';

/** A gas run of five legs, a valve in its middle. */
function route(): Plan {
  const h = house().run('r', 'gas', { option: 'o' }).run('q', 'gas', { option: 'o' });
  const xy = [
    [0, 0],
    [1000, 0],
    [1000, 1000],
    [2000, 1000],
    [2000, 2000],
    [3000, 2000],
  ] as const;
  for (const [i, [x, y]] of xy.entries()) h.node(`n${i}`, [x, y, 2000], { option: 'o' });
  h.line('r', ['n0', 'n1', 'n2', 'n3', 'n4', 'n5'], { option: 'o' }).item('v', 'n2', 'isolation-valve');
  h.node('m0', [0, 3000, 2000], { option: 'o' }).node('m1', [900, 3000, 2000], { option: 'o' });
  h.line('q', ['m0', 'm1'], { option: 'o' });
  return h.plan;
}

function at(plan: Plan = route()): Editor {
  const editor = editorOf(plan);
  editor.setCase({ option: 'o', when: 'after' });
  editor.setStorey('s');
  editor.setTool('reroute');
  return editor;
}
const state = (editor: Editor) => editor.store.getState();
/** Corners of the run from its first to its last. */
function line(editor: Editor): string[] {
  const { plan } = state(editor);
  const found: string[] = [];
  for (let here: string | undefined = 'n0'; here; ) {
    const p = nodePlace(plan, plan.nodes[here]!)!.at;
    found.push(`${p.x},${p.y},${p.z}`);
    here = Object.values(plan.legs).find((l) => l.a === here)?.b;
  }
  return found;
}
const BEFORE = ['0,0,2000', '1000,0,2000', '1000,1000,2000', '2000,1000,2000', '2000,2000,2000', '3000,2000,2000'];

describe('the tool that lays a part anew', () => {
  test('takes two corners, then new ones, and joins at the second: one step, the rest stays', () => {
    const editor = at();
    const hand = handOn(editor, 'touch');
    const before = state(editor).plan;
    hand.tap(1000, 0);
    expect(state(editor).toolState).toBe('second');
    hand.tap(2000, 2000);
    expect(state(editor).toolState).toBe('laying');
    expect(state(editor).ask?.says.join(' ')).toContain('With it goes the isolation');
    const draft = state(editor).draft!;
    expect(draft.lines[0]).toMatchObject({ ink: 'ink3', pts: [{ x: 1000 }, { y: 1000 }, { x: 2000 }, { y: 2000 }] });
    expect(draft.moved).toContain('r3');
    hand.tap(1000, 2000);
    expect(state(editor).history.undo).toEqual([]);
    hand.tap(2000, 2000);
    expect(state(editor).history.undo).toEqual(['re-route gas run']);
    expect(line(editor)).toEqual(['0,0,2000', '1000,0,2000', '1000,2000,2000', '2000,2000,2000', '3000,2000,2000']);
    const { plan } = state(editor);
    for (const id of ['r1', 'r5']) expect(plan.legs[id]).toEqual(before.legs[id]);
    expect(plan.items).toEqual({});
    editor.undo();
    expect(state(editor).plan).toEqual(before);
  });

  test('begins and ends along legs; Enter joins', () => {
    const editor = at();
    const hand = handOn(editor);
    hand.tap(500, 0);
    hand.tap(1500, 1000);
    hand.tap(500, 1000);
    press(editor, 'Enter');
    expect(line(editor)).toEqual(['0,0,2000', '500,0,2000', '500,1000,2000', '1500,1000,2000', ...BEFORE.slice(3)]);
  });

  test('takes lengths typed with their way, and takes them back one by one', () => {
    const editor = at();
    const hand = handOn(editor, 'touch');
    hand.tap(1000, 0);
    hand.tap(2000, 2000);
    press(editor, '5', '00', 'right');
    expect(state(editor).ask?.figure).toBe('');
    press(editor, '7', '00', 'up', 'Backspace', '3', '00', 'down');
    press(editor, 'Enter');
    // It was going up the sheet: right is along x; then down 300, level to under the second place, and up to it.
    expect(line(editor)).toEqual([
      '0,0,2000',
      '1000,0,2000',
      '1500,0,2000',
      '1500,0,1700',
      '2000,2000,1700',
      '2000,2000,2000',
      '3000,2000,2000',
    ]);
  });

  test('a height in hand rises first and comes back at the end', () => {
    const editor = at();
    const hand = handOn(editor);
    hand.tap(1000, 0);
    hand.tap(2000, 2000);
    editor.setInHand({ height: { from: 'floor', of: 's', mm: 2300 } });
    hand.tap(1000, 2000);
    hand.tap(2000, 2000);
    expect(line(editor)).toEqual([
      '0,0,2000',
      '1000,0,2000',
      '1000,0,2300',
      '1000,2000,2300',
      '2000,2000,2300',
      '2000,2000,2000',
      '3000,2000,2000',
    ]);
  });

  test('another run, the same place and an empty floor are said and change nothing', () => {
    const editor = at();
    const hand = handOn(editor);
    hand.tap(400, 2500);
    expect(state(editor).said?.text).toContain('Tap a pipe');
    hand.tap(1000, 0);
    hand.tap(450, 3000);
    expect(state(editor).said?.text).toContain('another run');
    expect(state(editor).toolState).toBe('second');
    hand.tap(1000, 0);
    expect(state(editor).said?.text).toContain('same one');
  });

  test('giving up leaves it as it was, at any time', () => {
    const editor = at();
    const hand = handOn(editor);
    for (const taps of [
      [[1000, 0]],
      [
        [1000, 0],
        [2000, 2000],
      ],
      [
        [1000, 0],
        [2000, 2000],
        [1000, 2000],
      ],
    ] as const) {
      for (const [x, y] of taps) hand.tap(x, y);
      press(editor, 'Escape');
      expect(state(editor)).toMatchObject({ toolState: 'idle', draft: null, ask: null });
      expect(line(editor)).toEqual(BEFORE);
    }
    expect(state(editor).history.undo).toEqual([]);
  });

  test('a step taken back elsewhere ends it', () => {
    const editor = at();
    editor.run('leg.split', { leg: 'r1', alongMm: 400 });
    const hand = handOn(editor);
    hand.tap(400, 0);
    hand.tap(2000, 2000);
    expect(state(editor).toolState).toBe('laying');
    editor.undo();
    expect(state(editor).toolState).toBe('idle');
  });
});
