import { describe, expect, it } from 'vitest';
import { groundAt } from '../../src/geometry/ground.ts';
import { overhead, roofPlaneZ } from '../../src/geometry/roofs.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { Roof } from '../../src/plan/records/building.ts';
import { datum, GROUND, house, xy } from './house.ts';

/** Eaves along y = 0 at 1500, rising to the north at 45. */
const roof = (more: Partial<Roof> = {}): Roof => ({
  id: 'r',
  storey: GROUND,
  outline: [xy([0, 0]), xy([4000, 0]), xy([4000, 2000]), xy([0, 2000])],
  eaves: { a: xy([0, 0]), b: xy([4000, 0]), height: datum(1500) },
  pitchDeg: 45,
  rafters: null,
  sureness: 'seen',
  ...more,
});
const plan: Plan = { ...house({}), roofs: { r: roof() } };

describe('what is overhead', () => {
  it('is the roof near the eaves and the ceiling further in', () => {
    expect(overhead(plan, GROUND, xy([1000, 400]))).toEqual({ z: expect.closeTo(1900, 6), roof: 'r' });
    expect(overhead(plan, GROUND, xy([1000, 1500]))).toEqual({ z: 2400, roof: null });
    expect(overhead(plan, GROUND, xy([1000, 2500]))).toEqual({ z: 2400, roof: null });
    expect(overhead(plan, 'nowhere', xy([0, 0]))).toBeUndefined();
  });

  it('rises to the left of the eaves line, whichever way that lies', () => {
    const other = roof({ eaves: { a: xy([4000, 2000]), b: xy([0, 2000]), height: datum(1500) } });
    expect(roofPlaneZ(plan, other, xy([1000, 1600]))).toBeCloseTo(1900, 6);
    expect(
      roofPlaneZ(plan, roof({ eaves: { ...roof().eaves, height: { from: 'voidTop', of: 'x', mm: 0 } } }), xy([0, 0])),
    ).toBeUndefined();
  });
});

describe('the ground outside', () => {
  const line = [
    { x: 0, y: -500, z: -150 },
    { x: 4000, y: -500, z: -350 },
  ];
  const levelled: Plan = {
    ...house({}),
    grounds: {
      path: { id: 'path', line, kind: 'path', sureness: 'seen' },
      step: { id: 'step', line: [{ x: 9000, y: 0, z: 20 }], kind: 'step', sureness: 'seen' },
    },
  };

  it('falls evenly between what was levelled', () => {
    expect(groundAt(levelled, xy([1000, 0]))).toEqual({ ground: 'path', z: -200, awayMm: 500 });
    expect(groundAt(levelled, xy([-300, -500]))).toEqual({ ground: 'path', z: -150, awayMm: 300 });
    expect(groundAt(levelled, xy([9000, 30]))).toEqual({ ground: 'step', z: 20, awayMm: 30 });
    expect(groundAt(house({}), xy([0, 0]))).toBeUndefined();
  });
});
