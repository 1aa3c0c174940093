import { describe, expect, it } from 'vitest';
import { wallBodies } from '../../src/geometry/bodies.ts';
import { rememberByRecords, rememberWhile } from '../../src/geometry/remember.ts';
import { roomFaces } from '../../src/geometry/rooms.ts';
import { GROUND, house, room, wall } from './house.ts';

describe('remembering by records', () => {
  it('works once for the same objects in the same order, and again for anything else', () => {
    let worked = 0;
    const sum = rememberByRecords((of: readonly { readonly n: number }[]) => {
      worked += 1;
      return of.reduce((s, { n }) => s + n, 0);
    });
    const [a, b] = [{ n: 1 }, { n: 2 }];
    expect([sum([a, b]), sum([a, b]), worked]).toEqual([3, 3, 1]);
    expect([sum([b, a]), sum([a]), sum([{ n: 1 }, b]), worked]).toEqual([3, 1, 3, 4]);
    expect([sum([a, b]), worked]).toEqual([3, 4]);
  });

  it('asks again only when what is read has changed', () => {
    let worked = 0;
    const length = rememberWhile(
      (of: { readonly name: string; readonly walls: object; readonly pipes: object }) => [of.walls],
      (of) => {
        worked += 1;
        return of.name.length;
      },
    );
    const walls = {};
    expect([length({ name: 'ab', walls, pipes: {} }), length({ name: 'ab', walls, pipes: {} }), worked]).toEqual([
      2, 2, 1,
    ]);
    expect([length({ name: 'abc', walls: {}, pipes: {} }), worked]).toEqual([3, 2]);
  });

  it('forgets the oldest, and answers it again rightly', () => {
    const twice = rememberByRecords((of: readonly { readonly n: number }[]) => 2 * (of[0]?.n ?? 0));
    const many = Array.from({ length: 100 }, (_, n) => ({ n }));
    for (const one of many) expect(twice([one])).toBe(2 * one.n);
    for (const one of many) expect(twice([one])).toBe(2 * one.n);
  });

  it('makes bodies once while the walls are the same, whatever else changes in the plan', () => {
    const walls = [wall('a', [0, 0], [4000, 0]), wall('b', [4000, 0], [4000, 3000])];
    const plan = house({ walls });
    const first = wallBodies(plan, GROUND);
    expect(wallBodies({ ...plan, name: 'other', rooms: { r: room('r', [1, 1]) } }, GROUND)).toBe(first);
    expect(wallBodies(house({ walls: [walls[0]!, { ...walls[1]!, thicknessMm: 200 }] }), GROUND)).not.toBe(first);
    expect(wallBodies(plan, GROUND)).toBe(first);
  });

  it('never keeps a seed of another plan', () => {
    const walls = [
      wall('s', [0, 0], [4000, 0]),
      wall('e', [4000, 0], [4000, 3000]),
      wall('n', [4000, 3000], [0, 3000]),
      wall('w', [0, 3000], [0, 0]),
    ];
    expect(roomFaces(house({ walls, rooms: [room('one', [500, 500])] }), GROUND).faces[0]?.rooms).toEqual(['one']);
    expect(roomFaces(house({ walls, rooms: [room('two', [500, 500])] }), GROUND).faces[0]?.rooms).toEqual(['two']);
  });
});
