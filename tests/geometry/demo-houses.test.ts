import { describe, expect, it } from 'vitest';
import { faceStretches } from '../../src/geometry/face-plane.ts';
import { nodePlace } from '../../src/geometry/places.ts';
import { roomFaces } from '../../src/geometry/rooms.ts';
import { voidFinder } from '../../src/geometry/void-stretches.ts';
import { wallFinder } from '../../src/geometry/wall-crossings.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { flatPlan } from '../demo/flat-plan.ts';
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

describe('the two-storey house of the demo', () => {
  const house = twoStoreyPlan();

  it.each(Object.keys(house.storeys))('has every room of %s in a space of its own', (floor) => {
    const { faces, lost, doubled } = roomFaces(house, floor);
    expect(lost).toEqual([]);
    expect(doubled).toEqual([]);
    expect(faces.filter((f) => f.rooms.length === 1)).toHaveLength(
      Object.values(house.rooms).filter((r) => r.storey === floor).length,
    );
    // Half a square metre at least: nothing here is a leftover between walls.
    for (const face of faces) expect(face.areaMm2).toBeGreaterThan(500_000);
  });
});
