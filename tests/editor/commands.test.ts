import { describe, expect, test } from 'vitest';
import type { Editor } from '../../src/editor/editor-api.ts';
import { resolveHeight } from '../../src/geometry/heights.ts';
import { nodePlace } from '../../src/geometry/places.ts';
import { drawn } from './drawn.ts';

const place = (editor: Editor, node: string | undefined) => {
  const { plan } = editor.store.getState();
  const record = plan.nodes[node ?? ''];
  return record && nodePlace(plan, record)?.at;
};
const legsOf = (editor: Editor, run: string | undefined) =>
  Object.values(editor.store.getState().plan.legs).filter((l) => l.run === run);

describe('parting and joining', () => {
  test('a parted leg keeps its id on the first side, and taking the node away makes it one again', () => {
    const { editor, id } = drawn();
    const { plan } = editor.store.getState();
    const made = editor.run('leg.split', { leg: id['cold.2'], alongMm: 700 });
    const node = made.ok ? made.made[0] : '';
    expect(place(editor, node)).toEqual({ x: 1000, y: 1200, z: 150 });
    expect(legsOf(editor, id.cold)).toMatchObject([
      { id: id['cold.2'], b: node },
      { a: node, from: id['cold.2'] },
    ]);
    editor.run('things.delete', { things: [{ map: 'nodes', id: node }] });
    expect(editor.store.getState().plan.legs).toEqual(plan.legs);
    expect(editor.store.getState().plan.nodes).toEqual(plan.nodes);
  });

  test('a corner that is taken away takes its legs, and the run in two goes on as two', () => {
    const { editor, id } = drawn();
    editor.run('leg.delete', { leg: id['gas.4'] });
    const { plan } = editor.store.getState();
    expect(legsOf(editor, id.gas)).toHaveLength(1);
    const rest = Object.values(plan.runs).find((r) => r.id !== id.gas && r.service === 'gas');
    expect(rest).toMatchObject({ from: id.gas, service: 'gas' });
    expect(legsOf(editor, rest?.id)).toHaveLength(1);
    editor.run('things.delete', { things: [{ map: 'nodes', id: id['gas.7'] }] });
    expect(editor.store.getState().plan.runs[rest?.id ?? '']).toBeUndefined();
  });
});

describe('what goes leaves the rest where it is', () => {
  test('a point that goes leaves its pipe with an open end', () => {
    const { editor, id } = drawn();
    const before = place(editor, id['gas.1']);
    editor.run('point.delete', { point: id.meter });
    expect(place(editor, id['gas.1'])).toEqual(before);
    expect(editor.store.getState().plan.nodes[id['gas.1'] ?? '']?.place.on).toBe('storey');
  });

  test('a wall that goes takes its openings and leaves what hung on it in its place', () => {
    const { editor, id } = drawn();
    editor.run('wall.delete', { wall: id.north });
    const boiler = editor.store.getState().plan.points[id.boiler ?? ''];
    expect(boiler?.place).toMatchObject({ on: 'storey', x: 2000, y: 2950 });
    editor.run('wall.delete', { wall: id.south });
    expect(editor.store.getState().plan.openings).toEqual({});
  });

  test('a void that goes leaves the pipes set from it at their height', () => {
    const { editor, id } = drawn();
    const outline = [0, 1, 2].map((i) => ({ x: i * 500, y: i === 1 ? 900 : 0 }));
    const bottom = { from: 'ceiling', of: 'ground', mm: 40 };
    const made = editor.run('void.add', { storey: 'ground', kind: 'ceiling', outline, bottom });
    const height = { from: 'voidBottom', of: made.ok ? made.made[0] : '', mm: 60 };
    editor.run('node.height', { node: id['cold.1'], height });
    expect(place(editor, id['cold.3'])?.z).toBe(2500);
    editor.run('void.delete', { void: height.of });
    const { plan } = editor.store.getState();
    expect(place(editor, id['cold.3'])?.z).toBe(2500);
    expect(plan.nodes[id['cold.3'] ?? '']?.place).toMatchObject({ height: { from: 'floor', of: 'ground', mm: 2500 } });
  });
});

