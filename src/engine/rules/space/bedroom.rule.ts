import { type Figure, figure } from '../../../reference/figure.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { applianceLoad } from '../../gas-system/appliance-load.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { midSentence, sayPoint } from '../../say-names.ts';
import { isBedroom } from '../../space/room-kinds.ts';
import { newBoilers, type Sited } from '../../space/sited.ts';
import { inRoom } from './houses.ts';

type Params = { readonly most: Figure };

function ofBoiler(given: Given, { point, body, room }: Sited, most: Figure): Fault[] {
  if (!room || !isBedroom(room) || most.is !== 'known') return [];
  const name = sayPoint(given.plan, point.id);
  const shared = {
    ids: [point.id, room.id],
    at: atPlace(point.storey, body.frame.origin),
    words: { name, room: midSentence(room.name || room.use), most: `${most.lo}` },
  };
  const sealed = point.fields.roomSealed;
  if (sealed === true) return [{ outcome: 'note', say: 'sealed', ...shared }];
  const gas = given.plan.basis.gas;
  const load = applianceLoad(point, midSentence(name), gas).working.result;
  if (load !== null && load.hi !== null && load.hi <= most.lo)
    return [{ outcome: 'check', say: 'small', ...shared, found: load, wanted: most }];
  if (sealed === null || sealed === undefined)
    return [{ outcome: 'cantTell', ...shared, missing: ['whether it is room-sealed'] }];
  if (load === null || load.lo <= most.lo) return [{ outcome: 'cantTell', ...shared, missing: ['its heat input'] }];
  return [{ outcome: 'stop', ...shared, found: load, wanted: most }];
}

export default defineRule<Params>({
  id: 'space/bedroom',
  topic: 'space',
  since: '1',
  basis: 'law',
  lifeSafety: true,
  cites: [
    { source: 'sleeping-room-answers', clause: 'more than 14 kW gross', table: 'appliance-place' },
    { source: 'gas-safety-regulations-1998', clause: 'regulation 30' },
  ],
  needs: ['what the room is used for', 'whether the boiler is room-sealed', 'its heat input'],
  params: () => ({ most: figure('appliance-place', 'bedroom', 'kW') }),
  judge: (given, { most }) => newBoilers(given).flatMap((b) => ofBoiler(given, b, most)),
  say: {
    fault: {
      title: '{name} stands in the {room} and is not room-sealed',
      why: 'Above {most} kilowatts gross only a room-sealed appliance may stand where people sleep.',
      todo: 'Put it elsewhere, or choose a room-sealed one.',
    },
    small: {
      title: '{name} stands in the {room}, where people sleep, and nobody told that it is room-sealed',
      why: 'Up to {most} kilowatts gross it must be room-sealed, or shut itself off before fumes build up in the room.',
      todo: 'Look in its sheet which of the two it is.',
    },
    sealed: {
      title: '{name} stands in the {room}, where people sleep',
      why: 'Room-sealed it may. What is argued about later is its noise at night and getting at it for a service.',
      todo: 'Ask whoever sleeps there before it is fixed; no hot water pump or boiler on a light stud wall by the bed.',
    },
    cantTell: {
      title: "{name} stands in the {room}: can't tell whether it may",
      why: 'Above {most} kilowatts gross only a room-sealed appliance may stand where people sleep. Not known: {missing}.',
      todo: 'Look on its plate or its sheet, and tell it.',
    },
    pass: 'It stands where nobody sleeps.',
  },
  examples: [
    { name: 'in a utility room', given: () => inRoom({ roomSealed: false }), expect: 'pass' },
    {
      name: 'open-flued, 24 kW gross, in a bedroom',
      given: () => inRoom({ roomSealed: false, inputKwHeating: 24, inputBasis: 'gross' }, 1500, 'Bedroom'),
      expect: 'stop',
      found: { lo: 24, hi: 24, tolerance: 0.01 },
      from: 'told on the boiler',
    },
    {
      name: 'open-flued and small',
      given: () => inRoom({ roomSealed: false, inputKwHeating: 12, inputBasis: 'gross' }, 1500, 'Bedroom'),
      expect: 'check',
    },
    { name: 'room-sealed in a bedroom', given: () => inRoom({ roomSealed: true }, 1500, 'Bedroom'), expect: 'note' },
    { name: 'nothing told', given: () => inRoom({ roomSealed: null }, 1500, 'Bedroom'), expect: 'cantTell' },
    {
      name: 'open-flued, input not told',
      given: () => inRoom({ roomSealed: false }, 1500, 'Bedroom'),
      expect: 'cantTell',
    },
  ],
});
