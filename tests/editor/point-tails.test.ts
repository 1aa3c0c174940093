import { expect, test } from 'vitest';
import { nodePlace } from '../../src/geometry/places.ts';
import { editorOf } from './hand.ts';

function withPipe() {
  const editor = editorOf();
  editor.setCase({ option: 'A', when: 'after' });
  const place = { on: 'storey', x: 1000, y: 1000, angleDeg: 90 } as const;
  const added = editor.run('point.add', { kind: 'boiler', storey: 'ground', place });
  const point = added.ok ? (added.made[0] ?? '') : '';
  const at = editor.store.getState().plan.points[point]?.connections.find((c) => c.id === 'gas');
  const tail = { at: 'connection', point, connection: 'gas' };
  const end = { at: 'free', storey: 'ground', x: 919, y: 1000, height: { from: 'floor', of: 'ground', mm: 100 } };
  const tube = { kind: 'copper', size: '22x0.9' };
  const run = editor.run('run.start', { service: 'gas', joining: null, turns: 'elbow', tube, path: [tail, end] });
  expect(at && run.ok).toBe(true);
  const plan = () => editor.store.getState().plan;
  const tails = () => plan().points[point]?.connections ?? [];
  return { editor, point, plan, tails };
}

test('tails that change places take their pipes along, in one step', () => {
  const { editor, point, plan, tails } = withPipe();
  const [gas, hot] = ['gas', 'hot'].map((id) => tails().find((c) => c.id === id));
  const before = plan();
  const connections = tails().map((c) =>
    c.id === 'gas' && hot ? { ...c, at: hot.at } : c.id === 'hot' && gas ? { ...c, at: gas.at } : c,
  );
  expect(editor.run('point.tails', { point, connections })).toMatchObject({ ok: true });
  const node = Object.values(plan().nodes).find((n) => n.place.on === 'connection');
  const end = Object.values(plan().nodes).find((n) => n.place.on === 'storey');
  const [a, b] = [node && nodePlace(plan(), node)?.at, end && nodePlace(plan(), end)?.at];
  // The case is turned by a right angle: across it is up the plan.
  expect(a?.y).toBeCloseTo(1000 - 60, 3);
  expect(b?.y).toBeCloseTo(a?.y ?? 0, 3);
  expect(editor.undo().ok).toBe(true);
  expect(plan()).toEqual(before);
});

test('a tail that a pipe meets stays', () => {
  const { editor, point, tails } = withPipe();
  const outcome = editor.run('point.tails', { point, connections: tails().filter((c) => c.id !== 'gas') });
  expect(outcome.ok ? '' : outcome.why).toBe('A pipe meets the gas tail. Part it first, then take the tail away.');
});

test('a sheet whose tails lie elsewhere takes the pipes along', () => {
  const { editor, point, plan, tails } = withPipe();
  const connections = tails().map((c) => (c.id === 'gas' ? { ...c, at: { ...c.at, x: 120 } } : c));
  const thing = { id: 't', kind: 'boiler', name: 'sheet', fields: { type: 'combi', liftKg: 30 }, connections };
  expect(editor.run('point.sheet', { point, thing })).toMatchObject({ ok: true });
  expect(plan().points[point]).toMatchObject({ thing: 't', fields: { liftKg: 30 } });
  const ends = Object.values(plan().legs).flatMap((l) => [plan().nodes[l.a], plan().nodes[l.b]]);
  const [a, b] = ends.map((n) => n && nodePlace(plan(), n)?.at);
  expect(a?.y).toBeCloseTo(1120, 3);
  expect(b?.y).toBeCloseTo(1120, 3);
});
