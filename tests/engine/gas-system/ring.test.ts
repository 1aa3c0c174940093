import { describe, expect, test } from 'vitest';
import { evaluate } from '../../../src/engine/evaluate.ts';
import { example } from '../../../src/engine/example.ts';
import { give } from '../../../src/engine/given.ts';

const chosen = { option: 'A', when: 'after' } as const;

/** A meter, a ring of two ways of `long` and `short` metres, and a boiler where they meet. */
function ring(long: number, short: number) {
  const e = example()
    .point('gas-meter', 'm', [0, 0, 500])
    .point('boiler', 'b', [10000, 0, 1300], { inputKwHotWater: 30, inputBasis: 'gross' })
    .run('g', 'gas', [{ point: 'm', connection: 'outlet' }, [75, -115, 2300], [75 + short * 1000, -115, 2300]], {
      size: '22x0.9',
    });
  const [, near, far] = e.nodesOf('g');
  const out = ((long - short) / 2) * 1000;
  return e
    .run('h', 'gas', [near ?? '', [75, -115 - out, 2300], [75 + short * 1000, -115 - out, 2300], far ?? ''], {
      size: '22x0.9',
    })
    .run(
      't',
      'gas',
      [far ?? '', [75 + short * 1000, -115, 900], [10000, -81, 900], { point: 'b', connection: 'gas' }],
      { size: '22x0.9' },
    ).plan;
}

describe('a gas ring', () => {
  test('shares the flow so that both ways lose the same', () => {
    const given = give(ring(12, 6), chosen);
    const round = [...given.gas.sections.values()].filter((s) => s.section.onRing);
    expect(round).toHaveLength(2);
    const [one, other] = round.map((s) => s.result.physical?.value ?? Number.NaN);
    expect(one).toBeGreaterThan(0);
    expect(Math.abs((one ?? 0) - (other ?? 0)) / (one ?? 1)).toBeLessThan(0.001);
    const flows = round.map((s) => s.ask.flow.value ?? Number.NaN);
    expect((flows[0] ?? 0) + (flows[1] ?? 0)).toBeCloseTo((30 * 3.6) / 38.7, 6);
  });

  test('shares it evenly between equal ways', () => {
    const given = give(ring(6.000001, 6), chosen);
    const flows = [...given.gas.sections.values()].filter((s) => s.section.onRing).map((s) => s.ask.flow.value ?? 0);
    // The longer way has two elbows more, so it carries a little less.
    expect(Math.max(...flows) / Math.min(...flows)).toBeLessThan(1.35);
  });

  test('is flagged and still has a figure', () => {
    const report = evaluate(ring(12, 6), chosen);
    expect(report.findings.find((f) => f.rule === 'network/ring')?.outcome).toBe('stop');
    const drop = report.sections.find((s) => s.id === 'gas-drop')?.rows.find((r) => r.kind === 'answer');
    expect(drop?.kind === 'answer' && drop.figure.hi).toBeGreaterThan(0);
  });

  test('loses less than either of its ways alone', () => {
    const whole = give(ring(12, 6), chosen).gas.appliances[0]?.drop.drop.value ?? 0;
    const single = ring(12, 6);
    for (const leg of Object.values(single.legs)) if (leg.run === 'h') delete single.legs[leg.id];
    delete single.runs.h;
    expect(whole).toBeLessThan(give(single, chosen).gas.appliances[0]?.drop.drop.value ?? 0);
  });
});
