import type { Point } from '../../../plan/records/pipework.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { sayAll, sayPoint } from '../../say-names.ts';
import { isLoft } from '../../space/room-kinds.ts';
import { newBoilers, type Sited, standing } from '../../space/sited.ts';
import { add, inRoom } from './houses.ts';

const NEEDS = [
  ['ladder', 'a fixed ladder'],
  ['guard', 'a guard round the hatch'],
  ['light', 'a fixed light'],
  ['boarded', 'boards from the hatch to the boiler and round it'],
] as const;

const hatchTo = (given: Given): Point | undefined => standing(given, 'hatch').find((h) => h.fields.leadsTo === 'loft');

function ofBoiler(given: Given, { point, body, room }: Sited): Fault[] {
  if (!room || !isLoft(room)) return [];
  const hatch = hatchTo(given);
  const shared = {
    ids: hatch ? [point.id, hatch.id] : [point.id],
    at: atPlace(point.storey, body.frame.origin),
  };
  const name = sayPoint(given.plan, point.id);
  const lacking = NEEDS.filter(([key]) => hatch?.fields[key] === false).map(([, say]) => say);
  const untold = NEEDS.filter(([key]) => typeof hatch?.fields[key] !== 'boolean').map(([, say]) => say);
  if (lacking.length > 0) return [{ outcome: 'check', ...shared, words: { name, lacking: sayAll(lacking) } }];
  if (untold.length > 0) return [{ outcome: 'cantTell', ...shared, words: { name }, missing: untold }];
  if (hatch?.fields.vapourOpen === true) return [{ outcome: 'note', say: 'membrane', ...shared, words: { name } }];
  return [];
}

const LOFT = { use: 'loft' };
const ALL = { leadsTo: 'loft', ladder: true, guard: true, light: true, boarded: true };
const withHatch = (fields: Point['fields']) =>
  add(inRoom({}, 1500, 'Loft', LOFT), 'hatch', 'hatch', [2000, 1500, 0], fields, null);

export default defineRule({
  id: 'space/loft',
  topic: 'space',
  since: '1',
  basis: 'requirement',
  lifeSafety: false,
  cites: [{ source: 'boilers-in-lofts', clause: 'access, light, floor, load, ventilation' }],
  needs: ['the hatch and what is at it'],
  params: () => ({}),
  judge: (given) => newBoilers(given).flatMap((b) => ofBoiler(given, b)),
  say: {
    fault: {
      title: '{name} in the loft: there is no {lacking}',
      why: 'Whoever looks after it must get up, stand and see without danger, or will refuse to.',
      todo: 'Put it in the price and in the order of work, before the boiler goes up.',
    },
    membrane: {
      title: '{name} in the loft: its roof counts as unventilated',
      why: 'A roof with a vapour-open membrane and no vents lets little gas out: pipe in it is judged as in a closed space.',
      todo: 'Look at the gas pipe up there, and at its ventilation, as for an unventilated void.',
    },
    cantTell: {
      title: "{name} in the loft: can't tell whether it can be got at",
      why: 'Whoever looks after it must get up, stand and see without danger. Not known: {missing}.',
      todo: 'Draw the hatch and tell what is there: ladder, guard, light, boards.',
    },
    pass: 'It can be got at, or stands in no loft.',
  },
  examples: [
    { name: 'in a room', given: () => inRoom({}), expect: 'pass' },
    { name: 'in a loft with all that is wanted', given: () => withHatch(ALL), expect: 'pass' },
    { name: 'in a loft with a loose ladder', given: () => withHatch({ ...ALL, ladder: false }), expect: 'check' },
    { name: 'under a roof that lets no gas out', given: () => withHatch({ ...ALL, vapourOpen: true }), expect: 'note' },
    { name: 'in a loft, no hatch drawn', given: () => inRoom({}, 1500, 'Loft', LOFT), expect: 'cantTell' },
  ],
});
