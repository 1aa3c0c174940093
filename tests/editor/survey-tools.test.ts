import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Editor } from '../../src/editor/editor-api.ts';
import { roomFaces } from '../../src/geometry/rooms.ts';
import { drawn } from './drawn.ts';
import { editorOf, handOn, press } from './hand.ts';

const state = (editor: Editor) => editor.store.getState();
const walls = (editor: Editor) => Object.values(state(editor).plan.walls);
const faces = (editor: Editor) => roomFaces(state(editor).plan, 'ground').faces;
const type = (editor: Editor, text: string): void =>
  press(editor, ...text.split(' ').flatMap((w) => (/^\d+$/.test(w) ? [...w] : [w])));
const at = (n: number) => Math.round(n * 10) / 10 + 0;

describe('walls told by figures', () => {
  test('a room is walked round: lengths, turns, repeat, closed by itself', () => {
    const editor = editorOf();
    editor.setTool('wall');
    handOn(editor, 'touch').tap(0, 0);
    expect(state(editor).ask).toMatchObject({ title: 'Wall 1, up', unit: 'mm inside', figure: '' });
    type(editor, '3600 Enter');
    // The second goes right by itself, the others turn as the one before.
    expect(state(editor).ask?.title).toBe('Wall 2, right');
    type(editor, 'ArrowRight 2800 Enter 3600 Enter 2800 Enter');
    expect(state(editor).toolState).toBe('idle');
    expect(state(editor).ask).toBeNull();
    expect(walls(editor)).toHaveLength(4);
    expect(faces(editor).map((f) => Math.round(f.areaMm2))).toEqual([3600 * 2800]);
    expect(state(editor).history.undo).toEqual(['draw wall', 'draw wall', 'draw wall', 'close the walls']);
    for (let i = 0; i < 4; i++) editor.undo();
    expect(walls(editor)).toEqual([]);
  });

  test('a closing error is told and spread in one step, each wall by its length', () => {
    const editor = editorOf();
    editor.setTool('wall');
    handOn(editor, 'touch').tap(0, 0);
    type(editor, '3600 Enter 2800 Enter 3618 Enter 2790 Enter');
    expect(state(editor).ask?.says.join(' ')).toMatch(/^Closing error 10 along, 18 across, 1 in \d+\.$/);
    const before = state(editor).plan;
    type(editor, 'spread');
    expect(state(editor).toolState).toBe('idle');
    expect(state(editor).history.undo.at(-1)).toBe('spread the closing error');
    const all = walls(editor);
    for (const [i, w] of all.entries()) {
      const next = all[(i + 1) % all.length]!;
      expect([w.b.x, w.b.y]).toEqual([next.a.x, next.a.y]);
    }
    expect(faces(editor)).toHaveLength(1);
    editor.undo();
    expect(state(editor).plan).toEqual(before);
  });

  test('or the last wall takes it, or a wall more is drawn', () => {
    for (const [how, count] of [
      ['lastTakes', 4],
      ['close', 5],
    ] as const) {
      const editor = editorOf();
      editor.setTool('wall');
      handOn(editor, 'touch').tap(0, 0);
      type(editor, `3600 Enter 2800 Enter 3618 Enter 2600 Enter ${how}`);
      expect(state(editor).toolState).toBe('idle');
      expect(walls(editor)).toHaveLength(count);
      expect(faces(editor)).toHaveLength(1);
    }
    const open = editorOf();
    open.setTool('wall');
    handOn(open, 'touch').tap(0, 0);
    type(open, '3600 Enter 2800 Enter 3600 Enter 900 Enter');
    // So much is missing that it is no error of measuring: only a wall closes it.
    expect(
      state(open)
        .ask?.rows.flat()
        .map((k) => k.key),
    ).not.toContain('spread');
    expect(state(open).ask?.says.join(' ')).toMatch(/^To the first corner/);
  });

  test('an own angle, the other side, the repeat of the last, a wall taken back', () => {
    const editor = editorOf();
    editor.setTool('wall');
    editor.setInHand({ sizes: 'middle' });
    handOn(editor, 'touch').tap(0, 0);
    type(editor, '1000 Enter angle 45 ArrowLeft 1000 Enter');
    expect(walls(editor).map((w) => [at(w.b.x), at(w.b.y)])).toEqual([
      [0, 1000],
      [-707.1, 1707.1],
    ]);
    type(editor, 'repeat');
    expect(
      walls(editor)
        .map((w) => [at(w.b.x), at(w.b.y)])
        .at(-1),
    ).toEqual([-1707.1, 1707.1]);
    type(editor, 'Backspace');
    expect(walls(editor)).toHaveLength(2);
    type(editor, 'ArrowDown 500 Enter');
    expect(
      walls(editor)
        .map((w) => [at(w.b.x), at(w.b.y)])
        .at(-1),
    ).toEqual([-353.6, 1353.6]);
  });

  test('what is asked does not change with a hand that only moves', () => {
    const editor = editorOf();
    editor.setTool('wall');
    const hand = handOn(editor);
    hand.tap(0, 0);
    hand.play('move 900,100');
    const { ask } = state(editor);
    expect(ask?.title).toBe('Wall 1');
    for (const to of ['900,400', '700,900', '-300,800']) {
      hand.play(`move ${to}`);
      expect(state(editor).ask).toBe(ask);
    }
    // A way that is told goes before the pointer.
    press(editor, 'ArrowLeft');
    expect(state(editor).ask?.title).toBe('Wall 1, left');
  });

  test('from a wall that stands it is measured from its face, and undo from elsewhere is followed', () => {
    const { editor, id } = drawn();
    editor.setTool('wall');
    const south = state(editor).plan.walls[id.south!]!;
    handOn(editor, 'touch').tap(2000, 0);
    type(editor, '1500 Enter');
    const made = walls(editor).at(-1)!;
    expect(made.b.y).toBeCloseTo(south.thicknessMm / 2 + 1500 + 50, 1);
    editor.undo();
    expect(state(editor).toolState).toBe('aiming');
    expect(state(editor).ask?.title).toBe('Wall 1, up');
  });
});