describe('heights', () => {
  test('the level pipe goes to a new height as one, uprights grow, and the height stays told from the ceiling', () => {
    const { editor, id } = drawn();
    const height = { from: 'ceiling', of: 'ground', mm: -100 };
    expect(editor.run('node.height', { node: id['gas.5'], height }).ok).toBe(true);
    expect(['gas.3', 'gas.5', 'gas.7'].map((n) => place(editor, id[n])?.z)).toEqual([2300, 2300, 2300]);
    editor.run('storey.set', { storey: 'ground', change: { ceilingMm: 2600, sureness: 'seen' } });
    expect(['gas.3', 'gas.5', 'gas.7'].map((n) => place(editor, id[n])?.z)).toEqual([2500, 2500, 2500]);
    expect(place(editor, id['gas.1'])?.z).toBe(700);
  });

  test('a tail keeps the height of its point', () => {
    const { editor, id } = drawn();
    const height = { from: 'floor', of: 'ground', mm: 10 };
    const outcome = editor.run('node.height', { node: id['gas.1'], height });
    expect(outcome).toEqual({ ok: false, why: 'A tail has the height of its point: move the point.' });
  });

  test('no void may be told from itself', () => {
    const { editor } = drawn();
    const outline = [0, 1, 2].map((i) => ({ x: i * 500, y: i === 1 ? 900 : 0 }));
    const made = editor.run('void.add', { storey: 'ground', kind: 'ceiling', outline });
    const id = made.ok ? (made.made[0] ?? '') : '';
    const outcome = editor.run('void.set', { void: id, change: { bottom: { from: 'voidBottom', of: id, mm: 10 } } });
    expect(outcome.ok).toBe(false);
    expect(editor.store.getState().plan.voids[id]?.bottom).toBeNull();
  });
});

describe('sizes and lengths', () => {
  test('a size from here on leaves what comes before as it is', () => {
    const { editor, id } = drawn();
    editor.run('leg.size', { leg: id['gas.4'], tube: { kind: 'copper', size: '28x0.9' }, reach: 'onward' });
    expect(legsOf(editor, id.gas).map((l) => l.tube.size)).toEqual(['22x0.9', '28x0.9', '28x0.9']);
    editor.run('leg.size', { leg: id['gas.4'], tube: { kind: 'copper', size: '15x0.7' }, reach: 'run' });
    expect(legsOf(editor, id.gas).map((l) => l.tube.size)).toEqual(['15x0.7', '15x0.7', '15x0.7']);
  });

  test('a leg of a told length takes the rest of the run along', () => {
    const { editor, id } = drawn();
    editor.run('leg.length', { leg: id['gas.4'], lengthMm: 1000.04 });
    expect(place(editor, id['gas.5'])).toEqual({ x: 1675, y: 885, z: 2000 });
    expect(place(editor, id['gas.7'])).toEqual({ x: 1675, y: 2000, z: 2000 });
  });

  test('lengths are kept to a tenth', () => {
    const { editor } = drawn();
    const made = editor.run('wall.add', {
      storey: 'ground',
      a: { x: 0.04, y: -0.04 },
      b: { x: 1234.56, y: 0 },
      thicknessMm: 102.5,
      construction: 'block',
    });
    const wall = editor.store.getState().plan.walls[made.ok ? (made.made[0] ?? '') : ''];
    expect(wall).toMatchObject({ a: { x: 0, y: 0 }, b: { x: 1234.6, y: 0 }, thicknessMm: 102.5 });
  });
});

describe('what would join two services is refused', () => {
  test('at a tail, at a pipe, and by changing the service of a run', () => {
    const { editor, id } = drawn();
    const cold = { run: id.cold, from: id['cold.3'], tube: { kind: 'copper', size: '15x0.7' } };
    const why = (path: unknown) => {
      const outcome = editor.run('run.finish', { ...cold, path: [path] });
      return outcome.ok ? '' : outcome.why;
    };
    expect(why({ at: 'connection', point: id.boiler, connection: 'gas' })).toMatch(/for gas, this run is cold/);
    expect(why({ at: 'leg', leg: id['gas.4'], alongMm: 10 })).toMatch(/cannot be joined/);
    expect(why({ at: 'node', node: id['gas.5'] })).toMatch(/cannot be joined/);
    expect(why({ at: 'free', storey: 'ground', x: 1, y: 1, height: { from: 'datum', of: null, mm: 0 } })).toMatch(
      /finished at/,
    );
    expect(editor.run('run.set', { run: id.gas, change: { service: 'cold' } }).ok).toBe(false);
    expect(editor.run('run.set', { run: id.cold, change: { service: 'hot' } }).ok).toBe(true);
  });
});

