import { type Figure, figure } from '../../../reference/figure.ts';
import { exact } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { midSentence, sayPoint } from '../../say-names.ts';
import { waysOf } from '../../space/opens-to.ts';
import { isAiring, isCupboard } from '../../space/room-kinds.ts';
import { newBoilers, type Sited } from '../../space/sited.ts';
import { cupboard, inRoom } from './houses.ts';

type Params = { readonly room: Figure; readonly outside: Figure; readonly guard: Figure };

/** Openings to breathe through, high or low. Louvred doors are not known to the drawing. */
const ventsOf = (given: Given, { point, face }: Sited): number =>
  face ? waysOf(given, point.storey, face).filter((w) => w.opening.kind === 'vent').length : 0;

function ofBoiler(given: Given, boiler: Sited, { room: toRoom, outside, guard }: Params): Fault[] {
  const { point, body, room } = boiler;
  if (!room || !isCupboard(room) || toRoom.is !== 'known' || outside.is !== 'known' || guard.is !== 'known') return [];
  const shared = {
    ids: [point.id, room.id],
    at: atPlace(point.storey, body.frame.origin),
    words: {
      name: sayPoint(given.plan, point.id),
      room: midSentence(room.name || room.use),
      toRoom: `${toRoom.lo}`,
      outside: `${outside.lo}`,
      guard: `${guard.lo}`,
    },
  };
  const airing: Fault[] = isAiring(room) ? [{ outcome: 'note', say: 'airing', ...shared }] : [];
  const { cupboardVents, roomSealed } = point.fields;
  if (cupboardVents === 'wanted' && ventsOf(given, boiler) < 2) {
    const found = exact(ventsOf(given, boiler), 'vents', 0);
    return [{ outcome: 'check', ...shared, found, unverified: true }];
  }
  if (cupboardVents === 'wanted' || cupboardVents === 'none' || roomSealed === true) return airing;
  return [{ outcome: 'cantTell', ...shared, missing: ['whether it is room-sealed', 'what vents its sheet wants'] }];
}

export default defineRule<Params>({
  id: 'space/cupboard',
  topic: 'space',
  since: '1',
  basis: 'requirement',
  lifeSafety: false,
  cites: [
    { source: 'bs-5440-2', clause: 'diagram 33, room-sealed appliance in a compartment', table: 'cupboard-vents' },
    { source: 'bs-6798', clause: 'airing cupboards', table: 'appliance-place' },
  ],
  needs: ['whether the boiler is room-sealed', 'what its sheet says of vents'],
  params: () => ({
    room: figure('cupboard-vents', 'to a room', 'cm2PerKw'),
    outside: figure('cupboard-vents', 'to outside', 'cm2PerKw'),
    guard: figure('appliance-place', 'airing cupboard', 'mm'),
  }),
  judge: (given, params) => newBoilers(given).flatMap((b) => ofBoiler(given, b, params)),
  say: {
    fault: {
      title: '{name}: its sheet wants vents in the {room}, one high and one low',
      why: 'A cupboard without them grows too warm. Older figures: {toRoom} cm2 for each kilowatt net to a room, {outside} to outside, both high and low.',
      todo: 'Draw them as vents with the areas of its sheet, or say what lets air through.',
    },
    airing: {
      title: '{name} stands in the {room} with the linen',
      why: 'Linen must not touch the boiler or a warm flue: a partition that lets air through and does not burn parts them, and a guard {guard} off the flue.',
      todo: 'Put partition and guard in the price, or clear the cupboard for the boiler alone.',
    },
    cantTell: {
      title: "{name} stands in the {room}: can't tell whether that wants vents",
      why: 'Room-sealed boilers seldom do, others always. Not known: {missing}.',
      todo: 'Look in its sheet.',
    },
    pass: 'It stands in no cupboard, or its sheet asks for no vents there.',
  },
  examples: [
    { name: 'in a room', given: () => inRoom({ roomSealed: null }), expect: 'pass' },
    { name: 'room-sealed in a cupboard', given: () => cupboard(true), expect: 'pass' },
    { name: 'vents wanted and none drawn', given: () => cupboard(true, { cupboardVents: 'wanted' }), expect: 'check' },
    { name: 'nothing told', given: () => cupboard(true, { roomSealed: null }), expect: 'cantTell' },
    { name: 'among the linen', given: () => inRoom({}, 1500, 'Airing cupboard', { use: 'airing' }), expect: 'note' },
  ],
});
