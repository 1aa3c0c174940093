import { describe, expect, test } from 'vitest';
import type { Editor, Pane } from '../../src/editor/editor-api.ts';
import { toPixels } from '../../src/editor/input/camera.ts';
import { workPlane } from '../../src/editor/input/work-plane.ts';
import { writePlan } from '../../src/files/format/write-plan.ts';
import { facePlane } from '../../src/geometry/face-plane.ts';
import { connectionPlace, pointFrame } from '../../src/geometry/hosting.ts';
import { nodePlace } from '../../src/geometry/places.ts';
import type { Xyz } from '../../src/plan/records/parts.ts';
import { drawn } from './drawn.ts';
import { handOn, press } from './hand.ts';

/** The room of `drawn` with a partition across its corner, 3 to 4, besides. */
function skewed() {
  const { editor, id } = drawn();
  const made = editor.run('wall.add', {
    storey: 'ground',
    a: { x: 2600, y: 0 },
    b: { x: 4000, y: 1866.7 },
    thicknessMm: 100,
    construction: 'stud',
  });
  if (!made.ok) throw new Error(made.why);
  return { editor, id: { ...id, skew: made.made[0] ?? '' } as Record<string, string> };
}

const WALLS = ['south', 'east', 'north', 'west', 'skew'];
const SIDES = ['left', 'right'] as const;
const EVERY = WALLS.flatMap((wall) => SIDES.map((side) => [wall, side] as const));

const panesOf = (editor: Editor) => editor.store.getState().panes;

/** Where a place of the house is seen in a pane, px. */
function seen(editor: Editor, pane: Pane | null, at: Xyz): readonly [number, number] {
  const plane = pane && workPlane(editor.store.getState().plan, pane.view);
  if (!pane || !plane) throw new Error('no such pane');
  const [x, y] = toPixels(pane, plane.onto(at));
  return [x, y];
}

function everyNode(editor: Editor): Xyz[] {
  const { plan } = editor.store.getState();
  const nodes = Object.values(plan.nodes).map((n) => nodePlace(plan, n)?.at);
  return nodes.filter((at) => at !== undefined);
}

function expectAligned(editor: Editor): void {
  const { plan, face } = panesOf(editor);
  expect(face?.camera.mmPerPx).toBe(plan.camera.mmPerPx);
  const places = everyNode(editor);
  expect(places.length).toBeGreaterThan(4);
  for (const at of places) {
    expect(seen(editor, plan, at)[0]).toBeCloseTo(seen(editor, face, at)[0], 6);
  }
}

