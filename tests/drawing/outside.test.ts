import { describe, expect, test } from 'vitest';
import type { Fragment, LineItem, Vec } from '../../src/drawing/display-list.ts';
import { fragments } from '../../src/drawing/fragments.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { Ground, Roof } from '../../src/plan/records/building.ts';
import { GROUND, house, room, wall } from '../geometry/house.ts';

const CASE = { option: 'A', when: 'after' } as const;
const roof = (more: Partial<Roof> = {}): Roof => ({
  id: 'roof1',
  storey: GROUND,
  outline: [
    { x: 0, y: 0 },
    { x: 4000, y: 0 },
    { x: 4000, y: 3000 },
    { x: 0, y: 3000 },
  ],
  eaves: { a: { x: 0, y: 0 }, b: { x: 4000, y: 0 }, height: { from: 'floor', of: GROUND, mm: 1200 } },
  pitchDeg: 45,
  rafters: null,
  sureness: 'seen',
  ...more,
});
const ground: Ground = {
  id: 'ground1',
  line: [
    { x: -300, y: -300, z: -150 },
    { x: 4300, y: -300, z: -350 },
  ],
  kind: 'paving',
  sureness: 'seen',
};

/** Four walls 4000 by 3000 by their middle lines, under a slope that rises from the south, with ground along the south. */
function plan(more: Partial<Plan> = {}): Plan {
  return {
    ...house({
      walls: [
        wall('s', [0, 0], [4000, 0]),
        wall('e', [4000, 0], [4000, 3000]),
        wall('n', [4000, 3000], [0, 3000]),
        wall('w', [0, 3000], [0, 0]),
      ],
      rooms: [room('r', [2000, 1500])],
    }),
    roofs: { roof1: roof() },
    grounds: { ground1: ground },
    ...more,
  };
}

const seen = (of: Plan, view: Parameters<typeof fragments>[1], map: string): Fragment[] =>
  fragments(of, view, CASE).filter((f) => f.map === map);
const linesOf = (f: Fragment | undefined): LineItem[] => (f?.items ?? []).filter((i): i is LineItem => i.t === 'line');
const inPlan = { kind: 'plan', storey: GROUND } as const;

describe('a roof from above', () => {
  test('has its outline, its eaves, an arrow down to them, its pitch and level', () => {
    const [found] = seen(plan(), inPlan, 'roofs');
    expect(found?.items.filter((i) => i.t === 'area')).toHaveLength(1);
    expect(found?.wishes).toMatchObject([{ what: 'roof 45°', how: 'eaves 1200' }]);
    const arrow = linesOf(found).find((l) => l.pts.length === 2 && l.pts[0]?.[0] === 2000 && l.pts[1]?.[0] === 2000);
    expect((arrow?.pts[0]?.[1] ?? 0) > (arrow?.pts[1]?.[1] ?? 0)).toBe(true);
  });

  test('shows its rafters at their centres, square to the eaves, inside its outline', () => {
    const rafters = { centresMm: 600, depthMm: 150, breadthMm: 50 };
    const before = linesOf(seen(plan(), inPlan, 'roofs')[0]).length;
    const lines = linesOf(seen(plan({ roofs: { roof1: roof({ rafters }) } }), inPlan, 'roofs')[0]);
    expect(lines.length - before).toBe(7);
    const xs = lines.flatMap((l) => (l.pts.every((p) => p[0] === l.pts[0]?.[0]) ? [l.pts[0]?.[0] ?? 0] : []));
    expect(xs).toEqual(expect.arrayContaining([25, 625, 1225, 3625]));
  });

  test('follows the ceiling its eaves are told from', () => {
    const { a, b } = roof().eaves;
    const hung = roof({ eaves: { a, b, height: { from: 'ceiling', of: GROUND, mm: -1200 } } });
    const low = plan({ roofs: { roof1: hung } });
    const high: Plan = { ...low, storeys: { [GROUND]: { ...low.storeys[GROUND]!, ceilingMm: 2600 } } };
    expect(seen(low, inPlan, 'roofs')[0]?.wishes).toMatchObject([{ how: 'eaves 1200' }]);
    expect(seen(high, inPlan, 'roofs')[0]?.wishes).toMatchObject([{ how: 'eaves 1400' }]);
  });
});

describe('a roof on the face of a wall', () => {
  const slope = (of: Plan, id: string, side: 'left' | 'right'): readonly Vec[] | undefined =>
    linesOf(seen(of, { kind: 'face', wall: id, side }, 'roofs')[0])[0]?.pts;

  test('comes down along a gable at its pitch, up to the ceiling', () => {
    const pts = slope(plan(), 'w', 'left');
    const [p, q] = [pts?.[0], pts?.[1]];
    if (!p || !q) throw new Error('no slope');
    expect(Math.abs((q[1] - p[1]) / (q[0] - p[0]))).toBeCloseTo(1, 6);
    expect(Math.max(p[1], q[1])).toBeCloseTo(2400, 6);
  });

  test('lies level along its own eaves, and is not there where it is over the ceiling', () => {
    const pts = slope(plan(), 's', 'left');
    expect(pts?.[0]?.[1]).toBeCloseTo(pts?.[1]?.[1] ?? 0, 6);
    expect(slope(plan(), 'n', 'left')).toBeUndefined();
  });
});

describe('ground', () => {
  test('is drawn on the storey nearest to it, each level said once', () => {
    const [found] = seen(plan(), inPlan, 'grounds');
    expect(found?.items.filter((i) => i.t === 'mark')).toHaveLength(2);
    expect(found?.wishes).toMatchObject([
      { what: '150 below', how: 'paving' },
      { what: '350 below', how: null },
    ]);
    const upstairs: Plan = {
      ...plan(),
      storeys: { ...plan().storeys, up: { ...plan().storeys[GROUND]!, id: 'up', floorMm: 2700 } },
    };
    expect(seen(upstairs, { kind: 'plan', storey: 'up' }, 'grounds')).toEqual([]);
  });

  test('runs along the outer face at its level, evenly between its places, and not along the inner one', () => {
    const outside = linesOf(seen(plan(), { kind: 'face', wall: 's', side: 'right' }, 'grounds')[0])[0]?.pts;
    const levels = outside?.map((p) => p[1]) ?? [];
    expect(Math.min(...levels)).toBeLessThan(-330);
    expect(Math.max(...levels)).toBeGreaterThan(-170);
    expect(linesOf(seen(plan(), { kind: 'face', wall: 's', side: 'left' }, 'grounds')[0])).toEqual([]);
  });
});
