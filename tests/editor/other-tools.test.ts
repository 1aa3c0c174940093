import { describe, expect, test } from 'vitest';
import { bindingOf, defaultKeys } from '../../src/editor/keys.ts';
import { toolsInOrder } from '../../src/editor/tools/tools.ts';
import { wallLength } from '../../src/geometry/wall-frame.ts';
import { drawn } from './drawn.ts';
import { editorOf, handOn, press } from './hand.ts';

const walls = (editor: ReturnType<typeof editorOf>) => Object.values(editor.store.getState().plan.walls);

describe('the wall tool', () => {
  test('chains walls, takes typed lengths and closes on its first corner', () => {
    const editor = editorOf();
    const hand = handOn(editor);
    editor.setTool('wall');
    editor.setInHand({ sizes: 'middle' });
    hand.tap(0, 0);
    hand.play('move 900,10');
    press(editor, '4', '2', '5', '0', 'Enter');
    hand.play('move 4250,500');
    press(editor, '3', '0', '0', '0', 'Enter');
    hand.tap(0, 3000);
    hand.tap(10, 10);
    expect(walls(editor).map((w) => [w.a, w.b])).toEqual([
      [
        { x: 0, y: 0 },
        { x: 4250, y: 0 },
      ],
      [
        { x: 4250, y: 0 },
        { x: 4250, y: 3000 },
      ],
      [
        { x: 4250, y: 3000 },
        { x: 0, y: 3000 },
      ],
      [
        { x: 0, y: 3000 },
        { x: 0, y: 0 },
      ],
    ]);
    expect(editor.store.getState().toolState).toBe('idle');
    expect(editor.store.getState().history.undo).toHaveLength(4);
  });

  test('Backspace takes back a digit, then a wall, then the first corner', () => {
    const editor = editorOf();
    const hand = handOn(editor);
    editor.setTool('wall');
    hand.tap(0, 0);
    hand.tap(1000, 0);
    press(editor, '5', 'Backspace');
    expect(walls(editor)).toHaveLength(1);
    expect(editor.store.getState().typed).toBe('');
    press(editor, 'Backspace');
    expect(walls(editor)).toHaveLength(0);
    hand.tap(0, 700);
    expect(walls(editor)[0]).toMatchObject({ a: { x: 0, y: 0 }, b: { x: 0, y: 700 } });
    press(editor, 'Backspace', 'Backspace');
    expect(editor.store.getState().toolState).toBe('idle');
  });

  test('walls are drawn in the plan, not on a face', () => {
    const { editor, id } = drawn();
    editor.foldUp({ wall: id.north!, side: 'left' });
    editor.setTool('wall');
    handOn(editor).tap(500, 500);
    expect(editor.store.getState().said?.text).toMatch(/in the plan/);
    expect(walls(editor)).toHaveLength(4);
  });
});

describe('the opening tool', () => {
  test('drags the first of a kind from side to side, and gives the next one the same size', () => {
    const { editor, id } = drawn();
    const hand = handOn(editor);
    editor.setTool('opening');
    editor.setInHand({ openingKind: 'window' });
    hand.tap(2500, 0);
    expect(editor.store.getState().said?.text).toMatch(/Drag/);
    hand.play('down 2000,0 move 2600,20 move 3210,20 up');
    hand.tap(4000, 1500);
    const windows = Object.values(editor.store.getState().plan.openings).filter((o) => o.kind === 'window');
    expect(windows).toMatchObject([
      { wall: id.south, from: 'a', alongMm: 2000, widthMm: 1210 },
      { wall: id.east, from: 'a', alongMm: 895, widthMm: 1210 },
    ]);
    expect(editor.store.getState().history.undo).toEqual(['put in window', 'put in window']);
  });

  test('is refused over another one', () => {
    const { editor } = drawn();
    const hand = handOn(editor);
    editor.setTool('opening');
    hand.tap(900, 0);
    expect(editor.store.getState().said).toMatchObject({ refusal: true, text: 'There is a door in that place.' });
    expect(editor.store.getState().history.undo).toEqual([]);
  });

  test('slides along its wall and stays in it', () => {
    const { editor, id } = drawn();
    const hand = handOn(editor);
    hand.play('down 900,0 move 1400,30 up');
    expect(editor.store.getState().plan.openings[id.door!]).toMatchObject({ alongMm: 1000 });
    hand.play('down 1400,0 move 9000,0 up');
    expect(editor.store.getState().plan.openings[id.door!]).toMatchObject({ alongMm: 3200 });
  });
});

