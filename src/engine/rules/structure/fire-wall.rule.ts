import type { Wall } from '../../../plan/records/building.ts';
import { hasEscapeRoute, roomsBeside, sayRoom } from '../../building/rooms-beside.ts';
import type { Crossing } from '../../clearance/crossings.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { goesThrough } from '../../materials/sleeves.ts';
import { atPlace } from '../../places.ts';
import { midSentence, sayRun, sayWall } from '../../say-names.ts';

/** Of a wall nobody said anything about, only one towards a protected way out is asked about. */
function toFault(given: Given, wall: Wall, found: readonly Crossing[]): Fault[] {
  const first = found[0];
  if (!first) return [];
  const { run, storey, edge } = first.pipe;
  const shared = {
    ids: [run, wall.id],
    legs: found.map((c) => c.pipe.edge.id),
    at: atPlace(storey, first.at),
    more: found.length - 1,
  };
  const words = { run: sayRun(given.plan, run), wall: midSentence(sayWall(given.plan, wall.id)), room: '' };
  if (wall.party === true) {
    return [{ outcome: 'check', ...shared, words, say: edge.service === 'gas' ? 'gasParty' : 'party' }];
  }
  if (wall.fire === true) return [{ outcome: 'note', ...shared, words }];
  if (wall.fire === false || !hasEscapeRoute(given.plan)) return [];
  const room = roomsBeside(given, wall, first.at).find((r) => r.escapeRoute === true);
  if (!room) return [];
  return [
    {
      outcome: 'cantTell',
      ...shared,
      words: { ...words, room: sayRoom(room) },
      missing: ['whether that wall has to hold back fire'],
    },
  ];
}

function judge(given: Given): Fault[] {
  const groups = new Map<string, Crossing[]>();
  for (const c of given.crossings.filter(goesThrough)) {
    const key = `${c.pipe.run}|${c.wall}`;
    groups.set(key, [...(groups.get(key) ?? []), c]);
  }
  return [...groups.values()].flatMap((found) => {
    const wall = given.plan.walls[found[0]?.wall ?? ''];
    return wall ? toFault(given, wall, found) : [];
  });
}

/** A hall 2000 square with a pipe through its right-hand wall. */
function hall(change: Partial<Wall>, escapeRoute: boolean | null = null, service = 'cold') {
  const e = example()
    .wall('s', [0, 0], [2000, 0])
    .wall('e', [2000, 0], [2000, 2000], change)
    .wall('n', [2000, 2000], [0, 2000])
    .wall('w', [0, 2000], [0, 0])
    .run('r', service, [
      [1000, 1000, 300],
      [3000, 1000, 300],
    ]);
  return e.room('hall', 'Hall', [1000, 500], { escapeRoute }).plan;
}

export default defineRule({
  id: 'structure/fire-wall',
  topic: 'structure',
  since: '1',
  basis: 'requirement',
  lifeSafety: false,
  cites: [
    { source: 'house-building-standards', clause: '8.1.11: fire-stop penetrations' },
    { source: 'trade-practice', clause: 'walls shared with another dwelling' },
  ],
  needs: ['which walls hold back fire, and which are shared'],
  params: () => ({}),
  judge,
  say: {
    fault: {
      title: '{run} goes through the {wall}, which holds back fire',
      why: 'The hole passes fire and smoke until it is closed round the pipe; plastic pipe melts out of it.',
      todo: 'Close the hole with fire stopping that suits the pipe, and plastic pipe with a collar.',
    },
    party: {
      title: '{run} goes through the {wall}, which is shared',
      why: "A wall shared with another dwelling holds back fire and sound, and is not one owner's alone to drill.",
      todo: 'Get it agreed in writing, or go another way; close the hole with fire stopping.',
    },
    gasParty: {
      title: '{run} goes through the {wall}, which is shared',
      why: 'Gas pipe through a wall shared with another dwelling may leak where nobody of this house can get at it.',
      todo: 'Go another way.',
    },
    cantTell: {
      title: '{run} goes through the {wall} of the {room}; does it hold back fire?',
      why: 'The {room} is part of a protected way out; walls of such a way usually hold back fire, and nobody has told of this one.',
      todo: 'Ask who is in charge of fire safety, and set it on the wall.',
    },
    pass: 'No wall it goes through holds back fire or is shared.',
  },
  examples: [
    { name: 'through a wall that holds back fire', given: () => hall({ fire: true }), expect: 'note' },
    { name: 'through a shared wall', given: () => hall({ party: true }), expect: 'check' },
    { name: 'gas through a shared wall', given: () => hall({ party: true }, null, 'gas'), expect: 'check' },
    { name: 'out of a protected hall', given: () => hall({}, true), expect: 'cantTell' },
    { name: 'through an ordinary wall', given: () => hall({}), expect: 'pass' },
    { name: 'out of a protected hall, wall known', given: () => hall({ fire: false }, true), expect: 'pass' },
  ],
});