describe('rooms by two corners', () => {
  test('one drag draws four walls and names the room, in one step', () => {
    const editor = editorOf();
    editor.setTool('room');
    editor.setInHand({ roomUse: 'kitchen' });
    handOn(editor, 'touch').play('down 0,0 move 1800,900 move 3600,2800 up');
    const { plan, selection, history } = state(editor);
    expect(walls(editor)).toHaveLength(4);
    expect(Object.values(plan.rooms)).toMatchObject([{ name: 'Kitchen', use: 'kitchen' }]);
    expect(faces(editor).map((f) => [Math.round(f.areaMm2), f.rooms.length])).toEqual([[3600 * 2800, 1]]);
    expect(selection).toEqual([{ map: 'rooms', id: Object.keys(plan.rooms)[0] }]);
    expect(history.undo).toEqual(['draw kitchen']);
    editor.undo();
    expect(walls(editor)).toEqual([]);
  });

  test('typed from a corner, as inside or outside sizes', () => {
    for (const [sizes, area] of [
      ['inside', 3600 * 2800],
      ['outside', 3400 * 2600],
    ] as const) {
      const editor = editorOf();
      editor.setTool('room');
      handOn(editor, 'touch').tap(0, 0);
      press(editor, `sizes ${sizes}`);
      type(editor, '3600 x 2800 Enter');
      expect(faces(editor).map((f) => Math.round(f.areaMm2))).toEqual([area]);
    }
  });

  test('from a corner of a room that stands, only the missing walls are drawn', () => {
    const editor = editorOf();
    editor.setTool('room');
    const hand = handOn(editor, 'touch');
    hand.play('down 0,0 move 1800,900 move 3600,2800 up');
    const [first] = faces(editor);
    // The lower right corner of the first room, on its middle lines.
    hand.tap(3650, -50);
    expect(
      state(editor)
        .ask?.rows[0]?.filter((k) => k.on)
        .map((k) => k.label),
    ).toEqual(['to the right', 'up']);
    press(editor, 'use hall');
    type(editor, '1200 Enter 2800 Enter');
    expect(walls(editor)).toHaveLength(7);
    expect(
      faces(editor)
        .map((f) => Math.round(f.areaMm2))
        .sort((a, b) => a - b),
    ).toEqual([1200 * 2800, Math.round(first!.areaMm2)]);
    expect(Object.values(state(editor).plan.rooms).map((r) => r.name)).toEqual(['', 'Hall']);
  });

  test('a room that is deeper than the one beside it goes on past its wall', () => {
    const editor = editorOf();
    editor.setTool('room');
    const hand = handOn(editor, 'touch');
    hand.play('down 0,0 move 1800,900 move 3000,2000 up');
    hand.tap(3050, -50);
    type(editor, '2000 Enter 3500 Enter');
    expect(
      faces(editor)
        .map((f) => Math.round(f.areaMm2))
        .sort((a, b) => a - b),
    ).toEqual([3000 * 2000, 2000 * 3500]);
    // The wall between them is there once, and goes on beside the second room.
    expect(walls(editor)).toHaveLength(8);
  });

  test('too small a drag is refused in words', () => {
    const editor = editorOf();
    editor.setTool('room');
    handOn(editor, 'touch').play('down 0,0 move 500,0 move 900,0 up');
    expect(walls(editor)).toEqual([]);
    expect(state(editor).said?.text).toMatch(/two corners that are apart/);
  });

  test('any rooms side by side are closed, as large as told, and share their walls', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 900, max: 6000 }), fc.integer({ min: 900, max: 6000 })), {
          minLength: 1,
          maxLength: 4,
        }),
        fc.integer({ min: 70, max: 300 }),
        (sizes, wallThicknessMm) => {
          const editor = editorOf();
          editor.setInHand({ wallThicknessMm });
          editor.setTool('room');
          const hand = handOn(editor, 'touch');
          let x = 0;
          for (const [i, [w, h]] of sizes.entries()) {
            hand.tap(x - (i === 0 ? 0 : wallThicknessMm / 2), i === 0 ? 0 : -wallThicknessMm / 2);
            press(editor, 'ArrowRight', 'ArrowUp');
            type(editor, `${w} Enter ${h} Enter`);
            x += w + wallThicknessMm;
          }
          const found = faces(editor);
          expect(found).toHaveLength(sizes.length);
          for (const [i, room] of Object.values(state(editor).plan.rooms).entries()) {
            const [w, h] = sizes[i]!;
            const area = found.find((f) => f.rooms.includes(room.id))?.areaMm2 ?? 0;
            // Walls are kept to tenths of a millimetre, at both ends and both faces.
            expect(Math.abs(area - w * h)).toBeLessThanOrEqual(0.15 * (w + h));
          }
        },
      ),
      { numRuns: 40 },
    );
  });
});

