import { describe, expect, test } from 'vitest';
import { nodePlace } from '../../src/geometry/places.ts';
import { COINCIDENT_MM } from '../../src/plan/units.ts';
import { flatPlan } from './flat-plan.ts';

type Corner = readonly [number, number, number];
const corners: Readonly<Record<string, readonly Corner[]>> = {
  'B-g1': [
    [8500, 2300, 500],
    [8500, 2300, 2420],
    [8500, 3950, 2420],
    [400, 3950, 2420],
    [400, 5200, 2420],
  ],
  'B-g2': [
    [400, 5200, 2420],
    [400, 6290, 2420],
    [400, 6290, 1180],
    [800, 6290, 1180],
    [800, 6290, 1260],
  ],
  'B-g3': [
    [400, 5200, 2420],
    [400, 5200, 900],
    [550, 5200, 900],
  ],
  'B-f1': [
    [680, 6240, 1260],
    [680, 6240, 150],
    [5150, 6240, 150],
    [5150, 4640, 150],
  ],
  'B-r1': [
    [920, 6240, 1260],
    [920, 6240, 210],
    [5210, 6240, 210],
    [5210, 4640, 210],
  ],
  'B-h1': [
    [740, 6180, 1260],
    [740, 6180, 270],
    [5130, 6180, 270],
    [5130, 4600, 270],
  ],
  'B-c1': [
    [2300, 6250, 400],
    [860, 6250, 400],
    [860, 6250, 1260],
  ],
  'B-k1': [
    [970, 6180, 1250],
    [970, 6180, 700],
    [1950, 6180, 655],
  ],
  'B-p1': [
    [1030, 6180, 1250],
    [1030, 6640, 1240],
    [1030, 6640, -2800],
  ],
};

const plan = flatPlan();
const placeOf = (id: string) => {
  const node = plan.nodes[id];
  const place = node && nodePlace(plan, node);
  if (!place) throw new Error(`node ${id} has no place`);
  return place.at;
};
const off = (a: { x: number; y: number; z: number }, [x, y, z]: Corner) => Math.hypot(a.x - x, a.y - y, a.z - z);

describe('the flat', () => {
  test.each(Object.entries(corners))('%s goes by the corners surveyed', (run, wanted) => {
    const legs = Object.values(plan.legs).filter((leg) => leg.run === run);
    expect(legs).toHaveLength(wanted.length - 1);
    const ids = [legs[0]?.a ?? '', ...legs.map((leg) => leg.b)];
    for (const [i, corner] of wanted.entries()) {
      expect(off(placeOf(ids[i] ?? ''), corner)).toBeLessThan(COINCIDENT_MM);
    }
    for (const [i, leg] of legs.slice(1).entries()) expect(leg.a).toBe(legs[i]?.b);
  });

  test('every run is told', () => {
    const told = Object.keys(plan.runs).filter((id) => Object.values(plan.legs).some((leg) => leg.run === id));
    expect(told.sort()).toEqual(Object.keys(corners).sort());
  });

  test('what is new carries the option, and what goes has its fate', () => {
    expect(plan.points['B-NB']?.option).toBe('A');
    expect(plan.points['B-EB']?.option).toBeNull();
    expect(plan.options.A?.fates).toEqual({ 'B-EB': 'strip', 'B-EF': 'strip' });
    for (const run of Object.keys(corners)) expect(plan.runs[run]?.option).toBe('A');
  });
});
