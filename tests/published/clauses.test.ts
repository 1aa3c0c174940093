import { describe, expect, it } from 'vitest';
import { roughnessOf } from '../../src/engine/hydraulics/tube-loss.ts';
import { same, span } from './span.ts';

type Row = readonly [row: string, column: string | undefined, ...figures: number[]];

/** Each source with the figures it gives, read a second time: one figure, or from, to and the best between. */
const SOURCES: readonly (readonly [source: string, table: string, rows: readonly Row[]])[] = [
  [
    'handbook on BS 6700, table 5.1, litres a second: usual and least',
    'water-design-flows',
    (
      [
        ['wc', 0.13, 0.05],
        ['basin', 0.15, 0.1],
        ['spray-tap', 0.05, 0.03],
        ['bidet', 0.2, 0.1],
        ['bath-tap', 0.3, 0.2],
        ['bath-tap-1', 0.6, 0.4],
        ['shower', 0.2, 0.1],
        ['sink', 0.2, 0.1],
        ['sink-tap-3-4', 0.3, 0.2],
        ['sink-tap-1', 0.6, 0.4],
        ['washing-machine', 0.2, 0.15],
        ['dishwasher', 0.15, 0.1],
      ] as const
    ).flatMap(([tap, flow, least]): Row[] => [
      [tap, 'flow', flow],
      [tap, 'least', least],
    ]),
  ],
  [
    'BS 6891:1998, table 1, steel, m3/h at 3 to 30 m: as remembered, unread',
    'gas-discharge-steel',
    (
      [
        ['8', 0.8, 0.53, 0.49, 0.36, 0.29, 0.22, 0.17, 0.14],
        ['10', 2.1, 1.4, 1.1, 0.93, 0.81, 0.7, 0.69, 0.57],
        ['15', 4.3, 2.9, 2.3, 2.0, 1.7, 1.5, 1.4, 1.3],
        ['20', 9.7, 6.6, 5.3, 4.5, 3.9, 3.3, 2.9, 2.6],
        ['25', 18, 12, 10, 8.5, 7.5, 6.3, 5.6, 5.0],
      ] as const
    ).flatMap(([size, ...flows]) =>
      flows.map((flow, i): Row => [size, String([3, 6, 9, 12, 15, 20, 25, 30][i]), flow]),
    ),
  ],
  [
    'page on installation volumes, m3 a metre of pipe',
    'gas-installation-volume',
    [
      ...['steel', 'csst'].flatMap((kind): Row[] => [
        [`${kind} 15`, undefined, 0.00024],
        [`${kind} 20`, undefined, 0.00046],
        [`${kind} 25`, undefined, 0.00064],
        [`${kind} 32`, undefined, 0.0011],
        [`${kind} 40`, undefined, 0.0015],
        [`${kind} 50`, undefined, 0.0024],
      ]),
      ['pe 20', undefined, 0.00019],
      ['pe 32', undefined, 0.00053],
    ],
  ],
  [
    'guide to piped gas, table 8, and the volumes of meters',
    'gas-meters',
    [
      ['E6', 'capacityM3PerH', 6],
      ['E6', 'volumeM3', 0.0024],
      ['G10', 'capacityM3PerH', 16],
      ['G10', 'volumeM3', 0.025],
    ],
  ],
  [
    'guide to piped gas, tables 6 and 7: copper up to 15',
    'gas-supports',
    [
      ['copper 10', 'vertical', 2],
      ['copper 10', 'horizontal', 1.2],
      ['copper 12', 'vertical', 2],
      ['copper 12', 'horizontal', 1.2],
    ],
  ],
  [
    'cards on tightness tests: pipe up to 28, larger up to 35 and its drop from memory',
    'gas-tightness-drop-3',
    (
      [
        ['none', 4],
        ['E6', 4],
        ['G4', 2.5],
        ['G10', 1],
      ] as const
    ).flatMap(([meter, larger]): Row[] => [
      [meter, 'largerMbar', larger],
      [meter, 'pipeMostMm', 28],
      [meter, 'largerMostMm', 35],
    ]),
  ],
  [
    'cards on purging: 0.01 m3, or 1.5 times the volume, for pipe up to 28',
    'gas-purge-3',
    [
      ['E6', 'timesVolume', 1.5],
      ['E6', 'pipeMostMm', 28],
      ['G4', 'pipeMostMm', 28],
    ],
  ],
  [
    'BS 6891:2005, 8.16.2: board 150, 50 for pipe over 35',
    'gas-clearance-2005',
    [
      ['distribution board', 'mm', 150],
      ['cable over 35', 'mm', 50],
    ],
  ],
  [
    'BS 6891:2015, 8.16.2: board 150, 50 for pipe over 35',
    'gas-clearance-2015',
    [
      ['distribution board', 'mm', 150],
      ['cable over 35', 'mm', 50],
    ],
  ],
  [
    'BS 6891:2005, 8.8 and 9.2: 25 of screed, or 5 of something soft',
    'gas-cover',
    [
      ['screed', 'mm', 25],
      ['soft covering', 'mm', 5],
    ],
  ],
  [
    'tightness tests: propane at 37, edition 3',
    'gas-tightness-3',
    [
      ['propane', 'testLeast', 37],
      ['propane', 'testMost', 37],
    ],
  ],
  ['register article, edition 4: 7 to 10 for let-by', 'gas-tightness-4', [['natural', 'letByMinutes', 1]]],
  ['gas properties: propane is 1.5 times as heavy as air', 'gas-properties', [['propane', 'relativeDensity', 1.5]]],
  [
    'note on gas flow: heat of a m3 as others quote it, MJ',
    'gas-calorific-choices',
    [
      ['trade figure', 'MJPerM3', 38.7],
      ['older sheet', 'MJPerM3', 38.5],
      ['billing example', 'MJPerM3', 39.5],
      ['network lowest', 'MJPerM3', 37.5],
      ['network highest', 'MJPerM3', 43.0],
    ],
  ],
  [
    'head of the sizing sheet: gas of 0.6 of the density of air',
    'gas-discharge-basis',
    [
      ['copper', 'relativeDensity', 0.6],
      ['steel', 'relativeDensity', 0.6],
    ],
  ],
  [
    'publication 150 and the heating handbook, table 9.2, m/s',
    'heating-velocity',
    [
      ['dirt', 'least', 0.5],
      ['erosion', 'most', 2.5],
      ['course', 'most', 1],
      ['course', 'mostPaPerM', 300],
      ['smallBore', 'least', 0.25],
      ['smallBore', 'most', 0.75],
      ['largeBore', 'least', 0.5],
      ['largeBore', 'most', 1],
    ],
  ],
  [
    'notes on water fittings, table 8.1: bare hot pipe up to 12, 22, 28 and more, m',
    'hot-bare',
    [
      ['12', 'metres', 20],
      ['22', 'metres', 12],
      ['28', 'metres', 8],
      ['54', 'metres', 3],
    ],
  ],
  [
    'article on dead legs: litres in a metre of copper',
    'hot-content',
    [
      ['15', 'litres', 0.145],
      ['22', 'litres', 0.32],
    ],
  ],
  [
    'house-building guide to flues, 6.8.12: guard 50 off, no ball of 16 through it',
    'flue-guard',
    [
      ['guard off', 'mm', 50],
      ['ball stops', 'mm', 16],
    ],
  ],
  [
    'approved document J, 1.47 and diagram 14, from memory: a hatch of 300 within 1.5 m',
    'flue-hidden',
    [
      ['hatch within', 'mm', 1500],
      ['hatch side', 'mm', 300],
    ],
  ],
  ['plumbing textbook 2019, page 325: cold 300 off hot', 'heat-beside-cold', [['apart', 'mm', 300]]],
  ['schedule 2, paragraph 12: plastic is tested at 1.5 times', 'water-test', [['plastic', 'times', 1.5]]],
  ['handbook on BS 6700, chapter 5: 3 m/s', 'water-velocity', [['BS 6700', 'branch', 3]]],
  [
    'document G as quoted, 3.59: one size larger, for at most 6 valves',
    'discharge-joined',
    [
      ['common pipe', 'sizes', 1],
      ['common pipe', 'most', 6],
    ],
  ],
  ['standard gravity', 'hydraulic-constants', [['gravity', 'value', 9.80665]]],
];

