import type { Opening } from '../../../plan/records/building.ts';
import { exact } from '../../../report/quantity.ts';
import { findOpeningHits, type OpeningHit } from '../../clearance/opening-hits.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { sayAll, sayOpening, sayRun } from '../../say-names.ts';

/** What is in the way of what: a way through needs nothing that opens, and glass that is fixed opens nothing. */
function sayOf(opening: Opening): 'fault' | 'way' | 'fixed' {
  if (opening.kind === 'archway') return 'way';
  return opening.opens === false && opening.kind !== 'door' ? 'fixed' : 'fault';
}

/** One that only stands upright close to a door is told once for the door: it is in the way, but nothing is barred. */
function standing(given: Given, opening: string, hits: readonly OpeningHit[]): Fault[] {
  const nearest = [...hits].sort((a, b) => a.offMm - b.offMm)[0];
  if (!nearest) return [];
  const runs = [...new Set(hits.map((h) => h.pipe.run))].sort();
  return [
    {
      outcome: 'check',
      say: 'stands',
      ids: [...runs, opening],
      legs: hits.map((h) => h.pipe.edge.id),
      words: { run: sayAll(runs.map((r) => sayRun(given.plan, r))), opening: sayOpening(given.plan, opening) },
      found: exact(nearest.offMm, 'mm', 0),
      at: atPlace(nearest.pipe.storey, nearest.at),
      more: runs.length - 1,
    },
  ];
}

function judge(given: Given): Fault[] {
  const hits = findOpeningHits(given);
  const behind = new Map<string, OpeningHit[]>();
  const barred = new Set(hits.filter((h) => h.how !== 'stands').map((h) => `${h.pipe.run}|${h.opening}`));
  for (const hit of hits) {
    // A run that bars the opening is told of already.
    if (hit.how === 'stands' && !barred.has(`${hit.pipe.run}|${hit.opening}`))
      behind.set(hit.opening, [...(behind.get(hit.opening) ?? []), hit]);
  }
  return [
    ...crossing(
      given,
      hits.filter((h) => h.how !== 'stands'),
    ),
    ...[...behind].flatMap(([opening, at]) => standing(given, opening, at)),
  ];
}

function crossing(given: Given, found: readonly OpeningHit[]): Fault[] {
  const pairs = new Map<string, OpeningHit[]>();
  for (const hit of found) {
    const key = `${hit.pipe.run}|${hit.opening}`;
    pairs.set(key, [...(pairs.get(key) ?? []), hit]);
  }
  return [...pairs.values()].flatMap((hits): Fault[] => {
    const [first] = hits;
    const opening = first && given.plan.openings[first.opening];
    if (!first || !opening) return [];
    const floor = given.plan.storeys[given.plan.walls[opening.wall]?.storey ?? '']?.floorMm ?? 0;
    const say = sayOf(opening);
    return [
      {
        outcome: say === 'fixed' ? 'check' : 'stop',
        say,
        ids: [first.pipe.run, first.opening],
        legs: hits.map((h) => h.pipe.edge.id),
        words: {
          run: sayRun(given.plan, first.pipe.run),
          opening: sayOpening(given.plan, first.opening),
          height: `${Math.round(first.at.z - floor)}`,
        },
        at: atPlace(first.pipe.storey, first.at),
        more: hits.length - 1,
      },
    ];
  });
}

const house = (z: number, y = -80, change: Partial<Opening> = {}) =>
  example()
    .wall('w', [0, 0], [4000, 0], { thicknessMm: 100 })
    .opening('d', 'w', 1500, 800, change)
    .run('r', 'cold', [
      [0, y, z],
      [4000, y, z],
    ]).plan;

export default defineRule({
  id: 'building/across-opening',
  topic: 'building',
  since: '1',
  basis: 'practice',
  lifeSafety: false,
  cites: [{ source: 'trade-practice', clause: 'routes' }],
  needs: ['openings with their heights'],
  params: () => ({}),
  judge,
  say: {
    fault: {
      title: '{run} crosses the {opening}',
      why: 'At {height} above the floor it stands in the way of what opens.',
      todo: 'Go over it, under it, or round.',
    },
    way: {
      title: '{run} crosses the {opening}',
      why: 'At {height} above the floor people walk into it or fall over it.',
      todo: 'Go over it, under it, or round.',
    },
    stands: {
      title: '{run} stands in the {opening}, close to the wall',
      why: 'Whoever reaches in or goes through has it in the way, and a leaf that opens to this side strikes it.',
      todo: 'Set it beside the opening, or see that the leaf opens the other way and nothing behind has to be reached past it.',
    },
    fixed: {
      title: '{run} crosses the {opening}',
      why: 'At {height} above the floor it lies across an opening that is fixed: it shows, and is in the way of whoever mends or changes it.',
      todo: 'Go over it, under it, or round, or agree it with the customer.',
    },
    cantTell: {
      title: "Can't tell whether {run} clears the {opening}",
      why: 'Its heights are not known.',
      todo: 'Measure sill and head.',
    },
    pass: 'It crosses no opening.',
  },
  examples: [
    { name: 'a low pipe across a doorway', given: () => house(150), expect: 'stop' },
    {
      name: 'a low pipe across an archway',
      given: () => house(150, -80, { kind: 'archway', opens: false }),
      expect: 'stop',
    },
    {
      name: 'across a window that does not open',
      given: () => house(1500, -80, { kind: 'window', opens: false, sillMm: 900 }),
      expect: 'check',
    },
    {
      name: 'a pipe that rises close behind a door',
      given: () =>
        example()
          .wall('w', [0, 0], [4000, 0], { thicknessMm: 100 })
          .opening('d', 'w', 1500, 800)
          .run('r', 'cold', [
            [1900, 110, 300],
            [1900, 110, 1500],
          ]).plan,
      expect: 'check',
      found: { lo: 60, hi: 60, tolerance: 0.1 },
      from: '110 off the centreline of a wall 100 thick',
    },
    {
      name: 'a drain that falls along the outer face, across a side door',
      given: () =>
        example()
          .wall('w', [6850, 8000], [6850, 14600], { thicknessMm: 300 })
          .opening('d', 'w', 1900, 900, { headMm: 2100 })
          .run(
            'k',
            'condensate',
            [
              [7060, 13490, 1129],
              [7060, 7400, 855],
            ],
            { kind: 'waste', size: '32', joining: 'solvent' },
          ).plan,
      expect: 'stop',
    },
    { name: 'over the door', given: () => house(2200), expect: 'pass' },
    { name: 'far out in the room', given: () => house(150, -600), expect: 'pass' },
  ],
});
