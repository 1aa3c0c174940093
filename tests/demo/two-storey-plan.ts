import { emptyPlan } from '../../src/plan/empty-plan.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { atConnection, houseKit } from './house-kit.ts';
import { FIRST, GROUND, twoStoreyBuilding } from './two-storey-building.ts';
import { twoStoreyOldRuns } from './two-storey-old-runs.ts';
import { twoStoreyPoints } from './two-storey-points.ts';
import { twoStoreyRuns } from './two-storey-runs.ts';

/** An invented house: the boiler leaves the kitchen for the airing cupboard upstairs, through the joists between. */
export function twoStoreyPlan(): Plan {
  const heights = { ceilingMm: 2400, buildUpMm: 150 };
  const plan = emptyPlan({ id: 'two-storey', name: 'Two-storey house', storey: GROUND, option: 'A', ...heights });
  plan.storeys[GROUND] = { id: GROUND, name: 'Ground floor', floorMm: 0, ...heights, sureness: 'seen' };
  const first = { floorMm: 2650, ceilingMm: 2350, buildUpMm: 250 };
  plan.storeys[FIRST] = { id: FIRST, name: 'First floor', ...first, sureness: 'seen' };
  plan.basis.surveyDate = '2026-05-01';
  plan.job.reason = 'The wall of the old boiler is wanted for a larger kitchen window.';
  plan.options.A = {
    id: 'A',
    name: 'A',
    note: 'Airing cupboard upstairs: gas through the joists in the permitted zone; water and heating between two joists to the old tails.',
    fates: {
      'old-boiler': 'strip',
      'old-flue': 'strip',
      'gas-to-old-boiler': 'cap',
      'cold-to-old-boiler': 'cap',
      'hot-from-old-boiler': 'strip',
      'flow-old': 'strip',
      'return-old': 'strip',
    },
  };
  const k = houseKit(plan, GROUND, 'A');
  twoStoreyBuilding(plan, k);
  twoStoreyPoints(k);
  twoStoreyOldRuns(k);
  twoStoreyRuns(k);
  const cock = {
    id: 'gas-cock',
    kind: 'gas-cock',
    name: 'Gas cock at the boiler',
    node: atConnection('new-boiler', 'gas'),
  };
  plan.items['gas-cock'] = { ...cock, along: null, fields: {}, option: 'A', sureness: 'seen' };
  plan.items.filter = {
    id: 'filter',
    kind: 'filter',
    name: 'Filter on the return',
    node: atConnection('new-boiler', 'return'),
    along: null,
    fields: {},
    option: 'A',
    sureness: 'seen',
  };
  return plan;
}
