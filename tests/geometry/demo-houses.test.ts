import { describe, expect, it } from 'vitest';
import { faceStretches } from '../../src/geometry/face-plane.ts';
import { joistLines } from '../../src/geometry/joist-lines.ts';
import { nodePlace } from '../../src/geometry/places.ts';
import { roomFaces } from '../../src/geometry/rooms.ts';
import { voidFinder } from '../../src/geometry/void-stretches.ts';
import { wallFinder } from '../../src/geometry/wall-crossings.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { extensionPlan } from '../demo/extension-plan.ts';
import { flatPlan } from '../demo/flat-plan.ts';
import { semiPlan } from '../demo/semi-plan.ts';
import { twoStoreyPlan } from '../demo/two-storey-plan.ts';

const plan: Plan = flatPlan();
const storey = Object.keys(plan.storeys)[0]!;

function legsOf(run: string) {
  return Object.values(plan.legs)
    .filter((l) => l.run === run)
    .sort((p, q) => p.id.localeCompare(q.id, 'en', { numeric: true }))
    .map((l) => ({ a: nodePlace(plan, plan.nodes[l.a]!)!.at, b: nodePlace(plan, plan.nodes[l.b]!)!.at }));
}

describe('the flat of the demo', () => {
  it('has its eight spaces, each with a room of its own', () => {
    const { faces, lost, doubled } = roomFaces(plan, storey);
    expect(faces).toHaveLength(8);
    expect(lost).toEqual([]);
    expect(doubled).toEqual([]);
    const hall = faces.find((f) => f.rooms.some((r) => plan.rooms[r]?.name.toLowerCase().includes('hall')));
    // 2900 to 8750 by 2900 to 4000.
    expect(hall?.areaMm2).toBeCloseTo(5850 * 1100, -2);
  });

  it('lets the gas run from the meter through two walls and the hall void', () => {
    const finder = wallFinder(plan);
    const crossings = legsOf('B-g1').flatMap(({ a, b }) => finder.crossings(a, b, storey));
    expect(crossings.map((c) => c.wall)).toEqual(['BP2', 'BP3', 'BP1']);
    expect(crossings.every((c) => c.opening === null && Math.abs(c.angleDeg - 90) < 1e-9)).toBe(true);
    const voids = voidFinder(plan);
    const inVoid = legsOf('B-g1')
      .flatMap((leg) => voids.stretches(leg))
      .filter((s) => s.void === 'BV1');
    expect(inVoid.reduce((sum, s) => sum + s.lengthMm, 0)).toBeCloseTo(1050 + 5600, 0);
    expect(inVoid.flatMap((s) => s.joists).every((j) => j.passes === 'over')).toBe(true);
  });

  it('shows the kitchen on the inside of its north wall', () => {
    const north = faceStretches(plan, plan.walls.BN!, 'right');
    expect(north.map((f) => plan.rooms[f.rooms[0] ?? '']?.name.toLowerCase())).toEqual([
      expect.stringContaining('kitchen'),
      expect.stringContaining('bath'),
      expect.stringContaining('bed'),
    ]);
    expect(north[0]).toMatchObject({ fromS: 250, toS: 3000 });
  });
});

/**
 * Rooms of every demo with their floor areas in mm2, worked by hand from the centrelines: a face lies half a wall's
 * thickness off its centreline, so walls at x 2400 of 100 and x 250 of the outside leave 250 to 2350, which is 2100.
 */
