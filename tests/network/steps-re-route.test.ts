import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distance3 } from '../../src/geometry/vec.ts';
import type { OnRun } from '../../src/network/steps/lifted-part.ts';
import { type ReRoute, reRoute } from '../../src/network/steps/re-route.ts';
import { countingIds } from '../../src/plan/ids.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { expectJoined, placeOf } from './displace-laws.ts';
import { COPPER_15, house } from './house.ts';

const options = (option: string | null = 'o') => ({
  ids: countingIds(new Set(), 1000),
  runsDownhill: (s: string) => s === 'condensate',
  option,
});
const via = (x: number, y: number, z = 2000) =>
  ({ storey: 's', x, y, height: { from: 'floor', of: 's', mm: z } }) as const;

/** Six corners in a row, every second leg in 15, a valve in the middle, a boiler at the start. */
function route(option: string | null = 'o', slope = 0): Plan {
  const h = house().run('r', slope > 0 ? 'condensate' : 'gas', { option });
  const service = slope > 0 ? 'condensate' : 'gas';
  h.point('boiler', 'boiler', [0, 0, 2000], { tail: [service, [0, 0, 0], 'right'] }, { option });
  h.on('n0', 'boiler', 'tail');
  const xy = [
    [1000, 0],
    [1000, 1000],
    [2000, 1000],
    [2000, 2000],
    [3000, 2000],
  ] as const;
  for (const [i, [x, y]] of xy.entries()) h.node(`n${i + 1}`, [x, y, 2000 - (i + 1) * 1000 * slope], { option });
  h.line('r', ['n0', 'n1', 'n2', 'n3', 'n4', 'n5'], { option });
  h.plan.legs.r2!.tube = COPPER_15;
  h.item('valve', 'n3', 'isolation-valve');
  return h.plan;
}

const planOf = (answer: ReturnType<typeof reRoute>): Plan => {
  if (!answer.ok) throw new Error(answer.why);
  return answer.plan;
};
const at = (node: string): OnRun => ({ at: 'node', node });
const on = (leg: string, alongMm: number): OnRun => ({ at: 'leg', leg, alongMm });

