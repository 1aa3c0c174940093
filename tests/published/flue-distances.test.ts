import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { give } from '../../src/engine/evaluate.ts';
import type { ExamplePlan } from '../../src/engine/example.ts';
import { flueFacesOf } from '../../src/engine/flue/flue-faces.ts';
import { fronted, house } from '../../src/engine/rules/flue/houses.ts';
import { figure } from '../../src/reference/figure.ts';
import type { FlueDistance } from '../../src/report/flue-face.ts';

const AFTER = { option: 'A', when: 'after' } as const;
const TABLE = 'flue-distances';

/** Distances of a fanned-draught balanced flue, Approved Document J, in mm, by the letter of its row. */
const ROWS = [
  ['A', 'below-opening', 300],
  ['B', 'above-opening', 300],
  ['C', 'beside-opening', 300],
  ['D', 'below-gutter', 75],
  ['E', 'below-eaves', 200],
  ['F', 'below-balcony', 200],
  ['G', 'beside-pipe', 150],
  ['H', 'beside-corner', 300],
  ['H', 'beside-boundary', 300],
  ['I', 'above-ground', 300],
  ['J', 'facing-surface', 600],
  ['J', 'facing-boundary', 600],
  ['K', 'facing-terminal', 1200],
  ['L', 'car-port-opening', 1200],
  ['M', 'upright-terminal', 1500],
  ['N', 'beside-terminal', 300],
] as const;

describe('the table of Approved Document J as it was copied out', () => {
  test.each(ROWS)('row %s, %s', (letter, key, mm) => {
    const found = figure(TABLE, key, 'mm');
    expect(found).toMatchObject({ is: 'known', value: mm, unit: 'mm' });
    expect(found.cite).toEqual({
      source: 'approved-document-j-distances',
      clause: `fanned draught, row ${letter}`,
      table: TABLE,
    });
    // The meaning of one row stands on memory, and says so wherever it is used.
    expect(found.is === 'known' && found.sureness).toBe(letter === 'J' ? 'memory' : 'quotation');
  });

  test('the frame of a window, by note 1 of the house-building standards 6.8.12', () => {
    expect(figure(TABLE, 'frame', 'mm')).toMatchObject({ value: 150, sureness: 'page' });
  });

  test('a guard below 2 m, by the house-building standards 6.8.12', () => {
    expect(figure('flue-guard', 'guarded below', 'mm')).toMatchObject({ value: 2000, sureness: 'page' });
    expect(figure('flue-guard', 'ball stops', 'mm')).toMatchObject({ value: 16, sureness: 'page' });
  });

  test('what is from memory is marked so: plume, roof, hatch, fall', () => {
    const marked = [
      figure('flue-plume', 'plume-opening', 'mm'),
      figure('flue-roof-distances', 'roof-opening', 'mm'),
      figure('flue-hidden', 'hatch within', 'mm'),
      figure('flue-fall-newer', 'least', 'mmPerM'),
    ];
    expect(marked.map((f) => f.is === 'known' && f.sureness)).toEqual(['memory', 'memory', 'memory', 'memory']);
  });

  test('falls are the tangents of 3 and 2.5 degrees', () => {
    const perM = (degrees: number): number => Math.round(Math.tan((degrees * Math.PI) / 180) * 10000) / 10;
    expect(figure('flue-fall-newer', 'least', 'mmPerM')).toMatchObject({ value: perM(3) });
    expect(figure('flue-fall-older', 'least', 'mmPerM')).toMatchObject({ value: perM(2.5) });
  });
});

const window = (e: ExamplePlan, gap: { across?: number; sill?: number; head?: number }) =>
  e.opening('o', 's', 3050 + (gap.across ?? -400) - 150, 900, {
    kind: 'window',
    sillMm: gap.sill ?? 1000,
    headMm: gap.head ?? 2300,
  });

/** One thing at a distance that the row wants and no other row forbids. Edges of the terminal: 2950 and 3050, 2200 and 2300. */
const AT: Readonly<Record<string, (gap: number) => ExamplePlan>> = {
  'below-opening': (gap) => window(fronted(), { sill: 2300 + gap, head: 4000 }),
  'above-opening': (gap) => window(fronted(), { sill: 100, head: 2200 - gap }),
  'beside-opening': (gap) => window(fronted(), { across: gap }),
  'below-gutter': (gap) => fronted().point('gutter', 'x', [3000, 0, 2300 + gap]),
  'below-eaves': (gap) => fronted().point('eaves', 'x', [3000, 0, 2300 + gap]),
  'below-balcony': (gap) => fronted().point('eaves', 'x', [3000, 0, 2300 + gap], { what: 'balcony' }),
  'beside-pipe': (gap) => fronted().point('rainwater-pipe', 'x', [3050 + gap + 34, 0, 0]),
  'beside-corner': (gap) => house().point('flue-terminal', 't', [gap + 50, 0, 2200]),
  'beside-boundary': (gap) => {
    const e = fronted().point('boundary', 'x', [3050 + gap, -1500, 0]);
    const place = e.plan.points.x?.place;
    if (place?.on === 'storey') place.angleDeg = 90;
    return e;
  },
  'above-ground': (gap) => fronted({}, gap),
  'facing-surface': (gap) => fronted().wall('x', [0, -150 - gap], [6000, -150 - gap]),
  'facing-boundary': (gap) => fronted().point('boundary', 'x', [3000, -100 - gap, 0]),
  'facing-terminal': (gap) => {
    const e = fronted().point('flue-terminal', 'x', [3000, -200 - gap, 2200], {}, null);
    const place = e.plan.points.x?.place;
    if (place?.on === 'storey') place.angleDeg = 180;
    return e;
  },
  'car-port-opening': (gap) =>
    window(fronted().point('eaves', 'x', [3000, 0, 3000], { what: 'carPort', openSides: 2 }), {
      across: gap,
    }),
  'upright-terminal': (gap) => fronted().point('flue-terminal', 'x', [3000, 0, 2300 + gap], {}, null),
  'beside-terminal': (gap) => fronted().point('flue-terminal', 'x', [3100 + gap, 0, 2200], {}, null),
};

function rowAt(row: string, gap: number): FlueDistance | undefined {
  const face = flueFacesOf(give((AT[row] as (gap: number) => ExamplePlan)(gap).plan, AFTER)).find(
    (f) => f.terminal === 't',
  );
  return face?.distances.find((d) => d.row === row);
}

describe('drawn in plan and height', () => {
  test.each(ROWS)('row %s, %s: from %i on, and not a mm less', (_letter, row, mm) => {
    expect(rowAt(row, mm)).toMatchObject({ state: 'pass', found: { lo: mm, hi: mm }, wanted: { lo: mm } });
    expect(rowAt(row, mm - 1)).toMatchObject({ state: 'stop', found: { lo: mm - 1, hi: mm - 1 } });
  });

  const RANK = ['stop', 'check', 'cantTell', 'note', 'pass'];
  test.each(ROWS.map(([, row]) => row))('%s: farther off is never worse', (row) => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1800 }), fc.integer({ min: 0, max: 600 }), (gap, more) => {
        const state = (mm: number): number => RANK.indexOf(rowAt(row, mm)?.state ?? 'pass');
        expect(state(gap + more)).toBeGreaterThanOrEqual(state(gap));
      }),
      { numRuns: 20 },
    );
  });
});
