import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boxOnWall, outlineOnWall } from '../../src/drawing/building/box-on-wall.ts';
import type { Fragment, LineItem } from '../../src/drawing/display-list.ts';
import { fragments } from '../../src/drawing/fragments.ts';
import { styleOf } from '../../src/drawing/look/style-of.ts';
import { sheetFrame } from '../../src/drawing/paint/frame.ts';
import { linePrims } from '../../src/drawing/paint/line-prims.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { Joists, Void } from '../../src/plan/records/building.ts';
import { AFTER, ceilingVoid, PLAN_VIEW, page, room, wall } from './small-plan.ts';

const drawnOf = (plan: Plan, id: string): Fragment =>
  fragments(plan, PLAN_VIEW, AFTER).find((f) => f.id === id) as Fragment;
const linesOf = (f: Fragment): LineItem[] => f.items.flatMap((i) => (i.t === 'line' ? [i] : []));
const paintedAt = (f: Fragment, scale: number): LineItem[] =>
  linesOf(f).filter((l) => linePrims(l, sheetFrame(scale, [0, 0]), styleOf('day')).length > 0);

function withJoists(change: Partial<Joists>): Fragment {
  const plan = room(page());
  const v = ceilingVoid(plan, 'v');
  v.joists = { ...(v.joists as Joists), ...change };
  return drawnOf(plan, 'v');
}

describe('joists in plan', () => {
  test('from near by two sides, further off one line, then nothing', () => {
    const f = withJoists({});
    expect(paintedAt(f, 20)).toHaveLength(10);
    expect(paintedAt(f, 100)).toHaveLength(5);
    expect(paintedAt(f, 500)).toHaveLength(0);
  });

  test('each kind has a manner of its own from near by', () => {
    const kinds = ['solid', 'engineered', 'metalWeb', 'truss', 'unknown'] as const;
    const manner = (kind: Joists['kind']): string =>
      JSON.stringify(paintedAt(withJoists({ kind }), 20).map((l) => [l.style.dash, l.pts.length]));
    expect(new Set(kinds.map(manner)).size).toBe(kinds.length);
    expect(paintedAt(withJoists({ kind: 'metalWeb' }), 50)).toHaveLength(10);
  });

  test('joists nobody has placed are dashed; once placed they are not', () => {
    const dashes = (f: Fragment) => paintedAt(f, 20).map((l) => l.style.dash.length > 0);
    expect(dashes(withJoists({ assumed: ['first'] }))).toEqual(Array(10).fill(true));
    expect(dashes(withJoists({ assumed: ['breadthMm'] }))).toEqual(Array(10).fill(false));
  });

  test('a missing one is not drawn and is told, a doubled one has three sides', () => {
    const missing = withJoists({ exceptions: [{ index: 1, offsetMm: 0, what: 'missing' }] });
    expect(paintedAt(missing, 20)).toHaveLength(8);
    expect(missing.wishes).toMatchObject([{ w: 'flag', what: 'no joist' }]);
    const doubled = withJoists({ exceptions: [{ index: 1, offsetMm: 30, what: 'doubled' }] });
    expect(paintedAt(doubled, 20)).toHaveLength(11);
    expect(doubled.wishes).toMatchObject([{ w: 'flag', what: 'doubled, moved 30' }]);
  });
});

describe('boxes against a wall', () => {
  const boxed = (kind: 'boxing' | 'chase', into: boolean, angle: number, side: 'left' | 'right') => {
    const plan = page();
    const way = [Math.cos(angle), Math.sin(angle)] as const;
    const w = wall(plan, 'w', [1000, 700], [1000 + 4000 * way[0], 700 + 4000 * way[1]]);
    const outline = outlineOnWall(w, { side, fromS: 500, toS: 900, depthMm: 60, into });
    const v = { id: 'b', storey: 'S', kind, outline, holes: [], joists: null } as unknown as Void;
    plan.voids.b = v;
    return { plan, v };
  };

  test('are known again on the side they were made for, at any angle', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 6.28, noNaN: true }), fc.boolean(), fc.boolean(), (angle, isLeft, into) => {
        const side = isLeft ? 'left' : 'right';
        const { plan, v } = boxed(into ? 'chase' : 'boxing', into, angle, side);
        expect(boxOnWall(plan, v)).toMatchObject({
          wall: 'w',
          side,
          fromS: expect.closeTo(500, 3),
          toS: expect.closeTo(900, 3),
          depthMm: expect.closeTo(60, 3),
          into,
        });
      }),
    );
  });

  test('a boxing that stands away from the wall is against none', () => {
    const { plan, v } = boxed('boxing', false, 0, 'left');
    expect(boxOnWall(plan, { ...v, outline: v.outline.map((p) => ({ x: p.x, y: p.y + 40 })) })).toBeUndefined();
  });
});

