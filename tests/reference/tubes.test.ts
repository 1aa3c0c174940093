import { describe, expect, it } from 'vitest';
import { tube, tubeKinds } from '../../src/reference/tubes.ts';

describe('tubes', () => {
  it('bore is the outside diameter less two walls, wherever a wall has been read', () => {
    for (const { sizes } of tubeKinds()) {
      for (const s of sizes) {
        expect((s.wallMm === null) === (s.boreMm === null)).toBe(true);
        if (s.wallMm !== null && s.boreMm !== null) expect(s.boreMm).toBeCloseTo(s.odMm - 2 * s.wallMm, 6);
      }
    }
  });

  it('knows a size by its id and by what is said of it', () => {
    expect(tube('copper', '22x0.9')).toMatchObject({
      label: '22',
      odMm: 22,
      wallMm: 0.9,
      boreMm: 20.2,
      sureness: 'quotation',
    });
    expect(tube('copper', '22')).toEqual(tube('copper', '22x0.9'));
    expect(tube('copper', '35')).toMatchObject({ size: '35x1.2', boreMm: 32.6, sureness: 'memory' });
    expect(tube('copper', '35x1.0')).toMatchObject({ boreMm: 33 });
    expect(tube('steel', '20')).toMatchObject({ odMm: 26.9, boreMm: 21.7 });
  });

  it('does not know what nobody has read', () => {
    expect(tube('copper', null)).toBeUndefined();
    expect(tube('copper', '23')).toBeUndefined();
    expect(tube('csst', '22')).toBeUndefined();
    expect(tube('unknown', '22')).toBeUndefined();
    expect(tube('waste', '50')).toBeUndefined();
  });

  it('lists the sizes of a kind from the smallest', () => {
    const copper = tubeKinds().find((k) => k.kind === 'copper');
    expect(copper?.sizes.map((s) => s.label)).toEqual(['8', '10', '12', '15', '22', '28', '35', '35', '42', '54']);
  });
});
