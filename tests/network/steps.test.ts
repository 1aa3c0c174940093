import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { add3, distance3, dot3, length3, sub3, unit3 } from '../../src/geometry/vec.ts';
import { layDrop } from '../../src/network/steps/lay-drop.ts';
import { layStep } from '../../src/network/steps/lay-step.ts';
import { type Step, stepFigures } from '../../src/network/steps/step-shape.ts';
import { countingIds } from '../../src/plan/ids.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { Xyz } from '../../src/plan/records/parts.ts';
import { expectJoined, placeOf } from './displace-laws.ts';
import { house } from './house.ts';

const options = () => ({ ids: countingIds(new Set(), 1000), runsDownhill: (s: string) => s === 'condensate' });

/** Boiler, down, along x, along y, up into a hob or on in the air. */
function route(service: string, ends: 'air' | 'held', slope = 0): Plan {
  const h = house().run('r', service, { option: 'o' });
  const z = 2000;
  h.point('boiler', 'boiler', [0, 0, 2500], { tail: [service, [0, 0, 0], 'down'] }, { option: 'o' });
  h.on('n0', 'boiler', 'tail').node('n1', [0, 0, z], { option: 'o' });
  h.node('n2', [3000, 0, z - 3000 * slope], { option: 'o' });
  h.node('n3', [3000, 2000, z - 5000 * slope], { option: 'o' });
  h.line('r', ['n0', 'n1', 'n2', 'n3'], { option: 'o' });
  if (ends === 'held') {
    h.point('hob', 'hob', [3000, 2000, z - 5000 * slope], { tail: [service, [0, 0, 0], 'left'] }, { option: 'o' });
    h.plan.nodes.n3!.place = { on: 'connection', point: 'hob', connection: 'tail' };
  }
  return h.plan;
}

/** Every leg has a length, and the run its two ends where they were. */
function expectWhole(before: Plan, after: Plan): void {
  expectJoined(before, after);
  for (const leg of Object.values(after.legs))
    expect(distance3(placeOf(after, leg.a), placeOf(after, leg.b))).toBeGreaterThan(0.2);
  for (const node of Object.values(before.nodes)) {
    if (node.place.on === 'connection') expect(after.nodes[node.id]).toEqual(node);
  }
}

const laidOr = (answer: ReturnType<typeof layStep>): Plan => {
  if (!answer.ok) throw new Error(answer.why);
  return answer.plan;
};

/** Places from the boiler on, as water or gas goes. */
function walk(plan: Plan): Xyz[] {
  const line = [placeOf(plan, 'n0')];
  let [at, came] = ['n0', ''];
  for (;;) {
    const leg = Object.values(plan.legs).find((l) => l.id !== came && (l.a === at || l.b === at));
    if (!leg) return line;
    [at, came] = [leg.a === at ? leg.b : leg.a, leg.id];
    line.push(placeOf(plan, at));
  }
}

describe('figures of a step', () => {
  it('follow trigonometry: travel is the offset over the sine of the angle', () => {
    expect(stepFigures(100, 45).travelMm).toBeCloseTo(141.42, 2);
    expect(stepFigures(100, 30).travelMm).toBeCloseTo(200, 6);
    expect(stepFigures(100, 30).runMm).toBeCloseTo(173.21, 2);
    expect(stepFigures(100, 90)).toEqual({ offsetMm: 100, travelMm: 100, runMm: 0 });
  });
});

