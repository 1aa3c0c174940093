import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wallBodies } from '../../src/geometry/bodies.ts';
import { perimeter, signedArea } from '../../src/geometry/outlines.ts';
import { type MultiPolygon, outlineOf } from '../../src/geometry/polygons.ts';
import { roomFaces } from '../../src/geometry/rooms.ts';
import { JOINT_MM } from '../../src/geometry/wall-joints.ts';
import type { Wall } from '../../src/plan/records/building.ts';
import { GROUND, house, wall } from './house.ts';
import { numbers, randomDrawing } from './random-drawing.ts';

const areaOf = (of: MultiPolygon): number =>
  of.reduce(
    (sum, polygon) =>
      sum + polygon.reduce((s, ring, i) => s + (i === 0 ? 1 : -1) * Math.abs(signedArea(outlineOf(ring))), 0),
    0,
  );

/** Walls any way at all: crossing, side by side, ending in each other and in nothing. */
function anyWalls(start: number): Wall[] {
  const next = numbers(start);
  const within = (lo: number, hi: number) => Math.round(lo + next() * (hi - lo));
  const count = within(4, 14);
  const square = next() < 0.6;
  return Array.from({ length: count }, (_, i) => {
    const [x, y] = [within(0, 8000), within(0, 8000)];
    const [dx, dy] = square
      ? next() < 0.5
        ? [within(-6000, 6000), 0]
        : [0, within(-6000, 6000)]
      : [within(-6000, 6000), within(-6000, 6000)];
    return wall(`w${String(i).padStart(2, '0')}`, [x, y], [x + dx, y + dy], within(70, 350));
  });
}

/** The same walls with their ids handed round, so that they are joined in another order. */
function renamed(walls: readonly Wall[], start: number): Wall[] {
  const next = numbers(start);
  const ids = walls.map((w) => w.id).sort(() => next() - 0.5);
  return walls.map((w, i) => ({ ...w, id: ids[i] ?? w.id }));
}

const drawings = [
  ['rooms drawn as people draw them', (start: number) => [...randomDrawing(start).walls]],
  ['walls any way at all', anyWalls],
] as const;

describe.each(drawings)('of %s', (_name, draw) => {
  it('no room is a sliver: each is wider than two joints may gape', () => {
    let seen = 0;
    fc.assert(
      fc.property(fc.nat(), (start) => {
        for (const { outline, holes, areaMm2 } of roomFaces(house({ walls: draw(start) }), GROUND).faces) {
          const girth = [outline, ...holes].reduce((sum, o) => sum + perimeter(o), 0);
          expect((2 * areaMm2) / girth).toBeGreaterThanOrEqual(2 * JOINT_MM);
          expect(areaMm2).toBeGreaterThan((2 * JOINT_MM) ** 2);
          seen++;
        }
      }),
      { numRuns: 250 },
    );
    expect(seen).toBeGreaterThan(20);
  });

  it('the rooms lie apart from each other and from the walls', () => {
    fc.assert(
      fc.property(fc.nat(), (start) => {
        const plan = house({ walls: draw(start) });
        const solid = areaOf(wallBodies(plan, GROUND).union);
        const { faces } = roomFaces(plan, GROUND);
        // Outer outlines hold the walls and everything they close in: nothing is counted twice.
        const whole = wallBodies(plan, GROUND).union.reduce(
          (sum, polygon) => sum + Math.abs(signedArea(outlineOf(polygon[0] ?? []))),
          0,
        );
        const rooms = faces.reduce((sum, f) => sum + f.areaMm2, 0);
        expect(rooms + solid).toBeLessThanOrEqual(whole + 1);
      }),
      { numRuns: 80 },
    );
  });

  it('the union of the bodies is the same in whatever order they come', () => {
    fc.assert(
      fc.property(fc.nat(), fc.nat(), (start, order) => {
        const walls = draw(start);
        const union = wallBodies(house({ walls }), GROUND).union;
        const again = wallBodies(house({ walls: [...walls].reverse() }), GROUND).union;
        expect(again).toEqual(union);
        const other = areaOf(wallBodies(house({ walls: renamed(walls, order) }), GROUND).union);
        // Where three ends meet in one place the order of ids says which two are mitred: a sliver of the joint may differ.
        expect(Math.abs(other - areaOf(union))).toBeLessThan(1 + areaOf(union) * (draw === anyWalls ? 0.01 : 1e-6));
      }),
      { numRuns: 80 },
    );
  });
});
