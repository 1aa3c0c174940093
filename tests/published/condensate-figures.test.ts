import { describe, expect, it } from 'vitest';
import { condensateFalls } from '../../src/engine/drainage/falls-wanted.ts';
import { sums } from '../../src/engine/evaluate.ts';
import { figure } from '../../src/reference/figure.ts';
import { editionsOf } from '../../src/reference/tables.ts';
import { tube } from '../../src/reference/tubes.ts';

const perM = (degrees: number): number => Math.tan((degrees * Math.PI) / 180) * 1000;

describe('fall of condensate', () => {
  it('3 degrees and 2.5 degrees are 52.4 and 43.7 mm in a metre, by the tangent', () => {
    for (const [id, degrees, mm] of [
      ['condensate-fall-newer', 3, 52.4],
      ['condensate-fall-older', 2.5, 43.7],
    ] as const) {
      expect(perM(degrees)).toBeCloseTo(mm, 1);
      expect(figure(id, 'least', 'mmPerM')).toMatchObject({ value: mm });
      expect(figure(id, 'least', 'degrees')).toMatchObject({ value: degrees });
    }
  });

  it('is printed as 52 by the trade-body guide of 2018, and as 45 or 50 by instructions before it', () => {
    expect(figure('condensate-fall-newer', 'least', 'printed')).toMatchObject({ value: 52 });
    expect(figure('condensate-fall-older', 'least', 'printed')).toMatchObject({ lo: 44, hi: 50 });
  });

  it('the newer is the default, the older may be pinned, and a third that is not here stands in for nothing', () => {
    expect(editionsOf('condensate-fall').map((t) => [t.id, t.isDefault])).toEqual([
      ['condensate-fall-newer', true],
      ['condensate-fall-older', false],
    ]);
    expect(condensateFalls({})).toMatchObject({ wanted: { value: 52.4 }, least: { value: 43.7 } });
    expect(condensateFalls({ 'condensate-fall': 'condensate-fall-older' }).wanted).toMatchObject({ value: 43.7 });
    expect(condensateFalls({ 'condensate-fall': 'condensate-fall-2040' }).wanted.is).toBe('unknown');
  });

  it('the sum goes by edition or by angle', () => {
    const sum = sums.get('condensate-fall');
    expect(sum?.work({ m: 2 }).result?.value).toBeCloseTo(104.8, 9);
    expect(sum?.work({ m: 2, edition: 'condensate-fall-older' }).result?.value).toBeCloseTo(87.4, 9);
    expect(sum?.work({ m: 2, degrees: 3 }).result?.value).toBeCloseTo(2 * perM(3), 9);
  });
});

describe('condensate figures that were read', () => {
  it('BS 6798:2014 as quoted: 19 inside, 30 outside', () => {
    expect(figure('condensate-bore', 'inside')).toMatchObject({ value: 19, sureness: 'quotation' });
    expect(figure('condensate-bore', 'outside')).toMatchObject({ value: 30, sureness: 'quotation' });
  });

  it('the pipes that are sold for it have those bores: 21.5 inside, 32 outside, and 21.5 not outside', () => {
    const bore = (size: string): number => tube('waste', size)?.boreMm ?? Number.NaN;
    expect(bore('21.5')).toBeGreaterThanOrEqual(19);
    expect(bore('21.5')).toBeLessThan(30);
    expect(bore('32')).toBeGreaterThanOrEqual(30);
  });

  it('instructions: 3 m outside, 450 above the bend at the foot, 500 from the footings, supports 0.5 and 1.0 m', () => {
    expect(figure('condensate-limits', 'outside length', 'm')).toMatchObject({ value: 3, sureness: 'quotation' });
    for (const [row, mm] of [
      ['above foot bend', 450],
      ['soakaway from foundations', 500],
      ['support, sloping', 500],
      ['support, upright', 1000],
    ] as const) {
      expect(figure('condensate-limits', row, 'mm')).toMatchObject({ value: mm, sureness: 'page' });
    }
  });
});

describe('condensate figures of the trade-body guide and of practice', () => {
  it('13 of insulation outside, 19 better; a trap of 75 makes a further break needless', () => {
    expect(figure('condensate-limits', 'outside insulation', 'mm')).toMatchObject({ value: 13 });
    expect(figure('condensate-limits', 'outside insulation, better', 'mm')).toMatchObject({
      value: 19,
      sureness: 'practice',
    });
    expect(figure('condensate-limits', 'trap seal', 'mm')).toMatchObject({ value: 75 });
  });

  it('into a stack above the foot bend holds for up to three storeys', () => {
    expect(figure('condensate-limits', 'above foot bend', 'storeys')).toMatchObject({ value: 3 });
  });
});

describe('discharge figures that were read', () => {
  it('guidance G19.3: 600 to the tundish, 300 straight down; Approved Document G as extracted: 1 in 200, 100, 3 m', () => {
    expect(figure('discharge-limits', 'valve to tundish', 'mm')).toMatchObject({ value: 600, sureness: 'page' });
    expect(figure('discharge-limits', 'valve to tundish, older', 'mm')).toMatchObject({ value: 500 });
    expect(figure('discharge-limits', 'straight drop', 'mm')).toMatchObject({ value: 300, sureness: 'page' });
    expect(figure('discharge-limits', 'fall', 'mmPerM')).toMatchObject({ value: 1000 / 200 });
    expect(figure('discharge-limits', 'low end', 'mm')).toMatchObject({ value: 100 });
    expect(figure('discharge-limits', 'gutter', 'm')).toMatchObject({ value: 3 });
  });
});