describe('the point tool', () => {
  test('hangs a boiler on the side of the wall that is tapped, free where there is none', () => {
    const { editor, id } = drawn();
    const hand = handOn(editor);
    editor.setTool('point');
    hand.tap(3900, 1003);
    hand.tap(2000, 1203);
    const made = Object.values(editor.store.getState().plan.points).slice(2);
    expect(made.map((p) => p.place)).toMatchObject([
      { on: 'wall', wall: id.east, side: 'left', from: 'a', alongMm: 1000 },
      { on: 'storey', x: 2000, y: 1200, angleDeg: 0 },
    ]);
    expect(editor.store.getState().selection).toEqual([{ map: 'points', id: made[1]!.id }]);
  });

  test('on a face it takes the height that is tapped', () => {
    const { editor, id } = drawn();
    editor.foldUp({ wall: id.east!, side: 'left' });
    editor.setTool('point');
    handOn(editor).tap(1000, 1302);
    const point = Object.values(editor.store.getState().plan.points).at(-1)!;
    expect(point.place).toMatchObject({
      on: 'wall',
      wall: id.east,
      side: 'left',
      height: { from: 'floor', of: 'ground', mm: 1300 },
    });
    const wall = editor.store.getState().plan.walls[id.east!]!;
    expect(point.place.on === 'wall' && point.place.alongMm).toBeCloseTo(wallLength(wall) - 1000, 6);
  });
});

describe('the item tool', () => {
  test('parts the leg that is tapped and puts the valve at the new node', () => {
    const { editor, id } = drawn();
    editor.setTool('item');
    editor.setInHand({ itemKind: 'isolation-valve' });
    handOn(editor).tap(1000, 1503);
    const { plan, history } = editor.store.getState();
    const item = Object.values(plan.items)[0]!;
    expect(plan.legs[id['cold.2']!]?.b).toBe(item.node);
    expect(Object.values(plan.legs).filter((l) => l.run === id.cold)).toHaveLength(2);
    expect(history.undo).toEqual(['put in isolation valve']);
  });

  test('asks for a pipe elsewhere', () => {
    const { editor } = drawn();
    editor.setTool('item');
    handOn(editor).tap(3000, 1500);
    expect(editor.store.getState().said?.text).toMatch(/Tap the pipe/);
  });
});

describe('keys', () => {
  test('every tool has a letter of its own', () => {
    const keys = toolsInOrder().map((t) => t.key);
    expect(new Set(keys).size).toBe(keys.length);
    expect(keys.every((k) => /^[a-z]$/.test(k))).toBe(true);
  });

  test('letters take tools, but not while somebody types', () => {
    const editor = editorOf();
    expect(editor.key({ key: 'w', ctrl: false, shift: false, alt: false, typing: true })).toBe(false);
    press(editor, 'w');
    expect(editor.store.getState().tool).toBe('wall');
    expect(editor.key({ key: 'R', ctrl: false, shift: true, alt: false })).toBe(false);
    press(editor, 'r');
    expect(editor.store.getState().tool).toBe('run');
    expect(bindingOf(defaultKeys(), { key: 'q', ctrl: false, shift: false, alt: false })).toBeUndefined();
  });

  test('ctrl and z undoes, with shift redoes, ctrl and d copies what is chosen', () => {
    const { editor, id } = drawn();
    const held = { ctrl: true, shift: false, alt: false };
    editor.select([{ map: 'runs', id: id.cold! }]);
    editor.key({ key: 'd', ...held });
    expect(Object.keys(editor.store.getState().plan.runs)).toHaveLength(3);
    const [copy] = editor.store.getState().selection;
    expect(copy?.id).not.toBe(id.cold);
    editor.key({ key: 'z', ...held });
    expect(Object.keys(editor.store.getState().plan.runs)).toHaveLength(2);
    editor.key({ key: 'Z', ...held, shift: true });
    expect(Object.keys(editor.store.getState().plan.runs)).toHaveLength(3);
  });
});

