import { describe, expect, test } from 'vitest';
import { createEditor } from '../../src/editor/create-editor.ts';
import { workPlane } from '../../src/editor/input/work-plane.ts';
import { connectionPlace } from '../../src/geometry/hosting.ts';
import { nodePlace } from '../../src/geometry/places.ts';
import type { PlanNode } from '../../src/plan/records/pipework.ts';
import { danglingReferences } from '../../src/plan/references.ts';
import { drawn } from './drawn.ts';
import { assumptions, editorOf, handOn, idsFor, press } from './hand.ts';

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

  test('the rise it will draw shows at the open end while the height is changed', () => {
    const editor = editorOf();
    const hand = handOn(editor);
    editor.setTool('run');
    hand.tap(0, 0);
    hand.tap(1000, 0);
    expect(editor.store.getState().draft).toBeNull();
    editor.setInHand({ height: { from: 'floor', of: 'ground', mm: 2300 } });
    const { draft } = editor.store.getState();
    expect(draft?.marks).toEqual([{ mark: 'rise', at: { x: 1000, y: 0, z: 2300 } }]);
    expect(draft?.labels.map((l) => l.text)).toEqual(['up 2250']);
    editor.setInHand({ height: { from: 'floor', of: 'ground', mm: 50 } });
    expect(editor.store.getState().draft).toBeNull();
    expect(editor.store.getState().history.undo).toHaveLength(1);
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

describe('where a run starts and ends', () => {
  const made = (editor: ReturnType<typeof editorOf>, map: 'runs' | 'legs') =>
    Object.values(editor.store.getState().plan[map]).at(-1);

  test('a tap on a tail takes its service into the hand, and the pipe goes down to the height in hand', () => {
    const { editor, id } = drawn();
    const hand = handOn(editor);
    editor.setTool('run');
    editor.setInHand({ service: 'gas' });
    const flow = connectionPlace(editor.store.getState().plan, id.boiler!, 'flow')!.at;
    hand.tap(flow.x, flow.y);
    expect(editor.store.getState().inHand.service).toBe('heatingFlow');
    expect(editor.store.getState().caught).toContain('heating flow');
    hand.tap(flow.x, 1800);
    const { plan } = editor.store.getState();
    const run = made(editor, 'runs');
    const legs = Object.values(plan.legs).filter((l) => l.run === run?.id);
    expect(run).toMatchObject({ service: 'heatingFlow' });
    expect(legs).toHaveLength(2);
    expect(plan.nodes[legs[0]!.a]?.place).toEqual({ on: 'connection', point: id.boiler, connection: 'flow' });
    expect(nodePlace(plan, plan.nodes[legs[1]!.b]!)?.at).toEqual({ x: flow.x, y: flow.y - 1050, z: 50 });
  });

  test('a tap on a tail of the same service ends the run there, with the drop to it', () => {
    const { editor, id } = drawn();
    const hand = handOn(editor);
    editor.setTool('run');
    editor.setInHand({ height: { from: 'floor', of: 'ground', mm: 2000 } });
    const end = nodePlace(editor.store.getState().plan, editor.store.getState().plan.nodes[id['gas.7']!]!)!.at;
    hand.tap(end.x, end.y);
    const tail = connectionPlace(editor.store.getState().plan, id.boiler!, 'gas')!.at;
    hand.tap(tail.x, tail.y);
    const { plan, history, toolState } = editor.store.getState();
    expect(toolState).toBe('idle');
    expect(history.undo).toEqual(['finish gas run']);
    const added = Object.values(plan.legs)
      .filter((l) => l.run === id.gas)
      .slice(3);
    expect(added).toHaveLength(2);
    expect(plan.nodes[added[1]!.b]?.place).toEqual({ on: 'connection', point: id.boiler, connection: 'gas' });
    expect(Object.keys(plan.runs)).toHaveLength(2);
  });

  test('a tap on a pipe of the same service tees in: the leg is parted and keeps its id on the first side', () => {
    const { editor, id } = drawn();
    const hand = handOn(editor);
    editor.setTool('run');
    editor.setInHand({ service: 'gas', height: { from: 'floor', of: 'ground', mm: 2000 } });
    hand.tap(3000, 1500);
    hand.tap(1500, 1510);
    const { plan, toolState } = editor.store.getState();
    expect(toolState).toBe('idle');
    const parts = Object.values(plan.legs).filter((l) => l.run === id.gas);
    expect(parts).toHaveLength(4);
    const tee = plan.legs[id['gas.6']!]!.b;
    expect(nodePlace(plan, plan.nodes[tee]!)?.at).toEqual({ x: 1500, y: 1500, z: 2000 });
    expect(Object.values(plan.legs).filter((l) => l.a === tee || l.b === tee)).toHaveLength(3);
    expect(parts.at(-1)).toMatchObject({ from: id['gas.6'] });
  });

  test('pipe of another service is passed by', () => {
    const { editor } = drawn();
    const hand = handOn(editor);
    editor.setTool('run');
    editor.setInHand({ service: 'gas' });
    hand.tap(3000, 1500);
    hand.tap(1000, 1500);
    const { plan, toolState } = editor.store.getState();
    expect(toolState).toBe('aiming');
    expect(Object.values(plan.legs)).toHaveLength(5);
  });

  test('the tee tool starts on a pipe and asks for one elsewhere', () => {
    const { editor } = drawn();
    const hand = handOn(editor);
    editor.setTool('tee');
    hand.tap(3000, 1000);
    expect(editor.store.getState().said?.text).toMatch(/Tap the pipe/);
    hand.tap(1000, 1500);
    hand.tap(2200, 1500);
    const { plan } = editor.store.getState();
    expect(made(editor, 'runs')).toMatchObject({ service: 'cold' });
    expect(Object.values(plan.legs)).toHaveLength(6);
  });

  test('undo in mid-run from elsewhere takes the live end back too', () => {
    const editor = editorOf();
    const hand = handOn(editor);
    editor.setTool('run');
    hand.tap(0, 0);
    hand.tap(1000, 0);
    hand.tap(1000, 1000);
    editor.undo();
    hand.tap(2000, 0);
    expect(placesOf(editor)).toEqual([
      { x: 0, y: 0, z: 50 },
      { x: 1000, y: 0, z: 50 },
      { x: 2000, y: 0, z: 50 },
    ]);
  });

  test('a second finger in mid-run loses the live leg only', () => {
    const editor = editorOf();
    const hand = handOn(editor, 'touch');
    editor.setTool('run');
    hand.tap(0, 0);
    hand.tap(1000, 0);
    hand.play('down 1000,800 second lift up');
    expect(Object.keys(editor.store.getState().plan.legs)).toHaveLength(1);
    expect(editor.store.getState().toolState).toBe('aiming');
    hand.tap(1000, 1000);
    expect(Object.keys(editor.store.getState().plan.legs)).toHaveLength(2);
  });

  test('a run left open is in the document, and a tap on its end goes on with it', () => {
    const editor = editorOf();
    const hand = handOn(editor);
    editor.setTool('run');
    hand.tap(0, 0);
    hand.tap(1000, 0);
    press(editor, 'Escape');
    editor.setTool('select');
    editor.setTool('run');
    hand.tap(1000, 0);
    hand.tap(1000, 700);
    const { plan } = editor.store.getState();
    expect(Object.keys(plan.runs)).toHaveLength(1);
    expect(Object.keys(plan.legs)).toHaveLength(2);
  });
});

describe('on the face of a wall', () => {
  test('a run keeps the stand-off it started at, and level and upright are right angles', () => {
    const { editor, id } = drawn();
    editor.foldUp({ wall: id.north!, side: 'left' });
    const hand = handOn(editor);
    editor.setTool('run');
    const view = editor.store.getState().panes.face!.view;
    const plane = workPlane(editor.store.getState().plan, view)!;
    const tail = connectionPlace(editor.store.getState().plan, id.boiler!, 'cold')!.at;
    const [s, z] = plane.onto(tail);
    hand.tap(s, z);
    expect(editor.store.getState().inHand.service).toBe('cold');
    hand.tap(s + 8, 400);
    hand.tap(s + 600, 403);
    const { plan } = editor.store.getState();
    const run = Object.keys(plan.runs).at(-1);
    const places = Object.values(plan.legs)
      .filter((l) => l.run === run)
      .map((l) => nodePlace(plan, plan.nodes[l.b]!)!.at);
    expect(places.map((p) => plane.depth(p))).toEqual([81, 81]);
    expect(places.map((p) => p.z)).toEqual([400, 400]);
    expect(places.map((p) => Math.round(plane.onto(p)[0] - s))).toEqual([0, 600]);
    expect(plan.nodes[Object.values(plan.legs).at(-1)!.b]?.place).toMatchObject({
      height: { from: 'floor', of: 'ground', mm: 400 },
    });
  });

  test('a run that starts in the open stands off by the usual', () => {
    const { editor, id } = drawn();
    editor.foldUp({ wall: id.north!, side: 'left' });
    const hand = handOn(editor);
    editor.setTool('run');
    hand.tap(500, 500);
    hand.tap(500, 1500);
    const { plan, panes } = editor.store.getState();
    const plane = workPlane(plan, panes.face!.view)!;
    const node = Object.values(plan.nodes).at(-1)!;
    expect(plane.depth(nodePlace(plan, node)!.at)).toBeCloseTo(25, 6);
  });
});

describe('a drain', () => {
  const under = { condensate: 50 };

  test('turns just under the tail it starts at, and gives the height in hand back', () => {
    const { editor: plain, id } = drawn();
    const { plan } = plain.store.getState();
    const editor = createEditor({ plan, ids: idsFor(plan), assumptions: { ...assumptions, underTailMm: under } });
    const hand = handOn(editor);
    const tail = plan.points[id.boiler ?? '']?.connections.find((c) => c.service === 'condensate');
    const at = connectionPlace(plan, id.boiler ?? '', tail?.id ?? '')?.at;
    if (!tail || !at) throw new Error('no condensate tail');
    editor.setTool('run');
    const before = editor.store.getState().inHand.height;
    editor.setInHand({ service: 'condensate' });
    hand.tap(at.x, at.y);
    hand.tap(at.x, at.y - 900);
    const now = editor.store.getState().plan;
    const run = Object.values(now.runs).at(-1);
    const ends = Object.values(now.legs)
      .filter((leg) => leg.run === run?.id)
      .map((leg) => nodePlace(now, now.nodes[leg.b] as PlanNode)?.at.z);
    expect(run?.service).toBe('condensate');
    expect(ends.at(-1)).toBeCloseTo(at.z - 50, 1);
    editor.key({ key: 'Escape', ctrl: false, shift: false, alt: false });
    expect(editor.store.getState().inHand.height).toEqual(before);
  });
});