describe('copies', () => {
  test('a copied wall brings its openings, a copied run meets nothing', () => {
    const { editor, id } = drawn();
    const things = [
      { map: 'walls', id: id.south },
      { map: 'runs', id: id.gas },
    ];
    const made = editor.run('things.duplicate', { things, by: { x: 0, y: -500 } });
    const { plan } = editor.store.getState();
    const [wall, run] = made.ok ? made.made : [];
    expect(plan.walls[wall ?? '']).toMatchObject({ a: { x: 0, y: -500 }, b: { x: 4000, y: -500 } });
    expect(Object.values(plan.openings).map((o) => o.wall)).toEqual([id.south, wall]);
    const nodes = legsOf(editor, run).flatMap((l) => [plan.nodes[l.a], plan.nodes[l.b]]);
    expect(nodes.every((n) => n?.place.on === 'storey')).toBe(true);
  });
});

describe('the end of a run made by what hangs there', () => {
  test('the tail lies where the pipe ended', () => {
    const { editor, id } = drawn();
    const before = place(editor, id['gas.7']);
    const made = editor.run('run.end', { node: id['gas.7'], kind: 'hob', angleDeg: 90 });
    const { plan } = editor.store.getState();
    const hob = plan.points[made.ok ? (made.made[0] ?? '') : ''];
    expect(place(editor, id['gas.7'])).toEqual(before);
    const tail = hob?.connections.find((c) => c.service === 'gas');
    expect(resolveHeight(plan, hob!.place.height)?.z).toBe((before?.z ?? 0) - (tail?.at.z ?? 0));
  });
});

describe('walls that are moved', () => {
  const wall = (editor: Editor, id: string | undefined) => editor.store.getState().plan.walls[id ?? ''];

  test('walls that join follow, and a door in one that only grew keeps its place in the house', () => {
    const { editor, id } = drawn();
    editor.run('wall.move', { wall: id.west, by: { x: -500, y: 0 } });
    expect(wall(editor, id.south)).toMatchObject({ a: { x: -500, y: 0 }, b: { x: 4000, y: 0 } });
    expect(wall(editor, id.north)).toMatchObject({ a: { x: 4000, y: 3000 }, b: { x: -500, y: 3000 } });
    expect(editor.store.getState().plan.openings[id.door ?? '']?.alongMm).toBe(1000);
    expect(editor.store.getState().plan.points[id.boiler ?? '']?.place).toMatchObject({ alongMm: 2000 });
  });

  test('a door that would no longer fit stops the wall, in words', () => {
    const { editor, id } = drawn();
    const outcome = editor.run('wall.move', { wall: id.west, by: { x: 900, y: 0 } });
    expect(outcome).toEqual({ ok: false, why: 'The door would no longer fit in its wall.' });
  });

  test('a told length moves the far corner', () => {
    const { editor, id } = drawn();
    editor.run('wall.length', { wall: id.south, lengthMm: 4300 });
    expect(wall(editor, id.south)).toMatchObject({ a: { x: 0, y: 0 }, b: { x: 4300, y: 0 } });
    expect(wall(editor, id.east)).toMatchObject({ a: { x: 4300, y: 0 }, b: { x: 4000, y: 3000 } });
  });

  test('pipe on what hangs on the wall follows it', () => {
    const { editor, id } = drawn();
    const tail = { at: 'connection', point: id.boiler, connection: 'gas' };
    const { plan } = editor.store.getState();
    const x = nodePlace(plan, plan.nodes[id['gas.7'] ?? '']!)!.at;
    const free = { at: 'free', storey: 'ground', x: 2000, y: x.y, height: { from: 'floor', of: 'ground', mm: 2000 } };
    const over = { at: 'free', storey: 'ground', x: 2000, y: 2869, height: { from: 'floor', of: 'ground', mm: 2000 } };
    const told = { run: id.gas, from: id['gas.7'], tube: { kind: 'copper', size: '22x0.9' }, path: [free, over, tail] };
    expect(editor.run('run.finish', told).ok).toBe(true);
    expect(editor.run('wall.move', { wall: id.north, by: { x: 0, y: 120 } }).ok).toBe(true);
    const after = editor.store.getState().plan;
    const moved = Object.values(after.nodes).filter((n) => n.place.on === 'storey' && n.place.y === 2989);
    expect(moved).toHaveLength(1);
  });
});
