import { describe, expect, it } from 'vitest';
import { same, span } from './span.ts';

type Row = readonly [row: string, column: string, ...figures: number[]];

/** Each source with the figures it gives, read a second time: one figure, or from, to and the best between. */
const SOURCES: readonly (readonly [source: string, table: string, rows: readonly Row[]])[] = [
  [
    'condensate guide 2018: indoors first, then a gully, then rainwater, then a soakaway',
    'condensate-ends',
    [
      ['sink-waste', 'order', 1],
      ['standpipe', 'order', 1],
      ['soil-stack', 'order', 1],
      ['gully', 'order', 2],
      ['condensate-drain', 'order', 2],
      ['rainwater-pipe', 'order', 3],
      ['soakaway', 'order', 4],
      ['condensate-pump', 'order', 5],
    ],
  ],
  [
    'older instructions: 44 to 50 in a metre, most often 45',
    'condensate-fall-older',
    [['least', 'printed', 44, 50, 45]],
  ],
  [
    'fluid categories: a house 3, anything else 4',
    'backflow',
    [
      ['house', 'category', 3],
      ['other', 'category', 4],
    ],
  ],
  ['friction diagram: laminar up to 2000, to 2300 at most', 'flow-regimes', [['laminarTo', 're', 2000, 2300, 2000]]],
  ['house-building guide to flues, 6.8.12: a ball of 6 may pass', 'flue-guard', [['ball passes', 'mm', 6]]],
  [
    'guides on siting flues, from memory: plume 2 m off openings, 2.5 m off a neighbour',
    'flue-plume',
    [
      ['plume-opening', 'mm', 2000],
      ['plume-neighbour', 'mm', 2500],
    ],
  ],
  [
    'guides on siting flues, from memory: terminals over a roof',
    'flue-roof-distances',
    [
      ['above-roof', 'mm', 300],
      ['roof-terminal', 'mm', 600],
      ['roof-opening', 'mm', 1000],
      ['roof-wall', 'mm', 300],
    ],
  ],
  ['sheet of gas properties: propane 93 to 95 MJ a m3', 'gas-calorific', [['propane', 'grossMJPerM3', 93, 95, 93.1]]],
  ['BS 6891:1998, table 2 as remembered: 22 at 15 m', 'gas-discharge-copper-recalled', [['22x0.9', '15', 3.4]]],
  ['article on gas sizing, 2005: 1 mbar', 'gas-pressure-limit-2005', [['natural', 'most', 1]]],
  [
    'handbook table 9.1 and a table of minor losses: a radiator 2.5 to 3 heads',
    'heating-parts',
    [['radiator', 'heads', 2.5, 3]],
  ],
  ['EN 12828, annex D, from memory: a fifth of vessels up to 15 litres', 'heating-vessel', [['small', 'litres', 15]]],
  [
    'notes on water fittings, by bore from memory',
    'hot-bare-bore',
    [
      ['12', 'metres', 20],
      ['19', 'metres', 12],
      ['54', 'metres', 3],
    ],
  ],
  ['notes on water fittings, lagged near a vessel for 1 m', 'hot-lagging-limits', [['near vessel', 'm', 1]]],
  [
    'textbook 2019 G18.4, house-building standards 8.1.5 and an article on dead legs: waits in seconds',
    'hot-wait',
    [
      ['first reading', 'seconds', 30],
      ['other reading', 'seconds', 60],
      ['good', 'seconds', 10],
      ['poor', 'seconds', 30],
    ],
  ],
  ['EN 13203: a flow is told for a rise of 30 or 35', 'hot-water-heat', [['sheet rise', 'kelvin', 30, 35, 35]]],
  [
    'textbook on hot water, document G and guidance on hygiene',
    'preheat-limits',
    [
      ['blended to', 'C', 60],
      ['lukewarm from', 'C', 20],
      ['bath', 'C', 48],
    ],
  ],
  ['textbook on hot water: a combination boiler set to 50', 'preheat-temperatures', [['combi set', 'C', 50]]],
  [
    'pages on expansion of polymers',
    'thermal-expansion',
    [
      ['pb', 'mmPerMK', 0.13],
      ['pp', 'mmPerMK', 0.15],
    ],
  ],
  [
    'formula of BS 6700, annex D, from memory: up to 28 and 3 m/s',
    'water-friction',
    [
      ['smooth', 'boreTo', 26.2],
      ['smooth', 'velocityTo', 3],
    ],
  ],
  [
    'fluid mechanics: 64 over Re, and 0.316 over its fourth root, in air of 1.2255',
    'gas-physical-model',
    ['smooth', 'rough'].flatMap((law): Row[] => [
      [law, 'laminar', 64],
      [law, 'blasius', 0.316],
      [law, 'power', -0.25],
      [law, 'airDensityKgPerM3', 1.2255],
      [law, 'reynoldsTo', 100_000],
    ]),
  ],
];

describe.each(SOURCES)('%s', (_, table, rows) => {
  it('is what the table has', () => {
    for (const [row, column, lo, hi, value] of rows) {
      const wanted = hi === undefined ? same(lo ?? 0) : [lo, hi, value ?? null];
      expect(span(table, row, column), `${row} ${column}`).toEqual(wanted);
    }
  });
});

describe('falls of condensate', () => {
  it.each([
    ['condensate-fall-older', 2.5],
    ['condensate-fall-newer', 3],
  ])('%s is %s degrees in mm of a metre, and no doubt about it', (table, deg) => {
    for (const mm of span(table, 'least', 'mmPerM')) {
      expect(mm).toBeCloseTo(1000 * Math.tan((deg * Math.PI) / 180), 0);
    }
  });
});

/** Reynolds numbers from which the error of the sum is another, against the 40 cells of the table that was read. */
const FROM = ['0', '1100', '1300', '2100', '2600', '15000', '100000'] as const;
const LOW = [0.06, 0.06, 0.21, 0.21, 0.1, 0.1, 0.15] as const;
const HIGH = [0.06, 0.06, 0.18, 0.18, 0.1, 0.1, 0.15] as const;

describe('error of the gas sum against the table', () => {
  it.each(FROM.map((re, i) => [re, LOW[i] ?? 0, HIGH[i] ?? 0] as const))(
    'from Re %s: %s less and %s more in smooth tube, 0.15 at least in rough',
    (re, low, high) => {
      expect(span('gas-physical-error', 'smooth lo', re)).toEqual(same(-low));
      expect(span('gas-physical-error', 'smooth hi', re)).toEqual(same(high));
      expect(span('gas-physical-error', 'rough lo', re)).toEqual(same(-Math.max(0.15, low)));
      expect(span('gas-physical-error', 'rough hi', re)).toEqual(same(Math.max(0.15, high)));
    },
  );
});
