import { describe, expect, it } from 'vitest';
import { gasFlow } from '../../../src/engine/gas/flow.ts';
import { type HeatInputAsk, heatInput } from '../../../src/engine/gas/heat-input.ts';
import { between, exact } from '../../../src/report/quantity.ts';

const kw = (n: number) => exact(n, 'kW', 1, 'page');
const ask = (changes: Partial<HeatInputAsk>): HeatInputAsk => ({
  name: 'boiler',
  gas: 'natural',
  heating: kw(24),
  hotWater: kw(31.8),
  stated: 'gross',
  use: 'larger',
  rangeRated: null,
  ...changes,
});

describe('heat input', () => {
  it('is the larger of heating and hot water unless told', () => {
    expect(heatInput(ask({})).result?.value).toBe(31.8);
    expect(heatInput(ask({ heating: kw(40) })).result?.value).toBe(40);
    expect(heatInput(ask({ use: 'heating' })).result?.value).toBe(24);
    expect(heatInput(ask({ hotWater: null })).result?.value).toBe(24);
    expect(heatInput(ask({ use: 'hotWater', hotWater: null })).result).toBeNull();
  });

  it('of two ranges, the greater end counts at each end', () => {
    expect(
      heatInput(ask({ heating: between(20, 35, 'kW', 1), hotWater: between(30, 32, 'kW', 1) })).result,
    ).toMatchObject({ lo: 30, hi: 35 });
  });

  it('a range rating shrinks nothing and says so', () => {
    const found = heatInput(ask({ rangeRated: kw(12) }));
    expect(found.result?.value).toBe(31.8);
    expect(found.steps.map((s) => s.how).join()).toContain('does not shrink the load');
  });

  it('net becomes gross by 1.11, and gross or net not told may be either', () => {
    expect(heatInput(ask({ stated: 'net' })).result?.value).toBeCloseTo(31.8 * 1.11, 9);
    const either = heatInput(ask({ stated: null }));
    expect(either.result).toMatchObject({ lo: 31.8, value: null });
    expect(either.result?.hi).toBeCloseTo(31.8 * 1.11, 9);
    expect(either.assumed.join()).toContain('gross or net');
    expect(heatInput(ask({ gas: 'propane', stated: 'net' })).result?.value).toBeCloseTo(31.8 * 1.09, 9);
  });

  it('an output is no load, and nothing told is nothing known', () => {
    expect(heatInput(ask({ stated: 'output' }))).toMatchObject({
      result: null,
      missing: ['heat input of boiler: an output is no load'],
    });
    expect(heatInput(ask({ heating: null, hotWater: null }))).toMatchObject({
      result: null,
      missing: ['heat input of boiler'],
    });
  });
});

describe('gas flow', () => {
  it('is kW x 3.6 over the calorific value', () => {
    expect(gasFlow(kw(39.3), 'natural', null).result?.value).toBeCloseTo((39.3 * 3.6) / 38.7, 12);
    expect(gasFlow(kw(10), 'natural', 38.5).result?.value).toBeCloseTo(0.9351, 4);
  });

  it('takes the calorific value of the basis where there is one, and cites the table where there is not', () => {
    expect(gasFlow(kw(10), 'natural', 39.5).steps[0]?.cites).toEqual([]);
    expect(gasFlow(kw(10), 'natural', null).steps[0]?.cites[0]?.table).toBe('gas-calorific');
    expect(gasFlow(kw(10), 'natural', 0).result?.value).toBeCloseTo(36 / 38.7, 12);
  });

  it('carries a range, and the doubt of propane', () => {
    expect(gasFlow(between(30.1, 34.4, 'kW', 1), 'natural', null).result).toMatchObject({ lo: (30.1 * 3.6) / 38.7 });
    const propane = gasFlow(kw(10), 'propane', null).result;
    expect(propane).toMatchObject({ sureness: 'memory' });
    expect(propane?.lo).toBeCloseTo(36 / 95, 12);
    expect(propane?.hi).toBeCloseTo(36 / 93, 12);
    expect(gasFlow(between(30, null, 'kW', 1), 'natural', null).result?.hi).toBeNull();
  });
});
