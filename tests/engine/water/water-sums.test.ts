import { describe, expect, it } from 'vitest';
import type { SumValues } from '../../../src/engine/define-sum.ts';
import { sums } from '../../../src/engine/evaluate.ts';

const work = (id: string, values: SumValues) => {
  const sum = sums.get(id);
  if (!sum) throw new Error(`no sum ${id}`);
  return sum.work(values);
};
const stepOf = (id: string, values: SumValues, label: string) => work(id, values).steps.find((s) => s.label === label);

describe('tube-loss', () => {
  const in22 = { size: '22', flow: 12, tC: 60, m: 8 };

  it('counts fittings as metres of the table that was asked, and says when none were told', () => {
    const bare = work('tube-loss', in22);
    const elbows = work('tube-loss', { ...in22, 'elbow90-capillary': 4 });
    expect(bare.assumed.join()).toContain('no fittings were told');
    expect(elbows.assumed.join()).not.toContain('no fittings were told');
    // Copper association table: a capillary elbow of 22 is 0.60 m, so 8 m with four of them are 10.4 m.
    expect((elbows.result?.value ?? 0) / (bare.result?.value ?? 1)).toBeCloseTo(10.4 / 8, 4);
    // Spread of an elbow whose joining nobody told.
    expect(work('tube-loss', { ...in22, elbow90: 1 }).result).toMatchObject({
      lo: expect.closeTo(((bare.result?.lo ?? 0) * 8.6) / 8, 4),
      hi: expect.closeTo(((bare.result?.hi ?? 0) * 9) / 8, 4),
    });
  });

  it('cannot tell of a fitting that the table of this water lacks', () => {
    expect(work('tube-loss', { ...in22, 'stop-valve': 1 })).toMatchObject({ result: null });
    expect(work('tube-loss', { ...in22, 'stop-valve': 1, basis: 'water' }).result?.lo).toBeGreaterThan(0);
  });

  it('names the regime, and doubts it between laminar and turbulent', () => {
    // One kilowatt at 20 K through 15 at 60 degrees: Re about 2400.
    const transit = { size: '15', flow: 0.7272, tC: 60, m: 5 };
    expect(stepOf('tube-loss', transit, 'Reynolds number')?.result?.value).toBeCloseTo(2397, -1.7);
    expect(work('tube-loss', transit).assumed.join()).toContain('no law of friction is sure');
    expect(stepOf('tube-loss', { ...transit, flow: 0.36 }, 'Reynolds number')?.how).toContain('laminar');
    expect(work('tube-loss', { ...transit, flow: 0.36 }).assumed.join()).not.toContain('no law');
  });

  it('cannot tell of a kind whose bore was not read, nor of a size there is not', () => {
    expect(work('tube-loss', { ...in22, kind: 'steel', size: '22' })).toMatchObject({ result: null });
  });
});

describe('hot-flow', () => {
  const combi = { kw: 24, coldC: 10, wantC: 45 };

  it('is the lesser of heat and mains, and says which holds it', () => {
    expect(work('hot-flow', combi).result?.value).toBeCloseTo(9.82, 2);
    const strong = { ...combi, standing: 3, flowing: 1.5, flow: 16, least: 1, up: 2 };
    expect(work('hot-flow', strong).result?.value ?? work('hot-flow', strong).result?.lo).toBeCloseTo(9.82, 2);
    expect(stepOf('hot-flow', strong, 'Lesser of the two')?.how).toContain('the heat holds it');
    // 2.5 bar standing, 0.5 left at 10 litres; 1.5 wanted and 5 m up, so 1.9905: 10 x root of 0.5095 / 2.
    const weak = { ...combi, standing: 2.5, flowing: 0.5, flow: 10, least: 1.5, up: 5 };
    expect(work('hot-flow', weak).result?.value).toBeCloseTo(10 * Math.sqrt(0.5095 / 2), 3);
    expect(stepOf('hot-flow', weak, 'Lesser of the two')?.how).toBe('the mains hold it');
  });

  it('a flow without pressures is at most that', () => {
    expect(work('hot-flow', { ...combi, flow: 8 }).result).toMatchObject({ lo: 0, hi: 8 });
  });

  it('what is read and makes no sense is not drawn on', () => {
    const odd = work('hot-flow', { ...combi, flow: 8, standing: 1, flowing: 2 });
    expect(odd.result).toMatchObject({ lo: 0, hi: 8 });
    expect(odd.assumed.join()).toContain('make no sense');
    expect(work('hot-flow', { ...combi, wantC: 5 })).toMatchObject({ result: null });
  });
});

