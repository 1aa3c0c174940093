import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openingBox } from '../../src/geometry/opening-box.ts';
import { wallCrossings, wallFinder } from '../../src/geometry/wall-crossings.ts';
import { intoWall, outOfWall } from '../../src/geometry/wall-frame.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { GROUND, house, opening, wall } from './house.ts';

const p = (x: number, y: number, z: number) => ({ x, y, z });
const through = (
  plan: Plan,
  a: [number, number, number],
  b: [number, number, number],
  storey: string | null = GROUND,
) => wallCrossings(plan, p(...a), p(...b), storey);

describe('openings in space', () => {
  const plan = house({
    walls: [wall('w', [1000, 500], [6000, 500], 300)],
    openings: [
      opening('near', 'w', 400, 900, { kind: 'window', sillMm: 900, headMm: 2100 }),
      opening('far', 'w', 400, 900, { from: 'b' }),
      opening('lost', 'nowhere', 0, 900),
    ],
  });

  it('are a rectangle through their wall, from sill to head', () => {
    expect(openingBox(plan, 'near')).toMatchObject({
      wall: 'w',
      fromMm: 400,
      toMm: 1300,
      bottomZ: 900,
      topZ: 2100,
      centre: { x: 1850, y: 500, z: 1500 },
      box: { minX: 1400, maxX: 2300, minY: 350, maxY: 650, minZ: 900, maxZ: 2100 },
    });
  });

  it('are taken from the end they are told from', () => {
    expect(openingBox(plan, 'far')).toMatchObject({ fromMm: 3700, toMm: 4600 });
  });

  it('are nowhere without their wall', () => {
    expect(openingBox(plan, 'lost')).toBeUndefined();
    expect(openingBox(plan, 'none')).toBeUndefined();
  });
});

