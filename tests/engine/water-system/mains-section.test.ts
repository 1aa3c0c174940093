import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/engine/evaluate.ts';
import { combiHouse } from '../../../src/engine/rules/supply/houses.ts';

interface Mains {
  readonly flow: number | null;
  readonly standing?: number;
  readonly flowing?: number;
}

/** What the answer row of the chapter says of a combi of 28 kW, cold at 10 and hot at 45. */
function held(kw: number | null, { flow, standing, flowing }: Mains): string {
  const plan = combiHouse();
  const [boiler, stop] = [plan.points.b, plan.points.s];
  if (!boiler || !stop) throw new Error('as drawn');
  boiler.fields = { ...boiler.fields, type: 'combi', hotOutputKw: kw, hotLeastBar: 0.3 };
  stop.fields = { ...stop.fields, standingBar: standing ?? null, workingBar: flowing ?? null, flowLPerMin: flow };
  plan.basis.coldC = 10;
  plan.basis.hotC = 45;
  const rows = evaluate(plan, { option: 'A', when: 'after' }).sections.find((s) => s.id === 'mains')?.rows ?? [];
  const answer = rows.find((r) => r.kind === 'answer');
  return answer?.kind === 'answer' ? (answer.say ?? '') : '';
}

describe('what holds the hot water of a combi', () => {
  it('is its heat where all it can warm is less than was read, though nobody read the pressure meanwhile', () => {
    // 60 x 28 / (4.19 x 35) = 11.5 litres a minute beside 16.
    expect(held(28, { flow: 16 })).toBe(
      'the 28 kW of the boiler hold it at about 11.5, where the mains bring up to 16.0 if pressure is left',
    );
  });

  it('is its heat for sure where the pressure was read and is enough', () => {
    expect(held(28, { flow: 16, standing: 4, flowing: 2 })).toBe(
      'the 28 kW of the boiler hold it, the mains could give more',
    );
  });

  it('is the mains where less was read than it warms', () => {
    expect(held(28, { flow: 8 })).toBe('the mains hold it back');
  });

  it('is not known without the one or the other', () => {
    expect(held(null, { flow: 16 })).toBe('only one of boiler and mains is known');
    expect(held(28, { flow: null })).toBe('only one of boiler and mains is known');
  });
});
