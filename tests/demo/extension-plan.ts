import { emptyPlan } from '../../src/plan/empty-plan.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { extensionBuilding, FIRST, GROUND } from './extension-building.ts';
import { EXTENSION_DRAINS } from './extension-drains.ts';
import { extensionFloors } from './extension-floors.ts';
import { extensionOption } from './extension-option.ts';
import { extensionSurvey } from './extension-points.ts';
import { atConnection, copper, type HouseKit, houseKit } from './house-kit.ts';

const NOTES: Readonly<Record<string, string>> = {
  A: 'Pump: the hose goes over the side door through twelve roof joists to the old standpipe. It works, and adds a part that can fail and a power point.',
  B: 'Outside wall: insulated 32 to the foul gully. It passes across the side door and is long outside.',
  C: 'Soakaway: short, but clay was found.',
  D: 'New branch under the slab: best, and only before the pour.',
};

/** Pipe of the old combi that nobody can see. It goes with it. */
function oldPipes(k: HouseKit): void {
  const tails = [
    ['D-f0', 'heatingFlow', 'Old flow', 'flow', '22x0.9'],
    ['D-r0', 'heatingReturn', 'Old return', 'return', '22x0.9'],
    ['D-h0', 'hot', 'Old hot', 'hot', '15x0.7'],
    ['D-c0', 'cold', 'Old cold', 'cold', '15x0.7'],
  ] as const;
  const hidden = (id: string, service: string, name: string, size: string | null) =>
    k.run({ id, service, name, joining: 'endFeed', tube: copper(size), corners: [] }, null);
  for (const [id, service, name, end, size] of tails) {
    hidden(id, service, name, size);
    const ends = { from: { point: 'D-EB', connection: end }, to: { point: 'D-OT', connection: end } };
    k.unseen(id, [{ id: `${id}-s`, ...ends, lengthMm: [1100, 1500], bends: [0, 3], tube: copper(size) }]);
  }
  hidden('D-g0', 'gas', 'Gas as it is', null);
  const ends = { from: { point: 'D-GM', connection: 'outlet' }, to: { point: 'D-EB', connection: 'gas' } };
  k.unseen('D-g0', [{ id: 'D-g0-s', ...ends, lengthMm: [12000, 15000], bends: [4, 9], tube: copper(null) }]);
}

/** At the boiler and at the hob. */
function gasCocks(plan: Plan, option: string): void {
  const own = (id: string) => (option === 'A' ? id : `${id}-${option}`);
  for (const [id, at] of [
    ['D-GV1', 'D-NB'],
    ['D-GV2', 'D-HB'],
  ] as const) {
    const rest = { along: null, fields: {}, option, sureness: 'seen' as const };
    plan.items[own(id)] = {
      id: own(id),
      kind: 'gas-cock',
      name: at === 'D-NB' ? 'Gas cock at the boiler' : 'Gas cock at the hob',
      node: atConnection(own(at), 'gas'),
      ...rest,
    };
  }
}

/** On the return of every option; where the pipes go over the ceiling air can leave by itself in A and D only. */
function heatingItems(plan: Plan, option: string): void {
  const own = (id: string) => (option === 'A' ? id : `${id}-${option}`);
  const add = (id: string, kind: string, name: string, node: string, fields: Record<string, boolean>) => {
    plan.items[own(id)] = { id: own(id), kind, name, node, along: null, fields, option, sureness: 'seen' };
  };
  add('D-FI', 'filter', 'Filter on the return', atConnection(own('D-NB'), 'return'), {});
  if (option !== 'A' && option !== 'D') return;
  add('D-AV1', 'air-vent', 'Air vent on the flow', `${own('D-f1')}.3`, { automatic: true });
  add('D-AV2', 'air-vent', 'Air vent on the return', `${own('D-r1')}.3`, { automatic: true });
}

/** An invented house whose combi moves to the far end of a rear extension, away from every drain. */
export function extensionPlan(): Plan {
  const heights = { ceilingMm: 2400, buildUpMm: 150 };
  const plan = emptyPlan({
    id: 'extension',
    name: 'House with a rear extension',
    storey: GROUND,
    option: 'A',
    ...heights,
  });
  plan.storeys[GROUND] = { id: GROUND, name: 'Ground floor', floorMm: 0, ...heights, sureness: 'seen' };
  const first = { floorMm: 2640, ceilingMm: 2360, buildUpMm: 240 };
  plan.storeys[FIRST] = { id: FIRST, name: 'First floor', ...first, sureness: 'seen' };
  plan.basis.surveyDate = '2026-05-01';
  plan.job.reason = 'Combi from the old kitchen to the boot room of the extension';
  plan.job.note =
    'The only foul gully is by the old kitchen, and a side door lies between. Clay was found under the lawn. Pipes pass the old back wall between x 6350 and 6700 only.';
  plan.job.holdPoints = [
    {
      what: 'How condensate leaves the boot room: a new foul branch has to lie under the slab',
      before: 'the pour of the extension slab',
      on: '2026-06-12',
      owner: 'builder, with the heating engineer',
      done: false,
    },
  ];
  const fates = Object.fromEntries(
    ['D-EB', 'D-f0', 'D-r0', 'D-h0', 'D-c0', 'D-g0'].map((id) => [id, 'strip' as const]),
  );
  const k = houseKit(plan, GROUND, 'A');
  extensionBuilding(plan, k);
  extensionFloors(k);
  extensionSurvey(k);
  oldPipes(k);
  for (const drain of EXTENSION_DRAINS) {
    const id = drain.option;
    plan.options[id] = { id, name: id, note: NOTES[id] ?? '', fates: { ...fates } };
    extensionOption(k, drain);
    gasCocks(plan, id);
    heatingItems(plan, id);
  }
  return plan;
}
