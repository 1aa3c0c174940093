import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { distance } from '../../src/geometry/vec.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { Wall } from '../../src/plan/records/building.ts';
import { COINCIDENT_MM } from '../../src/plan/units.ts';
import { randomDrawing } from '../geometry/random-drawing.ts';
import { blank, editorOf } from './hand.ts';

/** A random drawing as a plan of the editor; `turnDeg` lays it across the sheet. */
function planOf(start: number, turnDeg: number) {
  const plan = blank();
  const drawn = randomDrawing(start, turnDeg).walls;
  const tenths = (n: number): number => Math.round(n * 10) / 10 + 0;
  const walls = drawn.map(
    (w): Wall => ({
      ...w,
      storey: 'ground' as Wall['storey'],
      a: { x: tenths(w.a.x), y: tenths(w.a.y) },
      b: { x: tenths(w.b.x), y: tenths(w.b.y) },
    }),
  );
  return { ...plan, walls: Object.fromEntries(walls.map((w) => [w.id, w])) };
}

function expectSamePlaces(after: Plan, before: Plan): void {
  const bare = (plan: Plan) => ({ ...plan, walls: Object.values(plan.walls).map(({ a: _a, b: _b, ...rest }) => rest) });
  expect(bare(after)).toEqual(bare(before));
  for (const [id, was] of Object.entries(before.walls)) {
    for (const end of ['a', 'b'] as const) {
      expect(distance(after.walls[id]?.[end] ?? { x: 0, y: 0 }, was[end])).toBeLessThan(COINCIDENT_MM);
    }
  }
}

describe('a wall that is moved', () => {
  test.each([0, 90, 30, 12.5])('and moved back leaves the document as it was, of a house turned by %s', (turn) => {
    let moved = 0;
    fc.assert(
      fc.property(
        fc.nat(),
        fc.nat(),
        fc.integer({ min: -300, max: 300 }),
        fc.integer({ min: -300, max: 300 }),
        (start, which, dx, dy) => {
          const plan = planOf(start, turn);
          const editor = editorOf(plan);
          const ids = Object.keys(plan.walls);
          const wall = ids[which % ids.length] ?? '';
          if (!editor.run('wall.move', { wall, by: { x: dx, y: dy } }).ok) return;
          if (editor.store.getState().plan === plan) return;
          expect(editor.run('wall.move', { wall, by: { x: -dx, y: -dy } }).ok).toBe(true);
          const after = editor.store.getState().plan;
          // What joins a slanting wall slides along its own line and is rounded to tenths there, one way and the other.
          if (turn % 90 === 0) expect(after).toEqual(plan);
          else expectSamePlaces(after, plan);
          moved++;
        },
      ),
      { numRuns: 120 },
    );
    expect(moved).toBeGreaterThan(60);
  });

  test('and undone leaves it as it was', () => {
    fc.assert(
      fc.property(fc.nat(), fc.nat(), fc.integer({ min: -900, max: 900 }), (start, which, by) => {
        const plan = planOf(start, 0);
        const editor = editorOf(plan);
        const ids = Object.keys(plan.walls);
        editor.run('wall.move', { wall: ids[which % ids.length], by: { x: by, y: by / 2 } });
        while (editor.store.getState().history.undo.length > 0) editor.undo();
        expect(editor.store.getState().plan).toEqual(plan);
      }),
      { numRuns: 60 },
    );
  });
});
