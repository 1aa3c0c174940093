import { describe, expect, it } from 'vitest';
import { figure } from '../../src/reference/figure.ts';

type Span = readonly [lo: number, hi: number, value: number | null];

function span(edition: string, row: string, turn: string): Span {
  const found = figure(edition, row, turn);
  if (found.is !== 'known') throw new Error(`${edition}, ${row}, ${turn}: ${found.is}`);
  return [found.lo, found.hi ?? Number.NaN, found.value];
}

function expectSpan(edition: string, row: string, turn: string, wanted: Span, slack: number): void {
  const got = span(edition, row, turn);
  for (const [i, n] of wanted.entries()) {
    const g = got[i];
    if (n === null) expect(g, `${row} ${turn}`).toBeNull();
    else expect(Math.abs((g ?? Number.NaN) - n), `${row} ${turn}: ${got} for ${wanted}`).toBeLessThanOrEqual(slack);
  }
}
const same = (n: number): Span => [n, n, n];

/** The note on table A.5 of BS 6891:2015: size, bore, elbow, bend and bend of 45 in metres. */
const NOTE = [
  ['copper 15x0.7', 13.6, 0.4, 0.2, 0.15],
  ['copper 22x0.9', 20.2, 0.6, 0.3, 0.2],
] as const;
const COPPER = [
  ['copper 10x0.6', 8.8],
  ['copper 12x0.6', 10.8],
  ['copper 15x0.7', 13.6],
  ['copper 22x0.9', 20.2],
  ['copper 28x0.9', 26.2],
  ['copper 35x1.2', 32.6],
  ['copper 42x1.2', 39.6],
] as const;
/** Bores of EN 10255 medium; the code of another country gives 30 an elbow, 7 to 16 a bend, 14 a turn of 45 and 60 a tee. */
const STEEL = [
  ['steel 15', 16.1],
  ['steel 20', 21.6],
  ['steel 25', 27.3],
  ['steel 32', 36.0],
  ['steel 40', 41.9],
  ['steel 50', 53.1],
] as const;
const YEAR = 'gas-fittings-2015';
const OLDER = 'gas-fittings-older';

/** To the nearest twentieth of a metre, as the two rows that were read are. */
const twentieth = (m: number): number => Math.round(m * 20) / 20;

describe('gas, metres for a fitting by BS 6891:2015', () => {
  it.each(NOTE)('table A.5 as quoted: %s', (row, _, elbow, bend, bend45) => {
    expectSpan(YEAR, row, 'elbow90', same(elbow), 1e-9);
    expectSpan(YEAR, row, 'bend90', same(bend), 1e-9);
    expectSpan(YEAR, row, 'bend45', same(bend45), 1e-9);
  });

  it.each(COPPER)('%s carries 30, 15 and 10 to 11 bores; a tee up to 60, an elbow of 45 up to 14', (row, bore) => {
    const m = bore / 1000;
    const elbow = twentieth(30 * m);
    const bend45 = span(YEAR, row, 'bend45')[2] ?? Number.NaN;
    expectSpan(YEAR, row, 'elbow90', same(elbow), 1e-9);
    expectSpan(YEAR, row, 'bend90', same(twentieth(15 * m)), 1e-9);
    expectSpan(YEAR, row, 'bend45', same(twentieth(bend45)), 1e-9);
    expect(bend45).toBeGreaterThanOrEqual(10 * m - 0.025);
    expect(bend45).toBeLessThanOrEqual(11 * m + 0.025);
    expectSpan(YEAR, row, 'elbow45', [bend45, 14 * m, bend45], 0.0051);
    expectSpan(YEAR, row, 'tee-run', [0, 0.5, 0], 1e-9);
    expectSpan(YEAR, row, 'tee-branch', [Math.min(0.5, elbow), 60 * m, elbow], 0.0051);
  });

  it.each(STEEL)('%s reaches from the older figure to the bores of a code of another country', (row, bore) => {
    const m = bore / 1000;
    const elbow = 30 * m;
    const to = (n: number): Span => [Math.min(0.5, n), Math.max(0.5, n), n];
    expectSpan(YEAR, row, 'elbow90', to(elbow), 0.0051);
    for (const turn of ['elbow45', 'bend45']) expectSpan(YEAR, row, turn, [0, 14 * m, 14 * m], 0.0051);
    expectSpan(YEAR, row, 'bend90', [7 * m, 16 * m, 12 * m], 0.0051);
    expectSpan(YEAR, row, 'tee-run', [0, 0.5, 0], 1e-9);
    expectSpan(YEAR, row, 'tee-branch', [Math.min(0.5, elbow), 60 * m, elbow], 0.0051);
  });
});

/** Up to 28 from the sizing sheet; above from a standard for larger pipes, as remembered. */
const SHEET = [
  [0.5, 0.3, ['copper 8x0.6', 'copper 10x0.6', 'copper 12x0.6', 'copper 15x0.7', 'copper 22x0.9', 'copper 28x0.9']],
  [0.5, 0.3, ['steel 15', 'steel 20', 'steel 25']],
  [1.0, 0.3, ['copper 35x1.2', 'copper 42x1.2', 'steel 32', 'steel 40']],
  [1.5, 0.5, ['copper 54x1.2', 'steel 50']],
] as const;

describe('gas, metres for a fitting by the older sizing sheet', () => {
  it.each(SHEET)('an elbow or a tee %s m, a pulled bend %s m, of 45 anything up to it', (elbow, bend, rows) => {
    for (const row of rows) {
      for (const turn of ['elbow90', 'tee-run', 'tee-branch']) expectSpan(OLDER, row, turn, same(elbow), 1e-9);
      expectSpan(OLDER, row, 'bend90', same(bend), 1e-9);
      expectSpan(OLDER, row, 'elbow45', [0, elbow, null], 1e-9);
      expectSpan(OLDER, row, 'bend45', [0, bend, null], 1e-9);
    }
  });
});
