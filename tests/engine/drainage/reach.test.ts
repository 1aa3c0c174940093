import { describe, expect, test } from 'vitest';
import { evaluate } from '../../../src/engine/evaluate.ts';
import { example } from '../../../src/engine/example.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import type { ReachAnswer } from '../../../src/report/report.ts';
import { AFTER, bootRoom, hang, reachIn, reachTo } from './reach-house.ts';

const at = (a: ReachAnswer): (readonly [number, number])[] => a.way.map((p) => [p.x, p.y] as const);

describe('a boot room with no drain near', () => {
  const plan = bootRoom().plan;

  test('the foul gully: the side door is in the way, inside and outside alike', () => {
    const a = reachTo(plan, 'FG');
    expect(a.state).toBe('stop');
    expect(a.blocks.map((b) => b.ids)).toEqual([['dd3']]);
    expect(a.say).toMatch(
      /^6\.\d m, .*falls 2\d\d to 3\d\d; crosses the side door at 9\d\d to 10\d\d; in the way outside too$/,
    );
    // Level 6.6 m at 2.5 and at 3 degrees.
    expect(a.dropMm?.lo).toBeCloseTo((a.lengthM?.lo ?? 0) * 43.7, 0);
    expect(a.dropMm?.hi).toBeCloseTo((a.lengthM?.lo ?? 0) * 52.4, 0);
    expect(a.leastHeightMm).toBeNull();
  });

  test('the rainwater gully is reached and refused; the soakaway too, for clay', () => {
    expect(reachTo(plan, 'RG')).toMatchObject({ state: 'stop', blocks: [] });
    expect(reachTo(plan, 'RG').say).toContain('takes surface water only');
    expect(reachTo(plan, 'SA')).toMatchObject({ state: 'stop', blocks: [] });
    expect(reachTo(plan, 'SA').say).toContain('ends in the ground; clay was found');
    expect(reachTo(plan, 'SA').arrivesMm?.lo).toBeGreaterThan(0);
  });

  test('the branch still to be laid is reached, while it can be laid', () => {
    const a = reachTo(plan, 'UF');
    expect(a).toMatchObject({ state: 'check', blocks: [] });
    expect(a.say).toContain('lay it before the pour');
    const point = plan.points.UF;
    const laid: Plan = {
      ...plan,
      points: { ...plan.points, ...(point && { UF: { ...point, fields: { laid: true, before: '' } } }) },
    };
    expect(reachTo(laid, 'UF').state).toBe('pass');
  });

  test('ways run along walls at their stand-off and square through them', () => {
    const way = at(reachTo(plan, 'FG'));
    way.slice(1).forEach(([x, y], i) => {
      const [px, py] = way[i] ?? [x, y];
      expect(Math.min(Math.abs(x - px), Math.abs(y - py))).toBeLessThan(1);
    });
    expect(way.some(([x]) => x === 6640)).toBe(true);
  });

  test('water never climbs on its way', () => {
    for (const a of reachIn(plan)) {
      for (const [i, p] of a.way.slice(1).entries()) expect(p.z).toBeLessThanOrEqual((a.way[i]?.z ?? 0) + 1e-9);
    }
  });

  test('relief goes to the gully or its own end, and into no ground on the way', () => {
    expect(
      reachIn(plan)
        .filter((a) => a.service === 'boilerRelief')
        .map((a) => a.end),
    ).toEqual(['FG', 'RG']);
    expect(reachTo(plan, 'FG', 'boilerRelief').blocks.map((b) => b.ids)).toEqual([['dd3']]);
  });
});

/** One room, 6 by 4 m inside, the boiler on the west wall and a sink waste on the east one. */
function room(tailZ: number, entryZ: number, window?: Parameters<ReturnType<typeof example>['opening']>[4]) {
  const e = example()
    .wall('w', [0, 0], [0, 4200])
    .wall('n', [0, 4150], [6100, 4150])
    .wall('e', [6050, 0], [6050, 4200])
    .wall('s', [0, 50], [6100, 50])
    .point('boiler', 'B', [300, 3800, tailZ])
    .point('sink-waste', 'W', [5800, 3900, entryZ - 200], {}, null);
  if (window) e.opening('o', 'n', 2000, 1200, { name: 'Opening', ...window });
  return e.plan;
}

