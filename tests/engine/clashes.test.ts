import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Clash } from '../../src/engine/clearance/find-clashes.ts';
import { evaluate } from '../../src/engine/evaluate.ts';
import { example } from '../../src/engine/example.ts';
import { give } from '../../src/engine/given.ts';
import type { Plan } from '../../src/plan/plan.ts';

type Corner = readonly [x: number, y: number, z: number];
interface Told {
  readonly service: string;
  readonly size: '15x0.7' | '22x0.9' | '28x0.9';
  readonly from: Corner;
  readonly way: 0 | 1 | 2;
  readonly mm: number;
}

const OD: Readonly<Record<Told['size'], number>> = { '15x0.7': 15, '22x0.9': 22, '28x0.9': 28 };
/** Clear of gas and of any other pipe that is asked for, as the pinned editions of the tables have them. */
const CLEAR = { gas: 25, touching: 3 };

const told: fc.Arbitrary<Told> = fc.record({
  service: fc.constantFrom('gas', 'cold', 'hot'),
  size: fc.constantFrom('15x0.7' as const, '22x0.9' as const, '28x0.9' as const),
  from: fc.tuple(fc.nat(400), fc.nat(400), fc.nat(200)),
  way: fc.constantFrom(0 as const, 1 as const, 2 as const),
  mm: fc.integer({ min: 50, max: 900 }),
});

const endOf = ({ from, way, mm }: Told): Corner => from.map((v, i) => (i === way ? v + mm : v)) as unknown as Corner;

function planOf(runs: readonly Told[]): Plan {
  const e = example();
  for (const [i, r] of runs.entries()) e.run(`r${i}`, r.service, [r.from, endOf(r)], { size: r.size });
  return e.plan;
}

/** Between two straight pieces along the axes: apart on each axis by what lies between their shadows on it. */
function apart(a: Told, b: Told): number {
  const [p, q] = [endOf(a), endOf(b)];
  const gaps = [0, 1, 2].map((i) => Math.max(0, (b.from[i] ?? 0) - (p[i] ?? 0), (a.from[i] ?? 0) - (q[i] ?? 0)));
  return Math.hypot(...gaps) - (OD[a.size] + OD[b.size]) / 2;
}

const AFTER = { option: 'A', when: 'after' } as const;
const clashesOf = (plan: Plan): readonly Clash[] => give(plan, AFTER).clashes;

describe('clashes', () => {
  test('are those of all pairs of pipes along the axes, each once, with the gap between them', {
    timeout: 60_000,
  }, () => {
    fc.assert(
      fc.property(fc.array(told, { minLength: 2, maxLength: 9 }), (runs) => {
        const expected = new Map<string, number>();
        for (const [i, a] of runs.entries()) {
          for (const [j, b] of runs.entries()) {
            if (j <= i) continue;
            const gap = apart(a, b);
            const clear = a.service === 'gas' || b.service === 'gas' ? CLEAR.gas : CLEAR.touching;
            if (gap < clear - 1e-6) expected.set(`r${i}|r${j}`, gap);
          }
        }
        const found = clashesOf(planOf(runs));
        expect(found.map((c) => c.runs.join('|')).sort()).toEqual([...expected.keys()].sort());
        for (const c of found) expect(c.gapMm).toBeCloseTo(expected.get(c.runs.join('|')) ?? Number.NaN, 6);
      }),
      { numRuns: 150 },
    );
  });

  test('do not follow where the house stands, which run is told first, or which way a leg is told', {
    timeout: 60_000,
  }, () => {
    fc.assert(
      fc.property(fc.array(told, { minLength: 2, maxLength: 6 }), fc.integer({ min: -5000, max: 5000 }), (runs, by) => {
        const gaps = (all: readonly Told[]) =>
          clashesOf(planOf(all))
            .map((c) => Math.round(c.gapMm * 1000))
            .sort((a, b) => a - b);
        const there = runs.map((r) => ({ ...r, from: [r.from[0] + by, r.from[1] - by, r.from[2]] as const }));
        const backwards = runs.map((r) => ({ ...r, from: endOf(r), mm: -r.mm }));
        const first = gaps(runs);
        expect(gaps(there)).toEqual(first);
        expect(gaps([...runs].reverse())).toEqual(first);
        expect(gaps(backwards)).toEqual(first);
      }),
      { numRuns: 80 },
    );
  });

  test('two runs are one clash however often they meet, with the worst place and how many more', () => {
    const { plan } = example()
      .run('a', 'cold', [
        [0, 0, 300],
        [5000, 0, 300],
      ])
      .run('b', 'hot', [
        [1000, -500, 310],
        [1000, 500, 310],
        [2500, 500, 305],
        [2500, -500, 305],
        [4000, -500, 315],
        [4000, 500, 315],
      ]);
    const [clash, ...more] = clashesOf(plan);
    expect(more).toEqual([]);
    expect(clash?.more).toBe(2);
    expect(clash?.gapMm).toBeCloseTo(5 - 22);
    expect(clash?.at.x).toBeCloseTo(2500);
  });

  test('pipes that are joined are not a clash at their joint, and are one further on', () => {
    const teed = (...more: Corner[]): Plan => {
      const e = example().run('a', 'cold', [
        [0, 0, 300],
        [1000, 0, 300],
        [2000, 0, 300],
      ]);
      return e.run('b', 'cold', [e.nodesOf('a')[1] ?? '', [1000, 300, 300], ...more]).plan;
    };
    expect(clashesOf(teed([1000, 600, 300]))).toEqual([]);
    const back = clashesOf(teed([1600, 300, 300], [1600, -300, 300]));
    expect(back.map((c) => [c.runs, Math.round(c.gapMm)])).toEqual([[['a', 'b'], -22]]);
  });

  test('pipe that was always there is not held against pipe that was', () => {
    const saidOf = (option: string | null) => {
      const { plan } = example()
        .run(
          'a',
          'cold',
          [
            [0, 0, 300],
            [2000, 0, 300],
          ],
          { option: null },
        )
        .run(
          'b',
          'hot',
          [
            [1000, -500, 305],
            [1000, 500, 305],
          ],
          { option },
        );
      return evaluate(plan, AFTER).findings.filter((f) => f.rule === 'clash/runs');
    };
    expect(saidOf('A')).toHaveLength(1);
    expect(saidOf(null)).toEqual([]);
  });
});
