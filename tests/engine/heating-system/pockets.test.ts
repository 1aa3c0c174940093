import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Levels, pocketsOf } from '../../../src/engine/heating/pockets.ts';

/** A pipe through these heights, with a way out at the places named. */
function line(heights: readonly number[], ...outlets: number[]): Levels {
  return {
    height: new Map(heights.map((h, i) => [`${i}`, h])),
    links: heights.slice(1).map((_, i) => [`${i}`, `${i + 1}`]),
    outlets: new Set(outlets.map(String)),
  };
}

const said = (of: Levels): string[] =>
  pocketsOf(of)
    .map((p) => `${p.top} over ${p.lipMm}${p.last ? '' : ', in a higher one'}`)
    .sort();

describe('pockets of air', () => {
  it('a rise between two ways out is one, down to the higher of its lips', () => {
    expect(said(line([1300, 900, 2500, 2500, 150], 0, 4))).toEqual(['2 over 900']);
    expect(said(line([1300, 100, 100, 150], 0, 3))).toEqual([]);
  });

  it('a way out at the top leaves none; one lower down leaves what is above it', () => {
    expect(said(line([0, 2500, 2500, 0], 0, 2, 3))).toEqual([]);
    expect(said(line([0, 1000, 2500, 0], 0, 1, 3))).toEqual(['2 over 1000']);
  });

  it('two humps are two, the lower one ending in the higher', () => {
    expect(said(line([0, 2000, 1500, 2400, 0], 0, 4))).toEqual(['1 over 1500, in a higher one', '3 over 0']);
  });

  it('a piece with no way out at all is one down to its lowest', () => {
    expect(said(line([300, 900, 200]))).toEqual(['1 over 200']);
  });

  /** Lip of a place by trying every level: the highest it must go down to on the way to an outlet, by widest path. */
  function lipOf({ height, links, outlets }: Levels, from: string): number {
    const best = new Map([[from, height.get(from) ?? 0]]);
    for (let round = 0; round < height.size; round++) {
      for (const [a, b] of [...links, ...links.map(([x, y]) => [y, x] as const)]) {
        const got = Math.min(best.get(a) ?? Number.NEGATIVE_INFINITY, height.get(b) ?? 0);
        if (got > (best.get(b) ?? Number.NEGATIVE_INFINITY)) best.set(b, got);
      }
    }
    return Math.max(Number.NEGATIVE_INFINITY, ...[...outlets].map((o) => best.get(o) ?? Number.NEGATIVE_INFINITY));
  }

  it('of any net, the places in last pockets are those whose best way out has to go down', () => {
    const net = fc.record({
      heights: fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 2, maxLength: 9 }),
      more: fc.array(fc.tuple(fc.nat(8), fc.nat(8)), { maxLength: 6 }),
      outlets: fc.array(fc.nat(8), { minLength: 1, maxLength: 3 }),
    });
    fc.assert(
      fc.property(net, ({ heights, more, outlets }) => {
        const of = heights.length;
        const plain = line(heights, ...outlets.map((o) => o % of));
        const levels = {
          ...plain,
          links: [...plain.links, ...more.map(([a, b]) => [`${a % of}`, `${b % of}`] as const)],
        };
        const lips = new Map<string, number>();
        for (const p of pocketsOf(levels).filter((x) => x.last)) {
          for (const id of p.places) {
            if ((levels.height.get(id) ?? 0) > p.lipMm) lips.set(id, p.lipMm);
          }
        }
        for (const [id, h] of levels.height) {
          const lip = lipOf(levels, id);
          expect(lips.get(id) ?? null).toBe(lip < h ? lip : null);
        }
      }),
      { numRuns: 300 },
    );
  });
});
