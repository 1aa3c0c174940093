import { describe, expect, test } from 'vitest';
import { boxOnWall, outlineOnWall } from '../../src/drawing/building/box-on-wall.ts';
import { evaluate } from '../../src/engine/evaluate.ts';
import { facePlane } from '../../src/geometry/face-plane.ts';
import type { Section } from '../../src/report/section.ts';
import { leastBox, rowsOfBox } from '../../src/view/panels/inspect/voids/box-rows.ts';
import { asking } from '../editor/asking.ts';
import { blank, editorOf, handOn, press } from '../editor/hand.ts';

/** A boxing of 90 by 60 on a wall, far too small for the three pipes up it. */
function boxed() {
  const drawing = editorOf(blank());
  const told = { storey: 'ground', a: { x: 0, y: 0 }, b: { x: 4000, y: 0 }, thicknessMm: 100, construction: 'block' };
  const made = drawing.run('wall.add', told);
  const wall = made.ok ? (made.made[0] ?? '') : '';
  const editor = asking(drawing.store.getState().plan);
  editor.foldUp({ wall, side: 'right' });
  editor.setActivePane('face');
  editor.setTool('void');
  editor.setInHand({ voidKind: 'boxing' });
  handOn(editor).play('down 1000,0 move 1050,900 move 1090,2400 up');
  press(editor, '6', '0', 'Enter');
  const record = editor.store.getState().plan.walls[wall];
  if (!record) throw new Error('no wall');
  const face = facePlane(record, 'right');
  ['hot', 'cold', 'heating-flow'].forEach((service, i) => {
    const at = (z: number) => {
      const { x, y } = face.toHouse({ s: 1020 + 25 * i, z, depth: 30 });
      return { at: 'free', storey: 'ground', x, y, height: { from: 'floor', of: 'ground', mm: z } };
    };
    const outcome = editor.run('run.start', {
      service,
      joining: 'endFeed',
      turns: 'elbow',
      tube: { kind: 'copper', size: '15x0.7' },
      path: [at(200), at(2200)],
    });
    if (!outcome.ok) throw new Error(outcome.why);
  });
  return editor;
}

const sectionOf = (editor: ReturnType<typeof boxed>): Section => {
  const { plan, chosen } = editor.store.getState();
  const found = evaluate(plan, chosen).sections.find((s) => s.id === 'boxing');
  if (!found) throw new Error('the report has no section of boxing');
  return found;
};

describe('what the report says of one box', () => {
  test('the least box is read from it, and made so there is room enough', () => {
    const editor = boxed();
    const [v] = Object.values(editor.store.getState().plan.voids);
    if (!v) throw new Error('no box');
    const before = sectionOf(editor);
    expect(before.state).toBe('check');
    const rows = rowsOfBox(before.rows, v.id);
    expect(rows.filter((r) => r.kind === 'fact')).toHaveLength(3);
    const least = leastBox(rows);
    if (!least) throw new Error('no least box was read');
    expect(least.across).toBe('along');
    const on = boxOnWall(editor.store.getState().plan, v);
    const wall = on && editor.store.getState().plan.walls[on.wall];
    if (!on || !wall) throw new Error('the box is on no wall');
    const outline = outlineOnWall(wall, { ...on, toS: on.fromS + least.acrossMm, depthMm: least.outMm });
    expect(editor.run('void.set', { void: v.id, change: { outline } }).ok).toBe(true);
    expect(sectionOf(editor).state).toBe('pass');
  });

  test('a box the report does not know has no rows and no least size', () => {
    const rows = rowsOfBox(sectionOf(boxed()).rows, 'elsewhere');
    expect(rows).toEqual([]);
    expect(leastBox(rows)).toBeNull();
  });
});
