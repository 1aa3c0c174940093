import { sayRoom } from '../../building/rooms-beside.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { terminalDistances } from '../../flue/terminal-distances.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { midSentence, sayPoint } from '../../say-names.ts';
import { house } from './houses.ts';

function judge(given: Given): Fault[] {
  return terminalDistances(given).flatMap(({ terminal: t, indoors }): Fault[] => {
    if (!t.isNew || indoors === null) return [];
    const rooms = indoors.flatMap((id) => given.plan.rooms[id] ?? []);
    const [room] = rooms;
    const heated = rooms.some((r) => r.heated === true);
    return [
      {
        outcome: heated ? 'stop' : 'check',
        say: heated ? 'fault' : 'closed',
        ids: [t.point.id, ...rooms.map((r) => r.id)],
        words: {
          terminal: midSentence(sayPoint(given.plan, t.point.id)),
          room: room ? midSentence(sayRoom(room)) : 'a closed space',
        },
        at: atPlace(t.point.storey, t.at),
      },
    ];
  });
}

const inside = (heated: boolean | null) => {
  const { plan } = house().point('flue-terminal', 't', [3000, 3700, 2100]);
  const room = plan.rooms.kitchen;
  if (room) room.heated = heated;
  return plan;
};

export default defineRule({
  id: 'flue/indoors',
  topic: 'flue',
  since: '1',
  basis: 'law',
  lifeSafety: true,
  cites: [
    { source: 'register-magazine-2023', clause: 'light wells and courtyards', table: 'flue-distances' },
    { source: 'gas-safety-regulations-1998', clause: 'regulation 27' },
  ],
  needs: ['which side of its wall is outside'],
  params: () => ({}),
  judge,
  say: {
    fault: {
      title: 'The {terminal} ends in the {room}',
      why: 'It lets out what it carries into a heated room.',
      todo: 'Put it on the other side of the wall, or take the flue on to the outside.',
    },
    closed: {
      title: 'The {terminal} ends in a space closed on all sides',
      why: 'In {room} what leaves it is held. Light wells and courtyards have limits of their depth and width.',
      todo: 'Look whether it is open to the sky and how wide and deep it is; if it is a room, put the terminal outside.',
    },
    cantTell: { title: "Can't tell where it ends", why: 'No wall is drawn.', todo: 'Draw the walls.' },
    pass: 'Every terminal ends outside.',
  },
  examples: [
    { name: 'on the room side of its wall', given: () => inside(true), expect: 'stop' },
    { name: 'in a closed space nobody told of', given: () => inside(null), expect: 'check' },
    { name: 'outside', given: () => house().point('flue-terminal', 't', [3000, 0, 2200]).plan, expect: 'pass' },
  ],
});
