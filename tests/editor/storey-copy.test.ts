import { describe, expect, test } from 'vitest';
import { roomFaces } from '../../src/geometry/rooms.ts';
import { danglingReferences } from '../../src/plan/references.ts';
import { drawn } from './drawn.ts';

function withVoid() {
  const { editor, id } = drawn();
  const outline = [
    { x: 50, y: 50 },
    { x: 3950, y: 50 },
    { x: 3950, y: 2950 },
    { x: 50, y: 2950 },
  ];
  const made = editor.run('void.add', { storey: 'ground', kind: 'ceiling', outline });
  editor.run('room.set', { room: id.kitchen, change: { use: 'kitchen', heated: true } });
  return { editor, id, void: made.ok ? (made.made[0] ?? '') : '' };
}

describe('a floor copied upward', () => {
  test('stands over the ceiling by the build-up, with its walls, doors and rooms, all of it assumed', () => {
    const { editor, id } = withVoid();
    const before = editor.store.getState().plan;
    const outcome = editor.run('storey.duplicate', { storey: 'ground', name: 'First floor' });
    const made = outcome.ok ? (outcome.made[0] ?? '') : '';
    const { plan, history } = editor.store.getState();
    expect(plan.storeys[made]).toMatchObject({
      name: 'First floor',
      floorMm: 2650,
      ceilingMm: 2400,
      sureness: 'assumed',
    });
    const walls = Object.values(plan.walls).filter((w) => w.storey === made);
    expect(walls.map((w) => w.sureness)).toEqual(['assumed', 'assumed', 'assumed', 'assumed']);
    expect(walls.map((w) => [w.a, w.b])).toEqual(Object.values(before.walls).map((w) => [w.a, w.b]));
    const doors = Object.values(plan.openings).filter((o) => o.id !== id.door);
    expect(doors).toMatchObject([{ alongMm: 500, widthMm: 800 }]);
    expect(walls.map((w) => w.id)).toContain(doors[0]?.wall);
    expect(roomFaces(plan, made).faces.map((f) => f.rooms.length)).toEqual([1]);
    expect(danglingReferences(plan)).toEqual([]);
    expect(history.undo.at(-1)).toMatch(/^copy .* upward$/);
    editor.undo();
    expect(editor.store.getState().plan).toEqual(before);
  });

  test('says nothing of what its rooms are for, and takes no pipework or things along', () => {
    const { editor } = withVoid();
    const before = editor.store.getState().plan;
    const outcome = editor.run('storey.duplicate', { storey: 'ground', name: 'First floor' });
    const made = outcome.ok ? (outcome.made[0] ?? '') : '';
    const { plan } = editor.store.getState();
    const [room] = Object.values(plan.rooms).filter((r) => r.storey === made);
    expect(room).toMatchObject({ name: '', use: '', heated: null, escapeRoute: null });
    for (const map of ['points', 'runs', 'nodes', 'legs', 'voids'] as const) expect(plan[map]).toBe(before[map]);
  });

  test('with its voids: their heights are told from the new floor', () => {
    const { editor } = withVoid();
    const outcome = editor.run('storey.duplicate', { storey: 'ground', name: 'First floor', voids: true });
    const made = outcome.ok ? (outcome.made[0] ?? '') : '';
    const { plan } = editor.store.getState();
    const [copy] = Object.values(plan.voids).filter((v) => v.storey === made);
    expect(copy).toBeDefined();
    for (const height of [copy?.bottom, copy?.top]) if (height && height.from !== 'datum') expect(height.of).toBe(made);
  });

  test('a second copy stands on the first, whichever floor it is made of', () => {
    const { editor } = withVoid();
    editor.run('storey.duplicate', { storey: 'ground', name: 'First floor', ceilingMm: 2300 });
    const outcome = editor.run('storey.duplicate', { storey: 'ground', name: 'Second floor' });
    const made = outcome.ok ? (outcome.made[0] ?? '') : '';
    expect(editor.store.getState().plan.storeys[made]?.floorMm).toBe(2650 + 2300 + 250);
  });

  test('wants a name', () => {
    const { editor } = withVoid();
    expect(editor.run('storey.duplicate', { storey: 'ground', name: ' ' }).ok).toBe(false);
    expect(editor.store.getState().said?.text).toBe('A floor needs a name.');
  });
});
