import { describe, expect, it } from 'vitest';
import { pathDrop } from '../../../src/engine/gas/path-drop.ts';
import { sectionDrop } from '../../../src/engine/gas/section-drop.ts';
import { type PathSection, sizeAnswers } from '../../../src/engine/gas/size-answers.ts';
import { flowOf, section } from './ask.ts';

/**
 * Three invented houses, each summed by hand beforehand: lengths off the drawing, elbows 0.6 m (22) and 0.8 m (28), nothing
 * for tees, flow = gross kW x 3.6 / 38.7. The hand sums are given to two figures, so 5 % is what they can be held to.
 */
const drop = (path: readonly PathSection[]) => pathDrop('gas', path.map(sectionDrop)).drop;
const near = (found: number | null, hand: number): void => {
  if (found === null) throw new Error('a value was expected');
  expect(Math.abs(found / hand - 1)).toBeLessThanOrEqual(0.05);
};

describe('flat with the boiler taken to the kitchen', () => {
  const toTee = (size: string) => section(size, 1.92 + 1.65 + 8.1 + 1.25, 3, flowOf(31.8 + 7.5));
  const toBoiler = (size: string) => section(size, 1.09 + 1.24 + 0.4 + 0.08, 3, flowOf(31.8));

  it('22 throughout loses about 1.3 mbar', () => {
    const found = drop([toTee('22'), toBoiler('22')]);
    near(found.value, 1.3);
    expect(found.lo).toBeLessThan(1.3);
    expect(found.hi).toBeGreaterThan(1.3);
    expect(found.lo).toBeGreaterThan(1);
  });

  it('28 to the tee, then 22, loses about 0.57 and passes', () => {
    const found = drop([toTee('28'), toBoiler('22')]);
    near(found.value, 0.57);
    expect(found.lo.toFixed(2)).toBe('0.50');
    expect(found.hi).toBeGreaterThan(0.75);
    expect(found.hi).toBeLessThan(0.78);
  });

  it('the table alone can only say at most 0.75', () => {
    const parts = [sectionDrop(toTee('28')), sectionDrop(toBoiler('22'))];
    expect(parts[0]?.table).toMatchObject({ lo: 0, value: null });
    near(
      parts.reduce((sum, p) => sum + (p.table?.hi ?? Number.NaN), 0),
      0.75,
    );
    expect(parts[0]?.notes.join()).toContain('at most');
  });

  it('answers 15, 22 and 28 in one go', () => {
    const [a, b, c] = sizeAnswers([toTee('22'), toBoiler('22')], 1, ['15', '22', '28']);
    expect([a?.verdict, b?.verdict, c?.verdict]).toEqual(['stop', 'stop', 'pass']);
    expect([a?.label, b?.label, c?.label]).toEqual(['15', '22', '28']);
  });
});

describe('linen room beside a cylinder', () => {
  const toTee = (more = 0) => section('22', 5.63 + more, 2, flowOf(34 + 8));
  const toBoiler = (more = 0) =>
    section('22', 0.245 + 0.075 + 0.9 + 1.09 + 0.075, 4, flowOf(34), {
      lengthM: { lo: 2.385 + more, hi: 2.385 + more, value: 2.385 + more, unit: 'm', digits: 1, sureness: 'derived' },
    });

  it('loses about 0.57 to the tee and 0.27 after it, 0.84 in all', () => {
    near(sectionDrop(toTee()).drop.value, 0.57);
    near(sectionDrop(toBoiler()).drop.value, 0.27);
    near(drop([toTee(), toBoiler()]).value, 0.84);
  });

  it('two more metres before the tee put it on the limit, after it not', () => {
    near(drop([toTee(2), toBoiler()]).value, 1);
    near(drop([toTee(), toBoiler(2)]).value, 0.95);
  });
});

describe('rear extension', () => {
  const toTee = (size: string) => section(size, 20.227, 7, flowOf(36.2 + 9.5));
  const toBoiler = (size: string) => section(size, 6.777, 4, flowOf(36.2));

  it('28 all the way is needed', () => {
    near(drop([toTee('28'), toBoiler('28')]).value, 0.89);
    near(drop([toTee('28'), toBoiler('22')]).value, 1.3);
    near(drop([toTee('22'), toBoiler('22')]).value, 2.9);
  });

  it('the table alone cannot decide for 28', () => {
    const most = [toTee('28'), toBoiler('28')]
      .map(sectionDrop)
      .reduce((sum, p) => sum + (p.table?.hi ?? Number.NaN), 0);
    near(most, 1.18);
    expect(sizeAnswers([toTee('28'), toBoiler('28')], 1, ['28'])[0]?.verdict).toBe('check');
  });
});

describe('the forty-second question', () => {
  const run = section('22', 0, 3, flowOf(30), {
    lengthM: { lo: 8.9, hi: 10.2, value: null, unit: 'm', digits: 1, sureness: 'derived' },
    flow: { lo: 2.8, hi: 3.2, value: null, unit: 'm3/h', digits: 2, sureness: 'derived' },
  });

  it('tells for each size what it loses and how much longer it may be', () => {
    const answers = sizeAnswers([run], 1, ['15', '22', '28']);
    expect(answers.map((a) => a.verdict)).toEqual(['stop', 'pass', 'pass']);
    expect(answers.map((a) => a.drop.lo.toFixed(2))).toEqual(['2.72', '0.44', '0.13']);
    expect(answers.map((a) => Math.floor(a.metresLeft ?? Number.NaN))).toEqual([0, 3, 17]);
  });

  it('metres added are metres used up', () => {
    const [answer] = sizeAnswers([run], 1, ['22']);
    const more = answer?.metresLeft ?? Number.NaN;
    const longer = { ...run, lengthM: { ...run.lengthM, lo: 8.9 + more, hi: 10.2 + more } };
    expect(sizeAnswers([longer], 1, ['22'])[0]?.drop.hi).toBeCloseTo(1, 6);
  });
});
