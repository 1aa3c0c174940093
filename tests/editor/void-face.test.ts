import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boxOnWall } from '../../src/drawing/building/box-on-wall.ts';
import { spanRange } from '../../src/drawing/building/span-items.ts';
import { retaken } from '../../src/editor/tools/void-retake.ts';
import { intoWall } from '../../src/geometry/wall-frame.ts';
import { asking } from './asking.ts';
import { drawn } from './drawn.ts';
import { blank, editorOf, handOn, press } from './hand.ts';

/** A wall of 4 m at an angle, with one of its faces folded up, and a kind of void in hand. */
function facing(angle: number, side: 'left' | 'right', voidKind: 'boxing' | 'chase' | 'ceiling') {
  const drawing = editorOf(blank());
  const [a, l] = [{ x: 700, y: -300 }, 4000];
  const b = { x: a.x + l * Math.cos(angle), y: a.y + l * Math.sin(angle) };
  const told = { storey: 'ground', a, b, thicknessMm: 100, construction: 'block' };
  const made = drawing.run('wall.add', told);
  const wall = made.ok ? (made.made[0] ?? '') : '';
  const editor = asking(drawing.store.getState().plan);
  editor.foldUp({ wall, side });
  editor.setActivePane('face');
  editor.setTool('void');
  editor.setInHand({ voidKind });
  return { editor, wall, hand: handOn(editor) };
}

const state = (editor: ReturnType<typeof asking>) => editor.store.getState();
const voids = (editor: ReturnType<typeof asking>) => Object.values(state(editor).plan.voids);

