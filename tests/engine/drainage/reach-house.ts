import { evaluate } from '../../../src/engine/evaluate.ts';
import { type ExamplePlan, example } from '../../../src/engine/example.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import type { ReachAnswer } from '../../../src/report/report.ts';

export const AFTER = { option: 'A', when: 'after' } as const;

export function reachIn(plan: Plan): readonly ReachAnswer[] {
  return evaluate(plan, AFTER).reach;
}

export function reachTo(plan: Plan, end: string, service: ReachAnswer['service'] = 'condensate'): ReachAnswer {
  const found = reachIn(plan).find((a) => a.end === end && a.service === service);
  if (!found) throw new Error(`nothing is said of ${end}`);
  return found;
}

const OUTER = { thicknessMm: 300, construction: 'external cavity' };

/** Where a boiler of the boot room hangs so that its condensate leaves it at this height. */
export function hang(plan: Plan, boiler: string, z: number): void {
  const point = plan.points[boiler];
  if (!point) throw new Error(`no ${boiler}`);
  const place = { ...point.place, height: { from: 'datum', of: null, mm: z } } as typeof point.place;
  plan.points = { ...plan.points, [boiler]: { ...point, place } };
}

/**
 * An old house with an extension behind it: the boiler hangs in the boot room at the far end, the foul gully is outside
 * the old kitchen, and a side door lies between, inside and outside alike.
 */
export function bootRoom(tailZ = 1179): ExamplePlan {
  const e = example('boot room')
    .wall('DW', [150, 0], [150, 8000], OUTER)
    .wall('DE', [6850, 0], [6850, 8000], OUTER)
    .wall('DS', [0, 150], [7000, 150], OUTER)
    .wall('DN', [0, 7850], [7000, 7850], OUTER)
    .wall('DXW', [2150, 8000], [2150, 14600], OUTER)
    .wall('DXE', [6850, 8000], [6850, 14600], OUTER)
    .wall('DXN', [2000, 14450], [7000, 14450], OUTER)
    .wall('DP1', [2300, 12000], [6700, 12000])
    .wall('DP2', [4600, 12050], [4600, 14300])
    .wall('DP3', [300, 4000], [6700, 4000])
    .wall('DP4', [3400, 4050], [3400, 7700])
    .opening('dw1', 'DE', 4400, 1200, { kind: 'window', name: 'Old kitchen window', sillMm: 1050, headMm: 2100 })
    .opening('dd1', 'DS', 3000, 950, { name: 'Front door', headMm: 2050 })
    .opening('do1', 'DN', 2600, 3600, { kind: 'archway', name: 'Structural opening', headMm: 2300 })
    .opening('dd2', 'DXW', 600, 2800, { name: 'Folding doors', headMm: 2150 })
    .opening('dd3', 'DXE', 1900, 900, { name: 'Side door', headMm: 2100 })
    .opening('dw2', 'DXE', 3000, 800, { kind: 'window', name: 'High window', sillMm: 1500, headMm: 2100, opens: false })
    .opening('dd4', 'DXN', 3600, 850, { name: 'Boot-room outside door', headMm: 2100 })
    .opening('dw3', 'DXN', 800, 1200, { kind: 'window', name: 'Study window', sillMm: 900, headMm: 2100 })
    .opening('dd5', 'DP1', 2700, 760, { name: 'Boot-room door' })
    .opening('dd6', 'DP1', 500, 760, { name: 'Study door' })
    .opening('dd7', 'DP3', 2500, 800, { name: 'Door' })
    .opening('dd8', 'DP4', 900, 800, { name: 'Door' })
    .point('boiler', 'NB', [6700, 13300, tailZ])
    .point('gully', 'FG', [7250, 7300, -150], { drains: 'foul' }, null)
    .point('gully', 'RG', [7200, 14300, -150], { drains: 'surface' }, null)
    .point('standpipe', 'WM', [6450, 7000, 100], {}, null)
    .point('condensate-drain', 'UF', [6300, 14000, -350], { laid: false, before: 'the pour' }, 'A')
    .point('soakaway', 'SA', [6000, 16100, -900], { ground: 'clay' }, 'A');
  const boiler = e.plan.points.NB;
  // Backs to the east wall: its right hand is to the south.
  if (boiler?.place.on === 'storey') boiler.place.angleDeg = -90;
  return e;
}
