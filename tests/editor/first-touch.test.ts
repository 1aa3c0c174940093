import { describe, expect, test } from 'vitest';
import { sameWay } from '../../src/editor/tools/void-joists.ts';
import { connectionPlace, pointFrame } from '../../src/geometry/hosting.ts';
import { sayFace } from '../../src/view/a11y/say-face.ts';
import { drawn } from './drawn.ts';
import { handOn } from './hand.ts';

describe('where a first tap of a run starts', () => {
  const start = (service: string, off: number) => {
    const { editor, id } = drawn();
    const hand = handOn(editor, 'touch');
    editor.setTool('run');
    editor.setInHand({ service });
    const { plan } = editor.store.getState();
    const boiler = plan.points[id.boiler!]!;
    const [a, b] = boiler.connections
      .map((c) => ({ service: c.service, at: connectionPlace(plan, boiler.id, c.id)!.at }))
      .sort((p, q) => p.at.x - q.at.x);
    const wanted = a!.service === service ? a! : b!;
    const other = wanted === a ? b! : a!;
    const share = (k: 'x' | 'y'): number => wanted.at[k] + (other.at[k] - wanted.at[k]) * off;
    hand.tap(share('x'), share('y'));
    return { took: editor.store.getState().inHand.service, other: other.service };
  };
  const { editor, id } = drawn();
  const { plan } = editor.store.getState();
  const first = plan.points[id.boiler!]!.connections.map((c) => ({
    service: c.service,
    x: connectionPlace(plan, id.boiler!, c.id)!.at.x,
  })).sort((p, q) => p.x - q.x)[0]!.service;

  test('between two tails that of the service in hand is meant, even where another is a little nearer', () => {
    expect(start(first, 0.6).took).toBe(first);
  });

  test('a tail that is clearly further off than another is not', () => {
    const { editor, id } = drawn();
    const { plan } = editor.store.getState();
    const tails = plan.points[id.boiler!]!.connections.map((c) => ({
      service: c.service,
      at: connectionPlace(plan, id.boiler!, c.id)!.at,
    }));
    const hand = handOn(editor, 'mouse');
    const [left, right] = [tails, [...tails]].map(
      (t, i) => t.sort((p, q) => (i ? q.at.x - p.at.x : p.at.x - q.at.x))[0]!,
    );
    editor.setTool('run');
    editor.setInHand({ service: left!.service });
    hand.tap(right!.at.x, right!.at.y);
    expect(editor.store.getState().inHand.service).toBe(right!.service);
  });
});

test('tapping again goes deeper, tapping elsewhere begins with what lies on top there', () => {
  const { editor } = drawn();
  const hand = handOn(editor, 'touch');
  editor.setTool('select');
  const chosen = () => editor.store.getState().selection[0]?.map;
  hand.tap(3200, 3000);
  expect(chosen()).toBe('walls');
  hand.tap(3200, 3000);
  expect(chosen()).toBe('rooms');
  hand.tap(2600, 3000);
  expect(chosen()).toBe('walls');
  hand.tap(4000, 2000);
  expect(chosen()).toBe('walls');
});

test('what stands free at the face of a wall stands with its back to it, outside too', () => {
  const { editor, id } = drawn();
  const hand = handOn(editor, 'touch');
  editor.setTool('point');
  editor.setInHand({ pointKind: 'gully', thing: null });
  hand.tap(2000, 3120);
  const { plan } = editor.store.getState();
  const gully = Object.values(plan.points).at(-1)!;
  expect(gully.place).toMatchObject({ on: 'storey', y: 3050 });
  expect(pointFrame(plan, gully)?.out.y).toBeCloseTo(1, 9);
  hand.tap(2600, 2900);
  const inside = Object.values(editor.store.getState().plan.points).at(-1)!;
  expect(inside.place).toMatchObject({ on: 'storey', y: 2950 });
  expect(pointFrame(plan, inside)?.out.y).toBeCloseTo(-1, 9);
  expect(plan.walls[id.north!]).toBeDefined();
});

test('a face is called by the room it looks into', () => {
  const { editor, id } = drawn();
  const { plan } = editor.store.getState();
  const north = plan.walls[id.north!]!;
  expect(sayFace(plan, north, 'left')).toBe('kitchen');
  expect(sayFace(plan, north, 'right')).toBe('no closed room');
  expect(sayFace({ ...plan, rooms: {} }, north, 'left')).toBe('room without a name');
});

test('ways a degree apart are one, round the half turn too', () => {
  expect(sameWay(0, 179.6)).toBe(true);
  expect(sameWay(90.4, 90)).toBe(true);
  expect(sameWay(0, 2)).toBe(false);
  expect(sameWay(0, 90)).toBe(false);
});

test('a wall that begins on the corner of a body begins at the end of the wall it is of', () => {
  const { editor } = drawn();
  const hand = handOn(editor, 'touch');
  editor.setTool('wall');
  hand.tap(4050, 3050);
  expect(editor.store.getState().ask?.title).toBe('Wall 1, up');
  for (const key of ['ArrowRight', '2', '0', '0', '0', 'Enter']) {
    editor.key({ key, ctrl: false, shift: false, alt: false });
  }
  const wall = Object.values(editor.store.getState().plan.walls).at(-1);
  expect(wall?.a).toEqual({ x: 4000, y: 3000 });
  expect(editor.store.getState().ask?.title).toBe('Wall 2, right');
  expect(editor.store.getState().ask?.rows[0]?.map((k) => k.label)).toContain('ahead');
});

test('another service in hand ends the run that is being laid; what is tapped then is a run of its own', () => {
  const { editor } = drawn();
  const hand = handOn(editor);
  editor.setTool('run');
  editor.setInHand({ service: 'cold' });
  hand.tap(3000, 600);
  hand.tap(3400, 600);
  editor.setInHand({ service: 'hot' });
  expect(editor.store.getState().toolState).toBe('idle');
  hand.tap(3000, 1600);
  hand.tap(3400, 1600);
  const runs = Object.values(editor.store.getState().plan.runs).slice(-2);
  expect(runs.map((r) => r.service)).toEqual(['cold', 'hot']);
  const legs = Object.values(editor.store.getState().plan.legs);
  expect(runs.map((r) => legs.filter((l) => l.run === r.id).length)).toEqual([1, 1]);
});

test('a finger on an appliance means its tail of the service in hand', () => {
  const { editor, id } = drawn();
  const hand = handOn(editor, 'touch');
  const { plan } = editor.store.getState();
  const tail = (service: string) => {
    const found = plan.points[id.boiler!]!.connections.find((c) => c.service === service)!;
    return { id: found.id, at: connectionPlace(plan, id.boiler!, found.id)!.at };
  };
  editor.setTool('run');
  editor.setInHand({ service: 'condensate' });
  hand.tap(tail('gas').at.x, tail('gas').at.y);
  expect(editor.store.getState().inHand.service).toBe('condensate');
  hand.tap(tail('gas').at.x, 1500);
  const leg = Object.values(editor.store.getState().plan.legs).at(-2);
  const start = editor.store.getState().plan.nodes[leg?.a ?? '']?.place;
  expect(start).toMatchObject({ on: 'connection', point: id.boiler, connection: tail('condensate').id });
});
