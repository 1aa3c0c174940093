import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add3, distance3, dot3, scale3, sub3 } from '../../src/geometry/vec.ts';
import { placesOfMember } from '../../src/network/bank/bank.ts';
import { evenly, firstRow, nested, type RowWay, waysOf } from '../../src/network/bank/nest.ts';
import { layInBestOrder, layInOrder } from '../../src/network/bank/order.ts';
import { followed } from '../../src/network/bank/rest.ts';
import type { Xyz } from '../../src/plan/records/parts.ts';
import { leastGap, openMember, somePath, someRadii, tailsAt, taskOf } from './bank-drawn.ts';

const ROWS: readonly RowWay[] = ['level', 'upright'];
const FACINGS: readonly Xyz[] = [
  { x: 0, y: 0, z: -1 },
  { x: 0, y: 0, z: 1 },
  { x: 0, y: -1, z: 0 },
  { x: -1, y: 0, z: 0 },
];

describe('corners that nest', () => {
  test('keep pipes as far apart on every leg as they are told, whatever way the path turns', () => {
    fc.assert(
      fc.property(somePath, fc.constantFrom(...ROWS), fc.integer({ min: 2, max: 6 }), (path, row, count) => {
        const ways = waysOf(path);
        const on = firstRow(ways, row);
        const lines = evenly(count, 75).map((mm) => nested(path, ways, scale3(on, mm)));
        ways.forEach((way, k) => {
          for (let i = 1; i < count; i++) {
            const apart = sub3(lines[i]?.[k] as Xyz, lines[i - 1]?.[k] as Xyz);
            const across = sub3(apart, scale3(way, dot3(apart, way)));
            expect(Math.hypot(across.x, across.y, across.z)).toBeCloseTo(75, 6);
            const leg = sub3(lines[i]?.[k + 1] as Xyz, lines[i]?.[k] as Xyz);
            expect(dot3(leg, way) / distance3({ x: 0, y: 0, z: 0 }, leg)).toBeCloseTo(1, 9);
          }
        });
      }),
      { numRuns: 150, seed: 5 },
    );
  });

  test('a level row stays level down a drop, and goes off along itself as an upright stack', () => {
    const path = [
      { x: 0, y: 0, z: 2500 },
      { x: 2000, y: 0, z: 2500 },
      { x: 2000, y: 0, z: 500 },
      { x: 2000, y: 2000, z: 500 },
    ];
    const ways = waysOf(path);
    const line = nested(path, ways, scale3(firstRow(ways, 'level'), 100));
    expect(line[0]).toEqual({ x: 0, y: 100, z: 2500 });
    expect(line[1]).toEqual({ x: 2000, y: 100, z: 2500 });
    expect(line[2]).toMatchObject({ x: 2000, y: 100 });
    expect(Math.abs((line[2]?.z ?? 0) - 500)).toBeCloseTo(100, 9);
    expect(line[3]?.z).toBeCloseTo(line[2]?.z ?? 0, 9);
  });
});

