import { describe, expect, test } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { Finding } from '../../src/report/finding.ts';
import { demoPlan } from './demo-file.ts';
import { type Place, redraw, shift } from './demo-redraw.ts';

const reportOf = (plan: Plan) => evaluate(plan, { option: 'A', when: 'after' });
const ofRule = (plan: Plan, rule: string): readonly Finding[] => reportOf(plan).findings.filter((f) => f.rule === rule);

function boilerDrop(plan: Plan): { value: number; state: string } {
  const rows = reportOf(plan).sections.find((s) => s.id === 'gas-drop')?.rows ?? [];
  const row = rows.find((r) => r.kind === 'answer' && r.label === 'New system boiler');
  if (row?.kind !== 'answer' || row.figure.value === null) throw new Error('no gas drop to the boiler');
  return { value: row.figure.value, state: row.bar.state };
}

const within = (found: number, told: number) => expect(Math.abs(found / told - 1)).toBeLessThanOrEqual(0.05);
/** New gas from the tee to the boiler, with the corner below the boiler and the one at the wall as told. */
const newGas = (plan: Plan, corners: readonly Place[]) => redraw(plan, 'A-g2', 'F', corners);

describe('gas of the semi-detached house', () => {
  test('as drawn it passes with little to spare', () => {
    const { value, state } = boilerDrop(demoPlan('semi'));
    within(value, 0.84);
    expect(state).toBe('pass');
  });

  test('two more metres before the tee put it on the limit', () => {
    const { value, state } = boilerDrop(shift(demoPlan('semi'), 'A-GM', { off: 2000 }));
    within(value, 1);
    expect(state).toBe('check');
  });

  test('two more metres after it give about 0.95', () => {
    const plan = shift(demoPlan('semi'), 'A-NB', { along: 2000 });
    const { value } = boilerDrop(
      newGas(plan, [
        [7985, 4300, 2760],
        [8060, 4300, 2760],
        [8060, 7200, 2760],
        [8060, 7200, 3850],
      ]),
    );
    within(value, 0.95);
  });

  test('two more elbows after the tee give about 0.91', () => {
    const { value } = boilerDrop(
      newGas(demoPlan('semi'), [
        [7985, 4300, 2760],
        [8060, 4300, 2760],
        [8060, 4700, 2760],
        [8060, 4700, 2800],
        [8060, 5200, 2800],
        [8060, 5200, 3850],
      ]),
    );
    within(value, 0.91);
  });
});

describe('pipes of the semi-detached house', () => {
  test('the gas moved to x 7985 runs into the return', () => {
    const plan = newGas(demoPlan('semi'), [
      [7985, 4300, 2760],
      [7985, 5200, 2760],
    ]);
    const found = ofRule(plan, 'clash/runs').filter((f) => f.ids.includes('A-r1'));
    expect(found.map((f) => [f.outcome, f.ids.join()])).toEqual([['stop', 'A-g2,A-r1']]);
    expect(Math.abs((found[0]?.at?.y ?? 0) - 5070)).toBeLessThan(30);
  });

  test('lagging the cold answers the hot beside it', () => {
    const plan = demoPlan('semi');
    for (const leg of Object.values(plan.legs)) {
      if (leg.run === 'A-c1') leg.insulation = { kind: 'foam', thicknessMm: 13 };
    }
    expect(ofRule(plan, 'structure/heat-beside-cold')).toEqual([]);
  });

  test('a drop of 250 below the new tundish is short', () => {
    const plan = redraw(demoPlan('semi'), 'A-d2', 'F', [
      [7060, 3550, 3290],
      [7060, 3250, 3288],
      [8460, 3250, 3280],
    ]);
    const [short] = ofRule(plan, 'discharge/straight-drop');
    expect(short?.ids).toContain('A-d2');
    expect([short?.found?.lo, short?.wanted?.lo]).toEqual([250, 300]);
  });

  test('without its new tundish the preheat vessel is told of after the work too', () => {
    const plan = demoPlan('semi');
    const tundish = plan.points['A-T2'];
    if (tundish) tundish.fields = { ...tundish.fields, serves: '' };
    delete plan.runs['A-e2'];
    for (const leg of Object.values(plan.legs)) if (leg.run === 'A-e2') delete plan.legs[leg.id];
    expect(ofRule(plan, 'discharge/tundish').map((f) => [f.outcome, f.ids.join()])).toEqual([['stop', 'A-PV']]);
  });
});

describe('water and flue of the semi-detached house', () => {
  test('hot on the right of the shower is told', () => {
    const plan = demoPlan('semi');
    for (const c of plan.points['A-SH']?.connections ?? []) c.at = { ...c.at, x: -c.at.x as typeof c.at.x };
    expect(ofRule(plan, 'water/hot-left').map((f) => f.ids.join())).toEqual(['A-SH']);
  });

  test('cold taken from behind the preheat vessel is not cold, nor balanced', () => {
    const plan = demoPlan('semi');
    const node = plan.nodes['A-CG.balanced'];
    if (!node) throw new Error('no balanced cold');
    node.place = { on: 'connection', point: 'A-PV', connection: 'out' };
    expect(ofRule(plan, 'supply/cold-after-heater').map((f) => [f.outcome, f.ids.join()])).toEqual([
      ['stop', 'A-PV,A-SH'],
    ]);
  });

  test('a fence at 600 from the wall is too near', () => {
    const plan = demoPlan('semi');
    const fence = plan.points['A-BO'];
    if (fence?.place.on === 'storey') fence.place.x = 9050;
    const found = ofRule(plan, 'flue/distance').map((f) => [f.outcome, f.ids.join(), f.found?.lo]);
    expect(found).toEqual([['stop', 'A-BO,A-NF', 500]]);
  });

  test('told its limits, the main cylinder stops the preheat vessel or takes it', () => {
    const at = (highestC: number) => {
      const plan = demoPlan('semi');
      for (const [id, told] of [
        ['A-PV', { highestC }],
        ['A-CY', { inletMaxC: 65 }],
      ] as const) {
        const point = plan.points[id];
        if (point) point.fields = { ...point.fields, ...told };
      }
      return ofRule(plan, 'preheat/inlet-limit').map((f) => f.outcome);
    };
    expect(at(80)).toEqual(['stop']);
    expect(at(65)).toEqual([]);
  });
});
