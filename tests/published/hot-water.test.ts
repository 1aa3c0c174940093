import { describe, expect, it } from 'vitest';
import { sums } from '../../src/engine/evaluate.ts';
import { waterAt } from '../../src/engine/hydraulics/water.ts';
import { litresPerM } from '../../src/engine/water/content.ts';
import { heatFor, hotFlow } from '../../src/engine/water/hot-flow.ts';
import { mixing } from '../../src/engine/water/mixing.ts';
import { plugTime } from '../../src/engine/water/wait.ts';
import { exact } from '../../src/report/quantity.ts';

const resultOf = (id: string, values: Readonly<Record<string, number | string>>): number =>
  sums.get(id)?.work(values).result?.value ?? Number.NaN;

// The usual rule as installers write it: 9 litres a minute from 10 to 60 °C are 31.5 kW with 4.2, 31.4 with 4.19.
describe('the rule for hot water', () => {
  it('9 litres a minute by 50 K take 31.4 kW, and 31.4 kW give them', () => {
    const kw = heatFor(exact(9, 'litres/min', 1), exact(50, 'K', 0));
    expect(kw.value).toBeCloseTo(31.4, 1);
    expect(hotFlow(exact(31.4, 'kW', 1), exact(50, 'K', 0)).result?.value).toBeCloseTo(9, 1);
    expect(resultOf('hot-flow', { kw: 31.425, coldC: 10, wantC: 60 })).toBeCloseTo(9, 6);
  });

  // Worked out beside it by 60 kW / (4.19 x 35).
  it.each([
    [24, 9.82],
    [30, 12.27],
    [35, 14.32],
  ])('%f kW at 35 K give %f litres a minute', (kw, lPerMin) => {
    expect(resultOf('hot-flow', { kw, coldC: 10, wantC: 45 })).toBeCloseTo(lPerMin, 2);
  });
});

// Forum answer on mixing liquids: 3500 litres at 40 °C from 100 and 10 °C take about 1166 litres of the hot.
describe('mixing', () => {
  it('takes a third of hot, 1166.7 of 3500 litres, and those two make 40 °C again', () => {
    const asked = { hotC: 100, coldC: 10, mixedC: 40, mixed: { amount: 3500, unit: 'litres' } };
    const hot = mixing(asked).result?.value ?? Number.NaN;
    expect(hot).toBeCloseTo(1166.7, 1);
    expect(resultOf('mixing', { hotC: 100, coldC: 10, hot, cold: 3500 - hot })).toBeCloseTo(40, 9);
  });
});

describe('water in copper', () => {
  // Heating and air-conditioning handbook, table 6.4, litres a metre; 20, 25, 32 and 40 there are 22, 28, 35 and 42.
  it.each([
    ['15', 0.145],
    ['22', 0.321],
    ['28', 0.54],
    ['35', 0.837],
    ['42', 1.234],
  ])('a metre of %s holds %f litres, to 3 in a thousand', (size, litres) => {
    expect(Math.abs((litresPerM('copper', size)?.value ?? Number.NaN) / litres - 1)).toBeLessThanOrEqual(0.003);
  });

  // Magazine page on dead legs: 0.145 litres a metre of 15. Eight metres at 9 litres a minute.
  it('8 m of 15 hold 1.16 litres, which 9 litres a minute push out in 7.75 s', () => {
    const litres = resultOf('dead-leg', { m: 8, size: '15' });
    expect(litres).toBeCloseTo(1.16, 2);
    expect(plugTime(exact(litres, 'litres', 2), exact(9, 'litres/min', 1))?.value).toBeCloseTo(7.75, 2);
  });
});

// Building services engineering textbook, 5th edition, p. 192 example 6.2: 1.3 x (50 + 4 + 1 + 3 + 1) m, 9 m of head.
/** What the book's table of flows fits; it is read for the cold main too. */
const TABLE_C = 75;

describe('filling through the main', () => {
  const lengthM = 1.3 * (50 + 4 + 1 + 3 + 1);
  const paPerM = (9 * 1000 * 9.807) / lengthM;

  it('has 1150 Pa for each of 76.7 m', () => {
    expect(lengthM).toBeCloseTo(76.7, 1);
    expect(Math.abs(paPerM / 1150.4 - 1)).toBeLessThan(0.001);
  });

  it('a little over 0.16 kg/s passes 15, and 230 kg run in within 0.4 of an hour', () => {
    const at = (flowKgPerS: number): number => {
      const flow = (flowKgPerS / (waterAt(TABLE_C)?.densityKgM3 ?? Number.NaN)) * 60_000;
      return resultOf('tube-loss', { size: '15', flow, tC: TABLE_C, m: lengthM });
    };
    const head = (9 * 1000 * 9.807) / 1000;
    expect(at(0.16)).toBeLessThan(head);
    expect(at(0.16 * 1.1)).toBeGreaterThan(head);
    expect(230 / 0.16 / 3600).toBeCloseTo(0.4, 2);
  });
});
