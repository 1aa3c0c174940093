import { type Figure, figure } from '../../../reference/figure.ts';
import { type Quantity, sayFigures } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { midSentence, sayPoint } from '../../say-names.ts';
import { type AlarmDistance, SAY_ALARM, type Watched, watched } from '../../space/alarm-place.ts';
import { add, inRoom, setBoiler, walled } from '../space/houses.ts';

type Params = { readonly nearest: Figure; readonly furthest: Figure; readonly below: Figure; readonly walls: Figure };

/** By how much a distance misses, mm: where several do, the one that misses by most is told. */
const missBy = ({ found, wanted, wantedIs }: AlarmDistance): number =>
  wantedIs === 'atLeast' ? wanted.lo - (found.hi ?? found.lo) : found.lo - wanted.lo;

/** A height above something, told as how far it lies below. */
const below = (above: Quantity): Quantity => ({
  ...above,
  lo: -(above.hi ?? above.lo),
  hi: -above.lo,
  value: above.value === null ? null : -above.value,
});

function misplaced({ distances, alarm, appliance }: Watched, given: Given): Fault[] {
  const faults = distances.filter((d) => !d.ok).sort((a, b) => missBy(b) - missBy(a));
  const [worst] = faults;
  if (!worst || !alarm) return [];
  const low = worst.ask === 'heads';
  return [
    {
      outcome: 'check',
      say: low ? 'low' : 'place',
      ids: [appliance.point.id, alarm.point.id],
      at: atPlace(alarm.point.storey, alarm.body.frame.origin),
      words: {
        alarm: sayPoint(given.plan, alarm.point.id),
        name: midSentence(sayPoint(given.plan, appliance.point.id)),
        found: sayFigures(low ? below(worst.found) : worst.found),
        where: SAY_ALARM[worst.ask],
        wanted: `${worst.wantedIs === 'atLeast' ? 'at least' : 'at most'} ${sayFigures(worst.wanted)}`,
      },
      found: low ? below(worst.found) : worst.found,
      wanted: worst.wanted,
      wantedIs: low ? 'atMost' : worst.wantedIs,
      more: faults.length - 1,
    },
  ];
}

function ofAppliance(given: Given, w: Watched): Fault[] {
  if (w.is === 'here') return misplaced(w, given);
  const { point, body } = w.appliance;
  const shared = {
    ids: [point.id],
    at: atPlace(point.storey, body.frame.origin),
    words: { name: midSentence(sayPoint(given.plan, point.id)) },
  };
  if (w.is === 'none') return [{ outcome: 'check', ...shared }];
  if (w.is === 'elsewhere') return [{ outcome: 'check', say: 'elsewhere', ...shared }];
  return [{ outcome: 'cantTell', ...shared, missing: ['walls that close the room of both'] }];
}

const alarmAt = (x: number, y: number, z: number, fields = {}) =>
  add(inRoom({}), 'co-alarm', 'alarm', [x, y, z], fields, 'A', 0);

/** An alarm beside a door 2000 high, its underside at a height. */
function besideDoor(z: number) {
  const e = walled('Utility').opening('d', 'w', 500, 800, { headMm: 2000 });
  return add(setBoiler(e.plan, 1500, {}, 0), 'co-alarm', 'alarm', [1500, 2460, z], { on: 'wall' }, 'A', 0);
}

/** A boiler and an alarm on one storey, and no walls. */
const inTheOpen = () => add(setBoiler(example().plan, 1500), 'co-alarm', 'alarm', [1500, 2000, 2150]);

export default defineRule<Params>({
  id: 'safety/alarm',
  topic: 'safety',
  since: '2',
  basis: 'requirement',
  lifeSafety: true,
  cites: [
    { source: 'alarm-amendment-2022', clause: 'a new or replaced fixed appliance that burns fuel, cookers left out' },
    {
      source: 'alarm-consultation-article',
      clause: 'position, wording before the 2022 edition',
      table: 'alarm-place',
    },
  ],
  needs: ['where the alarm is', 'walls round the room'],
  params: () => ({
    nearest: figure('alarm-place', 'nearest', 'mm'),
    furthest: figure('alarm-place', 'furthest', 'mm'),
    below: figure('alarm-place', 'below ceiling', 'mm'),
    walls: figure('alarm-place', 'from walls', 'mm'),
  }),
  judge: (given) => watched(given).flatMap((w) => ofAppliance(given, w)),
  say: {
    fault: {
      title: 'No carbon monoxide alarm is drawn for the {name}',
      why: 'England asks for one in the room of every new or replaced fixed appliance that burns fuel; cookers are left out.',
      todo: 'Draw the one that is there, or put one in the price; elsewhere local rules go first.',
    },
    elsewhere: {
      title: 'No carbon monoxide alarm in the room of the {name}',
      why: 'One is drawn elsewhere. It wakes nobody in time if the fumes come out behind a shut door.',
      todo: 'Put one in the same room, or move that one there.',
    },
    place: {
      title: '{alarm} is {found} mm {where}, and {wanted} is wanted',
      why: 'It watches the {name}. In dead air, or too near or far, it sounds late. The wording since 2022 was not read.',
      todo: "Move it, unless the alarm's own instructions say otherwise: they go first.",
    },
    low: {
      title: '{alarm} is {found} mm lower than the top of the highest door or window',
      why: 'It watches the {name}. Warm fumes gather under the ceiling and go out by the opening before they come down to it. The wording since 2022 was not read.',
      todo: "Set it above them, and clear of the ceiling, unless the alarm's own instructions say otherwise: they go first.",
    },
    cantTell: {
      title: "Can't tell whether an alarm stands in the room of the {name}",
      why: 'Carbon monoxide must be noticed where it comes out. Not known: {missing}.',
      todo: 'Draw the walls until the room closes.',
    },
    pass: 'Each new appliance that burns gas has an alarm in its room, well placed as far as the drawing knows.',
  },
  examples: [
    { name: 'on the far wall, high', given: () => alarmAt(1500, 2460, 2150), expect: 'pass' },
    { name: 'in the middle of the ceiling', given: () => alarmAt(1500, 1600, 2360), expect: 'pass' },
    { name: 'nowhere', given: () => inRoom({}), expect: 'check' },
    {
      name: 'in another room',
      given: () => add(inRoom({}), 'co-alarm', 'alarm', [5000, 1500, 2150]),
      expect: 'check',
    },
    {
      name: 'right under the ceiling',
      given: () => alarmAt(1500, 2460, 2270, { on: 'wall' }),
      expect: 'check',
      found: { lo: 50, hi: 50, tolerance: 0.01 },
      from: 'ceiling 2400, top of the alarm 2270 and 80',
    },
    {
      name: 'too near its boiler',
      given: () => alarmAt(1500, 900, 1500, { on: 'shelf' }),
      expect: 'check',
      found: { lo: 560, hi: 560, tolerance: 0.01 },
      from: 'front of the case at 300, back of the alarm at 860',
    },
    {
      name: 'lower than the door',
      given: () => besideDoor(1950),
      expect: 'check',
      found: { lo: 50, hi: 50, tolerance: 0.01 },
      from: 'head of the door at 2000, underside of the alarm at 1950',
    },
    { name: 'where no walls close a room', given: inTheOpen, expect: 'cantTell' },
  ],
});