describe.each(SOURCES)('%s', (_, table, rows) => {
  it('is what the table has', () => {
    for (const [row, column, ...figures] of rows) {
      expect(span(table, row, column ?? undefined), `${row} ${column}`).toEqual(
        figures.length === 1 ? same(figures[0] ?? 0) : figures,
      );
    }
  });
});

describe('roughness of tube, mm', () => {
  it('sheet of the friction diagram: drawn tubing 0.0015', () => {
    for (const kind of ['copper', 'copper-imperial', 'microbore']) {
      expect(roughnessOf(kind), kind).toMatchObject({ lo: 0.0015, hi: 0.0015, value: 0.0015 });
    }
  });

  it('usual roughness: plastic to 0.007, lead to 0.01, steel 0.045 to 0.15', () => {
    for (const kind of ['plastic', 'pe', 'old-plastic']) {
      expect(roughnessOf(kind), kind).toMatchObject({ lo: 0.0015, hi: 0.007, value: 0.0015 });
    }
    expect(roughnessOf('lead')).toMatchObject({ lo: 0.0015, hi: 0.01, value: 0.0015 });
    expect(roughnessOf('steel')).toMatchObject({ lo: 0.045, hi: 0.15, value: 0.046 });
  });
});

/** Outside of the pipe, mm, and the loss from a metre at most, W: as remembered of the domestic services guide. */
const LOSSES = [
  [8, 7.06],
  [10, 7.23],
  [12, 7.35],
  [15, 7.89],
  [22, 9.12],
  [28, 10.07],
  [35, 11.08],
  [42, 12.19],
  [54, 14.12],
] as const;

/** W from a metre of pipe (60 degrees, air at 15) in insulation: layer of so many mm, W/(m K), 9 W/(m2 K) at its surface. */
function lossThrough(odMm: number, wallMm: number, lambda: number): number {
  const outside = odMm + 2 * wallMm;
  return 45 / (Math.log(outside / odMm) / (2 * Math.PI * lambda) + 1 / (Math.PI * (outside / 1000) * 9));
}

describe('insulation of hot pipe', () => {
  it.each(LOSSES)('%s loses at most %s W from a metre', (od, loss) => {
    expect(span('hot-lagging', String(od), 'loss')).toEqual(same(loss));
  });

  it.each(LOSSES.filter(([od]) => od >= 15 && od <= 35))(
    '%s: the wall is the least whole mm that loses no more than %s W',
    (od, loss) => {
      for (const lambda of ['0.025', '0.035', '0.040']) {
        const wall = span('hot-lagging', String(od), lambda)[0] as number;
        expect(lossThrough(od, wall + 0.5, Number(lambda)), `${lambda}`).toBeLessThanOrEqual(loss);
        expect(lossThrough(od, wall - 1, Number(lambda)), `${lambda}`).toBeGreaterThan(loss);
      }
    },
  );
});