describe('a boxing on the face of a wall', () => {
  test('is a drag and a depth; it stands against that face, in any turn of the plan', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 6.28, noNaN: true }),
        fc.boolean(),
        fc.constantFrom('boxing' as const, 'chase' as const),
        (angle, isLeft, kind) => {
          const side = isLeft ? 'left' : 'right';
          const { editor, wall, hand } = facing(angle, side, kind);
          hand.play('down 1000,300 move 1200,900 move 1400,1500 up');
          expect(voids(editor)).toHaveLength(0);
          press(editor, '4', '0', 'Enter');
          const [v] = voids(editor);
          if (!v) throw new Error('nothing was made');
          const on = boxOnWall(state(editor).plan, v);
          expect(on).toMatchObject({ wall, side, depthMm: expect.closeTo(40, 0), into: kind === 'chase' });
          expect((on?.toS ?? 0) - (on?.fromS ?? 0)).toBeCloseTo(400, 0);
          const w = state(editor).plan.walls[wall];
          if (!w) throw new Error('no wall');
          // Off the middle of the wall, on the side that was looked at: from 50, out to 90 or in to 10.
          const off = v.outline.map((p) => intoWall(w, { ...p, z: 0 }).v * (isLeft ? 1 : -1));
          expect(Math.min(...off)).toBeCloseTo(kind === 'chase' ? 10 : 50, 0);
          expect(Math.max(...off)).toBeCloseTo(kind === 'chase' ? 50 : 90, 0);
          expect([v.bottom, v.top]).toEqual([
            { from: 'floor', of: 'ground', mm: 300 },
            { from: 'floor', of: 'ground', mm: 1500 },
          ]);
          expect(state(editor).history.undo).toEqual([`draw ${kind} void`]);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('the depth has keys, and the last one is offered again', () => {
    const { editor, hand } = facing(0, 'right', 'boxing');
    hand.play('down 1000,300 move 1200,900 move 1400,1500 up');
    expect(
      state(editor)
        .ask?.rows.flat()
        .map((k) => k.label),
    ).toEqual(['100', '150', '200']);
    press(editor, 'Enter');
    expect(voids(editor)).toHaveLength(0);
    press(editor, 'size 150');
    hand.play('down 2000,300 move 2200,900 move 2400,2400 up');
    press(editor, 'Enter');
    expect(voids(editor).map((v) => boxOnWall(state(editor).plan, v)?.depthMm)).toEqual([150, 150]);
    expect(voids(editor)[1]?.top).toEqual({ from: 'ceiling', of: 'ground', mm: 0 });
  });

  test('a tap, a ceiling in hand and a chase through the wall are refused in words', () => {
    const { editor, hand } = facing(0, 'right', 'chase');
    hand.tap(1000, 300);
    expect(state(editor).said?.text).toMatch(/one corner of it to the other/);
    hand.play('down 1000,300 move 1200,900 move 1400,1500 up');
    press(editor, '1', '0', '0', 'Enter');
    expect(state(editor).said?.text).toMatch(/goes through this wall of 100/);
    expect(state(editor).toolState).toBe('boxDepth');
    press(editor, 'Escape');
    editor.setInHand({ voidKind: 'ceiling' });
    hand.play('down 1000,300 move 1200,900 move 1400,1500 up');
    expect(state(editor).said?.text).toMatch(/boxings and chases/);
    expect(voids(editor)).toHaveLength(0);
  });

  test('is made larger by a corner on the face, and deeper by one in the plan, as one step each', () => {
    const { editor, hand, wall } = facing(0.4, 'left', 'boxing');
    hand.play('down 1000,300 move 1200,900 move 1400,1500 up');
    press(editor, 'size 150');
    const [made] = voids(editor);
    editor.setTool('select');
    hand.play('down 1400,1500 move 1500,1600 move 1600,1800 up');
    const plan = state(editor).plan;
    const v = plan.voids[made?.id ?? ''];
    expect(v && boxOnWall(plan, v)).toMatchObject({
      wall,
      fromS: expect.closeTo(1000, 0),
      toS: expect.closeTo(1600, 0),
    });
    expect(v?.top).toEqual({ from: 'floor', of: 'ground', mm: 1800 });
    expect(v?.bottom).toEqual({ from: 'floor', of: 'ground', mm: 300 });
    expect(state(editor).history.undo).toHaveLength(2);
    editor.undo();
    expect(state(editor).plan.voids[made?.id ?? '']).toEqual(made);
  });

  test('is chosen by a tap on the face', () => {
    const { editor, hand } = facing(0, 'right', 'boxing');
    hand.play('down 1000,300 move 1200,900 move 1400,1500 up');
    press(editor, 'size 100');
    editor.setTool('select');
    editor.select([]);
    hand.tap(1200, 900);
    expect(state(editor).selection).toEqual([{ map: 'voids', id: voids(editor)[0]?.id }]);
  });
});