describe('height', () => {
  test('raising the boiler changes the answer, at the height that is told', () => {
    const low = room(500, 640);
    const a = reachTo(low, 'W');
    expect(a.state).toBe('stop');
    expect(a.say).toContain('lies 140 higher than the tail');
    const { lo, hi } = a.leastHeightMm ?? { lo: Number.NaN, hi: null };
    expect(lo).toBeGreaterThan(640);
    hang(low, 'B', lo - 2);
    expect(reachTo(low, 'W').state).toBe('stop');
    hang(low, 'B', lo + 2);
    expect(reachTo(low, 'W').state).toBe('check');
    hang(low, 'B', (hi ?? 0) + 2);
    expect(reachTo(low, 'W').state).toBe('pass');
  });

  test('between the two editions it is to be looked at, and the older one pinned settles it', () => {
    const plan = room(500, 640);
    const least = reachTo(plan, 'W').leastHeightMm;
    hang(plan, 'B', ((least?.lo ?? 0) + (least?.hi ?? 0)) / 2);
    expect(reachTo(plan, 'W').state).toBe('check');
    const older = { ...plan, basis: { ...plan.basis, editions: { 'condensate-fall': 'condensate-fall-older' } } };
    expect(reachTo(older, 'W').state).toBe('pass');
    const strange = { ...plan, basis: { ...plan.basis, editions: { 'condensate-fall': 'not here' } } };
    expect(reachIn(strange).filter((r) => r.service === 'condensate')).toEqual([]);
  });

  test('what ends on the floor below goes down through the floor, and says so', () => {
    expect(reachTo(room(1500, -1700), 'W').say).toContain('down through the floor');
    expect(reachTo(room(1500, 300), 'W').say).not.toContain('down through');
  });

  test('an assumed height is an interval, told in the chapter', () => {
    const plan = room(900, 640);
    const point = plan.points.B;
    if (!point) throw new Error('no boiler');
    point.place = { ...point.place, height: { from: 'datum', of: null, mm: 1000, assumed: { lo: 850, hi: 1200 } } };
    const a = reachTo(plan, 'W');
    expect(a.state).toBe('check');
    expect(a.arrivesMm?.lo).toBeLessThan(0);
    expect(a.arrivesMm?.hi).toBeGreaterThan(0);
    const section = evaluate(plan, AFTER).sections.find((s) => s.id === 'reach');
    expect(section?.rows).toContainEqual({ kind: 'assumed', say: 'Boiler: height assumed, 850 to 1200', ids: ['B'] });
  });
});

describe('openings', () => {
  test('a pipe drops to pass under a window and the rest of the way lies lower', () => {
    const free = reachTo(room(1500, 300), 'W');
    const under = reachTo(room(1500, 300, { kind: 'window', sillMm: 900, headMm: 2100 }), 'W');
    expect(under.state).toBe('pass');
    expect(under.arrivesMm?.value ?? 0).toBeLessThan((free.arrivesMm?.value ?? 0) - 300);
    expect(under.way.some((p) => Math.abs(p.z - 870) < 1)).toBe(true);
  });

  test('a window with no room under it is gone round, as a door is', () => {
    for (const window of [{ kind: 'window', sillMm: 700, headMm: 2100 } as const, { headMm: 2000 }]) {
      const a = reachTo(room(1500, 650, window), 'W');
      expect(a).toMatchObject({ state: 'pass', blocks: [] });
      expect(Math.min(...a.way.map((p) => p.y))).toBeLessThan(200);
    }
  });

  test('over a low head it is free', () => {
    expect(reachTo(room(1500, 300, { headMm: 1000 }), 'W')).toMatchObject({ state: 'pass', blocks: [] });
  });
});

describe('what may not be gone through', () => {
  const flats = (party: boolean) =>
    example()
      .wall('w', [0, 0], [0, 4200])
      .wall('n', [0, 4150], [10100, 4150])
      .wall('e', [10050, 0], [10050, 4200])
      .wall('s', [0, 50], [10100, 50])
      .wall('m', [3000, 50], [3000, 4150], party ? { party: true } : {})
      .point('boiler', 'B', [300, 3800, 1500])
      .point('soil-stack', 'S', [9700, 3900, 0], {}, null)
      .point('gully', 'G', [8000, 4300, -100], { drains: 'foul' }, null).plan;
  const crossesWall = (a: ReachAnswer): boolean =>
    a.way.slice(1).some((p, i) => {
      const q = a.way[i] ?? p;
      return Math.min(p.x, q.x) < 3000 && Math.max(p.x, q.x) > 3000 && p.y < 4150 && p.y > 50;
    });

  test('a wall shared with another dwelling is never holed, and nothing beyond it gone into', () => {
    expect(crossesWall(reachTo(flats(false), 'S'))).toBe(true);
    expect(reachTo(flats(true), 'S')).toMatchObject({ state: 'cantTell', way: [], say: 'no way was found' });
  });

  test('round it by the outside, where a long pipe may freeze', () => {
    const a = reachTo(flats(true), 'G');
    expect(crossesWall(a)).toBe(false);
    expect(a.outsideM?.value).toBeGreaterThan(5);
    expect(a.state).toBe('check');
    expect(a.say).toContain('long outside: may freeze');
    expect(reachTo(flats(false), 'G').state).toBe('pass');
  });
});

