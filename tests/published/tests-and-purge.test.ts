import { describe, expect, it } from 'vitest';
import { allowedDrop, perceptible } from '../../src/engine/tests-due/allowed-drop.ts';
import { editionsOn } from '../../src/engine/tests-due/edition-by-date.ts';
import { M3_PER_FT3, onTheMeter, rateInKw, timedRate } from '../../src/engine/tests-due/gas-rate.ts';
import { litAbove, purgeSeconds, purgeVolume } from '../../src/engine/tests-due/purge.ts';
import { metalMinutes, waterTestPressure } from '../../src/engine/tests-due/water-test.ts';
import { constant, figure } from '../../src/reference/figure.ts';
import { exact } from '../../src/report/quantity.ts';

const on = (day: string | null): string =>
  editionsOn(day)
    .map((e) => e.id)
    .join(' and ');

describe('gas register, industry standard update 133, 15 April 2026', () => {
  it('edition 4 out in March 2026, edition 3 withdrawn on 30 September, only 4 from 1 October', () => {
    expect(on('2026-02-28')).toBe('3');
    expect(on('2026-04-15')).toBe('3 and 4');
    expect(on('2026-09-30')).toBe('3 and 4');
    expect(on('2026-10-01')).toBe('4');
    expect(on(null)).toBe('3 and 4');
  });
});

describe('certification body pocket guide, edition 3; register magazine on edition 4', () => {
  it('let-by at 7 to 10 for 1 minute; 20 to 21 mbar, 1 minute to settle, 2 minutes of test', () => {
    const row = ['letByLeast', 'letByMost', 'letByMinutes', 'testLeast', 'testMost', 'settleMinutes', 'testMinutes'];
    expect(row.map((c) => constant('gas-tightness-3', 'natural', c))).toEqual([7, 10, 1, 20, 21, 1, 2]);
  });
  it('edition 4: 20 mbar, at least 18 where it cannot be reached; its times were not read', () => {
    expect(constant('gas-tightness-4', 'natural', 'testLeast')).toBe(20);
    expect(constant('gas-tightness-least-4', 'natural')).toBe(18);
    expect(figure('gas-tightness-4', 'natural', 'testMinutes').is).toBe('unknown');
  });
  it('gas is lit above 0.02 m3', () => {
    expect(litAbove()).toMatchObject({ is: 'known', lo: 0.02, sureness: 'page' });
  });
});

describe('revision cards on tightness testing and purging, edition 3', () => {
  const drop = (meter: string | null, largestMm: number | null) =>
    allowedDrop({ edition: '3', gas: 'natural', meter, largestMm }).result;
  it('pipe to 28: no meter or E6 8 mbar, U6 or G4 4 mbar, U16 or G10 1 mbar', () => {
    expect(['none', 'E6', 'G4', 'G10'].map((m) => drop(m, 28)?.value)).toEqual([8, 8, 4, 1]);
    expect(drop('G4', 15)?.sureness).toBe('quotation');
  });
  it('larger pipe, to 35, is from memory: 4, 4, 2.5, 1', () => {
    expect(['none', 'E6', 'G4', 'G10'].map((m) => drop(m, 35)?.value)).toEqual([4, 4, 2.5, 1]);
    expect(drop('G4', 35)?.sureness).toBe('memory');
  });
  it('gives no limit for what it does not list', () => {
    expect(drop('G4', 42)).toBeNull();
    expect(drop('G2.5', 22)).toBeNull();
    expect(drop(null, 22)).toBeNull();
    expect(drop('G4', null)).toBeNull();
    expect(allowedDrop({ edition: '3', gas: 'propane', meter: 'none', largestMm: 15 }).result).toBeNull();
    expect(allowedDrop({ edition: '4', gas: 'natural', meter: 'G4', largestMm: 15 }).missing[0]).toMatch(
      /in edition 4/,
    );
  });
  const volume = exact(0.014, 'm3', 4);
  const purge = (meter: string | null, largestMm: number | null, volumeM3: typeof volume | null = volume) =>
    purgeVolume({ edition: '3', meter, largestMm, volumeM3 }).result;
  it('purge: 0.01 m3 for E6, U6 or G4 with pipe to 28; else 1.5 times the installation volume', () => {
    expect(purge('E6', 28)?.value).toBe(0.01);
    expect(purge('G4', 22, null)?.value).toBe(0.01);
    expect(purge('G4', 35)?.value).toBeCloseTo(0.021, 6);
    expect(purge('G10', 22)?.value).toBeCloseTo(0.021, 6);
    expect(purge('G10', 22, null)).toBeNull();
    expect(purge('G4', null)).toBeNull();
    expect(purge(null, 22)).toBeNull();
    expect(purgeVolume({ edition: '4', meter: 'G4', largestMm: 22, volumeM3: volume }).result).toBeNull();
  });
  it('derived: 0.01 m3 at a burner of 2.0 m3/h takes 18 s', () => {
    expect(purgeSeconds(exact(0.01, 'm3', 3), exact(2, 'm3/h', 2))?.value).toBeCloseTo(18, 9);
    expect(purgeSeconds(exact(0.01, 'm3', 3), exact(0, 'm3/h', 2))).toBeNull();
  });
});

describe('what a gauge must move, from memory', () => {
  it('0.25 mbar on water, 0.2 on an electronic one with two decimals, unverified', () => {
    const { waterGauge, electronic } = perceptible();
    expect([waterGauge.value, electronic.value]).toEqual([0.25, 0.2]);
    expect(waterGauge.sureness).toBe('memory');
  });
});

describe('gas engineer technical note: 10.76 kW gross in 1 m3/h, gross over net 1.11', () => {
  const ask = { gas: 'natural', calorificMJPerM3: 38.74 } as const;
  it('1 m3/h is 10.76 kW gross and 9.69 net', () => {
    const { inputs } = rateInKw(exact(1, 'm3/h', 2), ask);
    expect(inputs?.gross.value).toBeCloseTo(10.76, 2);
    expect(inputs?.net?.value).toBeCloseTo(10.76 / 1.11, 2);
  });
  it('derived: an imperial meter, one cubic foot in 36 s', () => {
    expect(M3_PER_FT3).toBeCloseTo(0.0283168, 7);
    const rate = timedRate({ volume: 1, dial: 'ft3', seconds: 36 });
    expect(rate?.value).toBeCloseTo(2.8317, 4);
    expect(rate && onTheMeter(rate)?.dialSeconds.value).toBeCloseTo(36, 9);
    expect(rate && onTheMeter(rate)?.passedM3.value).toBeCloseTo(0.09439, 5);
  });
  it('nothing timed is no rate', () => {
    expect(timedRate({ volume: 0, dial: 'm3', seconds: 60 })).toBeNull();
    expect(timedRate({ volume: 1, dial: 'm3', seconds: 0 })).toBeNull();
  });
});

describe('guide to the water fittings regulations, schedule 2 paragraph 12', () => {
  it('1.5 times the highest working pressure, an hour for metal pipe', () => {
    expect(waterTestPressure(exact(4, 'bar', 1)).result?.value).toBe(6);
    expect(waterTestPressure(null).result).toBeNull();
    expect(metalMinutes()).toMatchObject({ lo: 60, sureness: 'page' });
    expect(figure('water-test', 'plastic', 'minutes').is).toBe('unknown');
  });
});