describe('what is done to a void', () => {
  const chosen = () => {
    const editor = asking(drawn().editor.store.getState().plan);
    const hand = handOn(editor);
    editor.setTool('void');
    hand.tap(2500, 1500);
    press(editor, '2', 'size 400', 'size 200');
    const id = voids(editor)[0]?.id ?? '';
    const v = () => {
      const found = state(editor).plan.voids[id];
      if (!found) throw new Error('the void is gone');
      return found;
    };
    return { editor, hand, id, v };
  };

  test('a joist is tapped, or dragged across', () => {
    const { editor, hand, v, id } = chosen();
    editor.setInHand({ voidTask: 'joist' });
    const first = v().joists?.first.x ?? 0;
    hand.tap(first + 800, 1500);
    expect(state(editor).inHand.joist).toEqual({ void: id, index: 2 });
    expect(v().joists?.exceptions).toEqual([]);
    hand.play(`down ${first + 800},1500 move ${first + 820},1400 move ${first + 850},1200 up`);
    expect(v().joists?.exceptions).toEqual([{ index: 2, offsetMm: 50, what: '' }]);
    expect(state(editor).ask?.title).toBe('Joist 3');
    press(editor, 'doubled');
    expect(v().joists?.exceptions).toEqual([{ index: 2, offsetMm: 50, what: 'doubled' }]);
    press(editor, '-', '3', '0', 'Enter');
    expect(v().joists?.exceptions).toEqual([{ index: 2, offsetMm: -30, what: 'doubled' }]);
    press(editor, 'plain');
    expect(v().joists?.exceptions).toEqual([]);
    hand.tap(first + 1400, 1500);
    expect(state(editor).said?.text).toMatch(/Tap a joist/);
    press(editor, 'Escape');
    expect(state(editor).tool).toBe('select');
  });

  test('exceptions are kept and taken back, whatever was done before', () => {
    const { editor, id, v } = chosen();
    const change = fc.record({
      offsetMm: fc.integer({ min: -390, max: 390 }),
      what: fc.constantFrom('', 'missing', 'doubled', 'trimmer'),
    });
    fc.assert(
      fc.property(fc.integer({ min: -3, max: 12 }), change, (index, told) => {
        const was = v().joists?.exceptions;
        const { revision } = state(editor);
        expect(editor.run('void.joist', { void: id, index, change: told }).ok).toBe(true);
        const plain = told.offsetMm === 0 && told.what === '';
        expect(v().joists?.exceptions.find((e) => e.index === index)).toEqual(plain ? undefined : { index, ...told });
        const order = v().joists?.exceptions.map((e) => e.index) ?? [];
        expect(order).toEqual([...order].sort((a, b) => a - b));
        // What stood so already is no step, and there is nothing to take back.
        if (state(editor).revision === revision) return;
        editor.undo();
        expect(v().joists?.exceptions).toEqual(was);
        editor.run('void.joist', { void: id, index, change: told });
      }),
      { numRuns: 60 },
    );
    expect(editor.run('void.joist', { void: id, index: 1, change: { offsetMm: 400, what: '' } }).ok).toBe(false);
  });

  test('the first joist is dragged to its place and is assumed no longer', () => {
    const { editor, hand, v } = chosen();
    editor.setInHand({ voidTask: 'first' });
    hand.play('down 700,1500 move 800,1500 move 900,1500 up');
    expect(v().joists?.first.x).toBe(900);
    expect(v().joists?.assumed).not.toContain('first');
    expect(state(editor).tool).toBe('select');
  });

  test('the first joist is typed off the wall it is counted from', () => {
    const { editor, v } = chosen();
    editor.setInHand({ voidTask: 'first' });
    expect(state(editor).ask?.says[0]).toMatch(/off the left edge: now 85/);
    press(editor, '2', '1', '0', 'Enter');
    expect(v().joists?.first.x).toBeCloseTo(50 + 210, 3);
    expect(state(editor)).toMatchObject({ tool: 'select', ask: null });
  });

  test('the walls at both ends are taken as bearings with one key', () => {
    const { editor, v } = chosen();
    editor.setInHand({ voidTask: 'bearing' });
    press(editor, 'both ends');
    expect(
      v()
        .bearings.map((b) => b.a.y === b.b.y)
        .every(Boolean),
    ).toBe(true);
    expect(spanRange(v())).toEqual({ lo: 2900, hi: 2900, ends: 'bearings' });
  });

  test('another tool or Stop ends what was done to the void', () => {
    const { editor } = chosen();
    editor.setInHand({ voidTask: 'joist' });
    editor.cancel();
    expect(state(editor)).toMatchObject({ tool: 'select', ask: null, inHand: { voidTask: 'room' } });
    editor.setTool('void');
    editor.setInHand({ voidTask: 'hole' });
    editor.setTool('run');
    expect(state(editor)).toMatchObject({ tool: 'run', ask: null, inHand: { voidTask: 'room' } });
  });

  test('bearings are two taps on walls, as one step', () => {
    const { editor, hand, v } = chosen();
    editor.setInHand({ voidTask: 'bearing' });
    hand.tap(2000, 50);
    expect(state(editor).toolState).toBe('bearings');
    editor.cancel();
    expect(state(editor)).toMatchObject({ tool: 'select', inHand: { voidTask: 'room' } });
    editor.setTool('void');
    editor.setInHand({ voidTask: 'bearing' });
    hand.tap(2000, 50);
    expect(v().bearings).toEqual([]);
    hand.tap(2000, 2950);
    expect(v().bearings.map((b) => [b.a.y, b.b.y])).toEqual([
      [50, 50],
      [2950, 2950],
    ]);
    editor.undo();
    expect(v().bearings).toEqual([]);
  });

  test('a hole is a drag, and joists end at it', () => {
    const { editor, hand, v, id } = chosen();
    editor.setInHand({ voidTask: 'hole' });
    hand.play('down 1000,1000 move 1500,1500 move 2000,2000 up');
    expect(v().holes).toHaveLength(1);
    expect(voids(editor)).toHaveLength(1);
    expect(state(editor).tool).toBe('select');
    expect(editor.run('void.closeHole', { void: id, index: 0 }).ok).toBe(true);
    expect(v().holes).toEqual([]);
    const outside = [
      { x: 9000, y: 9000 },
      { x: 9500, y: 9000 },
      { x: 9500, y: 9500 },
    ];
    expect(editor.run('void.cutHole', { void: id, hole: outside })).toMatchObject({ ok: false });
  });

  test('walls that move leave the outline; it is taken from the room again, and assumed joists keep off the wall', () => {
    const { editor, v } = chosen();
    const { plan, chosen: looked } = state(editor);
    expect(retaken(plan, v(), looked)).toBeNull();
    const west = Object.values(plan.walls).find((w) => w.a.x === 0 && w.b.x === 0);
    const first = v().joists?.first.x ?? 0;
    editor.run('wall.move', { wall: west?.id, by: { x: -500, y: 0 } });
    expect(Math.min(...v().outline.map((p) => p.x))).toBe(50);
    const change = retaken(state(editor).plan, v(), looked);
    editor.run('void.set', { void: v().id, change: change ?? {} });
    expect(Math.min(...v().outline.map((p) => p.x))).toBeCloseTo(-450, 3);
    expect(v().joists?.first.x).toBeCloseTo(first - 500, 3);
    editor.undo();
    expect(Math.min(...v().outline.map((p) => p.x))).toBe(50);
  });

  test('turned joists forget single ones; told figures are assumed no longer', () => {
    const { editor, id, v } = chosen();
    editor.run('void.joist', { void: id, index: 1, change: { offsetMm: 0, what: 'missing' } });
    editor.run('void.joists', { void: id, change: { breadthMm: 44 } });
    expect(v().joists?.assumed).toEqual(['kind', 'first', 'bottom']);
    expect(v().joists?.exceptions).toHaveLength(1);
    editor.run('void.joists', { void: id, change: { wayDeg: 0 } });
    expect(v().joists?.exceptions).toEqual([]);
  });
});

test('a boxing begins in the corner of the room where a hand comes near it, on the floor', () => {
  const { editor: drawing, id } = drawn();
  const editor = asking(drawing.store.getState().plan);
  editor.foldUp({ wall: id.north ?? '', side: 'left' });
  editor.setActivePane('face');
  editor.setTool('void');
  editor.setInHand({ voidKind: 'boxing' });
  // The walls at both ends are 100 thick: the face is seen from 50 on.
  handOn(editor, 'touch').play('down 110,40 move 250,900 move 400,1500 up');
  press(editor, '1', '5', '0', 'Enter');
  const [v] = voids(editor);
  if (!v) throw new Error('nothing was made');
  const on = boxOnWall(state(editor).plan, v);
  expect(on?.fromS).toBeCloseTo(50, 0);
  expect(v.bottom).toEqual({ from: 'floor', of: 'ground', mm: 0 });
});
