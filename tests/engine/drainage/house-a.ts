import { ExamplePlan } from '../../../src/engine/example.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import type { Void } from '../../../src/plan/records/building.ts';

const PLASTIC = { kind: 'plastic-overflow', size: '21.5', joining: 'solvent' } as const;

const VOID: Void = {
  id: 'AV2',
  storey: 'ground',
  name: 'First-floor void',
  kind: 'ceiling',
  outline: [
    { x: 250, y: 4150 },
    { x: 8100, y: 4150 },
    { x: 8100, y: 6900 },
    { x: 250, y: 6900 },
  ],
  holes: [],
  bottom: { from: 'datum', of: null, mm: 2413 },
  top: { from: 'datum', of: null, mm: 2613 },
  joists: null,
  bearings: [],
  ventilated: null,
  mayBeCut: null,
  option: null,
  sureness: 'seen',
};

/** Drains of the invented house A, corner by corner: condensate, and one discharge pipe for each vessel. */
export function houseA(): Plan {
  const e = new ExamplePlan('house A');
  e.plan.voids.AV2 = VOID;
  e.point('standpipe', 'A-SP', [7985, 6630, 300]);
  e.run(
    'A-k1',
    'condensate',
    [[7985, 5480, 3840], [7985, 5480, 2576], [7985, 6600, 2525], { point: 'A-SP', connection: 'in' }],
    PLASTIC,
  );
  e.point('cylinder', 'A-CY', [7725, 2700, 2640], { valveOutlet: 'G1/2', unvented: true }, null);
  e.point('preheat-vessel', 'A-PV', [7450, 3550, 2640], { valveOutlet: 'G1/2', unvented: true }, null);
  e.plan.points['A-CY'] = { ...e.plan.points['A-CY'], name: 'Main cylinder' } as Plan['points'][string];
  e.plan.points['A-PV'] = { ...e.plan.points['A-PV'], name: 'Preheat vessel' } as Plan['points'][string];
  // Tundishes stand so that their lower end is where the pipes start.
  e.point('tundish', 'A-T1', [8060, 3080, 3740], { serves: 'main cylinder' });
  e.point('tundish', 'A-T2', [7060, 3580, 3540], { serves: 'preheat vessel' });
  e.run('A-d1', 'discharge', [
    { point: 'A-T1', connection: 'out' },
    [8060, 3050, 3340],
    [8460, 3050, 3336],
    [8460, 3050, 100],
  ]);
  e.run('A-d2', 'discharge', [
    { point: 'A-T2', connection: 'out' },
    [7060, 3550, 3200],
    [7060, 3250, 3198],
    [8460, 3250, 3190],
    [8460, 3250, 100],
  ]);
  return e.plan;
}