describe('voids on a wall face', () => {
  test('a boxing shows with its edges and depth on its own side, a slab is hatched with its layers', () => {
    const plan = room(page());
    const w = plan.walls['w-n'];
    if (!w) throw new Error('no north wall');
    const inside = (['left', 'right'] as const).find((side) => {
      const [p] = outlineOnWall(w, { side, fromS: 500, toS: 900, depthMm: 60, into: false }).slice(-1);
      return p !== undefined && p.y < w.a.y;
    });
    if (!inside) throw new Error('no side faces the room');
    const height = (mm: number) => ({ from: 'floor', of: 'S', mm }) as const;
    const v = ceilingVoid(plan, 'b');
    Object.assign(v, {
      kind: 'boxing',
      outline: outlineOnWall(w, { side: inside, fromS: 500, toS: 900, depthMm: 60, into: false }),
      joists: null,
      bottom: height(0),
      top: height(2000),
      sureness: 'seen',
    });
    const s = ceilingVoid(plan, 's');
    const layers = [
      { what: 'screed', thicknessMm: 60 },
      { what: 'concrete', thicknessMm: 100 },
    ];
    const whole = [
      { x: 0, y: 0 },
      { x: 4000, y: 0 },
      { x: 4000, y: 3000 },
      { x: 0, y: 3000 },
    ];
    Object.assign(s, { kind: 'slab', outline: whole, joists: null, bottom: height(-160), top: height(0), layers });
    const all = fragments(plan, { kind: 'face', wall: 'w-n', side: inside }, AFTER);
    const box = all.find((f) => f.id === 'b');
    expect(box?.box).toEqual({ minX: 500, maxX: 900, minY: 0, maxY: 2000 });
    expect(box?.wishes).toMatchObject([{ w: 'name', second: '60 deep' }]);
    const slab = all.find((f) => f.id === 's');
    expect(slab?.items.some((i) => i.t === 'area' && i.fill === 'slab')).toBe(true);
    expect(slab?.items.flatMap((i) => (i.t === 'line' ? [i.pts[0]?.[1]] : []))).toContain(-60);
    const other = inside === 'left' ? 'right' : 'left';
    const behind = fragments(plan, { kind: 'face', wall: 'w-n', side: other }, AFTER).find((f) => f.id === 'b');
    expect(behind?.items ?? []).toEqual([]);
  });
});

describe('two voids over one another', () => {
  const both = (): Plan => {
    const plan = room(page());
    ceilingVoid(plan, 'over');
    plan.voids.under = { ...ceilingVoid(plan, 'under'), kind: 'floor' };
    return plan;
  };
  test('the floor shows its joists, what lies over the head its edge', () => {
    const plan = both();
    expect(linesOf(drawnOf(plan, 'under')).length).toBeGreaterThan(0);
    const over = drawnOf(plan, 'over');
    expect(over.items.map((i) => (i.t === 'area' ? [i.fill, (i.edge?.dash.length ?? 0) > 0] : i.t))).toEqual([
      ['none', true],
    ]);
  });
  test('beside one another both are shown whole', () => {
    const plan = both();
    const under = plan.voids.under as Void;
    plan.voids.under = { ...under, outline: under.outline.map(({ x, y }) => ({ x: x + 9000, y })) };
    expect(linesOf(drawnOf(plan, 'over')).length).toBeGreaterThan(0);
  });
});
