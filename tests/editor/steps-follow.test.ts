import { describe, expect, test } from 'vitest';
import type { Editor } from '../../src/editor/editor-api.ts';
import { nodePlace } from '../../src/geometry/places.ts';
import { blank, editorOf, handOn, press } from './hand.ts';

/** A room of 4 by 3 between the middles of its walls, and the run tool in hand at 150. */
function inRoom(): Editor {
  const editor = editorOf(blank());
  const corners = [
    { x: 0, y: 0 },
    { x: 4000, y: 0 },
    { x: 4000, y: 3000 },
    { x: 0, y: 3000 },
  ];
  for (const [i, a] of corners.entries())
    editor.run('wall.add', { storey: 'ground', a, b: corners[(i + 1) % 4], thicknessMm: 100, construction: 'block' });
  editor.setTool('run');
  editor.setInHand({ height: { from: 'floor', of: 'ground', mm: 150 }, follow: { what: 'wall', mm: 50 } });
  return editor;
}
const state = (editor: Editor) => editor.store.getState();
const line = (editor: Editor): string[] => {
  const { plan } = state(editor);
  return Object.values(plan.nodes).map((n) => {
    const { x, y, z } = nodePlace(plan, n)!.at;
    return `${x},${y},${z}`;
  });
};

describe('a run that follows', () => {
  test('goes round the room to abreast of the tap, live first and then in one step', () => {
    const editor = inRoom();
    const hand = handOn(editor);
    hand.tap(1000, 100);
    hand.play('move 3500,2890');
    expect(state(editor).caught).toBe('along the wall, 50 off');
    expect(state(editor).draft?.lines[0]?.pts).toHaveLength(4);
    hand.tap(3500, 2890);
    expect(state(editor).history.undo.slice(4)).toHaveLength(1);
    expect(line(editor)).toEqual(['1000,100,150', '3900,100,150', '3900,2900,150', '3500,2900,150']);
    press(editor, 'Backspace');
    expect(Object.keys(state(editor).plan.legs)).toEqual([]);
  });

  test('goes on from its end, and straight again when nothing is followed', () => {
    const editor = inRoom();
    const hand = handOn(editor);
    hand.tap(1000, 100);
    hand.tap(3000, 60);
    editor.setInHand({ follow: null });
    hand.tap(3000, 1500);
    expect(line(editor)).toEqual(['1000,100,150', '3000,100,150', '3000,1500,150']);
  });

  test('rises to a new height in hand before it goes on', () => {
    const editor = inRoom();
    const hand = handOn(editor);
    hand.tap(1000, 100);
    hand.tap(2000, 60);
    editor.setInHand({ height: { from: 'floor', of: 'ground', mm: 900 } });
    hand.tap(3000, 60);
    expect(line(editor).slice(1)).toEqual(['2000,100,150', '2000,100,900', '3000,100,900']);
  });

  test('says why it goes straight where there is nothing to follow', () => {
    const editor = inRoom();
    const hand = handOn(editor);
    editor.setInHand({ follow: { what: 'bay', mm: 0 } });
    hand.tap(1000, 1000);
    hand.play('move 3000,1000');
    expect(state(editor).caught).toContain('No joists');
    hand.tap(3000, 1000);
    expect(line(editor)).toHaveLength(2);
  });

  test('goes beside the chosen run with its corners', () => {
    const editor = inRoom();
    const hand = handOn(editor);
    editor.setInHand({ follow: null });
    hand.tap(500, 500);
    hand.tap(3000, 500);
    hand.tap(3000, 2500);
    press(editor, 'Enter');
    const [first] = Object.keys(state(editor).plan.runs);
    editor.select([{ map: 'runs', id: first! }]);
    editor.setInHand({ follow: { what: 'run', mm: 75 }, service: 'cold' });
    hand.tap(500, 700);
    hand.tap(2900, 2200);
    expect(line(editor).slice(3)).toEqual(['500,575,150', '2925,575,150', '2925,2200,150']);
  });

  test('by command: along the wall from a node, at its height', () => {
    const editor = inRoom();
    handOn(editor).tap(1000, 100);
    handOn(editor).tap(2000, 60);
    const { plan } = state(editor);
    const [run] = Object.keys(plan.runs);
    const from = Object.values(plan.legs)[0]!.b;
    const to = { storey: 'ground', x: 3880, y: 1500 };
    expect(editor.run('run.follow', { run, from, what: 'wall', mm: 50, to }).ok).toBe(true);
    expect(line(editor).slice(2)).toEqual(['3900,100,150', '3900,1500,150']);
    expect(editor.run('run.follow', { run, from, what: 'wall', mm: 1900, to })).toMatchObject({ ok: false });
  });
});