describe('a passover', () => {
  const over: Step = {
    leg: 'r2',
    kind: 'passover',
    alongMm: 1500,
    offset: { x: 0, y: 0, z: 80 },
    overMm: 60,
    angleDeg: 45,
  };

  it('goes out, over and back, and leaves both ends of the leg', () => {
    const plan = route('gas', 'held');
    const after = laidOr(layStep(plan, over, options()));
    expectWhole(plan, after);
    expect(walk(after).slice(1, -1)).toEqual([
      { x: 0, y: 0, z: 2000 },
      { x: 1390, y: 0, z: 2000 },
      { x: 1470, y: 0, z: 2080 },
      { x: 1530, y: 0, z: 2080 },
      { x: 1610, y: 0, z: 2000 },
      { x: 3000, y: 0, z: 2000 },
    ]);
    expect(after.legs.r2).toMatchObject({ a: 'n1', run: 'r' });
    expect(new Set(Object.values(after.legs).map((l) => l.run))).toEqual(new Set(['r']));
  });

  it('of three bends has none on a straight piece', () => {
    const after = laidOr(layStep(route('gas', 'air'), { ...over, overMm: 0 }, options()));
    expect(walk(after)).toHaveLength(7);
  });

  it('is refused in words where it has no room, goes along, or would be flat', () => {
    const plan = route('gas', 'air');
    const why = (change: Partial<Step>): string => {
      const answer = layStep(plan, { ...over, ...change }, options());
      return answer.ok ? '' : answer.why;
    };
    expect(why({ alongMm: 60 })).toContain('past the end');
    expect(why({ overMm: 2900 })).toContain('no room');
    expect(why({ offset: { x: 80, y: 0, z: 0 } })).toContain('along the pipe');
    expect(why({ offset: { x: 0, y: 0, z: 0 } })).toContain('offset');
    expect(why({ overMm: 0, angleDeg: 90 })).toContain('length over');
    expect(why({ leg: 'gone' })).toContain('no longer there');
  });

  it('never holds water: up and down are refused downhill, sideways falls on', () => {
    const plan = route('condensate', 'held', 0.05);
    for (const z of [80, -80]) {
      const answer = layStep(plan, { ...over, offset: { x: 0, y: 0, z } }, options());
      expect(answer).toMatchObject({ ok: false });
      expect(!answer.ok && answer.why).toContain('Water would stand');
    }
    const after = laidOr(layStep(plan, { ...over, offset: { x: 0, y: 80, z: 0 } }, options()));
    expectWhole(plan, after);
    const zs = walk(after).map((p) => p.z);
    for (let i = 1; i < zs.length; i++) expect(zs[i]!).toBeLessThan(zs[i - 1]!);
    expect(placeOf(after, 'n2')).toEqual(placeOf(plan, 'n2'));
  });

  it('on a drop of a drain is stepped at 45 and never square', () => {
    const h = house().run('r', 'condensate', { option: 'o' });
    h.node('a', [0, 0, 2400]).node('b', [0, 0, 400]).leg('r1', 'r', 'a', 'b', { option: 'o' });
    const step: Step = { ...over, leg: 'r1', alongMm: 1000, offset: { x: 60, y: 0, z: 0 } };
    expect(layStep(h.plan, { ...step, angleDeg: 90 }, options())).toMatchObject({ ok: false });
    const after = laidOr(layStep(h.plan, step, options()));
    for (const leg of Object.values(after.legs))
      expect(placeOf(after, leg.a).z).toBeGreaterThan(placeOf(after, leg.b).z);
  });
});

describe('a set', () => {
  const set: Step = { leg: 'r2', kind: 'set', alongMm: 1500, offset: { x: 0, y: 100, z: 0 }, overMm: 0, angleDeg: 45 };

  it('shifts all beyond it, and takes the other side where the end is held', () => {
    const plan = route('gas', 'air');
    const after = laidOr(layStep(plan, set, options()));
    expectWhole(plan, after);
    expect(walk(after).slice(2)).toEqual([
      { x: 1400, y: 0, z: 2000 },
      { x: 1500, y: 100, z: 2000 },
      { x: 3000, y: 100, z: 2000 },
      { x: 3000, y: 2000, z: 2000 },
    ]);
  });

  it('says what holds it where neither side can go', () => {
    const h = house().run('r', 'gas', { option: 'o' });
    for (const [id, x] of [
      ['p', 0],
      ['q', 2000],
    ] as const)
      h.point(id, 'hob', [x, 0, 500], { tail: ['gas', [0, 0, 0], 'front'] }).on(`n${id}`, id, 'tail');
    h.leg('r1', 'r', 'np', 'nq', { option: 'o' });
    const answer = layStep(h.plan, { ...set, leg: 'r1', alongMm: 1000 }, options());
    expect(!answer.ok && answer.why).toContain('held');
  });

  it('keeps a fall: the slanting piece falls with the rest', () => {
    const plan = route('condensate', 'air', 0.05);
    const after = laidOr(layStep(plan, set, options()));
    expectWhole(plan, after);
    const zs = walk(after).map((p) => p.z);
    for (let i = 1; i < zs.length; i++) expect(zs[i]!).toBeLessThan(zs[i - 1]!);
  });

  it('down goes with the water, up is refused', () => {
    const plan = route('condensate', 'air', 0.05);
    expect(layStep(plan, { ...set, offset: { x: 0, y: 0, z: -100 }, toward: 'b' }, options())).toMatchObject({
      ok: true,
    });
    expect(layStep(plan, { ...set, offset: { x: 0, y: 0, z: 100 }, toward: 'b' }, options())).toMatchObject({
      ok: false,
    });
  });

  it('takes the items of the far end along', () => {
    const plan = route('gas', 'air');
    plan.items.i = {
      id: 'i',
      node: 'n2',
      kind: 'valve',
      name: 'v',
      along: 'r2',
      fields: {},
      option: null,
      sureness: 'seen',
    };
    const after = laidOr(layStep(plan, set, options()));
    const leg = after.legs[after.items.i!.along!]!;
    expect([leg.a, leg.b]).toContain('n2');
  });
});

