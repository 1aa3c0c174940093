import { emptyPlan } from '../../src/plan/empty-plan.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { atConnection, houseKit, read } from './house-kit.ts';
import { FIRST, GROUND, semiBuilding } from './semi-building.ts';
import { semiFloors } from './semi-floors.ts';
import { semiPoints } from './semi-points.ts';
import { DRAIN_COCK_NODE, semiRuns } from './semi-runs.ts';

/** An invented semi-detached house: the boiler leaves the kitchen for the linen room, next to an unvented cylinder. */
export function semiPlan(): Plan {
  const heights = { ceilingMm: 2400, buildUpMm: 150 };
  const plan = emptyPlan({ id: 'semi', name: 'Semi-detached house', storey: GROUND, option: 'A', ...heights });
  plan.storeys[GROUND] = { id: GROUND, name: 'Ground floor', floorMm: 0, ...heights, sureness: 'seen' };
  const first = { floorMm: 2640, ceilingMm: 2400, buildUpMm: 240 };
  plan.storeys[FIRST] = { id: FIRST, name: 'First floor', ...first, sureness: 'seen' };
  plan.basis.surveyDate = '2026-05-01';
  plan.basis.designFlowC = 70;
  plan.basis.designReturnC = 50;
  plan.job.reason = 'Boiler and flue out of the way of a wider kitchen window';
  plan.job.note =
    'The kitchen window is to be widened from 1200 to 1800. A shower is added for the new en-suite. The preheat vessel was found without a tundish. The old flue hole is to be made good.';
  plan.job.readings = [
    read('mains-standing', 'Water standing pressure', 3.4, 'bar', 'kitchen sink'),
    read('mains-flow', 'Cold water flow', 22, 'litres a minute', 'kitchen sink', 'tap full open'),
    read('gas-working', 'Gas working pressure', 20.4, 'mbar', 'meter', 'old boiler and hob burning'),
    read(null, 'inlet control set to', 3, 'bar', 'cylinder cupboard'),
    read(null, 'main bonding conductor', 10, 'mm2', 'gas, 400 from the meter', 'check on the day'),
  ];
  plan.options.A = {
    id: 'A',
    name: 'A',
    note: 'Gable wall of the linen room: all new pipes between two joists; a tundish of its own for the preheat vessel.',
    fates: {
      'A-EB': 'strip',
      'A-EF': 'strip',
      'A-g0-boiler': 'cap',
      'A-f0-old': 'strip',
    },
  };
  const k = houseKit(plan, GROUND, 'A');
  semiBuilding(plan, k);
  semiFloors(plan, k);
  semiPoints(k);
  semiRuns(k);
  const inLine = { along: null, fields: {}, sureness: 'seen' as const };
  plan.items['A-DC'] = {
    id: 'A-DC',
    kind: 'drain-cock',
    name: 'Drain cock at the lowest radiator',
    node: DRAIN_COCK_NODE,
    option: null,
    ...inLine,
  };
  plan.items['A-GV'] = {
    id: 'A-GV',
    kind: 'gas-cock',
    name: 'Gas cock at the boiler',
    node: atConnection('A-NB', 'gas'),
    option: 'A',
    ...inLine,
  };
  plan.items['A-FI'] = {
    id: 'A-FI',
    kind: 'filter',
    name: 'Filter on the return',
    node: atConnection('A-NB', 'return'),
    option: 'A',
    ...inLine,
  };
  plan.items['A-DR'] = {
    id: 'A-DR',
    kind: 'drain-cock',
    name: 'Drain cock in the dip of the return',
    node: 'A-r1.3',
    option: 'A',
    ...inLine,
  };
  return plan;
}
