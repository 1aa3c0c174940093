import * as fc from 'fast-check';
import { segmentDistance } from '../../src/geometry/segments.ts';
import { add3, distance3, scale3 } from '../../src/geometry/vec.ts';
import { type BankMember, type LaidMember, placesOfMember } from '../../src/network/bank/bank.ts';
import { firstRow, waysOf } from '../../src/network/bank/nest.ts';
import type { RowTask } from '../../src/network/bank/order.ts';
import type { Xyz } from '../../src/plan/records/parts.ts';

const D = Math.SQRT1_2;
export const WAYS: readonly Xyz[] = [
  { x: 1, y: 0, z: 0 },
  { x: 0, y: 1, z: 0 },
  { x: 0, y: 0, z: 1 },
  { x: D, y: D, z: 0 },
  { x: D, y: -D, z: 0 },
  { x: 0, y: -1, z: 0 },
  { x: 0, y: 0, z: -1 },
];

/** Corners that never come back on themselves: x goes on, y and z each keep to one way in a path. */
export const somePath: fc.Arbitrary<Xyz[]> = fc
  .tuple(
    fc.constantFrom(1, -1),
    fc.constantFrom(1, -1),
    fc.array(fc.tuple(fc.nat(4), fc.integer({ min: 900, max: 3000 })), { minLength: 1, maxLength: 5 }),
  )
  .map(([sy, sz, legs]) => {
    const pts: Xyz[] = [{ x: 0, y: 0, z: 0 }];
    let before: number | null = null;
    for (const [pick, mm] of legs) {
      const i: number = pick === before ? (pick + 1) % 5 : pick;
      const way = WAYS[i] as Xyz;
      before = i;
      const turned = { x: way.x, y: Math.abs(way.y) * sy, z: way.z * sz };
      pts.push(add3(pts.at(-1) as Xyz, scale3(turned, mm)));
    }
    return pts;
  })
  .filter((pts) => waysOf(pts).every((w, i, all) => i === 0 || distance3(w, all[i - 1] as Xyz) > 0.1));

export const someRadii = fc.array(fc.constantFrom(7.5, 11, 14), { minLength: 2, maxLength: 6 });

export const openMember = (radiusMm: number, i: number): BankMember => ({
  name: `run ${i}`,
  radiusMm,
  start: { is: 'open' },
  end: { is: 'open' },
});

/** A row of tails, far enough off the last corner that everything can turn. */
export function tailsAt(
  members: readonly BankMember[],
  at: Xyz,
  row: Xyz,
  pitchMm: number,
  facing: Xyz,
  side: 'start' | 'end',
) {
  return members.map((m, i) => {
    const place = add3(at, scale3(row, (i - (members.length - 1) / 2) * pitchMm));
    return { ...m, [side]: { is: 'tail', tail: { at: place, facing, body: null } } } as BankMember;
  });
}

export const taskOf = (
  members: readonly BankMember[],
  path: readonly Xyz[],
  spacingMm: number,
  row: 'level' | 'upright',
): RowTask => ({
  members,
  path,
  spacingMm,
  row: firstRow(waysOf(path), row),
});

/** The nearest any two members come to each other, surface to surface; negative where they run into each other. */
export function leastGap(members: readonly LaidMember[], radii: readonly number[]): number {
  return leastGapOf(members.map(placesOfMember), radii);
}

export function leastGapOf(all: readonly (readonly Xyz[])[], radii: readonly number[]): number {
  let least = Number.POSITIVE_INFINITY;
  all.forEach((one, i) => {
    all.slice(0, i).forEach((other, j) => {
      for (let p = 1; p < one.length; p++) {
        for (let q = 1; q < other.length; q++) {
          const a = { a: one[p - 1] as Xyz, b: one[p] as Xyz };
          const b = { a: other[q - 1] as Xyz, b: other[q] as Xyz };
          least = Math.min(least, segmentDistance(a, b).distance - (radii[i] ?? 0) - (radii[j] ?? 0));
        }
      }
    });
  });
  return least;
}