describe('a bank that is laid', () => {
  test('has no two members run into each other, and leaves none open that has a tail', () => {
    let refused = 0;
    let all = 0;
    fc.assert(
      fc.property(
        somePath,
        someRadii,
        fc.constantFrom(60, 75, 100),
        fc.constantFrom(...ROWS),
        fc.constantFrom(...FACINGS),
        fc.boolean(),
        fc.tuple(
          fc.integer({ min: 500, max: 2500 }),
          fc.integer({ min: -1500, max: 1500 }),
          fc.integer({ min: -1500, max: 1500 }),
        ),
        fc.boolean(),
        (path, radii, spacing, row, facing, along, [x, y, z], both) => {
          const lie = facing.x !== 0 || (facing.y === 0 && along) ? { x: 0, y: 1, z: 0 } : { x: 1, y: 0, z: 0 };
          let members = tailsAt(radii.map(openMember), add3(path.at(-1) as Xyz, { x, y, z }), lie, 60, facing, 'end');
          const from = add3(path[0] as Xyz, { x: -700, y: 400, z: 300 });
          if (both) members = tailsAt(members, from, { x: 0, y: 1, z: 0 }, 60, { x: 0, y: 0, z: -1 }, 'start');
          all++;
          const laid = layInBestOrder(taskOf(members, path, spacing, row));
          if (!laid.ok) {
            refused++;
            expect(laid.why).toMatch(/run \d.*(leave more room|further apart).*\.$/i);
            return;
          }
          expect([...laid.order].sort()).toEqual(radii.map((_, i) => i));
          expect(leastGap(laid.bank.members, radii)).toBeGreaterThan(-0.5);
          laid.bank.members.forEach((m, i) => {
            const asked = members[i];
            const places = placesOfMember(m);
            if (asked?.end.is === 'tail') expect(places.at(-1)).toEqual(asked.end.tail.at);
            if (asked?.start.is === 'tail') expect(places[0]).toEqual(asked.start.tail.at);
          });
        },
      ),
      { numRuns: 80, seed: 3 },
    );
    // Most of what is told at random can be laid: a search that gives up is no search.
    expect(refused / all).toBeLessThan(0.1);
  }, 120_000);

  test('every pipe comes into its tail the way it faces', () => {
    const tail = { x: 3000, y: 0, z: 1100 };
    const members = tailsAt(
      [11, 11, 7.5].map(openMember),
      tail,
      { x: 1, y: 0, z: 0 },
      60,
      { x: 0, y: 0, z: -1 },
      'end',
    );
    const path = [
      { x: 0, y: 300, z: 2500 },
      { x: 2000, y: 300, z: 2500 },
    ];
    const laid = layInBestOrder(taskOf(members, path, 75, 'level'));
    expect(laid.ok).toBe(true);
    if (!laid.ok) return;
    for (const m of laid.bank.members) {
      const [before, end] = placesOfMember(m).slice(-2);
      expect(before).toMatchObject({ x: end?.x, y: end?.y });
      expect(before?.z).toBeLessThan(end?.z ?? 0);
    }
  });

  test('an order in which two would cross is refused with their names, where there is no room to go round', () => {
    const members = tailsAt(
      [11, 11].map(openMember),
      { x: 320, y: 0, z: 0 },
      { x: 0, y: 1, z: 0 },
      60,
      { x: -1, y: 0, z: 0 },
      'end',
    );
    const path = [
      { x: 0, y: 0, z: 0 },
      { x: 200, y: 0, z: 0 },
    ];
    const task = taskOf(members, path, 60, 'level');
    const [one, other] = [layInOrder(task, [0, 1]), layInOrder(task, [1, 0])];
    expect([one.ok, other.ok].filter(Boolean)).toHaveLength(1);
    const refused = one.ok ? other : one;
    if (refused.ok) throw new Error('one of the orders crosses');
    expect(refused.why).toMatch(/^Run \d and run \d would run into each other past the bank: leave more room there/);
    expect(refused.pair?.slice().sort()).toEqual([0, 1]);
    expect(layInBestOrder(task).ok).toBe(true);
  });

  test('a turn that leaves the inner pipe no room is refused with what is missing', () => {
    const path = [
      { x: 0, y: 0, z: 0 },
      { x: 1000, y: 0, z: 0 },
      { x: 1000, y: 150, z: 0 },
      { x: 2000, y: 150, z: 0 },
      { x: 2000, y: 1000, z: 0 },
    ];
    const task = taskOf([11, 11, 11, 11].map(openMember), path, 75, 'level');
    expect(layInBestOrder(task)).toMatchObject({ ok: true });
    const tight = [...path.slice(0, 3), { x: 1100, y: 150, z: 0 }, { x: 1100, y: -900, z: 0 }];
    expect(layInBestOrder(taskOf([11, 11, 11, 11].map(openMember), tight, 75, 'level'))).toMatchObject({
      ok: false,
      why: expect.stringMatching(/no room to turn .*\d+ further apart/),
    });
  });
});

describe('what is past the bank', () => {
  const rest = {
    at: { x: 0, y: 0, z: 0 },
    pts: [
      { x: 0, y: 0, z: -500 },
      { x: 0, y: 400, z: -500 },
    ],
  };

  test('takes up a step aside along its legs', () => {
    expect(followed({ ...rest, holds: [false, true] }, { x: 0, y: 100, z: 0 })).toEqual([
      { x: 0, y: 100, z: 0 },
      { x: 0, y: 100, z: -500 },
      { x: 0, y: 400, z: -500 },
    ]);
  });

  test('and does not where something is held across the step, or a leg would turn round', () => {
    expect(followed({ ...rest, holds: [false, true] }, { x: 50, y: 0, z: 0 })).toBeUndefined();
    expect(followed({ ...rest, holds: [false, true] }, { x: 0, y: 450, z: 0 })).toBeUndefined();
    expect(followed({ ...rest, holds: [false, false] }, { x: 50, y: 0, z: 0 })?.at(-1)).toEqual({
      x: 50,
      y: 400,
      z: -500,
    });
  });
});