describe('walls a pipe goes through', () => {
  const plan = house({
    walls: [
      wall('w', [0, 0], [4000, 0], 100),
      wall('v', [2000, 1000], [2000, 3000], 250),
      wall('low', [0, 5000], [4000, 5000], 100, { heightMm: 1000 }),
    ],
    openings: [opening('door', 'w', 1000, 800)],
  });

  it('are met square', () => {
    const [found, ...more] = through(plan, [500, -300, 400], [500, 300, 400]);
    expect(found).toMatchObject({ wall: 'w', at: p(500, 0, 400), angleDeg: 90, opening: null, whole: true });
    // Less by what counts as touching, on both faces.
    expect(found?.fromMm).toBeCloseTo(250.2, 6);
    expect(found?.throughMm).toBeCloseTo(99.6, 6);
    expect(more).toEqual([]);
  });

  it('are met at an angle, over a longer way', () => {
    const [found] = through(plan, [300, -300, 400], [900, 300, 400]);
    expect(found?.angleDeg).toBeCloseTo(45, 9);
    expect(found?.throughMm).toBeCloseTo(99.6 * Math.SQRT2, 6);
  });

  it('let a pipe through an opening, and over it not', () => {
    expect(through(plan, [1400, -300, 400], [1400, 300, 400])[0]?.opening).toBe('door');
    expect(through(plan, [1400, -300, 2100], [1400, 300, 2100])[0]?.opening).toBeNull();
    expect(through(plan, [900, -300, 400], [900, 300, 400])[0]?.opening).toBeNull();
  });

  it('are not met on their face, beside them, over their top or on another floor', () => {
    expect(through(plan, [100, 50, 400], [3000, 50, 400])).toEqual([]);
    expect(through(plan, [100, 80, 400], [3000, 80, 400])).toEqual([]);
    expect(through(plan, [500, -300, 2500], [500, 300, 2500])).toEqual([]);
    expect(through(plan, [500, 4800, 1100], [500, 5200, 1100])).toEqual([]);
    expect(through(plan, [500, 4800, 900], [500, 5200, 900])).toHaveLength(1);
    expect(through(plan, [500, -300, 400], [500, 300, 400], 'upstairs')).toEqual([]);
  });

  it('are met along, for a pipe chased into them', () => {
    expect(through(plan, [500, 0, 400], [1500, 0, 400])[0]).toMatchObject({
      throughMm: 1000,
      angleDeg: 0,
      whole: false,
    });
    expect(through(plan, [500, 0, 400], [500, 0, 1400])[0]).toMatchObject({
      throughMm: 1000,
      angleDeg: 0,
      whole: false,
    });
  });

  it('come in the order the pipe meets them', () => {
    const row = house({ walls: [1, 2, 3].map((i) => wall(`w${i}`, [i * 1000, 0], [i * 1000, 3000])) });
    expect(through(row, [3500, 100, 100], [500, 100, 100]).map((c) => c.wall)).toEqual(['w3', 'w2', 'w1']);
  });

  it('go on through the floor where a wall stands on them, and only there', () => {
    const up = { ...house({}).storeys[GROUND]!, id: 'up', floorMm: 2640 };
    const two = house({
      walls: [
        wall('outer', [0, 0], [4000, 0], 300),
        wall('inner', [0, 2000], [4000, 2000]),
        wall('over', [0, 0], [4000, 0], 300, { storey: 'up' }),
      ],
    });
    const plan2: Plan = { ...two, storeys: { ...two.storeys, up } };
    expect(through(plan2, [500, -400, 2500], [500, 400, 2500], null).map((c) => c.wall)).toEqual(['outer']);
    expect(through(plan2, [500, 1600, 2500], [500, 2400, 2500], null)).toEqual([]);
    expect(through(plan2, [500, -400, 2700], [500, 400, 2700], null).map((c) => c.wall)).toEqual(['over']);
  });

  it('are left out, with their openings, where they do not stand in the case', () => {
    const a = p(1400, -300, 400);
    const b = p(1400, 300, 400);
    expect(wallCrossings(plan, a, b, GROUND, new Set(['v']))).toEqual([]);
    expect(wallCrossings(plan, a, b, GROUND, new Set(['w']))[0]?.opening).toBeNull();
    expect(wallCrossings(plan, a, b, GROUND, new Set(['w', 'door']))[0]?.opening).toBe('door');
  });

  it('cost one question a piece, and as many candidates in a large house as in a small', () => {
    const perPiece = (rooms: number): number => {
      const walls = Array.from({ length: rooms }, (_, i) => wall(`w${i}`, [i * 3000, 0], [i * 3000, 4000]));
      const finder = wallFinder(house({ walls }));
      for (let i = 0; i < rooms; i++)
        finder.crossings(p(i * 3000 - 500, 100, 100), p(i * 3000 + 500, 100, 100), GROUND);
      expect(finder.counts.queries).toBe(rooms);
      return finder.counts.candidates / rooms;
    };
    expect(perPiece(300)).toBe(perPiece(100));
  });

  it('hold what was cut out of them: lengths through, before and after make the whole', () => {
    const n = fc.integer({ min: -3000, max: 3000 });
    fc.assert(
      fc.property(n, n, n, n, (x1, y1, x2, y2) => {
        const lengthMm = Math.hypot(x2 - x1, y2 - y1);
        for (const c of through(plan, [x1, y1, 300], [x2, y2, 300])) {
          expect(c.toMm - c.fromMm).toBeCloseTo(c.throughMm, 6);
          expect(c.fromMm).toBeGreaterThanOrEqual(0);
          expect(c.toMm).toBeLessThanOrEqual(lengthMm + 1e-6);
          const own = plan.walls[c.wall]!;
          expect(Math.abs(intoWall(own, c.at).v)).toBeLessThanOrEqual(own.thicknessMm / 2);
        }
      }),
    );
  });
});

describe('a wall’s own frame', () => {
  it('goes there and back', () => {
    const n = fc.integer({ min: -5000, max: 5000 });
    fc.assert(
      fc.property(n, n, n, n, n, n, (ax, ay, bx, by, u, v) => {
        fc.pre(ax !== bx || ay !== by);
        const w = wall('w', [ax, ay], [bx, by]);
        const back = intoWall(w, { ...outOfWall(w, u, v), z: 7 });
        expect(back.u).toBeCloseTo(u, 6);
        expect(back.v).toBeCloseTo(v, 6);
        expect(back.z).toBe(7);
      }),
    );
  });
});
