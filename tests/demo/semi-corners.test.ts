import { describe, expect, test } from 'vitest';
import { type Corner, wayOf } from './corners.ts';
import { semiPlan } from './semi-plan.ts';

const corners: Readonly<Record<string, readonly Corner[]>> = {
  'A-g0': [
    [8400, 900, 700],
    [7985, 900, 700],
    [7985, 900, 2515],
    [7985, 4300, 2515],
  ],
  'A-g2': [
    [7985, 4300, 2515],
    [7985, 4300, 2760],
    [8060, 4300, 2760],
    [8060, 5200, 2760],
    [8060, 5200, 3850],
    [7985, 5200, 3850],
  ],
  'A-f1': [
    [7985, 5330, 3850],
    [7985, 5330, 2575],
    [7720, 5330, 2575],
    [7720, 3950, 2575],
    [7720, 3950, 3300],
    [7150, 3950, 3300],
  ],
  'A-r1': [
    [7985, 5070, 3850],
    [7985, 5070, 2540],
    [7790, 5070, 2540],
    [7790, 3880, 2540],
    [7790, 3880, 3100],
    [7150, 3880, 3100],
  ],
  'A-h1': [
    [7725, 2700, 4200],
    [7725, 2340, 4200],
    [7725, 2340, 2575],
    [7725, 1950, 2575],
    [7725, 1950, 3740],
  ],
  'A-c1': [
    [8060, 3300, 3600],
    [7875, 3300, 3600],
    [7875, 3300, 2540],
    [7875, 1950, 2540],
    [7875, 1950, 3740],
  ],
  'A-k1': [
    [7985, 5480, 3840],
    [7985, 5480, 2576],
    [7985, 6600, 2525],
    [7985, 6600, 900],
  ],
  'A-p1': [
    [7985, 5560, 3850],
    [8480, 5560, 3840],
    [8480, 5560, 150],
  ],
  'A-d1': [
    [8060, 3050, 3740],
    [8060, 3050, 3340],
    [8460, 3050, 3336],
    [8460, 3050, 100],
  ],
  'A-d2': [
    [7060, 3550, 3540],
    [7060, 3550, 3200],
    [7060, 3250, 3198],
    [8460, 3250, 3190],
    [8460, 3250, 100],
  ],
};

const plan = semiPlan();

describe('the semi-detached house', () => {
  test.each(Object.entries(corners))('%s goes by the corners surveyed', (run, wanted) => {
    expect(wayOf(plan, run)).toEqual(wanted);
  });

  test('every run with a leg was told, beside the D1 of the preheat vessel', () => {
    const told = new Set(Object.values(plan.legs).map((leg) => leg.run as string));
    expect([...told].sort()).toEqual([...Object.keys(corners), 'A-e2'].sort());
  });

  test('new pipe carries the option, what was there does not', () => {
    const old = Object.values(plan.runs).filter((r) => r.option === null);
    expect(old.map((r) => r.id as string).sort()).toEqual(['A-c0', 'A-e0', 'A-f0', 'A-g0', 'A-h0', 'A-w0']);
    for (const id of Object.keys(plan.options.A?.fates ?? {})) {
      expect((plan.points[id] ?? plan.stretches[id])?.option, id).toBeNull();
    }
  });

  test('loose ends stay as they were drawn', () => {
    const [end, valves] = [wayOf(plan, 'A-r1').at(-1), wayOf(plan, 'A-f1').at(-1)];
    if (!end || !valves) throw new Error('no heating');
    // 70 off in plan and 200 in height.
    expect(Math.hypot(end[0] - valves[0], end[1] - valves[1], end[2] - valves[2])).toBeCloseTo(Math.hypot(70, 200), 6);
    expect(
      Object.values(plan.legs)
        .filter((leg) => leg.run === 'A-r1')
        .at(-1)?.b,
    ).toBe('A-r1.5');
  });
});