describe('the room tool', () => {
  test('chooses a named space, names a new one, and says where nothing closes', () => {
    const { editor, id } = drawn();
    const hand = handOn(editor);
    editor.setTool('room');
    hand.tap(3000, 1500);
    expect(editor.store.getState().selection).toEqual([{ map: 'rooms', id: id.kitchen }]);
    expect(editor.store.getState().history.undo).toEqual([]);
    editor.run('room.delete', { room: id.kitchen });
    hand.tap(3000, 1500);
    expect(editor.store.getState().ask?.title).toBe('What is this room?');
    press(editor, 'use kitchen');
    expect(Object.values(editor.store.getState().plan.rooms)).toMatchObject([
      { name: 'Kitchen', seed: { x: 3000, y: 1500 } },
    ]);
    hand.tap(-2000, 1500);
    // Where nothing is closed it is a corner of a room to come; Enter gives the place a name all the same.
    press(editor, 'Enter');
    expect(editor.store.getState().said?.text).toMatch(/No walls close/);
  });
});

describe('the void tool', () => {
  const voids = (editor: ReturnType<typeof editorOf>) => Object.values(editor.store.getState().plan.voids);

  test('draws a box in one drag, between the heights of its kind', () => {
    const editor = editorOf();
    editor.setTool('void');
    handOn(editor).play('down 0,0 move 900,600 move 2000,1000 up');
    expect(voids(editor)).toMatchObject([
      {
        kind: 'ceiling',
        outline: [
          { x: 0, y: 0 },
          { x: 2000, y: 0 },
          { x: 2000, y: 1000 },
          { x: 0, y: 1000 },
        ],
        bottom: { from: 'ceiling', of: 'ground', mm: 0 },
        top: { from: 'ceiling', of: 'ground', mm: 250 },
        sureness: 'assumed',
      },
    ]);
    expect(editor.store.getState().history.undo).toEqual(['draw ceiling void']);
  });

  test('outlines by corners and closes on the first one; corners in line are no void', () => {
    const editor = editorOf();
    const hand = handOn(editor);
    editor.setTool('void');
    editor.setInHand({ voidKind: 'floor' });
    hand.tap(0, 0);
    hand.tap(1000, 0);
    press(editor, 'Enter');
    expect(editor.store.getState().said?.text).toMatch(/three corners/);
    hand.tap(1000, 700);
    hand.tap(2000, 700);
    press(editor, 'Backspace');
    hand.tap(0, 700);
    hand.tap(5, 5);
    expect(voids(editor)).toMatchObject([
      { kind: 'floor', top: { from: 'floor', mm: 0 }, bottom: { from: 'floor', mm: -250 } },
    ]);
    expect(voids(editor)[0]?.outline).toHaveLength(4);
  });
});

describe('the tool for unseen pipe', () => {
  test('joins two places with a stretch that is only bounded', () => {
    const { editor, id } = drawn();
    const hand = handOn(editor);
    editor.setTool('stretch');
    hand.tap(1500, 2000);
    hand.tap(2500, 2500);
    const [stretch] = Object.values(editor.store.getState().plan.stretches);
    expect(stretch).toMatchObject({ a: id['gas.7'], tube: { size: null }, bends: { lo: 0 } });
    expect(stretch!.lengthMm.lo).toBeLessThan(stretch!.lengthMm.hi);
    expect(editor.store.getState().history.undo).toEqual(['draw unseen stretch']);
  });
});
