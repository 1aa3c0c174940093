import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { legFall, lineFall } from '../../src/geometry/falls.ts';
import { resolveHeight } from '../../src/geometry/heights.ts';
import { lengthBetween, nodePlace, placesOf } from '../../src/geometry/places.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { HeightRef } from '../../src/plan/records/parts.ts';
import { at, box, datum, GROUND, house, node, room, space } from './house.ts';

const toVoid: HeightRef = { from: 'floor', of: GROUND, mm: 2350, assumed: { lo: 2300, hi: 2400 } };
const boilerAt = (id: string, x: number) =>
  box(
    id,
    {
      on: 'storey',
      x,
      y: 0,
      angleDeg: 0,
      height: { from: 'floor', of: GROUND, mm: 1250, assumed: { lo: 1100, hi: 1400 } },
    },
    [400, 300, 700],
  );

function between(plan: Plan, a: string, b: string) {
  const [na, nb] = [plan.nodes[a], plan.nodes[b]];
  return na && nb && lengthBetween(plan, na, nb);
}

describe('heights', () => {
  it('are taken from the datum, a floor, a ceiling, a void', () => {
    const plan = house({
      rooms: [room('r', [0, 0], { floorMm: 150, ceilingMm: 2100 })],
      voids: [space('v', [], null, null, { bottom: { from: 'ceiling', of: GROUND, mm: 13 }, top: datum(2600) })],
    });
    const z = (h: HeightRef) => resolveHeight(plan, h)?.z;
    expect(z(datum(40))).toBe(40);
    expect(z({ from: 'floor', of: GROUND, mm: 40 })).toBe(40);
    expect(z({ from: 'floor', of: 'r', mm: 40 })).toBe(190);
    expect(z({ from: 'ceiling', of: GROUND, mm: -40 })).toBe(2360);
    expect(z({ from: 'ceiling', of: 'r', mm: -40 })).toBe(2210);
    expect(z({ from: 'voidBottom', of: 'v', mm: 50 })).toBe(2463);
    expect(z({ from: 'voidTop', of: 'v', mm: -50 })).toBe(2550);
  });

  it('follow when the ceiling is measured again', () => {
    const plan = house({ voids: [space('v', [], null, null, { bottom: { from: 'ceiling', of: GROUND, mm: 13 } })] });
    const lower: Plan = { ...plan, storeys: { [GROUND]: { ...plan.storeys[GROUND]!, ceilingMm: 2300 } } };
    const h: HeightRef = { from: 'voidBottom', of: 'v', mm: 50 };
    expect(resolveHeight(plan, h)!.z - resolveHeight(lower, h)!.z).toBe(100);
  });

  it('are not known where they lean on nothing, or on themselves', () => {
    const plan = house({
      voids: [
        space('v', [], null, null, {
          top: { from: 'voidBottom', of: 'v', mm: 5 },
          bottom: { from: 'voidTop', of: 'v', mm: 5 },
        }),
      ],
      points: [
        box(
          'p',
          { on: 'storey', x: 0, y: 0, angleDeg: 0, height: { from: 'connection', of: 'p', connection: 'gas', mm: 0 } },
          [1, 1, 1],
        ),
      ],
    });
    const gone: HeightRef[] = [
      { from: 'floor', of: 'nowhere', mm: 0 },
      { from: 'voidTop', of: 'nothing', mm: 0 },
      { from: 'voidTop', of: 'v', mm: 0 },
      { from: 'connection', of: 'p', mm: 0 },
      { from: 'connection', of: 'p', connection: 'gas', mm: 0 },
    ];
    for (const h of gone) expect(resolveHeight(plan, h), h.from).toBeUndefined();
  });

  it('widen by what was assumed, at every step', () => {
    const plan = house({
      voids: [
        space('v', [], null, null, {
          bottom: { from: 'floor', of: GROUND, mm: 2350, assumed: { lo: 2300, hi: 2400 } },
        }),
      ],
    });
    const h: HeightRef = { from: 'voidBottom', of: 'v', mm: 50, assumed: { lo: 20, hi: 60 } };
    expect(resolveHeight(plan, h)).toMatchObject({ z: 2400, lo: 2320, hi: 2460 });
  });
});

