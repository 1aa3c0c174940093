import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wallBodies, wallPieces } from '../../src/geometry/bodies.ts';
import { insideOutline, type Outline, signedArea } from '../../src/geometry/outlines.ts';
import { type MultiPolygon, outlineOf } from '../../src/geometry/polygons.ts';
import { roomAt, roomFaces } from '../../src/geometry/rooms.ts';
import type { Wall } from '../../src/plan/records/building.ts';
import { GROUND, house, opening, type Pair, room, wall, xy } from './house.ts';
import { randomDrawing } from './random-drawing.ts';

const area = (of: MultiPolygon): number =>
  of.reduce(
    (sum, polygon) =>
      sum + polygon.reduce((s, ring, i) => s + (i === 0 ? 1 : -1) * Math.abs(signedArea(outlineOf(ring))), 0),
    0,
  );
const bodies = (walls: readonly Wall[]) => wallBodies(house({ walls }), GROUND);
const square: Wall[] = [
  wall('s', [0, 0], [4000, 0]),
  wall('e', [4000, 0], [4000, 3000]),
  wall('n', [4000, 3000], [0, 3000]),
  wall('w', [0, 3000], [0, 0]),
];
const corners = (outline: Outline): string[] => outline.map((p) => `${Math.round(p.x)},${Math.round(p.y)}`).sort();