describe('the roof tool', () => {
  test('three taps, eaves, pitch: one slope that rises from its eaves', () => {
    const editor = editorOf();
    editor.setTool('roof');
    const hand = handOn(editor, 'touch');
    hand.tap(4000, 0);
    hand.tap(0, 0);
    hand.tap(1000, 3000);
    expect(state(editor).ask).toMatchObject({ title: 'Eaves, off the floor', enter: 'next' });
    type(editor, '2200 Enter');
    type(editor, 'Enter');
    expect(state(editor).said?.text).toMatch(/needs its pitch/);
    type(editor, '35 Enter');
    const [roof] = Object.values(state(editor).plan.roofs);
    expect(roof).toMatchObject({
      pitchDeg: 35,
      eaves: { a: { x: 0, y: 0 }, b: { x: 4000, y: 0 }, height: { from: 'floor', of: 'ground', mm: 2200 } },
      sureness: 'seen',
    });
    expect(roof?.outline).toEqual([
      { x: 0, y: 0 },
      { x: 4000, y: 0 },
      { x: 4000, y: 3000 },
      { x: 0, y: 3000 },
    ]);
    expect(state(editor).history.undo).toEqual(['draw roof']);
    expect(state(editor).selection).toEqual([{ map: 'roofs', id: roof?.id }]);
  });

  test('eaves nobody measured are at the ceiling and assumed; a place on the eaves is refused', () => {
    const editor = editorOf();
    editor.setTool('roof');
    const hand = handOn(editor, 'touch');
    hand.tap(0, 0);
    hand.tap(4000, 0);
    hand.tap(2000, 0);
    expect(state(editor).said?.text).toMatch(/away from its eaves/);
    hand.tap(2000, 2000);
    type(editor, 'Enter 30 Enter');
    expect(Object.values(state(editor).plan.roofs)).toMatchObject([
      { sureness: 'assumed', eaves: { height: { from: 'ceiling', of: 'ground', mm: 0 } } },
    ]);
  });

  test('is chosen by its edge, not by the floor under it', () => {
    const editor = editorOf();
    editor.setTool('roof');
    const hand = handOn(editor, 'touch');
    for (const [x, y] of [
      [0, 0],
      [4000, 0],
      [2000, 3000],
    ] as const)
      hand.tap(x, y);
    type(editor, 'Enter 30 Enter');
    editor.setTool('select');
    editor.select([]);
    hand.tap(2000, 1500);
    expect(state(editor).selection).toEqual([]);
    hand.tap(2000, 3000);
    expect(state(editor).selection.map((s) => s.map)).toEqual(['roofs']);
    press(editor, 'Delete');
    expect(state(editor).plan.roofs).toEqual({});
  });
});

describe('the ground tool', () => {
  test('a tap and a figure for each place, kept in one step', () => {
    const editor = editorOf();
    editor.setTool('ground');
    editor.setInHand({ groundKind: 'paving' });
    const hand = handOn(editor, 'touch');
    hand.tap(0, -200);
    hand.tap(2000, -200);
    expect(state(editor).said?.text).toMatch(/level of this place first/);
    type(editor, '150');
    hand.tap(2000, -200);
    hand.tap(4000, -200);
    type(editor, 'above 20 Enter');
    expect(Object.values(state(editor).plan.grounds)).toMatchObject([
      {
        kind: 'paving',
        line: [
          { x: 0, z: -150 },
          { x: 2000, z: -150 },
          { x: 4000, z: 20 },
        ],
        sureness: 'seen',
      },
    ]);
    expect(state(editor).history.undo).toEqual(['draw ground level']);
    expect(state(editor).ask).toBeNull();
    editor.setTool('select');
    hand.tap(1000, -200);
    expect(state(editor).selection.map((s) => s.map)).toEqual(['grounds']);
  });
});
