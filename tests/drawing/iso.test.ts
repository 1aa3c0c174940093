import { describe, expect, test } from 'vitest';
import type { Item, Vec } from '../../src/drawing/display-list.ts';
import { houseTurn } from '../../src/drawing/iso/house-turn.ts';
import { isoDrawing } from '../../src/drawing/iso/iso-drawing.ts';
import { isoHits } from '../../src/drawing/iso/iso-hit.ts';
import { isoNorth, northItems } from '../../src/drawing/iso/iso-north.ts';
import { isoPlane, nextQuarter, type Quarter } from '../../src/drawing/iso/iso-plane.ts';
import { isoWalk } from '../../src/drawing/iso/iso-walk.ts';
import { slantPlane } from '../../src/drawing/iso/slant-plane.ts';
import { AFTER, page, run, stretch } from './small-plan.ts';

const apart = (p: Vec, q: Vec): number => Math.hypot(p[0] - q[0], p[1] - q[1]);
const degrees = (p: Vec, q: Vec): number => (Math.atan2(q[1] - p[1], q[0] - p[0]) * 180) / Math.PI;
const O = { x: 0, y: 0, z: 0 };

describe('the projection', () => {
  test.each([0, 1, 2, 3] as const)('a mm along any axis is a mm on the plane, after %i right angles', (quarter) => {
    const plane = isoPlane(quarter);
    for (const way of [
      { x: 1000, y: 0, z: 0 },
      { x: 0, y: 1000, z: 0 },
      { x: 0, y: 0, z: 1000 },
    ]) {
      expect(apart(plane.at(O), plane.at(way))).toBeCloseTo(1000, 9);
    }
  });

  test('uprights stand upright, the ways of the plan rise at 30 degrees to the right and to the left', () => {
    const plane = isoPlane(0);
    expect(degrees(plane.at(O), plane.at({ x: 0, y: 0, z: 1 }))).toBeCloseTo(90, 9);
    expect(degrees(plane.at(O), plane.at({ x: 1, y: 0, z: 0 }))).toBeCloseTo(30, 9);
    expect(degrees(plane.at(O), plane.at({ x: 0, y: 1, z: 0 }))).toBeCloseTo(150, 9);
  });

  test('a right angle turns what went right and back to left and back; four are none', () => {
    const [at0, at1] = [isoPlane(0), isoPlane(1)];
    const [ax, ay] = at1.at({ x: 500, y: 0, z: 70 });
    const [bx, by] = at0.at({ x: 0, y: 500, z: 70 });
    expect(ax).toBeCloseTo(bx, 9);
    expect(ay).toBeCloseTo(by, 9);
    let q: Quarter = 0;
    for (let i = 0; i < 4; i++) q = nextQuarter(q);
    expect(q).toBe(0);
  });

  test('places behind each other fall together, and the nearer one is told', () => {
    const near = { x: 400, y: 300, z: 900 };
    const axes = isoPlane(0);
    const behind = { x: 500, y: 400, z: 800 };
    expect(apart(axes.at(near), axes.at(behind))).toBeCloseTo(0, 9);
    expect(axes.toReader(near)).toBeGreaterThan(axes.toReader(behind));
  });

  test('a house that lies turned in the plan is laid along the axes', () => {
    const deg = 20;
    const [c, s] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
    const end = { x: 4000 * c, y: 4000 * s };
    const side = { x: -3000 * s, y: 3000 * c };
    expect(
      houseTurn([
        [O, end],
        [O, side],
      ]),
    ).toBeCloseTo(deg, 9);
    expect(houseTurn([])).toBe(0);
    const plane = isoPlane(0, deg);
    expect(degrees(plane.at(O), plane.at({ ...end, z: 0 }))).toBeCloseTo(30, 9);
    expect(apart(plane.at(O), plane.at({ ...end, z: 0 }))).toBeCloseTo(4000, 9);
  });

  test('north turns with the house and stays true', () => {
    const tip = (quarter: Quarter): Vec => isoNorth(isoPlane(quarter)).bob[1] ?? [0, 0];
    expect(degrees([0, 0], tip(0))).toBeCloseTo(150, 9);
    expect(degrees([0, 0], tip(1))).toBeCloseTo(-150, 9);
    expect(degrees([0, 0], tip(2))).toBeCloseTo(-30, 9);
    expect(degrees([0, 0], tip(3))).toBeCloseTo(30, 9);
    // On a sheet at 1:50 the bob is as large as on any other.
    const bob = northItems(isoPlane(0), [1000, 2000], 50).find((i) => i.t === 'area');
    expect(apart(bob?.rings[0]?.[1] ?? [0, 0], [1000, 2000])).toBeCloseTo(250, 9);
  });
});