describe('wait', () => {
  it('holds the seconds against both wordings of the rule', () => {
    // 20 m of 22 hold 6.4 litres: 42.7 s at 9 litres a minute, 51 to 64 with the tube, 54 to 74 with the start.
    const far = { m: 20, size: '22', flow: 9, source: 'combi' };
    expect(stepOf('wait', far, 'One reading of the rule')?.how).toContain('is over it');
    expect(stepOf('wait', far, 'Another wording')?.how).toContain('within it or over it');
    expect(stepOf('wait', { ...far, m: 5 }, 'One reading of the rule')?.how).toContain('is within it');
    expect(stepOf('wait', far, 'Water in the pipe')?.result?.value).toBeCloseTo(6.41, 2);
    expect(stepOf('wait', far, 'As it is called')?.how).toBe('poor');
  });

  it('a store starts at once, a combi does not', () => {
    const near = { m: 4, size: '15', flow: 6 };
    const [store, combi] = ['store', 'combi'].map((source) => work('wait', { ...near, source }).result);
    expect((combi?.lo ?? 0) - (store?.lo ?? 0)).toBeCloseTo(3, 6);
    expect((combi?.hi ?? 0) - (store?.hi ?? 0)).toBeCloseTo(10, 6);
  });
});

describe('mixing', () => {
  it('gives the blend of two, and the shares of a blend that is wanted', () => {
    expect(work('mixing', { hotC: 60, coldC: 10, hot: 3, cold: 2 }).result).toMatchObject({ value: 40, unit: '°C' });
    expect(work('mixing', { hotC: 60, coldC: 10, wantC: 40 }).result?.value).toBeCloseTo(0.6, 6);
    const both = work('mixing', { hotC: 60, coldC: 10, hot: 1, cold: 1, wantC: 40, want: 10 });
    expect(both.steps.find((s) => s.label === 'Blend')?.result?.value).toBe(35);
    expect(both.result?.value).toBeCloseTo(6, 6);
    expect(both.steps.find((s) => s.label === 'Cold')?.result?.value).toBeCloseTo(4, 6);
  });

  it('says what it lacks', () => {
    expect(work('mixing', { hotC: 60, coldC: 10, hot: 3 })).toMatchObject({ result: null });
    expect(work('mixing', { hotC: 60, coldC: 10, hot: 0, cold: 0 })).toMatchObject({ result: null });
    expect(work('mixing', { hotC: 60, coldC: 10, wantC: 70 })).toMatchObject({ result: null });
  });
});

describe('dead-leg', () => {
  it('shows both readings of the longest bare pipe where they differ', () => {
    // 22 is within 12 m by diameter; its bore of 20.2 falls in the next step, 8 m.
    const leg = { m: 10, size: '22' };
    expect(stepOf('dead-leg', leg, 'Longest bare, by outside diameter')?.how).toContain('within');
    expect(stepOf('dead-leg', leg, 'Longest bare, the rule read by bore')).toMatchObject({
      how: '10 m is over it',
      result: { lo: 8, sureness: 'memory' },
    });
  });

  it('a capped end is held against the tee itself', () => {
    const capped = work('dead-leg', { m: 3, size: '15', end: 'capped' });
    expect(capped.steps.map((s) => s.label)).toEqual(['Water in it', 'A stub as long as the tee itself']);
    expect(capped.steps[1]).toMatchObject({ how: '3 m is over it', result: { lo: 0.15, unit: 'm' } });
    expect(work('dead-leg', { m: 0.1, size: '15', end: 'capped' }).steps[1]?.how).toContain('within');
  });
});
