import { describe, expect, test } from 'vitest';
import { nodePlace } from '../../src/geometry/places.ts';
import { danglingReferences } from '../../src/plan/references.ts';
import { editorOf, handOn, press } from './hand.ts';

const placesOf = (editor: ReturnType<typeof editorOf>) => {
  const { plan } = editor.store.getState();
  return Object.values(plan.nodes).map((n) => nodePlace(plan, n)?.at);
};

describe('the run tool', () => {
  test('places one node with each tap, one step of undo to each', () => {
    const editor = editorOf();
    const hand = handOn(editor);
    editor.setTool('run');
    hand.tap(0, 0);
    expect(editor.store.getState().history.undo).toEqual([]);
    hand.tap(1000, 0);
    hand.tap(1000, 2000);
    const { plan, history, toolState } = editor.store.getState();
    expect(history.undo).toEqual(['start gas run', 'carry on gas run']);
    expect(placesOf(editor)).toEqual([
      { x: 0, y: 0, z: 50 },
      { x: 1000, y: 0, z: 50 },
      { x: 1000, y: 2000, z: 50 },
    ]);
    expect(toolState).toBe('aiming');
    expect(danglingReferences(plan)).toEqual([]);
    expect(Object.values(plan.legs).every((l) => l.option === 'A')).toBe(true);
  });

  test('a drag starts a run and places its second node', () => {
    const editor = editorOf();
    const hand = handOn(editor);
    editor.setTool('run');
    hand.play('down 0,0 move 500,0 move 800,0 up');
    expect(editor.store.getState().history.undo).toHaveLength(1);
    expect(Object.keys(editor.store.getState().plan.legs)).toHaveLength(1);
  });

  test('a height changed in mid-run draws the rise with the next node', () => {
    const editor = editorOf();
    const hand = handOn(editor);
    editor.setTool('run');
    hand.tap(0, 0);
    hand.tap(1000, 0);
    editor.setInHand({ height: { from: 'floor', of: 'ground', mm: 2300 } });
    hand.tap(1000, 1000);
    expect(placesOf(editor).slice(1)).toEqual([
      { x: 1000, y: 0, z: 50 },
      { x: 1000, y: 0, z: 2300 },
      { x: 1000, y: 1000, z: 2300 },
    ]);
    expect(editor.store.getState().history.undo).toHaveLength(2);
  });

  test('digits set the length of the live leg, Enter places it', () => {
    const editor = editorOf();
    const hand = handOn(editor);
    editor.setTool('run');
    hand.tap(0, 0);
    hand.play('move 700,0');
    press(editor, '2', '6', '0', '7', 'Backspace', '0', 'Enter');
    expect(placesOf(editor)).toEqual([
      { x: 0, y: 0, z: 50 },
      { x: 2600, y: 0, z: 50 },
    ]);
    press(editor, 'Enter');
    expect(editor.store.getState().toolState).toBe('idle');
  });

  test('Backspace takes back one leg at a time', () => {
    const editor = editorOf();
    const hand = handOn(editor);
    editor.setTool('run');
    hand.tap(0, 0);
    hand.tap(1000, 0);
    hand.tap(1000, 1000);
    press(editor, 'Backspace');
    expect(Object.keys(editor.store.getState().plan.legs)).toHaveLength(1);
    hand.tap(1000, -500);
    expect(placesOf(editor).at(-1)).toEqual({ x: 1000, y: -500, z: 50 });
    press(editor, 'Backspace', 'Backspace');
    expect(Object.keys(editor.store.getState().plan.runs)).toEqual([]);
  });
});
