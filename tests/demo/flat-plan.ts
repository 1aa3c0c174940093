import { emptyPlan } from '../../src/plan/empty-plan.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { FLAT, flatBuilding } from './flat-building.ts';
import { flatPoints } from './flat-points.ts';
import { flatRuns } from './flat-runs.ts';
import { houseKit, read } from './house-kit.ts';

/** An invented first-floor flat: a combi leaves a bedroom cupboard for the outside wall of the kitchen. */
export function flatPlan(): Plan {
  const plan = emptyPlan({
    id: 'flat',
    name: 'First-floor flat',
    storey: FLAT,
    option: 'A',
    ceilingMm: 2500,
    buildUpMm: 220,
  });
  plan.storeys[FLAT] = { id: FLAT, name: 'First floor', floorMm: 0, ceilingMm: 2500, buildUpMm: 220, sureness: 'seen' };
  plan.basis.surveyDate = '2026-05-01';
  plan.job.reason = 'Boiler from the bedroom cupboard to the kitchen wall';
  plan.job.note =
    'The old flue is hidden above the bathroom ceiling with no way to look at it. The slabs and the outside wall belong to the building: ask the freeholder before work.';
  const asked = { asked: null, given: null };
  plan.job.permissions = [
    {
      what: 'Flue and relief pipe through and down the shared outside wall',
      from: 'freeholder, through the manager of the block',
      note: 'Nothing is fixed to the outside wall before it is given.',
      ...asked,
    },
    {
      what: 'Gas pipe above the ceiling of the hall',
      from: 'freeholder, through the manager of the block',
      note: 'Is the hall a protected entrance hall?',
      ...asked,
    },
  ];
  plan.job.readings = [
    read('mains-standing', 'Water standing pressure', 2.8, 'bar', 'kitchen stop tap', '', 'B-ST'),
    read('mains-flow', 'Cold water flow', 16, 'litres a minute', 'kitchen stop tap', 'full open', 'B-ST'),
    read(null, 'main bonding conductor', 6, 'mm2', 'hall cupboard', 'to be reported'),
  ];
  plan.options.A = {
    id: 'A',
    name: 'A',
    note: 'Kitchen outside wall: gas along the hall ceiling; water and heating at skirting level behind the bath.',
    fates: { 'B-EB': 'strip', 'B-EF': 'strip' },
  };
  const k = houseKit(plan, FLAT, 'A');
  flatBuilding(plan, k);
  flatPoints(k);
  flatRuns(k);
  return plan;
}
