import { pointBox, toLocal } from '../../../geometry/point-box.ts';
import { sayThing } from '../../building/points-in-the-way.ts';
import { sayRoom } from '../../building/rooms-beside.ts';
import { besideOthers, isPassage } from '../../building/way-out.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { sayPoint } from '../../say-names.ts';
import { newBoilers, type Sited, standing } from '../../space/sited.ts';
import { add, inRoom, setBoiler, walled } from './houses.ts';

function ofBoiler(given: Given, boiler: Sited): Fault[] {
  const { point, body, middle, room, face } = boiler;
  const at = atPlace(point.storey, body.frame.origin);
  const name = sayPoint(given.plan, point.id);
  const area = standing(given, 'protected-area').find((a) => {
    const box = a.storey === point.storey ? pointBox(given.plan, a) : undefined;
    const p = box && toLocal(box.frame, { ...middle, z: 0 });
    return box && p && Math.abs(p.x) <= box.local.maxX && p.y >= 0 && p.y <= box.local.maxY;
  });
  if (area) return [{ outcome: 'check', ids: [point.id, area.id], at, words: { name, where: sayThing(given, area) } }];
  if (!room || !face) return [];
  const shared = { ids: [point.id, room.id], at, words: { name, where: sayRoom(room) } };
  if (room.escapeRoute === true) return [{ outcome: 'check', ...shared }];
  if (room.escapeRoute !== null || !isPassage(room) || !besideOthers(given, room, face)) return [];
  return [{ outcome: 'cantTell', ...shared, missing: [`whether the ${sayRoom(room)} is a protected way out`] }];
}

export default defineRule({
  id: 'space/escape-route',
  topic: 'space',
  since: '1',
  basis: 'requirement',
  lifeSafety: true,
  cites: [{ source: 'escape-guidance', clause: 'nothing that can burn or leak in a protected stair' }],
  needs: ['which rooms are protected ways out'],
  params: () => ({}),
  judge: (given) => newBoilers(given).flatMap((b) => ofBoiler(given, b)),
  say: {
    fault: {
      title: '{name} stands in the {where}, a protected way out',
      why: 'People leave by it in a fire: a boiler, its gas and its cupboard do not belong there, and the fire lining must stay whole.',
      todo: 'Choose another place; if there is none, ask who is in charge of fire safety first.',
    },
    cantTell: {
      title: '{name} stands in the {where}; is that a protected way out?',
      why: 'Other dwellings lie beyond its walls, and in a block of flats a hall may be protected. Nobody has told.',
      todo: 'Ask who is in charge of fire safety, and set it on the room.',
    },
    pass: 'It stands in no protected way out.',
  },
  examples: [
    { name: 'in the hall of a house', given: () => inRoom({}, 1500, 'Hall'), expect: 'pass' },
    { name: 'in a protected hall', given: () => inRoom({}, 1500, 'Hall', { escapeRoute: true }), expect: 'check' },
    {
      name: 'in a protected lobby drawn as an area',
      given: () => add(inRoom({}), 'protected-area', 'lobby', [1500, -100, 0], { what: 'lobby', said: '' }, null),
      expect: 'check',
    },
    {
      name: 'in the hall of a flat, nobody told',
      given: () => setBoiler(walled('Hall', {}, { fire: true }).plan, 1500, {}, 0),
      expect: 'cantTell',
    },
  ],
});