describe('lengths between nodes', () => {
  const plan = house({
    voids: [
      space('v', [], null, null, { bottom: { from: 'floor', of: GROUND, mm: 2350, assumed: { lo: 2300, hi: 2400 } } }),
    ],
    points: [boilerAt('b', 0), boilerAt('c', 5000)],
    nodes: [
      node('a', [0, 0], datum(0)),
      node('b', [3000, 4000], datum(0)),
      node('low', [0, 0], { from: 'floor', of: GROUND, mm: 700, assumed: { lo: 300, hi: 1100 } }),
      node('up', [0, 0], toVoid),
      node('far', [4200, 0], toVoid),
      node('v50', [0, 0], { from: 'voidBottom', of: 'v', mm: 50 }),
      node('v90', [300, 0], { from: 'voidBottom', of: 'v', mm: 90 }),
      node('under', [0, -50], { from: 'connection', of: 'b', connection: 'gas', mm: -500 }),
      at('gas', 'b', 'gas'),
      at('flow', 'b', 'flow'),
      at('other', 'c', 'gas'),
      at('lost', 'nobody', 'gas'),
    ],
  });

  it('are exact where everything was measured', () => {
    expect(between(plan, 'a', 'b')).toEqual({ mm: 5000, lo: 5000, hi: 5000 });
  });

  it('carry the doubt of both ends', () => {
    expect(between(plan, 'low', 'up')).toEqual({ mm: 1650, lo: 1200, hi: 2100 });
  });

  it('are exact between two places at one height, however uncertain it is', () => {
    expect(between(plan, 'up', 'far')).toEqual({ mm: 4200, lo: 4200, hi: 4200 });
  });

  it('are exact between two heights taken from one void', () => {
    const found = between(plan, 'v50', 'v90');
    expect(found?.lo).toBeCloseTo(Math.hypot(300, 40), 9);
    expect(found?.hi).toBeCloseTo(Math.hypot(300, 40), 9);
  });

  it('are exact within one point, and from a height set off its connection', () => {
    expect(between(plan, 'gas', 'under')).toEqual({ mm: 500, lo: 500, hi: 500 });
    const within = between(plan, 'gas', 'flow');
    expect(within?.lo).toBeCloseTo(within?.hi ?? 0, 9);
  });

  it('are not exact between two points, though both were assumed in the same words', () => {
    const found = between(plan, 'gas', 'other');
    expect(found).toMatchObject({ mm: 5000, lo: 5000 });
    expect(found?.hi).toBeCloseTo(Math.hypot(5000, 300), 9);
  });

  it('are not known where an end leans on something that is gone', () => {
    expect(between(plan, 'gas', 'lost')).toBeUndefined();
    expect(nodePlace(plan, plan.nodes.lost!)).toBeUndefined();
  });

  it('hold the drawn length, and every length the assumptions allow', () => {
    const ref = fc.record({
      mm: fc.integer({ min: 0, max: 2400 }),
      under: fc.nat(300),
      over: fc.nat(300),
      pick: fc.double({ min: 0, max: 1, noNaN: true }),
    });
    fc.assert(
      fc.property(ref, ref, fc.nat(3000), (a, b, dx) => {
        const h = (r: typeof a): HeightRef => ({
          from: 'floor',
          of: GROUND,
          mm: r.mm,
          assumed: { lo: r.mm - r.under, hi: r.mm + r.over },
        });
        const one = house({ nodes: [node('m', [0, 0], h(a)), node('n', [dx, 0], h(b))] });
        const found = between(one, 'm', 'n')!;
        expect(found.mm).toBeGreaterThanOrEqual(found.lo);
        expect(found.mm).toBeLessThanOrEqual(found.hi);
        const real = (r: typeof a) => r.mm - r.under + r.pick * (r.under + r.over);
        const same = JSON.stringify(h(a)) === JSON.stringify(h(b));
        const length = Math.hypot(dx, same ? 0 : real(a) - real(b));
        expect(length).toBeGreaterThanOrEqual(found.lo - 1e-6);
        expect(length).toBeLessThanOrEqual(found.hi + 1e-6);
      }),
    );
  });
});

describe('falls', () => {
  it('are told in mm and mm per m', () => {
    const found = lineFall([
      { x: 970, y: 0, z: 1250 },
      { x: 970, y: 0, z: 700 },
      { x: 1950, y: 0, z: 655 },
    ]);
    expect(found.pieces.map((p) => p.way)).toEqual(['plumbDown', 'falls']);
    expect(found.pieces[1]?.mmPerM).toBeCloseTo(45.918, 3);
    expect(found).toMatchObject({ dropMm: 595, flatMm: 980, climbing: [] });
    expect(found.leastMmPerM).toBeCloseTo(45.918, 3);
  });

  it('are reverse where the second end is higher', () => {
    const found = lineFall([
      { x: 0, y: 0, z: 100 },
      { x: 1000, y: 0, z: 120 },
      { x: 1000, y: 0, z: 400 },
      { x: 2000, y: 0, z: 400.1 },
    ]);
    expect(found.pieces.map((p) => p.way)).toEqual(['climbs', 'plumbUp', 'level']);
    expect(found.climbing).toEqual([0, 1]);
    expect(found.leastMmPerM).toBeCloseTo(-20, 9);
  });

  it('of a leg are the other way round from its other end, bounds too', () => {
    const plan = house({
      nodes: [
        node('a', [0, 0], { from: 'floor', of: GROUND, mm: 500, assumed: { lo: 480, hi: 560 } }),
        node('b', [2000, 0], datum(400)),
      ],
    });
    const leg = { a: 'a', b: 'b' };
    expect(legFall(plan, leg)).toMatchObject({
      way: 'falls',
      drop: { mm: 100, lo: 80, hi: 160 },
      gradient: { mm: 50, lo: 40, hi: 80 },
    });
    expect(legFall(plan, leg, 'b')).toMatchObject({ way: 'climbs', drop: { mm: -100, lo: -160, hi: -80 } });
    expect(placesOf(plan, plan.nodes.a!, plan.nodes.b!)?.rise).toEqual({ mm: -100, lo: -160, hi: -80 });
  });
});