describe('pipes', () => {
  const twoCrossing = () => {
    const plan = page();
    run(plan, 'low', [
      [0, 0, 100],
      [2000, 0, 100],
    ]);
    // Crosses over the middle of the other one as it is seen, 500 nearer along every axis.
    run(
      plan,
      'high',
      [
        [500, -1500, 600],
        [500, 500, 600],
      ],
      { service: 'cold' },
    );
    return plan;
  };
  const lineOf = (items: readonly Item[]) => items.find((i) => i.t === 'line');

  test('the one behind is broken where the other passes in front', () => {
    const { fragments, plane } = isoDrawing(twoCrossing(), AFTER, { of: 'all' }, 0);
    const of = (id: string) => lineOf(fragments.find((f) => f.id === id && f.layer === 'run')?.items ?? []);
    const [low, high] = [of('low-1'), of('high-1')];
    expect(high?.gaps).toBeUndefined();
    expect(low?.gaps).toHaveLength(1);
    const [gx, gy] = low?.gaps?.[0]?.at ?? [0, 0];
    const [x, y] = plane.at({ x: 1000, y: 0, z: 100 });
    expect([gx, gy]).toEqual([expect.closeTo(x, 6), expect.closeTo(y, 6)]);
  });

  test('what is nearer is painted later', () => {
    const { legs } = isoDrawing(twoCrossing(), AFTER, { of: 'all' }, 0);
    expect(legs.map((l) => l.run)).toEqual(['low', 'high']);
  });

  test('a run, its system, everything', () => {
    const plan = twoCrossing();
    run(plan, 'branch', ['low.1', [2000, 800, 100]]);
    run(plan, 'apart', [
      [9000, 0, 0],
      [9500, 0, 0],
    ]);
    const runsIn = (scope: Parameters<typeof isoDrawing>[2]): string[] => [
      ...new Set(isoDrawing(plan, AFTER, scope, 0).legs.map((l) => l.run)),
    ];
    expect(runsIn({ of: 'run', run: 'low' })).toEqual(['low']);
    expect(runsIn({ of: 'system', run: 'low' }).sort()).toEqual(['branch', 'low']);
    expect(runsIn({ of: 'all' }).sort()).toEqual(['apart', 'branch', 'high', 'low']);
    expect(runsIn({ of: 'run', run: 'none' })).toEqual([]);
  });

  test('every leg lies in one length and no more; legs in line are measured as one', () => {
    const plan = page();
    run(plan, 'g', [
      [0, 0, 500],
      [1000, 0, 500],
      [2500, 0, 500],
      [2500, 0, 1900],
      [2500, 900, 1900],
    ]);
    const { lengths } = isoDrawing(plan, AFTER, { of: 'all' }, 0);
    expect(lengths.flatMap((l) => [...l.of]).sort()).toEqual(['g-1', 'g-2', 'g-3', 'g-4']);
    expect(lengths.map((l) => l.text).sort()).toEqual(['1400', '2500', '900']);
  });

  test('a thing in line ends a length', () => {
    const plan = page();
    run(plan, 'g', [
      [0, 0, 500],
      [1000, 0, 500],
      [2500, 0, 500],
    ]);
    plan.items.v = {
      id: 'v',
      node: 'g.1',
      kind: 'gas-cock',
      name: '',
      along: null,
      fields: {},
      option: 'A',
      sureness: 'seen',
    };
    const { lengths, items } = isoDrawing(plan, AFTER, { of: 'all' }, 0);
    expect(lengths.map((l) => l.text).sort()).toEqual(['1000', '1500']);
    expect(items.map((i) => i.id)).toEqual(['v']);
  });

  test('a level is told once for all that runs at it, at its rise', () => {
    const plan = page();
    run(plan, 'g', [
      [0, 0, 500],
      [1000, 0, 500],
      [1000, 0, 2200],
      [1000, 3000, 2200],
      [4000, 3000, 2200],
    ]);
    const { levels, plane } = isoDrawing(plan, AFTER, { of: 'all' }, 0);
    expect(levels.map((l) => l.text).sort()).toEqual(['2200', '500']);
    const high = levels.find((l) => l.text === '2200');
    expect(high?.places[0]).toEqual(plane.at({ x: 1000, y: 0, z: 2200 }));
  });

  test('a pipe below the floor has its minus, and an assumed height its dots', () => {
    const plan = page();
    run(plan, 'g', [
      [0, 0, -120],
      [0, 1000, -120],
    ]);
    const low = plan.nodes['g.0'];
    const far = plan.nodes['g.1'];
    for (const n of [low, far]) {
      if (n?.place.on === 'storey')
        n.place.height = { from: 'floor', of: 'S', mm: -120, assumed: { lo: -200, hi: -80 } };
    }
    expect(isoDrawing(plan, AFTER, { of: 'all' }, 0).levels).toMatchObject([{ text: '-120', unsure: true }]);
  });

  test('an unseen stretch is hollow, with how long it may be', () => {
    const plan = page();
    run(plan, 'g', [
      [0, 0, 500],
      [1000, 0, 500],
    ]);
    run(plan, 'h', [
      [4000, 0, 500],
      [5000, 0, 500],
    ]);
    stretch(plan, 'u', 'g', 'g.1', 'h.0');
    const { fragments, lengths } = isoDrawing(plan, AFTER, { of: 'all' }, 0);
    const f = fragments.find((one) => one.id === 'u');
    expect(lineOf(f?.items ?? [])?.style.core).toBeGreaterThan(0);
    expect(f?.wishes).toMatchObject([{ w: 'tag', text: 'G ? 3 to 5 m', ink: 'cantTell' }]);
    expect(lengths.some((l) => l.of.has('u'))).toBe(false);
  });
});

