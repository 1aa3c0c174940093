import { describe, expect, it } from 'vitest';
import { constant, figure } from '../../src/reference/figure.ts';
import { table } from '../../src/reference/tables.ts';
import { tube, tubeKinds } from '../../src/reference/tubes.ts';
import { M_PER_FT } from './formulas.ts';

describe('equivalent lengths', () => {
  it('code of another country, Table A.2.2: feet printed are bores of the head, 30 elbow, 14 ell of 45, 60 tee', () => {
    // bore in: elbow, ell of 45, side outlet of a tee; and a smooth bend at R/d 2 of 9 bores. All ft.
    const printed: readonly (readonly [number, number, number, number, number])[] = [
      [0.622, 1.55, 0.73, 3.1, 0.47],
      [0.824, 2.06, 0.96, 4.12, 0.62],
      [1.049, 2.62, 1.22, 5.24, 0.79],
    ];
    for (const [bore, elbow, ell, tee, bend] of printed) {
      const feet = (bores: number): number => (bores * bore) / 12;
      expect(feet(30)).toBeCloseTo(elbow, 1);
      expect(feet(14)).toBeCloseTo(ell, 1);
      expect(feet(60)).toBeCloseTo(tee, 1);
      expect(feet(9)).toBeCloseTo(bend, 1);
    }
  });

  it('the quoted rows are 30 bores an elbow and 15 a bend; a tee taken to 60 bores is that table in metres', () => {
    for (const size of ['15x0.7', '22x0.9']) {
      const bore = tube('copper', size)?.boreMm ?? Number.NaN;
      expect(constant('gas-fittings-2015', `copper ${size}`, 'elbow90')).toBeCloseTo((30 * bore) / 1000, 1);
      expect(constant('gas-fittings-2015', `copper ${size}`, 'bend90')).toBeCloseTo((15 * bore) / 1000, 1);
      const tee = figure('gas-fittings-2015', `copper ${size}`, 'tee-branch');
      expect(tee).toMatchObject({ is: 'known', hi: expect.closeTo((60 * bore) / 1000, 2) });
    }
    // Steel of half an inch: the same 60 bores as the printed 3.10 ft of a bore of 15.8 mm, to its own bore of 16.1.
    const steel = figure('gas-fittings-2015', 'steel 15', 'tee-branch');
    expect(steel).toMatchObject({ is: 'known', hi: expect.closeTo((3.1 * M_PER_FT * 16.1) / (0.622 * 25.4), 1) });
  });

  it('older editions typed a second time: elbow and tee 0.5, pulled bend 0.3, any size to 28', () => {
    for (const size of ['15x0.7', '22x0.9', '28x0.9']) {
      const row = ['elbow90', 'bend90', 'tee-run', 'tee-branch'].map((c) =>
        constant('gas-fittings-older', `copper ${size}`, c),
      );
      expect(row).toEqual([0.5, 0.3, 0.5, 0.5]);
    }
  });
});

describe('volume of pipe', () => {
  it('tabulated copper is the bore to the fifth place, 15 mm rounded down', () => {
    const again: Readonly<Record<string, number>> = { 15: 0.00014, 22: 0.00032, 28: 0.00054, 35: 0.00084 };
    for (const [label, m3] of Object.entries(again)) {
      const bore = tube('copper', label)?.boreMm ?? Number.NaN;
      const true3 = (Math.PI / 4) * (bore / 1000) ** 2;
      expect(constant('gas-installation-volume', `copper ${label}`)).toBe(m3);
      expect(Math.abs(true3 - m3)).toBeLessThanOrEqual(0.0000055);
    }
    expect(constant('gas-installation-volume', 'copper 15')).toBeLessThan((Math.PI / 4) * 0.0136 ** 2);
  });

  it('tabulated copper litres per metre, worked out before', () => {
    const before: Readonly<Record<string, number>> = {
      8: 0.036,
      10: 0.061,
      12: 0.092,
      15: 0.145,
      22: 0.32,
      28: 0.539,
      35: 0.835,
      42: 1.232,
      54: 2.091,
    };
    const copper = tubeKinds().find((k) => k.kind === 'copper');
    for (const [label, litres] of Object.entries(before)) {
      const bore = copper?.sizes.find((s) => s.label === label)?.boreMm ?? Number.NaN;
      expect((Math.PI / 4) * bore ** 2 * 1e-3).toBeCloseTo(litres, 3);
    }
  });

  it('steel is never tabulated under its bore', () => {
    for (const size of ['15', '20', '25', '32', '40', '50']) {
      const bore = tube('steel', size)?.boreMm ?? Number.NaN;
      expect(
        constant('gas-installation-volume', `steel ${size}`) / ((Math.PI / 4) * (bore / 1000) ** 2),
      ).toBeGreaterThan(0.99);
    }
  });
});

describe('rules typed a second time', () => {
  it('clearances: sockets and switches 150 in 2005, 25 in 2015; the rest alike', () => {
    const of = (ed: string, thing: string): number => constant(`gas-clearance-${ed}`, thing);
    expect(['socket', 'switch'].map((t) => [of('2005', t), of('2015', t)])).toEqual([
      [150, 25],
      [150, 25],
    ]);
    for (const ed of ['2005', '2015']) {
      expect(
        ['cable', 'electricity meter', 'consumer unit', 'cut-out', 'main switch', 'pipe'].map((t) => of(ed, t)),
      ).toEqual([25, 150, 150, 150, 150, 25]);
    }
    expect(figure('gas-clearance-2015', 'pipe')).toMatchObject({ sureness: 'memory' });
  });

  it('supports of gas pipe, upright and level', () => {
    const again: Readonly<Record<string, readonly [number, number]>> = {
      'copper 15': [2, 1.2],
      'copper 22': [2.5, 1.8],
      'copper 28': [2.5, 1.8],
      'copper 35': [3, 2.5],
      'copper 54': [3, 2.7],
      'steel 15': [2.5, 2],
      'steel 20': [3, 2.5],
      'steel 32': [3, 2.7],
      'steel 50': [3.5, 3],
    };
    for (const [tubeKey, pair] of Object.entries(again)) {
      expect(['vertical', 'horizontal'].map((way) => constant('gas-supports', tubeKey, way))).toEqual(pair);
    }
  });

  it('meters and limits', () => {
    expect(['G4', 'G2.5', 'G10'].map((m) => constant('gas-meters', m, 'capacityM3PerH'))).toEqual([6, 4, 16]);
    expect(['E6', 'G4', 'G10'].map((m) => constant('gas-meters', m, 'volumeM3'))).toEqual([0.0024, 0.008, 0.025]);
    expect(table('gas-installation-limits').rows[0]?.cells).toEqual([35, 0.035, 16]);
  });
});
