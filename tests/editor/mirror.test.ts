import { describe, expect, test } from 'vitest';
import type { Editor, Selected } from '../../src/editor/editor-api.ts';
import { connectionPlace, pointFrame } from '../../src/geometry/hosting.ts';
import { nodePlace } from '../../src/geometry/places.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { danglingReferences } from '../../src/plan/references.ts';
import { drawn } from './drawn.ts';

/** Upright, through the middle of the room of 4 m. */
const UPRIGHT = { at: { x: 2000, y: 0 }, along: { x: 0, y: 1 } };
const thing = (map: Selected['map'], id: string | undefined) => ({ map, id: id ?? '' });
const at = (plan: Plan, node: string | undefined) => {
  const record = plan.nodes[node ?? ''];
  return record && nodePlace(plan, record)?.at;
};
const planOf = (editor: Editor): Plan => editor.store.getState().plan;

function everything(id: Readonly<Record<string, string>>) {
  return [
    ...['south', 'east', 'north', 'west'].map((w) => thing('walls', id[w])),
    thing('points', id.boiler),
    thing('points', id.meter),
    thing('runs', id.gas),
    thing('runs', id.cold),
  ];
}

describe('mirroring', () => {
  test('a room goes over with its door, its appliances, its name and its pipes', () => {
    const { editor, id } = drawn();
    expect(editor.run('things.mirror', { things: everything(id), ...UPRIGHT, copy: false }).ok).toBe(true);
    const plan = planOf(editor);
    // The door stood 500 to 1300 from the left of 4 m, and stands as far from the right now.
    const door = plan.openings[id.door ?? ''];
    const south = plan.walls[id.south ?? ''];
    expect(south).toMatchObject({ a: { x: 0, y: 0 }, b: { x: 4000, y: 0 } });
    expect(door).toMatchObject({ from: 'b', alongMm: 500 });
    expect(at(plan, id['cold.1'])).toMatchObject({ x: 3000, y: 500, z: 150 });
    expect(at(plan, id['gas.7'])).toMatchObject({ x: 2500, y: 2000, z: 2000 });
    const boiler = plan.points[id.boiler ?? ''];
    expect(boiler && pointFrame(plan, boiler)?.origin).toMatchObject({ x: 2000, y: 2950 });
    expect(danglingReferences(plan)).toEqual([]);
    expect(editor.store.getState().history.undo).toEqual(['mirror 8 things']);
  });

  test('a boiler keeps its hand: its tails stand in the order they are made in, and its back stays to the wall', () => {
    const { editor, id } = drawn();
    const before = planOf(editor);
    editor.run('things.mirror', { things: everything(id), at: { x: 2100, y: 0 }, along: { x: 0, y: 1 }, copy: false });
    const [was, is] = [before, planOf(editor)].map((plan) => {
      const point = plan.points[id.boiler ?? ''];
      if (!point) throw new Error('no boiler');
      const frame = pointFrame(plan, point);
      const tails = point.connections.map((c) => connectionPlace(plan, point.id, c.id)?.at.x ?? 0);
      return { point, frame, order: tails.map((x) => x - (frame?.origin.x ?? 0)) };
    });
    expect(is?.point.connections).toEqual(was?.point.connections);
    expect(is?.order).toEqual(was?.order);
    expect(is?.frame?.out).toEqual(was?.frame?.out);
    expect(is?.frame?.origin.x).toBe(2200);
  });

  test('done twice it is as it was: the same places of walls, doors, things and pipes', () => {
    const { editor, id } = drawn();
    const before = planOf(editor);
    for (let i = 0; i < 2; i++) {
      expect(editor.run('things.mirror', { things: everything(id), ...UPRIGHT, copy: false }).ok).toBe(true);
      if (i === 0) expect(planOf(editor)).not.toEqual(before);
    }
    const after = planOf(editor);
    for (const map of ['walls', 'openings', 'points', 'rooms', 'voids', 'legs', 'runs'] as const) {
      expect(after[map], map).toEqual(before[map]);
    }
    for (const node of Object.keys(before.nodes)) expect(at(after, node), node).toEqual(at(before, node));
  });

  test('the pipe of a tail that the mirror shows elsewhere is joined to the tail where it is', () => {
    const { editor, id } = drawn();
    const before = planOf(editor);
    const tail = before.points[id.meter ?? '']?.connections[0];
    expect(tail?.at.x, 'the outlet stands aside').not.toBe(0);
    editor.run('things.mirror', {
      things: [thing('points', id.meter), thing('runs', id.gas)],
      ...UPRIGHT,
      copy: false,
    });
    const plan = planOf(editor);
    const end = Object.values(plan.nodes).find((n) => n.place.on === 'connection' && n.place.point === id.meter);
    const outlet = connectionPlace(plan, id.meter ?? '', tail?.id ?? '')?.at;
    expect(end && nodePlace(plan, end)?.at).toEqual(outlet);
    // Every leg goes one way only: along, across or up.
    for (const leg of Object.values(plan.legs)) {
      const [a, b] = [at(plan, leg.a), at(plan, leg.b)];
      const ways = (['x', 'y', 'z'] as const).filter((k) => Math.abs((a?.[k] ?? 0) - (b?.[k] ?? 0)) > 0.2);
      expect(ways.length, leg.id).toBe(1);
    }
  });

  test('a copy is a new thing of its own, joined to its own appliances, and takes its own ids', () => {
    const { editor, id } = drawn();
    const before = planOf(editor);
    const outcome = editor.run('things.mirror', {
      things: everything(id),
      at: { x: 5000, y: 0 },
      along: { x: 0, y: 1 },
      copy: true,
    });
    expect(outcome.ok).toBe(true);
    const plan = planOf(editor);
    for (const map of ['walls', 'openings', 'points', 'runs', 'nodes', 'legs'] as const) {
      expect(Object.keys(plan[map]).length, map).toBe(2 * Object.keys(before[map]).length);
      for (const [of, record] of Object.entries(before[map])) expect(plan[map][of]).toEqual(record);
    }
    expect(danglingReferences(plan)).toEqual([]);
    const meters = Object.values(plan.points).filter((p) => p.kind === 'gas-meter' && p.id !== id.meter);
    const ends = Object.values(plan.nodes).filter(
      (n) => n.place.on === 'connection' && n.place.point === meters[0]?.id,
    );
    expect([meters.length, ends.length]).toEqual([1, 1]);
    editor.undo();
    expect(planOf(editor)).toEqual(before);
  });

  test('without its appliance a run ends in the open where it was shown', () => {
    const { editor, id } = drawn();
    editor.run('things.mirror', { things: [thing('runs', id.gas)], ...UPRIGHT, copy: false });
    const plan = planOf(editor);
    expect(at(plan, id['gas.7'])).toMatchObject({ x: 2500, y: 2000 });
    expect(Object.values(plan.nodes).every((n) => n.place.on === 'storey')).toBe(true);
  });

  test('pipe that stays and joins what goes is named, and nothing moves', () => {
    const { editor, id } = drawn();
    const height = { from: 'floor', of: 'ground', mm: 2000 };
    const made = editor.run('run.start', {
      service: 'gas',
      joining: 'endFeed',
      turns: 'elbow',
      tube: { kind: 'copper', size: '15x0.7' },
      path: [
        { at: 'node', node: id['gas.5'] },
        { at: 'free', storey: 'ground', x: 3000, y: 885, height },
      ],
    });
    expect(made.ok).toBe(true);
    const before = planOf(editor);
    expect(editor.run('things.mirror', { things: [thing('runs', id.gas)], ...UPRIGHT, copy: false }).ok).toBe(false);
    expect(editor.store.getState().said?.text).toMatch(/joins what is chosen\. Choose it too, or make a copy\.$/);
    expect(planOf(editor)).toBe(before);
    expect(editor.run('things.mirror', { things: [thing('runs', id.gas)], ...UPRIGHT, copy: true }).ok).toBe(true);
  });

  test('corners and doors alone have nothing to be mirrored', () => {
    const { editor, id } = drawn();
    expect(editor.run('things.mirror', { things: [thing('nodes', id['gas.5'])], ...UPRIGHT, copy: false }).ok).toBe(
      false,
    );
    expect(editor.store.getState().said?.text).toMatch(/^Choose walls, points, voids or runs/);
  });
});