describe('a drop to a height', () => {
  const to = (mm: number) => ({ from: 'floor', of: 's', mm }) as const;

  it('drops at a place along the leg and goes on at the told height', () => {
    const plan = route('gas', 'air');
    const after = laidOr(layDrop(plan, { leg: 'r2', alongMm: 1000, toward: 'b', height: to(150) }, options()));
    expectWhole(plan, after);
    expect(walk(after).slice(1)).toEqual([
      { x: 0, y: 0, z: 2000 },
      { x: 1000, y: 0, z: 2000 },
      { x: 1000, y: 0, z: 150 },
      { x: 3000, y: 0, z: 150 },
      { x: 3000, y: 2000, z: 150 },
    ]);
    for (const id of ['n2', 'n3']) expect(after.nodes[id]!.place).toMatchObject({ height: to(150) });
  });

  it('keeps the reference it is told in', () => {
    const height = { from: 'ceiling', of: 's', mm: 60, assumed: { lo: 40, hi: 90 } } as const;
    const after = laidOr(layDrop(route('gas', 'air'), { leg: 'r3', alongMm: 500, toward: 'b', height }, options()));
    expect(after.nodes.n3!.place).toMatchObject({ height });
  });

  it('at a corner with an upright only that grows', () => {
    const plan = route('gas', 'air');
    const after = laidOr(layDrop(plan, { leg: 'r2', alongMm: 0, toward: 'b', height: to(150) }, options()));
    expect(Object.keys(after.legs)).toHaveLength(3);
    expect(placeOf(after, 'n1').z).toBe(150);
    expect(placeOf(after, 'n3').z).toBe(150);
  });

  it('is refused where it would climb against the water, stands there already, or is held', () => {
    const drain = route('condensate', 'air', 0.05);
    const why = (plan: Plan, leg: string, mm: number): string => {
      const answer = layDrop(plan, { leg, alongMm: 900, toward: 'b', height: to(mm) }, options());
      return answer.ok ? '' : answer.why;
    };
    expect(why(drain, 'r2', 2300)).toContain('Water would stand');
    expect(why(route('gas', 'air'), 'r2', 2000)).toContain('already');
    expect(why(route('gas', 'air'), 'r1', 400)).toContain('upright');
    expect(why(route('gas', 'held'), 'r3', 400)).toContain('held');
  });
});

describe('any step in any route', () => {
  it('keeps pipes joined, tails still, drains falling and legs longer than nothing, or says why not', () => {
    const tenths = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);
    let laid = 0;
    let refused = 0;
    fc.assert(
      fc.property(
        fc.record({
          service: fc.constantFrom('gas', 'condensate'),
          ends: fc.constantFrom<'air' | 'held'>('air', 'held'),
          leg: fc.constantFrom('r1', 'r2', 'r3'),
          kind: fc.constantFrom<Step['kind']>('set', 'passover', 'kick', 'swanNeck'),
          alongMm: tenths(0, 3000),
          overMm: tenths(0, 400),
          angleDeg: fc.constantFrom(30, 45, 90),
          far: tenths(-400, 400),
          axis: fc.constantFrom<'x' | 'y' | 'z'>('x', 'y', 'z'),
          toward: fc.constantFrom<'a' | 'b' | undefined>('a', 'b', undefined),
        }),
        ({ service, ends, far, axis, ...step }) => {
          const plan = route(service, ends, service === 'condensate' ? 0.05 : 0);
          const text = JSON.stringify(plan);
          const offset = { x: 0, y: 0, z: 0, [axis]: far };
          const answer = layStep(plan, { ...step, offset }, options());
          expect(JSON.stringify(plan)).toBe(text);
          if (!answer.ok) {
            refused++;
            expect(answer.why).toMatch(/^[A-Z].*\.$/);
            return;
          }
          laid++;
          expectWhole(plan, answer.plan);
          for (const [id, leg] of Object.entries(answer.plan.legs))
            if (plan.legs[id] !== leg) expect(answer.touched).toContain(id);
          const line = walk(answer.plan);
          if (service === 'condensate') {
            for (const [i, p] of line.entries()) {
              const before = line[i - 1];
              // A piece of a mm or two falls by less than the tenth that lengths are kept to.
              if (before) expect(p.z).toBeLessThan(before.z + (distance3(p, before) < 5 ? 0.001 : 0));
            }
          }
          // The middle of what is cleared lies the offset away from where it was.
          if (step.kind !== 'passover') return;
          const a = placeOf(plan, plan.legs[step.leg]!.a);
          const way = unit3(sub3(placeOf(plan, plan.legs[step.leg]!.b), a));
          const middle = add3(
            add3(a, { x: way.x * step.alongMm, y: way.y * step.alongMm, z: way.z * step.alongMm }),
            offset,
          );
          const off = Math.min(
            ...line.slice(1).map((q, i) => {
              const p = line[i]!;
              const d = sub3(q, p);
              const t = Math.min(1, Math.max(0, dot3(sub3(middle, p), d) / dot3(d, d)));
              return length3(sub3(middle, { x: p.x + d.x * t, y: p.y + d.y * t, z: p.z + d.z * t }));
            }),
          );
          expect(off).toBeLessThan(service === 'condensate' ? 30 : 0.3);
        },
      ),
      { numRuns: 600, seed: 5 },
    );
    expect(Math.min(laid, refused)).toBeGreaterThan(100);
  });
});