describe.each(EVERY)('the %s wall folded up from the %s', (wall, side) => {
  const up = () => {
    const made = skewed();
    made.editor.foldUp({ wall: made.id[wall]!, side });
    return made;
  };

  test('what is seen on the face is seen straight under it, with the room below the wall', () => {
    const { editor, id } = up();
    expectAligned(editor);
    const { plan } = editor.store.getState();
    const face = facePlane(plan.walls[id[wall]!]!, side);
    const below = panesOf(editor).plan;
    const [x0, y0] = seen(editor, below, face.toHouse({ s: 0, z: 0, depth: 0 }));
    const [x1, y1] = seen(editor, below, face.toHouse({ s: 1000, z: 0, depth: 0 }));
    const [, y2] = seen(editor, below, face.toHouse({ s: 0, z: 0, depth: 500 }));
    expect([x1 - x0, y1 - y0].map((px) => px * below.camera.mmPerPx)).toEqual([
      expect.closeTo(1000, 6),
      expect.closeTo(0, 6),
    ]);
    expect(y2).toBeGreaterThan(y0);
  });

  test('either pane may be moved or brought nearer: both stay in line', () => {
    const { editor } = up();
    const at = { x: 210, y: 130, deltaX: 40, deltaY: -25 };
    for (const pane of ['plan', 'face'] as const) {
      editor.wheel({ ...at, pane, ctrl: false, pixelMode: true });
      expectAligned(editor);
      editor.wheel({ ...at, pane, ctrl: true, pixelMode: false });
      expectAligned(editor);
      editor.setActivePane(pane);
      editor.zoomToFit();
      expectAligned(editor);
    }
  });

  test('folded down, the plan is seen as before, and nothing of it was kept', () => {
    const { editor, id } = skewed();
    editor.setCamera('plan', { centre: [1234, 567], mmPerPx: 7 });
    const before = editor.store.getState();
    const file = writePlan(before.plan, { savedAt: '2026-01-01T00:00:00Z', writer: 'test', blobs: {} });
    editor.foldUp({ wall: id.south!, side: 'left' });
    editor.foldUp({ wall: id[wall]!, side });
    editor.setCamera('face', { centre: [100, 1200], mmPerPx: 3 });
    editor.foldUp(null);
    const after = editor.store.getState();
    expect(after.panes).toEqual(before.panes);
    expect(after.history).toEqual(before.history);
    expect(writePlan(after.plan, { savedAt: '2026-01-01T00:00:00Z', writer: 'test', blobs: {} })).toBe(file);
  });

  test('a place pointed at in the plan is that place of the house', () => {
    const { editor } = up();
    editor.setActivePane('plan');
    editor.setTool('run');
    const hand = handOn(editor);
    const plane = workPlane(editor.store.getState().plan, panesOf(editor).plan.view)!;
    for (const [x, y] of [
      [1100, 1450],
      [1100, 2350],
    ] as const) {
      const [across, over] = plane.onto({ x, y, z: 0 });
      hand.tap(across, over);
    }
    const { plan } = editor.store.getState();
    const [a, b] = Object.values(plan.nodes).slice(-2);
    expect(nodePlace(plan, a!)!.at).toMatchObject({ x: expect.closeTo(1100, 3), y: expect.closeTo(1450, 3) });
    expect(nodePlace(plan, b!)!.at).toMatchObject({ x: expect.closeTo(1100, 3), y: expect.closeTo(2350, 3) });
  });

  test('what lies under the finger is what is drawn there', () => {
    const { editor, id } = up();
    editor.setActivePane('plan');
    const hand = handOn(editor);
    const tap = (at: Xyz): void => {
      const plane = workPlane(editor.store.getState().plan, panesOf(editor).plan.view)!;
      const [x, y] = plane.onto(at);
      hand.tap(x, y);
    };
    const { plan } = editor.store.getState();
    const gas = Object.values(plan.legs).find((l) => l.run === id['gas.0'])!.run;
    tap({ x: 1500, y: 1450, z: 0 });
    expect(editor.store.getState().selection).toEqual([{ map: 'runs', id: gas }]);
    tap({ x: 0, y: 700, z: 0 });
    expect(editor.store.getState().selection).toEqual([{ map: 'walls', id: id.west }]);
    tap({ x: 900, y: 0, z: 0 });
    expect(editor.store.getState().selection).toEqual([{ map: 'openings', id: id.door }]);
    tap({ x: 400, y: 2300, z: 0 });
    expect(editor.store.getState().selection).toEqual([{ map: 'rooms', id: id.kitchen }]);
  });

  test('a dragged corner of a pipe goes where it is dragged', () => {
    const { editor } = up();
    editor.setActivePane('plan');
    const hand = handOn(editor);
    const plane = workPlane(editor.store.getState().plan, panesOf(editor).plan.view)!;
    const end = Object.values(editor.store.getState().plan.nodes).find((n) => {
      const at = nodePlace(editor.store.getState().plan, n)?.at;
      return at?.x === 1500 && at.y === 2000;
    })!;
    const from = plane.onto({ x: 1500, y: 2000, z: 0 });
    const to = plane.onto({ x: 1900, y: 2300, z: 0 });
    editor.select([{ map: 'nodes', id: end.id }]);
    hand.play(
      `down ${from[0]},${from[1]} move ${(from[0] + to[0]) / 2},${(from[1] + to[1]) / 2} move ${to[0]},${to[1]} up`,
    );
    const { plan } = editor.store.getState();
    const now = nodePlace(plan, plan.nodes[end.id]!)!.at;
    expect(Math.hypot(now.x - 1900, now.y - 2300)).toBeLessThan(60);
    expect(editor.store.getState().said).toBeNull();
  });

  test('arrow keys move what is chosen the way it is seen', () => {
    const { editor, id } = up();
    editor.setActivePane('plan');
    editor.select([{ map: 'points', id: id.meter! }]);
    const place = (): Xyz => {
      const { plan } = editor.store.getState();
      return pointFrame(plan, plan.points[id.meter!]!)!.origin;
    };
    const below = panesOf(editor).plan;
    const mm = below.camera.mmPerPx;
    for (const [key, dx, dy] of [
      ['ArrowRight', 10, 0],
      ['ArrowUp', 0, -10],
      ['ArrowLeft', -10, 0],
      ['ArrowDown', 0, 10],
    ] as const) {
      const [x0, y0] = seen(editor, below, place());
      const z = place().z;
      press(editor, key);
      const [x1, y1] = seen(editor, below, place());
      expect([(x1 - x0) * mm, (y1 - y0) * mm]).toEqual([expect.closeTo(dx, 2), expect.closeTo(dy, 2)]);
      expect(place().z).toBe(z);
    }
    editor.setActivePane('face');
    const z = place().z;
    press(editor, 'ArrowUp');
    expect(place().z).toBe(z + 10);
  });

  test('a wall dragged in the plan goes across itself, its end where the hand is', () => {
    const { editor, id } = up();
    editor.setActivePane('plan');
    const hand = handOn(editor);
    const plane = workPlane(editor.store.getState().plan, panesOf(editor).plan.view)!;
    const drag = (from: Xyz, to: Xyz): void => {
      const [p, q] = [plane.onto(from), plane.onto(to)];
      hand.play(`down ${p[0]},${p[1]} move ${(p[0] + q[0]) / 2},${(p[1] + q[1]) / 2} move ${q[0]},${q[1]} up`);
    };
    editor.select([{ map: 'walls', id: id.west! }]);
    drag({ x: 0, y: 700, z: 0 }, { x: -300, y: 760, z: 0 });
    const moved = editor.store.getState().plan.walls[id.west!]!;
    expect([moved.a.x, moved.b.x]).toEqual([expect.closeTo(-300, 3), expect.closeTo(-300, 3)]);
    expect([moved.a.y, moved.b.y]).toEqual([expect.closeTo(3000, 3), expect.closeTo(0, 3)]);
    expectAligned(editor);
  });

  test('a thing on a wall and a door slide along it with the hand', () => {
    const { editor, id } = up();
    editor.setActivePane('plan');
    const hand = handOn(editor);
    const drag = (from: Xyz, to: Xyz): void => {
      const plane = workPlane(editor.store.getState().plan, panesOf(editor).plan.view)!;
      const [p, q] = [plane.onto(from), plane.onto(to)];
      hand.play(`down ${p[0]},${p[1]} move ${(p[0] + q[0]) / 2},${(p[1] + q[1]) / 2} move ${q[0]},${q[1]} up`);
    };
    drag({ x: 900, y: 0, z: 0 }, { x: 1200, y: 20, z: 0 });
    expect(editor.store.getState().plan.openings[id.door!]?.alongMm).toBeCloseTo(800, 6);
    const { plan } = editor.store.getState();
    const tail = connectionPlace(plan, id.boiler!, 'cold')!.at;
    drag({ x: 2000, y: 2900, z: 0 }, { x: 2300, y: 2880, z: 0 });
    const now = connectionPlace(editor.store.getState().plan, id.boiler!, 'cold')!.at;
    expect(now.x - tail.x).toBeCloseTo(300, 6);
    expect(now.y).toBeCloseTo(tail.y, 6);
  });
});