const AREAS: Readonly<Record<string, Readonly<Record<string, readonly [room: string, mm2: number][]>>>> = {
  semi: {
    G: [
      // 250 to 2350 by 300 to 4050.
      ['hall', 2100 * 3750],
      // 2450 to 8100 by 300 to 4050.
      ['living', 5650 * 3750],
      // 250 to 6100 by 4150 to 6900.
      ['kitchen', 5850 * 2750],
      // 6200 to 8100 by 4150 to 6900.
      ['utility', 1900 * 2750],
    ],
    F: [
      // 250 to 2350 by 300 to 4050, and on between 3150 and 4050 as far as 6900.
      ['landing', 2100 * 3750 + 4550 * 900],
      // 2450 to 8100 by 300 to 3050, less en-suite (6200 on, to 2000) and cupboard (6900 on, from 2200) with their walls.
      ['bed-1', 5650 * 2750 - 1900 * 1700 - 1200 * 850],
      // 6300 to 8100 by 300 to 1900.
      ['en-suite', 1800 * 1600],
      // 7000 to 8100 by 2300 to 4050.
      ['cylinder-cupboard', 1100 * 1750],
      // 250 to 2550 by 4150 to 6900.
      ['bathroom', 2300 * 2750],
      // 2650 to 6100 by 4150 to 6900.
      ['bed-2', 3450 * 2750],
      // 6200 to 8100 by 4150 to 6900.
      ['linen-room', 1900 * 2750],
    ],
  },
  extension: {
    G: [
      // 300 to 6700 by 300 to 3950.
      ['front', 6400 * 3650],
      // 300 to 3350 by 4050 to 7700.
      ['dining', 3050 * 3650],
      // 3450 to 6700 by 4050 to 7700.
      ['old-kitchen', 3250 * 3650],
      // 2300 to 6700 by 8000 to 11950.
      ['kitchen', 4400 * 3950],
      // 2300 to 4550 by 12050 to 14300.
      ['study', 2250 * 2250],
      // 4650 to 6700 by 12050 to 14300.
      ['boot-room', 2050 * 2250],
    ],
    // 300 to 6700 by 300 to 7700.
    F: [['upstairs', 6400 * 7400]],
  },
  flat: {
    B: [
      // 250 to 5000 by 280 to 2800, and 250 to 2800 on to 4000.
      ['lounge', 4750 * 2520 + 2550 * 1200],
      // 250 to 3000 by 4100 to 6320.
      ['kitchen', 2750 * 2220],
      // 3100 to 5000 by 4100 to 6320.
      ['bathroom', 1900 * 2220],
      // 2900 to 8750 by 2900 to 4000.
      ['hall', 5850 * 1100],
      // 5100 to 8750 by 280 to 2800, less the meter cupboard with its walls from 7812.5 and from 2062.5.
      ['bed-1', 3650 * 2520 - 937.5 * 737.5],
      // 7887.5 to 8750 by 2137.5 to 2800.
      ['meter-cupboard', 862.5 * 662.5],
      // 5100 to 8750 by 4100 to 6320, less the boiler cupboard with its walls to 5987.5 and to 4887.5.
      ['bed-2', 3650 * 2220 - 887.5 * 787.5],
      // 5100 to 5912.5 by 4100 to 4812.5.
      ['boiler-cupboard', 812.5 * 712.5],
    ],
  },
  'two-storey': {
    G: [
      // 280 to 3950 by 280 to 3000.
      ['lounge', 3670 * 2720],
      // 280 to 3950 by 3100 to 5720.
      ['kitchen', 3670 * 2620],
      // 4050 to 6920 by 280 to 4412.5.
      ['hall', 2870 * 4132.5],
      // 4050 to 6920 by 4487.5 to 5720.
      ['cloakroom', 2870 * 1232.5],
    ],
    F: [
      ['bed-1', 3670 * 2720],
      ['bed-2', 3670 * 2620],
      // 4050 to 6920 by 4100 to 5720.
      ['bathroom', 2870 * 1620],
      // 5937.5 to 6920 by 3037.5 to 4000.
      ['airing-cupboard', 982.5 * 962.5],
      // 4050 to 6920 by 280 to 4000, less the airing cupboard with its walls from 5862.5 and from 2962.5.
      ['landing', 2870 * 3720 - 1057.5 * 1037.5],
    ],
  },
};
const HOUSES = { extension: extensionPlan, flat: flatPlan, semi: semiPlan, 'two-storey': twoStoreyPlan } as const;

describe.each(Object.entries(HOUSES))('rooms of the demo %s', (name, make) => {
  const house = make();
  const told = AREAS[name] ?? {};

  it('has every storey told', () => expect(Object.keys(told).sort()).toEqual(Object.keys(house.storeys).sort()));

  it.each(Object.entries(told))('%s: each in a space of its own, to the mm2', (storey, rooms) => {
    const { faces, lost, doubled } = roomFaces(house, storey);
    expect(lost).toEqual([]);
    expect(doubled).toEqual([]);
    const found = faces.map((f) => [f.rooms[0] ?? '', Math.round(f.areaMm2 * 100) / 100] as const);
    expect([...found].sort()).toEqual([...rooms].sort());
  });
});

describe('voids of the demo houses', () => {
  it('the stair well of the semi-detached house parts the joists it meets', () => {
    const house = semiPlan();
    const lines = joistLines(house.voids.AV1!);
    // From x 450 every 400 to 8050: twenty. Those at 450 and 850 are parted by the well, 300 to 1150.
    expect(new Set(lines.map((l) => l.index)).size).toBe(20);
    expect(lines).toHaveLength(22);
    const first = lines.filter((l) => l.index === 0).map((l) => [l.a.y, l.b.y].sort((p, q) => p - q));
    expect(first.sort((p, q) => p[0]! - q[0]!)).toEqual([
      [300, 900],
      [3600, 4050],
    ]);
  });

  it('the roof of the extension has eleven joists between house and boot room, twelve for the hose', () => {
    const house = extensionPlan();
    const met = (run: string) => {
      const finder = voidFinder(house);
      const legs = Object.values(house.legs).filter((l) => l.run === run);
      const stretches = legs.flatMap((l) =>
        finder.stretches({ a: nodePlace(house, house.nodes[l.a]!)!.at, b: nodePlace(house, house.nodes[l.b]!)!.at }),
      );
      return stretches
        .filter((s) => s.void === 'DV2')
        .flatMap((s) => s.joists)
        .filter((j) => j.angleDeg > 1);
    };
    const counts = ['D-f1', 'D-r1', 'D-c1', 'D-g1', 'D-g2', 'D-h1', 'D-k3'].map((run) => met(run).length);
    // Flow, return and cold 11 each; gas 3 to its tee and 8 on; hot 3; hose 12: 47 and 59 in all.
    expect(counts).toEqual([11, 11, 11, 3, 8, 3, 12]);
    const across = ['D-f1', 'D-r1', 'D-c1', 'D-g1', 'D-g2', 'D-h1'].flatMap(met);
    expect(across).toHaveLength(47);
    // A quarter to four tenths of 4400 from the nearest bearing.
    for (const j of across) {
      expect(j.passes).toBe('through');
      expect(j.toNearEndMm).toBeGreaterThanOrEqual(1100);
      expect(j.toNearEndMm).toBeLessThanOrEqual(1760);
    }
  });
});
