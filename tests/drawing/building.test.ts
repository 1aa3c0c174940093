import { describe, expect, test } from 'vitest';
import { makePoint } from '../../src/catalogue/make-point.ts';
import type { AreaItem, Fragment, LineItem, Vec } from '../../src/drawing/display-list.ts';
import { fragments } from '../../src/drawing/fragments.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { demo } from './demo.ts';
import { AFTER, ceilingVoid, opening, PLAN_VIEW, page, room, wall } from './small-plan.ts';

const drawn = (plan: Plan): readonly Fragment[] => fragments(plan, PLAN_VIEW, AFTER);
const areas = (f: Fragment | undefined): AreaItem[] => f?.items.flatMap((i) => (i.t === 'area' ? [i] : [])) ?? [];
const lines = (f: Fragment | undefined): LineItem[] => f?.items.flatMap((i) => (i.t === 'line' ? [i] : [])) ?? [];
const find = (all: readonly Fragment[], map: string, id: string) => all.find((f) => f.map === map && f.id === id);

/** Twice the area inside rings, by the shoelace rule. */
const area2 = (rings: readonly (readonly Vec[])[]): number =>
  Math.abs(
    rings.reduce(
      (sum, ring) =>
        sum +
        ring.reduce(
          (s, [x, y], i) =>
            s + x * (ring[(i + 1) % ring.length]?.[1] ?? 0) - y * (ring[(i + 1) % ring.length]?.[0] ?? 0),
          0,
        ),
      0,
    ),
  );

describe('walls in plan', () => {
  test('four walls are one body with no line across their joints', () => {
    const [fill, edge] = areas(find(drawn(room(page())), 'walls', 'S'));
    expect(fill?.fill).toBe('wall');
    expect(edge?.rings).toHaveLength(2);
    expect(edge?.rings.map((r) => r.length)).toEqual([4, 4]);
    expect(area2(edge?.rings ?? [])).toBeCloseTo(2 * (4200 * 3200 - 4000 * 3000), -1);
  });
  test('an opening parts the body', () => {
    const plan = room(page());
    opening(plan, 'd', 'w-s');
    const [, edge] = areas(find(drawn(plan), 'walls', 'S'));
    expect(edge?.rings).toHaveLength(1);
  });
  test('an assumed wall has an edge and no fill', () => {
    const plan = page();
    wall(plan, 'a', [0, 0], [2000, 0], { sureness: 'assumed' });
    const [fill, edge] = areas(find(drawn(plan), 'walls', 'S'));
    expect(fill?.rings).toEqual([]);
    expect(edge?.rings).toHaveLength(1);
  });
  test('rooms are measured clear, under and to the left of the house', () => {
    const all = drawn(room(page()));
    const sizes = find(all, 'walls', 'S')?.wishes.flatMap((w) => (w.w === 'dimension' ? [[w.text, w.side]] : []));
    expect(sizes).toEqual([
      ['4000', [0, -1]],
      ['3000', [-1, 0]],
    ]);
  });
});

describe('openings in plan', () => {
  test('a leaf at 38 degrees from its hinge, on the side it swings to', () => {
    const plan = room(page());
    opening(plan, 'd', 'w-s', { hinge: 'a', swings: 'left' });
    const leaf = lines(find(drawn(plan), 'openings', 'd')).find((l) => l.style.ink === 'doorLeaf');
    const [hinge, tip] = (leaf?.pts ?? []) as [Vec, Vec];
    expect(hinge).toEqual([400, 0]);
    expect((Math.atan2(tip[1] - hinge[1], tip[0] - hinge[0]) * 180) / Math.PI).toBeCloseTo(38);
    expect(Math.hypot(tip[0] - hinge[0], tip[1] - hinge[1])).toBeCloseTo(800);
  });
  test('a window is two thin lines and one between', () => {
    const plan = room(page());
    opening(plan, 'w', 'w-n', { kind: 'window', sillMm: 900 });
    const found = lines(find(drawn(plan), 'openings', 'w'));
    expect(found.map((l) => l.pts[0]?.[1]).sort()).toEqual([3000, 3050, 3100]);
  });
});

