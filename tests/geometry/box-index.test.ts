import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createBoxIndex } from '../../src/geometry/box-index.ts';
import { type Box3, boxOf, grow, insideBox, overlaps } from '../../src/geometry/boxes.ts';

const mm = fc.integer({ min: 0, max: 2000 });
const box: fc.Arbitrary<Box3> = fc
  .tuple(mm, mm, mm, fc.integer({ min: 0, max: 400 }))
  .map(([x, y, z, side]) => ({ minX: x, minY: y, minZ: z, maxX: x + side, maxY: y + side, maxZ: z + side }));

describe('a box index', () => {
  it('finds exactly what overlaps in space, in the order given', () => {
    fc.assert(
      fc.property(fc.array(box, { maxLength: 60 }), box, (all, asked) => {
        const entries = all.map((b, id) => ({ id, box: b }));
        const found = createBoxIndex(entries).search(asked);
        expect(found).toEqual(entries.filter((e) => overlaps(e.box, asked)));
      }),
    );
  });

  it('sieves by height what lies one above the other', () => {
    const floorOf = (z: number) => ({ z, box: { minX: 0, minY: 0, minZ: z, maxX: 10, maxY: 10, maxZ: z + 10 } });
    const index = createBoxIndex([0, 100, 200].map(floorOf));
    expect(index.search({ minX: 0, minY: 0, minZ: 95, maxX: 5, maxY: 5, maxZ: 99 })).toEqual([]);
    expect(index.search({ minX: 0, minY: 0, minZ: 95, maxX: 5, maxY: 5, maxZ: 100 }).map((e) => e.z)).toEqual([100]);
    expect(index.counts).toEqual({ queries: 2, candidates: 6 });
  });

  it('looks at as many candidates for a question in a large house as in a small one', () => {
    /** Pipes in rows at equal density: more of them is a longer house, not a closer one. */
    const perQuestion = (count: number): number => {
      const entries = Array.from({ length: count }, (_, i) => {
        const [x, y] = [(i % 10) * 300, Math.floor(i / 10) * 300];
        return { box: { minX: x, minY: y, minZ: 0, maxX: x + 250, maxY: y + 15, maxZ: 15 } };
      });
      const index = createBoxIndex(entries);
      for (const e of entries) index.search(grow(e.box, 100));
      expect(index.counts.queries).toBe(count);
      return index.counts.candidates / index.counts.queries;
    };
    const few = perQuestion(1000);
    expect(few).toBeGreaterThan(1);
    expect(perQuestion(3000)).toBeLessThan(few * 1.05);
  });
});

describe('boxes', () => {
  it('hold every place they were put round', () => {
    const place = fc.record({ x: mm, y: mm, z: mm });
    fc.assert(
      fc.property(fc.array(place, { minLength: 1, maxLength: 8 }), (places) => {
        const b = boxOf(places);
        for (const p of places) expect(insideBox(p, b)).toBe(true);
        expect(insideBox({ x: b.maxX + 1, y: b.minY, z: b.minZ }, b)).toBe(false);
        expect(insideBox({ x: b.maxX + 1, y: b.minY, z: b.minZ }, grow(b, 1))).toBe(true);
      }),
    );
    expect(() => boxOf([])).toThrow('no place');
  });
});