describe('a part of a run laid another way', () => {
  const how: ReRoute = { run: 'r', from: at('n1'), to: at('n4'), path: [via(1000, 2000)] };

  it('takes away what lay between, with the valve on it, and keeps the rest as it was', () => {
    const plan = route();
    const after = planOf(reRoute(plan, how, options()));
    expectJoined({ ...plan, items: {} }, after);
    expect(after.items).toEqual({});
    for (const id of ['r1', 'r5']) expect(after.legs[id]).toBe(plan.legs[id]);
    for (const id of ['n0', 'n1', 'n4', 'n5']) expect(after.nodes[id]).toBe(plan.nodes[id]);
    expect(after.nodes.n3).toBeUndefined();
    expect(placeOf(after, 'n2')).toEqual({ x: 1000, y: 2000, z: 2000 });
    expect(after.legs.r2).toMatchObject({ a: 'n1', b: 'n2', tube: COPPER_15 });
    expect(after.legs.r4).toMatchObject({ a: 'n2', b: 'n4' });
    expect(after.runs).toBe(plan.runs);
  });

  it('runs straight where no corner is told', () => {
    const after = planOf(reRoute(route(), { ...how, path: [] }, options()));
    expect(
      Object.values(after.legs).filter((l) => [l.a, l.b].includes('n1') && [l.a, l.b].includes('n4')),
    ).toHaveLength(1);
  });

  it('starts and ends along legs, on one leg too, and keeps the way they were drawn', () => {
    for (const [from, to] of [
      [on('r1', 300), on('r1', 800)],
      [on('r1', 800), on('r1', 300)],
      [on('r2', 400), on('r5', 500)],
      [on('r5', 500), on('r2', 400)],
    ] as const) {
      const plan = route();
      const after = planOf(reRoute(plan, { run: 'r', from, to, path: [via(700, -400)] }, options()));
      expectJoined({ ...plan, items: {} }, after);
      // Walked from the boiler every leg leads on.
      let here = 'n0';
      for (let i = 0; here !== 'n5'; i++) {
        expect(i).toBeLessThan(12);
        const next = Object.values(after.legs).find((l) => l.a === here);
        expect(next).toBeDefined();
        here = next!.b;
      }
    }
  });

  it('keeps valves that stand at its ends, and points them along the new pipe', () => {
    const plan = route();
    plan.items.valve = { ...plan.items.valve!, node: 'n1', along: 'r2' };
    const after = planOf(reRoute(plan, { ...how, from: at('n1') }, options()));
    const leg = after.legs[after.items.valve!.along!]!;
    expect([leg.a, leg.b]).toContain('n1');
  });

  it('says why not: a branch, two runs, one place, corners on each other', () => {
    const plan = route();
    plan.nodes.side = {
      ...plan.nodes.n3!,
      id: 'side',
      place: { on: 'storey', storey: 's', x: 2500, y: 1000, height: via(0, 0).height },
    };
    plan.runs.q = { ...plan.runs.r!, id: 'q' };
    plan.legs.q1 = { ...plan.legs.r1!, id: 'q1', run: 'q', a: 'n3', b: 'side' };
    const why = (change: Partial<ReRoute>): string => {
      const answer = reRoute(plan, { ...how, ...change }, options());
      return answer.ok ? '' : answer.why;
    };
    expect(why({})).toContain('branch');
    expect(why({ to: at('side') })).toContain('not joined by one run');
    expect(why({ to: at('n1') })).toContain('same one');
    expect(why({ to: at('n2'), path: [via(1000, 0)] })).toContain('one place');
    expect(why({ run: 'gone' })).toContain('no longer there');
  });

  it('leaves surveyed pipe in the house, to be stripped out, and lays new beside it', () => {
    const plan = route(null);
    const after = planOf(reRoute(plan, how, options('o')));
    for (const id of ['r2', 'r3', 'r4', 'valve']) expect(after.options.o!.fates[id]).toBe('strip');
    for (const id of Object.keys(plan.legs)) expect(after.legs[id]).toEqual(plan.legs[id]);
    const made = Object.values(after.legs).filter((l) => !plan.legs[l.id]);
    expect(made.map((l) => l.option)).toEqual(['o', 'o']);
  });

  it('of the survey itself is laid anew', () => {
    const plan = route(null);
    const after = planOf(reRoute(plan, how, options(null)));
    expect(after.legs.r3).toBeUndefined();
    for (const leg of Object.values(after.legs)) expect(leg.option).toBeNull();
  });

  it('falls on: evenly, or with its old fall and a drop at the lower end', () => {
    const even = planOf(reRoute(route('o', 0.05), how, options()));
    expect([placeOf(even, 'n1').z, placeOf(even, 'n2').z, placeOf(even, 'n4').z]).toEqual([1950, 1850, 1800]);
    const plan = route('o', 0.05);
    // An upright in the old part: the new one keeps the fall and drops where it ends.
    for (const id of ['n3', 'n4', 'n5']) {
      const place = plan.nodes[id]!.place;
      if (place.on === 'storey')
        plan.nodes[id] = {
          ...plan.nodes[id]!,
          place: { ...place, height: { ...place.height, mm: place.height.mm - 400 } },
        };
    }
    plan.nodes.n2 = {
      ...plan.nodes.n2!,
      place: { on: 'storey', storey: 's', x: 2000, y: 1000, height: { from: 'floor', of: 's', mm: 1880 } },
    };
    const after = planOf(reRoute(plan, how, options()));
    const zs = Object.values(after.nodes)
      .map((n) => placeOf(after, n.id))
      .filter((p) => p.x === 2000 && p.y === 2000)
      .map((p) => p.z);
    expect(zs.sort()).toHaveLength(2);
    expect(reRoute(route('o', 0.05), { ...how, from: at('n4'), to: at('n4') }, options())).toMatchObject({ ok: false });
  });
});

describe('any part of any run', () => {
  it('keeps the run joined from end to end, with no leg of no length', () => {
    const tenths = fc.integer({ min: -20_000, max: 40_000 }).map((n) => n / 10);
    let laid = 0;
    const place = fc.oneof(
      fc.integer({ min: 0, max: 5 }).map((i) => at(`n${i}`)),
      fc
        .tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 1, max: 9999 }))
        .map(([i, mm]) => on(`r${i}`, mm / 10)),
    );
    fc.assert(
      fc.property(
        place,
        place,
        fc.array(fc.tuple(tenths, tenths), { maxLength: 5 }),
        fc.boolean(),
        (from, to, path, drain) => {
          const plan = route('o', drain ? 0.05 : 0);
          const text = JSON.stringify(plan);
          const answer = reRoute(plan, { run: 'r', from, to, path: path.map(([x, y]) => via(x, y)) }, options());
          expect(JSON.stringify(plan)).toBe(text);
          if (!answer.ok) {
            expect(answer.why).toMatch(/^[A-Z].*\.$/);
            return;
          }
          laid++;
          const after = answer.plan;
          expectJoined({ ...plan, items: {} }, after);
          let here = 'n0';
          let legs = 0;
          for (; here !== 'n5'; legs++) {
            const next: { a: string; b: string } | undefined = Object.values(after.legs).find((l) => l.a === here);
            expect(next).toBeDefined();
            const [p, q] = [placeOf(after, next!.a), placeOf(after, next!.b)];
            expect(distance3(p, q)).toBeGreaterThan(0.1);
            if (drain) expect(q.z).toBeLessThanOrEqual(p.z);
            here = next!.b;
          }
          expect(legs).toBe(Object.keys(after.legs).length);
        },
      ),
      { numRuns: 500, seed: 3 },
    );
    expect(laid).toBeGreaterThan(200);
  });
});