describe('voids in plan', () => {
  test('joists are two thin lines at true width', () => {
    const plan = room(page());
    ceilingVoid(plan, 'v');
    const f = find(drawn(plan), 'voids', 'v');
    expect(areas(f)[0]?.fill).toBe('void');
    const at1to20 = lines(f).filter((l) => !l.scales || (l.scales[0] <= 20 && l.scales[1] > 20));
    const xs = [...new Set(at1to20.map((l) => l.pts[0]?.[0] ?? 0))].sort((a, b) => a - b);
    expect(xs.slice(0, 2)).toEqual([176.5, 223.5]);
    expect(at1to20).toHaveLength(10);
  });
  test('a slab has no wash, only its edge', () => {
    expect(find(drawn(room(page())), 'voids', 'BV3')).toBeUndefined();
    const plan = demo('flat');
    expect(fragments(plan, { kind: 'plan', storey: 'B' }, AFTER).find((f) => f.id === 'BV3')?.items).toMatchObject([
      { t: 'area', fill: 'none' },
    ]);
  });
});

describe('a wall face', () => {
  const plan = demo('flat');
  const all = fragments(plan, { kind: 'face', wall: 'BN', side: 'right' }, AFTER);

  test('is seen from its room: x runs to the right of who faces it', () => {
    const box = find(all, 'openings', 'bw3')?.box;
    expect([box?.minX, box?.maxX]).toEqual([1500, 2700]);
    expect([box?.minY, box?.maxY]).toEqual([0, 2100]);
  });
  test('slabs over and under with their hatch, walls that meet it cut', () => {
    const shell = all.find((f) => f.map === 'walls' && f.layer === 'wall');
    const slabs = areas(shell).filter((a) => a.fill === 'slab');
    expect(slabs.map((s) => [s.rings[0]?.[0]?.[1], s.rings[0]?.[2]?.[1]])).toEqual([
      [2500, 2720],
      [-220, 0],
    ]);
    const cuts = areas(shell)
      .filter((a) => a.fill === 'wall')
      .map((a) => [a.rings[0]?.[0]?.[0], a.rings[0]?.[1]?.[0]]);
    expect(cuts).toEqual([
      [0, 250],
      [3000, 3100],
      [5000, 5100],
      [8750, 9000],
    ]);
  });
  test('the boiler is measured to the corner and to the window', () => {
    const boiler = find(all, 'points', 'B-NB');
    expect(boiler?.wishes.flatMap((w) => (w.w === 'dimension' ? [w.text] : []))).toEqual(['350', '500']);
  });
  test('pipes that go into or out of it are rings', () => {
    const rings = all.flatMap((f) =>
      f.items.flatMap((i) => (i.t === 'mark' && (i.mark === 'rise' || i.mark === 'drop') ? [i.at] : [])),
    );
    expect(rings).toContainEqual([400, 2420]);
  });
  test('the other side runs the other way', () => {
    const outside = fragments(plan, { kind: 'face', wall: 'BN', side: 'left' }, AFTER);
    const box = find(outside, 'openings', 'bw3')?.box;
    expect([box?.minX, box?.maxX]).toEqual([9000 - 2700, 9000 - 1500]);
  });
});

describe('room to be kept clear', () => {
  const clear = (fields: Record<string, number>) => {
    const plan = room(page());
    const place = {
      on: 'wall',
      wall: 'w-n',
      side: 'left',
      from: 'a',
      alongMm: 2000,
      standOffMm: 0,
      height: { from: 'floor', of: 'S', mm: 1300 },
    } as const;
    plan.points.b = makePoint('boiler', { id: 'b', storey: 'S', place, option: 'A', fields });
    return lines(find(drawn(plan), 'points', 'b')).filter((l) => l.closed);
  };
  test('is a dotted edge where the sheet told it, and nothing where it did not', () => {
    expect(clear({})).toEqual([]);
    const [edge] = clear({ clearFrontMm: 600, clearSidesMm: 50 });
    const ys = edge?.pts.map((p) => p[1]) ?? [];
    expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(900);
    const xs = edge?.pts.map((p) => p[0]) ?? [];
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(500);
  });
});