describe('a plan under a wall', () => {
  test('a wall that is turned has its plan turned again, back with undo; one that is gone is folded down', () => {
    const { editor, id } = skewed();
    const flat = panesOf(editor);
    editor.foldUp({ wall: id.skew!, side: 'left' });
    const before = panesOf(editor);
    editor.run('wall.move', { wall: id.skew, end: 'b', to: { x: 4000, y: 1200 } });
    expect(panesOf(editor).plan.view).not.toEqual(before.plan.view);
    expectAligned(editor);
    editor.undo();
    expect(panesOf(editor).plan.view).toEqual(before.plan.view);
    expectAligned(editor);
    editor.run('wall.delete', { wall: id.skew });
    expect(panesOf(editor)).toEqual(flat);
    editor.undo();
    expect(panesOf(editor).face).toBeNull();
  });

  test('a step that leaves the wall where it is moves no camera', () => {
    const { editor, id } = skewed();
    editor.foldUp({ wall: id.skew!, side: 'right' });
    editor.setCamera('face', { centre: [333.3, 1111.1], mmPerPx: 3.7 });
    const before = panesOf(editor);
    editor.select([{ map: 'points', id: id.meter! }]);
    press(editor, 'ArrowUp');
    expect(panesOf(editor)).toBe(before);
  });

  test('a place that is shown comes to the middle', () => {
    const { editor, id } = skewed();
    editor.foldUp({ wall: id.east!, side: 'left' });
    editor.showPlace({ x: 700, y: 2100, z: 300 }, 'ground');
    const { plan } = panesOf(editor);
    const [x, y] = seen(editor, plan, { x: 700, y: 2100, z: 0 });
    expect([x, y]).toEqual([expect.closeTo(plan.width / 2, 6), expect.closeTo(plan.height / 2, 6)]);
    expectAligned(editor);
  });

  test('right angles and boxes are those of the wall that is folded up', () => {
    const { editor, id } = skewed();
    editor.foldUp({ wall: id.skew!, side: 'left' });
    editor.setActivePane('plan');
    const hand = handOn(editor);
    const plane = workPlane(editor.store.getState().plan, panesOf(editor).plan.view)!;
    const [x, y] = plane.onto({ x: 1000, y: 1200, z: 0 });
    editor.setTool('void');
    hand.play(`down ${x},${y} move ${x + 200},${y + 100} move ${x + 1003},${y + 498} up`);
    const { outline } = Object.values(editor.store.getState().plan.voids).at(-1)!;
    const seenAt = outline.map((p) => plane.onto({ ...p, z: 0 }));
    const sides = seenAt.map((p, i) => {
      const q = seenAt[(i + 1) % seenAt.length]!;
      return [q[0] - p[0], q[1] - p[1]] as const;
    });
    expect(sides).toHaveLength(4);
    for (const [dx, dy] of sides) expect(Math.min(Math.abs(dx), Math.abs(dy))).toBeLessThan(0.01);
  });

  test('a thing put down in the open stands level as it is seen', () => {
    const { editor, id } = skewed();
    editor.setInHand({ pointKind: 'gas-meter' });
    editor.setTool('point');
    for (const [wall, deg] of [
      ['east', 90],
      ['north', 180],
      ['skew', (Math.atan2(1866.7, 1400) * 180) / Math.PI],
    ] as const) {
      editor.foldUp({ wall: id[wall]!, side: 'right' });
      editor.setActivePane('plan');
      const plane = workPlane(editor.store.getState().plan, panesOf(editor).plan.view)!;
      const [x, y] = plane.onto({ x: 1600, y: 1500, z: 0 });
      handOn(editor).tap(x, y);
      const { place } = Object.values(editor.store.getState().plan.points).at(-1)!;
      expect(place).toMatchObject({ on: 'storey', angleDeg: expect.closeTo(deg, 4) });
    }
  });
});
