import { describe, expect, it } from 'vitest';
import { dischargeSize, leastSize, sizeChoices, valveOutlets } from '../../src/engine/drainage/discharge-size.ts';
import { figure } from '../../src/reference/figure.ts';
import { table } from '../../src/reference/tables.ts';
import { exact } from '../../src/report/quantity.ts';

/**
 * Typed a second time from the table of sizes in Approved Document G as instructions of unvented vessels reproduce it:
 * outlet, least D1, then size: longest straight pipe, each elbow or bend.
 */
const AGAIN = [
  ['G1/2', 15, { 22: [9, 0.8], 28: [18, 1.0], 35: [27, 1.4] }],
  ['G3/4', 22, { 28: [9, 1.0], 35: [18, 1.4], 42: [27, 1.7] }],
  ['G1', 28, { 35: [9, 1.4], 42: [18, 1.7], 54: [27, 2.3] }],
] as const;

const ask = (outlet: string, metres: number, bends: number) => ({
  outlet,
  lengthM: exact(metres, 'm', 1),
  bends: { lo: bends, hi: bends },
});
const sizeOf = (outlet: string, metres: number, bends: number) => leastSize(ask(outlet, metres, bends))?.size;

describe('table of sizes, discharge from unvented vessels', () => {
  it('has every row as typed the second time, and no other', () => {
    expect(valveOutlets()).toEqual(AGAIN.map(([outlet]) => outlet));
    for (const [outlet, d1, sizes] of AGAIN) {
      expect(figure('discharge-d1', outlet, 'size')).toMatchObject({ lo: d1 });
      const read = sizeChoices(ask(outlet, 0, 0)).map((c) => [c.size, [c.most.lo, c.bend.lo]]);
      expect(Object.fromEntries(read)).toEqual(sizes);
    }
    expect(table('discharge-d2').rows).toHaveLength(9);
  });

  it('the rows a college textbook prints were read on its page, the others as a quotation', () => {
    for (const row of table('discharge-d2').rows) {
      const read = row.key === 'G1/2 22' || row.key === 'G1/2 28';
      expect(figure('discharge-d2', row.key, 'mostM')).toMatchObject({ sureness: read ? 'page' : 'quotation' });
    }
  });

  it('each limit is included, and a hair more is not', () => {
    for (const [outlet, , sizes] of AGAIN) {
      for (const [size, [most, bend]] of Object.entries(sizes)) {
        expect(sizeOf(outlet, most, 0)).toBe(Number(size));
        expect(sizeOf(outlet, most + 0.01, 0)).not.toBe(Number(size));
        const three = most - 3 * bend;
        const at = sizeChoices(ask(outlet, three, 3)).find((c) => c.size === Number(size));
        expect(at?.verdict).toBe('pass');
        expect(at?.leftM).toBeCloseTo(0, 9);
      }
    }
  });
});

describe('published worked examples of a discharge pipe', () => {
  it('Approved Document G as extracted in instructions: 7 m and 4 elbows on G 1/2', () => {
    const [in22, in28] = sizeChoices(ask('G1/2', 7, 4));
    expect(in22?.total.value).toBeCloseTo(10.2, 9);
    expect(in22?.verdict).toBe('stop');
    expect(in28?.total.value).toBeCloseTo(11.0, 9);
    expect(in28?.verdict).toBe('pass');
    // The same example told the other way: 9 less 3.2 leaves 5.8, 18 less 4 leaves 14.
    expect(7 + (in22?.leftM ?? 0)).toBeCloseTo(5.8, 9);
    expect(7 + (in28?.leftM ?? 0)).toBeCloseTo(14, 9);
    expect(dischargeSize(ask('G1/2', 7, 4)).result?.value).toBe(28);
  });

  it('college textbook 2019, page 404: 6 m and 6 elbows on G 1/2', () => {
    const [in22, in28] = sizeChoices(ask('G1/2', 6, 6));
    expect(in22?.total.value).toBeCloseTo(10.8, 9);
    expect(in28?.total.value).toBeCloseTo(12, 9);
    expect(sizeOf('G1/2', 6, 6)).toBe(28);
  });

  it('the exercise beside it: 9 m and 5 elbows; 22 counts 13, 28 counts 14', () => {
    expect(sizeChoices(ask('G1/2', 9, 5)).map((c) => c.total.value?.toFixed(1))).toEqual(['13.0', '14.0', '16.0']);
    expect(sizeOf('G1/2', 9, 5)).toBe(28);
  });

  it('past the last row an engineer has to calculate it, and no size is given', () => {
    const past = dischargeSize(ask('G1/2', 27, 1));
    expect(past.result).toBeNull();
    expect(past.missing[0]).toContain('engineer');
  });
});