describe('legs that lie along no axis', () => {
  const pts = (items: readonly Item[]): (readonly Vec[])[] => items.flatMap((i) => (i.t === 'line' ? [i.pts] : []));

  test('nothing is added along an axis', () => {
    for (const to of [
      { x: 900, y: 0, z: 0 },
      { x: 0, y: -900, z: 0 },
      { x: 0, y: 0, z: 900 },
      { x: 900, y: 0, z: 20 },
    ]) {
      expect(slantPlane(O, to, 50)).toEqual([]);
    }
  });

  test('in an upright plane: its shadow on the level and an upright at its end, hatched upright', () => {
    const [shadow, upright, ...hatch] = pts(slantPlane(O, { x: 600, y: 0, z: 600 }, 20));
    expect(degrees(shadow?.[0] ?? [0, 0], shadow?.[1] ?? [0, 0])).toBeCloseTo(30, 6);
    expect(degrees(upright?.[0] ?? [0, 0], upright?.[1] ?? [0, 0])).toBeCloseTo(90, 6);
    expect(hatch.length).toBeGreaterThan(5);
    for (const [p, q] of hatch) expect(degrees(p ?? [0, 0], q ?? [0, 0])).toBeCloseTo(90, 6);
  });

  test('lying level: along both axes, hatched along one of them', () => {
    const [one, other, ...hatch] = pts(slantPlane(O, { x: 600, y: 600, z: 0 }, 20));
    expect(degrees(one?.[0] ?? [0, 0], one?.[1] ?? [0, 0])).toBeCloseTo(30, 6);
    expect(degrees(other?.[0] ?? [0, 0], other?.[1] ?? [0, 0])).toBeCloseTo(150, 6);
    for (const [p, q] of hatch) expect(degrees(p ?? [0, 0], q ?? [0, 0])).toBeCloseTo(150, 6);
  });

  test('in neither: both', () => {
    const edges = pts(slantPlane(O, { x: 600, y: 600, z: 600 }, 100_000));
    expect(edges).toHaveLength(4);
  });
});

describe('hand', () => {
  const plan = page();
  run(plan, 'g', [
    [0, 0, 500],
    [3000, 0, 500],
    [3000, 0, 1900],
    [3000, 2000, 1900],
  ]);
  run(plan, 'b', ['g.1', [3000, -1000, 500]], { size: '15x0.7' });
  const drawing = isoDrawing(plan, AFTER, { of: 'all' }, 0);
  const { plane } = drawing;

  test('a tap takes the leg, its corner only where that is aimed at', () => {
    const middle = plane.at({ x: 1500, y: 0, z: 500 });
    expect(isoHits(drawing, [middle[0], middle[1] + 60], 200)[0]).toEqual({ map: 'legs', id: 'g-1' });
    expect(isoHits(drawing, plane.at({ x: 3000, y: 0, z: 1900 }), 200)[0]).toEqual({ map: 'nodes', id: 'g.2' });
    expect(isoHits(drawing, [middle[0], middle[1] + 900], 200)).toEqual([]);
  });

  test('the walk goes along the run, then along its branch', () => {
    expect(isoWalk(drawing, ['g', 'b']).map((l) => l.record.id)).toEqual(['g-1', 'g-2', 'g-3', 'b-1']);
  });

  test('the same plan is drawn once', () => {
    expect(isoDrawing(plan, AFTER, { of: 'all' }, 0)).toBe(drawing);
    expect(isoDrawing(plan, AFTER, { of: 'all' }, 1)).not.toBe(drawing);
  });
});
