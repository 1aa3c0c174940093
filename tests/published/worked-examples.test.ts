import { describe, expect, it } from 'vitest';
import { gasFlow } from '../../src/engine/gas/flow.ts';
import { lPerSFromM3PerH, paFromMbar } from '../../src/plan/units.ts';
import { figure } from '../../src/reference/figure.ts';
import type { Table } from '../../src/reference/schema/table-schema.ts';
import { exact } from '../../src/report/quantity.ts';
import { sampleTable } from '../reference/sample-table.ts';
import textbook from './data/textbook-copper-flow.json' with { type: 'json' };
import { lowPressureFlow } from './formulas.ts';

const BORES = [
  ['1/2', 0.622],
  ['3/4', 0.824],
  ['1', 1.049],
  ['1 1/4', 1.38],
] as const;
const FEET = [10, 20, 30, 40, 50, 60, 70, 80, 90, 100];

/** The longest-length way wants a table of capacities at 0.5 in w.c.: made from the equation, looked up by the engine's own rule. */
const capacities: Table = sampleTable({
  rowAxis: { id: 'length', title: 'length', unit: 'ft', lookUp: 'next-size-up', from: 10, to: 100 },
  columnAxis: { id: 'size', title: 'size', unit: 'in', lookUp: 'none', from: null, to: null },
  columns: BORES.map(([key]) => ({ key, unit: 'ft3/h', digits: 0 })),
  rows: FEET.map((ft) => ({
    key: String(ft),
    cells: BORES.map(([, bore]) => lowPressureFlow(bore, 0.5, ft)),
  })),
  alongRow: 'rising',
  downColumn: 'falling',
});
const capacity = (ft: number, size: string): number => {
  const found = figure(capacities, ft, size);
  if (found.is !== 'known') throw new Error(`${size} at ${ft} ft is in the table`);
  return found.lo;
};
const sizeFor = (load: number, ft: number): string | undefined =>
  BORES.find(([size]) => capacity(ft, size) >= load)?.[0];

describe('fuel gas code 2018, appendix A, example 1: steel, longest length 60 ft', () => {
  it('capacities at 60 ft', () => {
    expect(capacity(60, '1/2')).toBeCloseTo(65.7, 1);
    expect(Math.round(capacity(60, '3/4'))).toBe(137);
    expect(Math.round(capacity(60, '1'))).toBe(259);
  });

  it.each([
    ['outlet A', 35, '1/2'],
    ['outlet B', 75, '3/4'],
    ['section 1, A and B', 110, '3/4'],
    ['main, all', 245, '1'],
    ['outlet C', 35, '1/2'],
    ['outlet D', 100, '3/4'],
  ])('%s: %d ft3/h, published size %s', (_, load, size) => {
    expect(sizeFor(load, 60)).toBe(size);
  });
});

describe('plumbing code, gas chapter: four outlets of a house, 60 ft row', () => {
  it('the load of D is its heat input over the heat in a cubic foot', () => {
    expect(Math.round(150_000 / 1100)).toBe(136);
  });

  it.each([
    ['A', 32, 60, '1/2'],
    ['section 1', 35, 60, '1/2'],
    ['section 2', 94, 60, '3/4'],
    ['section 3', 230, 60, '1'],
    ['B, 55 ft read at the 60 ft row', 3, 55, '1/2'],
    ['C, 55 ft read at the 60 ft row', 59, 55, '1/2'],
    ['D', 136, 60, '3/4'],
  ])('%s: %d ft3/h over %d ft is %s', (_, load, ft, size) => {
    expect(sizeFor(load, ft)).toBe(size);
    expect(capacity(ft, size)).toBe(capacity(60, size));
  });

  it('past the last row there is no size to give', () => {
    expect(figure(capacities, 101, '1')).toMatchObject({ is: 'outside', from: 10, to: 100 });
  });
});

describe('building services textbook, pages 284 to 285', () => {
  it('12.4: 34 m and a quarter for fittings leave 1.76 Pa/m of 75', () => {
    const effective = 34 * 1.25;
    expect(effective).toBe(42.5);
    expect(paFromMbar(0.75) / effective).toBeCloseTo(1.76, 2);
  });

  it('12.5: 4.2 Pa/m allows 17.9 m, 14.9 m of it pipe when a fifth more is fittings', () => {
    const effective = paFromMbar(0.75) / 4.2;
    expect(effective).toBeCloseTo(17.9, 1);
    expect(effective / 1.2).toBeCloseTo(14.9, 1);
  });
});

describe('building services textbook, example 12.6', () => {
  const heads = ['15', '22', '28', '32'];
  const loss: Table = sampleTable({
    rowAxis: { id: 'loss', title: 'loss per metre', unit: 'Pa/m', lookUp: 'next-size-down', from: 1, to: 10 },
    columnAxis: { id: 'size', title: 'size', unit: '', lookUp: 'none', from: null, to: null },
    columns: heads.map((key) => ({ key, unit: 'l/s', digits: 2 })),
    rows: textbook.rows.map(([paPerM, ...flows]) => ({ key: String(paPerM), cells: flows })),
    alongRow: 'rising',
  });
  const carries = (paPerM: number, size: string): number => {
    const found = figure(loss, paPerM, size);
    return found.is === 'known' ? found.lo : Number.NaN;
  };

  it('1.75 l/s at 5.1 Pa/m wants 28 mm, which carries 1.8 at the 5 Pa/m row', () => {
    expect(heads.find((size) => carries(5.1, size) >= 1.75)).toBe('28');
    expect(carries(5.1, '28')).toBe(1.8);
  });

  it('a loss under the first row has no flow to give', () => {
    expect(figure(loss, 0.9, '28')).toMatchObject({ is: 'outside' });
  });
});

describe('one-sheet conversion: 10 kW at 38.5 MJ/m3', () => {
  it('is 0.26 l/s, 0.935 m3/h (the sheet multiplies the rounded 0.26 and prints 0.936)', () => {
    const flow = gasFlow(exact(10, 'kW', 1), 'natural', 38.5).result?.value ?? Number.NaN;
    expect(lPerSFromM3PerH(flow)).toBeCloseTo(0.26, 2);
    expect(flow).toBeCloseTo(0.9351, 4);
    expect(Math.abs(flow - 0.936)).toBeLessThan(0.001);
  });

  it('the trade figure: a cubic metre an hour is 10.76 kW gross', () => {
    const flow = gasFlow(exact(10.76, 'kW', 2), 'natural', null).result?.value ?? Number.NaN;
    expect(Math.abs(flow - 1)).toBeLessThan(0.001);
  });
});