describe('under the floor', () => {
  function overVoid(wayDeg: number) {
    const plan = room(60, -80);
    plan.voids.v = {
      id: 'v',
      storey: 'ground',
      name: 'Floor void',
      kind: 'floor',
      outline: [
        { x: 50, y: 100 },
        { x: 6000, y: 100 },
        { x: 6000, y: 4100 },
        { x: 50, y: 4100 },
      ],
      holes: [],
      bottom: { from: 'datum', of: null, mm: -220 },
      top: { from: 'datum', of: null, mm: 0 },
      joists: {
        kind: 'solid',
        wayDeg,
        centresMm: 400,
        first: { x: 500, y: 500 },
        depthMm: 200,
        breadthMm: 50,
        bottom: { from: 'datum', of: null, mm: -220 },
        spanMm: null,
        exceptions: [],
      },
      bearings: [],
      ventilated: true,
      mayBeCut: true,
      option: null,
      sureness: 'seen',
    };
    const waste = plan.points.W;
    if (waste?.place.on === 'storey')
      waste.place = { ...waste.place, x: 1400, y: 3670, height: { from: 'datum', of: null, mm: -400 } };
    return plan;
  }

  test('joists across want holes at changing heights: how many is said', () => {
    const plan = overVoid(90);
    hang(plan, 'B', 20);
    const a = reachTo(plan, 'W');
    expect(a.state).toBe('stop');
    expect(a.say).toMatch(/[23] joists across: holes at changing heights/);
    expect(a.blocks[0]?.ids).toEqual(['v']);
  });

  test('between the joists it can run', () => {
    const plan = overVoid(0);
    hang(plan, 'B', 20);
    const a = reachTo(plan, 'W');
    expect(a.state).toBe('pass');
    expect(a.say).toContain('down through the floor, floor void');
  });
});

describe('the map as a whole', () => {
  test('nothing is asked of how it was before', () => {
    expect(evaluate(bootRoom().plan, { option: 'A', when: 'before' }).reach).toEqual([]);
  });

  test('nothing is said without a boiler, without a drain, or of a boiler that is to go', () => {
    expect(reachIn(example().point('gully', 'G', [0, 0, 0]).plan)).toEqual([]);
    expect(reachIn(example().point('boiler', 'B', [0, 0, 900]).plan)).toEqual([]);
    const plan = room(1500, 300);
    plan.points.old = { ...plan.points.B, id: 'old', option: null } as Plan['points'][string];
    expect([...new Set(reachIn(plan).map((a) => a.appliance))]).toEqual(['B']);
  });

  test('on a page with no wall it is a plain sum', () => {
    const e = example().point('boiler', 'B', [0, 0, 1200]).point('gully', 'G', [3000, 1000, -100], { drains: 'foul' });
    const a = reachTo(e.plan, 'G');
    expect(a.state).toBe('pass');
    expect(a.lengthM?.value).toBeCloseTo(4, 0);
  });

  test('what was not told about a drain is asked', () => {
    const e = example().point('boiler', 'B', [0, 0, 1200]).point('gully', 'G', [3000, 1000, -100]);
    expect(reachTo(e.plan, 'G')).toMatchObject({ state: 'cantTell' });
  });

  test('the order of the records changes nothing', () => {
    const plan = bootRoom().plan;
    const turned = Object.fromEntries(
      Object.entries(plan).map(([key, value]) => [
        key,
        value && typeof value === 'object' && !Array.isArray(value)
          ? Object.fromEntries(Object.entries(value).reverse())
          : value,
      ]),
    ) as unknown as Plan;
    expect(reachIn(turned)).toEqual(reachIn(plan));
  });

  test('of very many drains only the nearest are looked at', () => {
    const e = example().point('boiler', 'B', [0, 0, 1200]);
    for (let i = 0; i < 40; i++) e.point('sink-waste', `W${i}`, [500 + i * 300, 1000, 300], {}, null);
    const found = reachIn(e.plan);
    expect(found).toHaveLength(12);
    expect(found.map((a) => a.end)).toContain('W0');
    expect(found.map((a) => a.end)).not.toContain('W20');
  });
});
