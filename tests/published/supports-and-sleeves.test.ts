import { describe, expect, it } from 'vitest';
import { constant, figure, word } from '../../src/reference/figure.ts';
import { edition } from '../../src/reference/tables.ts';

/** Size, then level and upright in m. */
type Row = readonly [size: string, level: number, upright: number];
const check = (table: string, kind: string, rows: readonly Row[]): void => {
  for (const [size, level, upright] of rows) {
    expect(constant(table, `${kind} ${size}`, 'horizontal')).toBe(level);
    expect(constant(table, `${kind} ${size}`, 'vertical')).toBe(upright);
  }
};

describe('clip spacing', () => {
  it('copper as recalled of BS 8558', () => {
    check('pipe-supports', 'copper', [
      ['10', 0.8, 1.2],
      ['12', 1.0, 1.5],
      ['15', 1.2, 1.8],
      ['22', 1.8, 2.4],
      ['28', 1.8, 2.4],
      ['35', 2.4, 3.0],
      ['42', 2.4, 3.0],
      ['54', 2.7, 3.0],
    ]);
  });

  it('copper of the pocket reference', () => {
    check('pipe-supports-pocket', 'copper', [
      ['15', 1.3, 1.9],
      ['22', 1.9, 2.5],
      ['28', 1.9, 2.5],
      ['35', 2.5, 2.8],
      ['42', 2.5, 2.8],
      ['54', 2.5, 3.9],
    ]);
  });

  it('plastic and waste of the textbook, condensate pipe as recalled', () => {
    check('pipe-supports-pocket', 'plastic', [
      ['10', 0.3, 0.5],
      ['15', 0.3, 0.5],
      ['22', 0.5, 0.8],
      ['28', 0.8, 1.0],
    ]);
    check('pipe-supports-pocket', 'waste', [
      ['21.5', 0.5, 1.0],
      ['32', 0.5, 1.2],
      ['40', 0.5, 1.2],
      ['50', 0.6, 1.2],
    ]);
    expect(figure('pipe-supports-pocket', 'waste 21.5', 'horizontal')).toMatchObject({ sureness: 'memory' });
    expect(figure('pipe-supports-pocket', 'waste 32', 'horizontal')).toMatchObject({ sureness: 'page' });
  });

  it('gas of the design guide', () => {
    check('gas-supports', 'copper', [
      ['15', 1.2, 2.0],
      ['22', 1.8, 2.5],
      ['28', 1.8, 2.5],
      ['35', 2.5, 3.0],
      ['42', 2.5, 3.0],
      ['54', 2.7, 3.0],
    ]);
    check('gas-supports', 'steel', [
      ['15', 2.0, 2.5],
      ['20', 2.5, 3.0],
      ['25', 2.5, 3.0],
      ['32', 2.7, 3.0],
      ['40', 3.0, 3.5],
      ['50', 3.0, 3.5],
    ]);
  });

  it('unless the job pins another the smaller of the two for 15 to 42 is taken', () => {
    const [mine, other] = [
      edition('pipe-supports', {}),
      edition('pipe-supports', { 'pipe-supports': 'pipe-supports-pocket' }),
    ];
    expect(mine?.id).toBe('pipe-supports');
    for (const size of ['15', '22', '28', '35', '42']) {
      const of = (t: typeof mine) => (t ? constant(t, `copper ${size}`, 'horizontal') : Number.NaN);
      expect(of(mine)).toBeLessThan(of(other));
    }
  });
});

describe('sleeves', () => {
  it('textbook: one tube size larger', () => {
    const up = ['8', '10', '12', '15', '22', '28', '35', '42', '54'];
    for (const [i, size] of up.slice(0, -1).entries()) {
      expect(word('sleeve-sizes', size)).toMatchObject({ is: 'known', word: up[i + 1] });
    }
  });
});

describe('gas in a void, as recalled of BS 6891', () => {
  it('steps at 0.01, 0.05 and 7.5 m2', () => {
    expect(constant('void-vent', 'smallest', 'upTo')).toBe(0.01);
    expect(constant('void-vent', 'small', 'upTo')).toBe(0.05);
    expect(constant('void-vent', 'middle', 'upTo')).toBe(7.5);
    expect(constant('void-vent', 'middle', 'area')).toBe(0.05);
    expect(constant('void-vent', 'large', 'share')).toBeCloseTo(1 / 150, 6);
  });
});