describe('wall bodies', () => {
  it('meet in square corners, mitred', () => {
    const { union, outlines } = bodies(square);
    expect(union).toHaveLength(1);
    expect(union[0]).toHaveLength(2);
    expect(corners(outlineOf(union[0]![0]!))).toEqual(['-50,-50', '-50,3050', '4050,-50', '4050,3050']);
    expect(corners(outlineOf(union[0]![1]!))).toEqual(['3950,2950', '3950,50', '50,2950', '50,50']);
    expect(corners(outlines.get('s')!)).toEqual(['-50,-50', '3950,50', '4050,-50', '50,50']);
  });

  it('are the same however their ends are drawn: to the corner, past it, or short of it', () => {
    const drawn = (dx: number, dy: number) =>
      bodies([
        wall('s', [-dx, 0], [4000 + dx, 0]),
        wall('e', [4000, -dy], [4000, 3000 + dy]),
        wall('n', [4000 + dx, 3000], [-dx, 3000]),
        wall('w', [0, 3000 + dy], [0, -dy]),
      ]).union;
    const want = bodies(square).union;
    for (const [dx, dy] of [
      [50, 50],
      [60, -50],
      [-50, -64],
      [-64, 12],
    ] as const) {
      expect(area(drawn(dx, dy)), `${dx} ${dy}`).toBeCloseTo(area(want), 3);
      expect(drawn(dx, dy)[0]).toHaveLength(2);
    }
  });

  it('join where an end comes within half a thickness and 15, and not where it stays further off', () => {
    const tee = (y: number) => bodies([wall('t', [0, 0], [4000, 0], 200), wall('p', [2000, y], [2000, 2000])]).union;
    for (const y of [0, 100, 115, -60]) {
      expect(tee(y), `${y}`).toHaveLength(1);
      expect(area(tee(y))).toBeCloseTo(4000 * 200 + 100 * 1900, 3);
    }
    expect(tee(117)).toHaveLength(2);
  });

  it('meet at a slant with no gap and no spur', () => {
    for (const deg of [30, 50, 70, 110, 140]) {
      const a = (deg * Math.PI) / 180;
      const far: Pair = [2000 + 3000 * Math.cos(a), 3000 * Math.sin(a)];
      const { union } = bodies([wall('t', [0, 0], [4000, 0], 100), wall('p', [2000, 0], far, 300)]);
      expect(union).toHaveLength(1);
      expect(union[0]).toHaveLength(1);
      const lowest = Math.min(...outlineOf(union[0]![0]!).map((p) => p.y));
      expect(lowest).toBeCloseTo(-50, 2);
      // Of the slanted wall, what lies within the half of the other that it runs into is counted once.
      const sin = Math.sin(a);
      const slanted = 300 * 3000 - (300 * 50) / sin;
      expect(area(union)).toBeCloseTo(4000 * 100 + slanted, -1);
    }
  });

  it('fill the place where three and four walls end together', () => {
    const ends: Pair[] = [
      [2000, 0],
      [0, 2000],
      [-2000, 0],
      [0, -2000],
    ];
    for (const count of [3, 4]) {
      const { union } = bodies(ends.slice(0, count).map((far, i) => wall(`w${i}`, [0, 0], far, 100)));
      expect(union).toHaveLength(1);
      expect(union[0]).toHaveLength(1);
      expect(area(union)).toBeCloseTo(count === 3 ? 4000 * 100 + 1950 * 100 : 4 * 1950 * 100 + 100 * 100, 3);
    }
  });

  it('close a gap in line, and leave side by side apart', () => {
    expect(bodies([wall('a', [0, 0], [1000, 0]), wall('b', [1060, 10], [2000, 10])]).union).toHaveLength(1);
    expect(bodies([wall('a', [0, 0], [2000, 0]), wall('b', [0, 130], [2000, 130])]).union).toHaveLength(2);
  });

  it('leave very sharp corners blunt', () => {
    const { union } = bodies([wall('a', [0, 0], [3000, 0]), wall('b', [0, 0], [3000, 400])]);
    expect(Math.min(...outlineOf(union[0]![0]!).map((p) => p.x))).toBeGreaterThan(-60);
  });

  it('of a wall of no length are nothing', () => {
    expect(bodies([wall('a', [5, 5], [5, 5])]).union).toEqual([]);
  });

  it('are the same after a wall was moved and moved back', () => {
    fc.assert(
      fc.property(
        fc.nat(),
        fc.nat(3),
        fc.integer({ min: -400, max: 400 }),
        fc.integer({ min: -400, max: 400 }),
        (start, which, dx, dy) => {
          const { walls } = randomDrawing(start);
          const before = bodies(walls).union;
          const move = (of: readonly Wall[], sx: number, sy: number) =>
            of.map((w, i) =>
              i === which ? { ...w, a: { x: w.a.x + sx, y: w.a.y + sy }, b: { x: w.b.x + sx, y: w.b.y + sy } } : w,
            );
          const away = move(walls, dx, dy);
          bodies(away);
          expect(bodies(move(away, -dx, -dy)).union).toEqual(before);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('walls with their openings cut out', () => {
  const plan = house({
    walls: square,
    openings: [opening('d', 's', 1000, 800), opening('win', 's', 500, 600, { from: 'b', kind: 'window' })],
  });

  it('are in pieces, as much less as the openings are wide', () => {
    const south = wallPieces(plan, GROUND).get('s');
    expect(south?.pieces).toHaveLength(3);
    expect(area(south?.pieces ?? [])).toBeCloseTo(4000 * 100 - 1400 * 100, 3);
    expect(wallPieces(plan, GROUND).get('n')?.pieces).toHaveLength(1);
  });

  it('keep what does not stand in the case', () => {
    const standing = new Set(['s', 'd']);
    const pieces = wallPieces(plan, GROUND, standing);
    expect([...pieces.keys()]).toEqual(['s']);
    expect(pieces.get('s')?.pieces).toHaveLength(2);
  });
});

describe('rooms', () => {
  const parted = [...square, wall('p', [1500, 50], [1500, 2950])];

  it('are what the walls close in', () => {
    const found = roomFaces(
      house({ walls: parted, rooms: [room('left', [500, 500]), room('right', [3000, 500])] }),
      GROUND,
    );
    expect(found.faces.map((f) => f.rooms)).toEqual(expect.arrayContaining([['left'], ['right']]));
    expect(found.faces.map((f) => f.areaMm2).sort((p, q) => p - q)).toEqual([1400 * 2900, 2400 * 2900]);
    expect(found).toMatchObject({ lost: [], doubled: [] });
  });

  it('keep both of two seeds in one space, and name a seed that is in none', () => {
    const rooms = [
      room('one', [500, 500]),
      room('two', [3000, 500]),
      room('out', [9000, 500]),
      room('inWall', [0, 500]),
    ];
    const found = roomFaces(house({ walls: square, rooms }), GROUND);
    expect(found.doubled.map((f) => f.rooms)).toEqual([['one', 'two']]);
    expect(found.lost).toEqual(['inWall', 'out']);
  });

  it('are not there while the walls are open', () => {
    expect(roomFaces(house({ walls: square.slice(1), rooms: [room('r', [500, 500])] }), GROUND)).toMatchObject({
      faces: [],
      lost: ['r'],
    });
  });

  it('are not a gap between a wall and its lining', () => {
    const lined = [...square, wall('lining', [50, 2870], [3950, 2870])];
    expect(roomFaces(house({ walls: lined }), GROUND).faces).toHaveLength(1);
  });

  it('have free-standing walls cut out, and rooms inside them', () => {
    const core = [
      wall('c1', [1000, 1000], [2000, 1000]),
      wall('c2', [2000, 1000], [2000, 2000]),
      wall('c3', [2000, 2000], [1000, 2000]),
      wall('c4', [1000, 2000], [1000, 1000]),
    ];
    const plan = house({
      walls: [...square, ...core],
      rooms: [room('around', [300, 300]), room('core', [1500, 1500])],
    });
    const { faces } = roomFaces(plan, GROUND);
    expect(faces).toHaveLength(2);
    expect(faces.find((f) => f.rooms[0] === 'around')).toMatchObject({ areaMm2: 3900 * 2900 - 1100 * 1100 });
    expect(faces.find((f) => f.rooms[0] === 'core')).toMatchObject({ areaMm2: 900 * 900 });
    expect(roomAt(plan, GROUND, xy([1500, 1500]))?.rooms).toEqual(['core']);
    expect(roomAt(plan, GROUND, xy([1000, 1500]))).toBeUndefined();
    expect(roomAt(plan, GROUND, xy([-500, 1500]))).toBeUndefined();
  });

  it('are one where the wall between them is taken out in the case', () => {
    const plan = house({ walls: parted, rooms: [room('left', [500, 500]), room('right', [3000, 500])] });
    const after = new Set(['s', 'e', 'n', 'w']);
    expect(roomFaces(plan, GROUND, after).doubled.map((f) => f.rooms)).toEqual([['left', 'right']]);
  });

  it.each([0, 90, 30, 12.5])('of any drawing turned by %s are the ones drawn, with no slivers', (turn) => {
    fc.assert(
      fc.property(fc.nat(), (start) => {
        const { walls, areas, seeds } = randomDrawing(start, turn);
        const plan = house({ walls, rooms: seeds.map((seed, i) => room(`r${i}`, seed)) });
        const { faces, lost, doubled } = roomFaces(plan, GROUND);
        expect(faces).toHaveLength(areas.length);
        expect(lost).toEqual([]);
        expect(doubled).toEqual([]);
        for (const [i, want] of areas.entries()) {
          const face = faces.find((f) => f.rooms.includes(`r${i}`))!;
          expect(Math.abs(face.areaMm2 - want) / want).toBeLessThan(1e-5);
          expect(insideOutline(xy(seeds[i]!), face.outline)).toBe(true);
        }
      }),
      { numRuns: 120 },
    );
  });
});
