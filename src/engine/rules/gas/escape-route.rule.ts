import { makePoint } from '../../../catalogue/make-point.ts';
import type { Wall } from '../../../plan/records/building.ts';
import { exact } from '../../../report/quantity.ts';
import { type PointHit, pointsInTheWay, sayThing } from '../../building/points-in-the-way.ts';
import { sayRoom } from '../../building/rooms-beside.ts';
import { besideOthers, gasInRooms, type InRoom, isPassage } from '../../building/way-out.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atEdge, atPlace } from '../../places.ts';
import { sayRun } from '../../say-names.ts';

function toFault(given: Given, parts: readonly InRoom[]): Fault[] {
  const first = parts[0];
  if (!first) return [];
  const metres = parts.reduce((sum, p) => sum + p.lengthMm, 0) / 1000;
  const shared = {
    ids: [first.pipe.run, first.room.id],
    legs: parts.map((p) => p.pipe.edge.id),
    words: { run: sayRun(given.plan, first.pipe.run), room: sayRoom(first.room), metres: metres.toFixed(1) },
    found: exact(metres, 'm', 1),
    at: atEdge(given.network, first.pipe.edge.id),
  };
  if (first.room.escapeRoute === true) return [{ outcome: 'check', ...shared }];
  return [{ outcome: 'cantTell', ...shared, missing: [`whether the ${sayRoom(first.room)} is a protected way out`] }];
}

/** A protected stair, lobby, corridor or shaft that was drawn as a place of its own. */
const AREAS: ReadonlySet<string> = new Set(['protected-area']);

function inAreas(given: Given): Fault[] {
  return pointsInTheWay(given, AREAS).flatMap(({ point, hits }): Fault[] => {
    const byRun = new Map<string, PointHit[]>();
    for (const hit of hits.filter((h) => h.pipe.edge.service === 'gas'))
      byRun.set(hit.pipe.run, [...(byRun.get(hit.pipe.run) ?? []), hit]);
    return [...byRun].flatMap(([run, found]): Fault[] => {
      const worst = found[0];
      if (!worst) return [];
      return [
        {
          outcome: 'check',
          say: 'area',
          ids: [run, point.id],
          legs: found.map((h) => h.pipe.edge.id),
          words: { run: sayRun(given.plan, run), area: sayThing(given, point) },
          at: atPlace(worst.pipe.storey, worst.at),
          more: found.length - 1,
        },
      ];
    });
  });
}

function judge(given: Given): Fault[] {
  const groups = new Map<string, InRoom[]>();
  // A hall nobody described is asked about only where other dwellings may lie beyond its walls.
  const found = gasInRooms(
    given,
    (room, face) =>
      room.escapeRoute === true || (room.escapeRoute === null && isPassage(room) && besideOthers(given, room, face)),
  );
  for (const part of found) {
    const key = `${part.pipe.run}|${part.room.id}`;
    groups.set(key, [...(groups.get(key) ?? []), part]);
  }
  return [...[...groups.values()].flatMap((parts) => toFault(given, parts)), ...inAreas(given)];
}

/** A hall 4000 by 2000 and a gas pipe along it at a height. */
function hall(escapeRoute: boolean | null, z = 2300, east: Partial<Wall> = {}) {
  const e = example()
    .wall('s', [0, 0], [4000, 0])
    .wall('e', [4000, 0], [4000, 2000], east)
    .wall('n', [4000, 2000], [0, 2000])
    .wall('w', [0, 2000], [0, 0])
    .run('g', 'gas', [
      [500, 1000, z],
      [3500, 1000, z],
    ]);
  return e.room('hall', 'Hall', [1000, 500], { escapeRoute }).plan;
}

/** The same pipe and no room: a protected stair drawn across its way. */
const stair = () => {
  const plan = hall(false);
  const place = {
    on: 'storey' as const,
    x: 2000,
    y: 1750,
    angleDeg: 0,
    height: { from: 'datum' as const, of: null, mm: 0 },
  };
  const made = makePoint('protected-area', { id: 'stair', storey: 'ground', place, option: null });
  plan.points.stair = { ...made, fields: { what: 'stair', said: '' } };
  return plan;
};

export default defineRule({
  id: 'gas/escape-route',
  topic: 'gas',
  since: '1',
  basis: 'requirement',
  lifeSafety: true,
  cites: [
    { source: 'fire-guidance-2006', clause: '2.42: gas pipes in a protected stairway' },
    { source: 'pipes-in-ducts-article', clause: 'ventilation never into a protected area' },
  ],
  needs: ['which rooms are protected ways out'],
  params: () => ({}),
  judge,
  say: {
    fault: {
      title: '{run}: {metres} m in, over or under the {room}, a protected way out',
      why: 'In a fire gas must not feed it or fill the one way people leave by; only special pipe, or a shaft of its own, is taken through there.',
      todo: 'Go another way; if there is none, ask who is in charge of fire safety before anything is drawn.',
    },
    area: {
      title: '{run} runs through the {area}',
      why: 'In a fire gas must not feed it or fill the one way people leave by; only special pipe, or a shaft of its own, is taken through there.',
      todo: 'Go another way; if there is none, ask who is in charge of fire safety before anything is drawn.',
    },
    cantTell: {
      title: '{run}: {metres} m in, over or under the {room}; is that a protected way out?',
      why: 'Other dwellings lie beyond its walls, and in a block of flats a hall may be protected. Nobody has told.',
      todo: 'Ask who is in charge of fire safety, and set it on the room.',
    },
    pass: 'No gas pipe is in, over or under a protected way out.',
  },
  examples: [
    {
      name: 'gas along a protected hall',
      given: () => hall(true),
      expect: 'check',
      found: { lo: 3, hi: 3, tolerance: 0.01 },
      from: 'three metres drawn in it',
    },
    { name: 'gas over the ceiling of a protected hall', given: () => hall(true, 2500), expect: 'check' },
    { name: 'gas through a protected stair', given: stair, expect: 'check' },
    { name: 'gas along the hall of a house', given: () => hall(null), expect: 'pass' },
    { name: 'gas along a hall that is none', given: () => hall(false), expect: 'pass' },
    { name: 'gas along the hall of a flat', given: () => hall(null, 2300, { fire: true }), expect: 'cantTell' },
  ],
});
