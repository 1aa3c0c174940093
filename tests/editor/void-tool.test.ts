import { describe, expect, test } from 'vitest';
import type { Editor } from '../../src/editor/editor-api.ts';
import { asking } from './asking.ts';
import { drawn } from './drawn.ts';
import { editorOf, handOn, press } from './hand.ts';

/** A room of 4 by 3 m between walls of 100. */
const room = (): Editor => asking(drawn().editor.store.getState().plan);
const voids = (editor: Editor) => Object.values(editor.store.getState().plan.voids);
const state = (editor: Editor) => editor.store.getState();

describe('a void in a room', () => {
  test('is a tap in the room, then way, centres and depth, as one step', () => {
    const editor = room();
    const hand = handOn(editor);
    editor.setTool('void');
    hand.play('move 2500,1500');
    expect(state(editor).caught).toBe('all of kitchen');
    hand.tap(2500, 1500);
    expect(state(editor).ask?.title).toMatch(/which way/i);
    expect(voids(editor)).toHaveLength(0);
    press(editor, '2');
    expect(state(editor).ask?.title).toMatch(/centres/i);
    press(editor, 'size 450');
    press(editor, '2', '2', '0', 'Enter');
    const [made] = voids(editor);
    expect(made?.joists).toEqual({
      kind: 'solid',
      wayDeg: 90,
      centresMm: 450,
      first: { x: expect.closeTo(135, 3), y: expect.any(Number) },
      depthMm: 220,
      breadthMm: 50,
      bottom: { from: 'ceiling', of: 'ground', mm: 14, assumed: { lo: 9, hi: 29 } },
      spanMm: null,
      exceptions: [],
      assumed: ['kind', 'first', 'breadthMm', 'bottom'],
    });
    expect(made?.outline).toHaveLength(4);
    expect(new Set(made?.outline.map((p) => p.x))).toEqual(new Set([50, 3950]));
    expect(state(editor).history.undo).toEqual(['draw ceiling void']);
    expect(state(editor).selection).toEqual([{ map: 'voids', id: made?.id }]);
    expect(state(editor).ask).toBeNull();
    expect(editor.undo().ok).toBe(true);
    expect(voids(editor)).toHaveLength(0);
  });

  test('Enter takes the short span, what is usual, and leaves the depth untold', () => {
    const editor = room();
    editor.setTool('void');
    handOn(editor).tap(2500, 1500);
    press(editor, 'Enter', 'Enter', 'Enter');
    const [made] = voids(editor);
    // 3900 by 2900: joists take the shorter way.
    expect(made?.joists).toMatchObject({ wayDeg: 90, centresMm: 410, depthMm: null });
    expect(made?.joists?.assumed).toContain('centresMm');
  });

  test('the figures of the last void are offered again; a small figure is the key of that place', () => {
    const editor = room();
    const hand = handOn(editor);
    editor.setTool('void');
    hand.tap(2500, 1500);
    press(editor, '1', 'size 600', '4', 'Enter');
    expect(voids(editor)[0]?.joists).toMatchObject({ wayDeg: 0, centresMm: 600, depthMm: 225 });
    editor.setInHand({ voidKind: 'floor' });
    hand.tap(2500, 1500);
    press(editor, '1');
    expect(state(editor).ask?.enter).toBe('600, as last');
    press(editor, 'Enter', 'Enter');
    expect(voids(editor)[1]?.joists).toMatchObject({
      centresMm: 600,
      depthMm: 225,
      bottom: { from: 'floor', mm: -246, assumed: { lo: -251, hi: -242 } },
    });
  });

  test('Escape goes one question back, and from the first one away', () => {
    const editor = room();
    editor.setTool('void');
    handOn(editor).tap(2500, 1500);
    press(editor, '1', 'size 400', 'Escape');
    expect(state(editor).toolState).toBe('centres');
    press(editor, '5', 'Backspace', 'Backspace');
    expect(state(editor).toolState).toBe('way');
    press(editor, 'Escape');
    expect(state(editor)).toMatchObject({ toolState: 'idle', draft: null, ask: null });
    expect(state(editor).history.undo).toEqual([]);
  });

  test('the way may be drawn, at any angle', () => {
    const editor = room();
    const hand = handOn(editor);
    editor.setTool('void');
    hand.tap(2500, 1500);
    hand.play('down 1000,1000 move 1500,1200 move 2000,1577 up');
    press(editor, 'size 400', 'size 150');
    expect(voids(editor)[0]?.joists?.wayDeg).toBe(30);
  });

  test('none or not known makes the void without joists', () => {
    const editor = room();
    editor.setTool('void');
    handOn(editor).tap(2500, 1500);
    press(editor, '3');
    expect(voids(editor)).toMatchObject([{ kind: 'ceiling', joists: null }]);
  });

  test('a second finger moves the paper and the question stays', () => {
    const editor = room();
    const hand = handOn(editor, 'touch');
    editor.setTool('void');
    hand.tap(2500, 1500);
    press(editor, '1');
    hand.play('down 1000,1000 second move 1200,1200 lift up');
    expect(state(editor).toolState).toBe('centres');
    expect(state(editor).draft).not.toBeNull();
  });

  test('near a wall a tap is a corner, and with corners in hand everywhere', () => {
    const editor = room();
    const hand = handOn(editor);
    editor.setTool('void');
    hand.tap(50, 50);
    expect(state(editor).toolState).toBe('outlining');
    press(editor, 'Escape');
    editor.setInHand({ voidTask: 'outline' });
    hand.tap(2500, 1500);
    expect(state(editor).toolState).toBe('outlining');
  });

  test('a slab takes the room and asks nothing of joists', () => {
    const editor = room();
    editor.setTool('void');
    editor.setInHand({ voidKind: 'slab' });
    handOn(editor).tap(2500, 1500);
    expect(voids(editor)).toMatchObject([{ kind: 'slab', joists: null }]);
    expect(state(editor).toolState).toBe('idle');
  });

  test('without a room a tap is a corner, and a chase is refused in the plan', () => {
    const editor = asking(editorOf().store.getState().plan);
    const hand = handOn(editor);
    editor.setTool('void');
    editor.setInHand({ voidKind: 'chase' });
    hand.play('down 0,0 move 500,500 move 1000,900 up');
    expect(voids(editor)).toHaveLength(0);
    expect(state(editor).said?.text).toMatch(/face of its wall/);
  });
});
