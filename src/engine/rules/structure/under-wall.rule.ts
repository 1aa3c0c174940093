import { type BoxIndex, createBoxIndex } from '../../../geometry/box-index.ts';
import { type Box3, boxOf, grow } from '../../../geometry/boxes.ts';
import { intoWall, wallHeights, wallLength } from '../../../geometry/wall-frame.ts';
import type { Wall } from '../../../plan/records/building.ts';
import type { Xyz } from '../../../plan/records/parts.ts';
import { sayVoid, type VoidPart } from '../../building/void-parts.ts';
import type { Crossing } from '../../clearance/crossings.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { sayRun } from '../../say-names.ts';

/** Where a straight piece passes below a wall's body, seen from above; undefined where it does not. */
function below(wall: Wall, a: Xyz, b: Xyz): Xyz | undefined {
  const [p, q] = [intoWall(wall, a), intoWall(wall, b)];
  const half = wall.thicknessMm / 2;
  // Along a wall is another matter: only what goes in at one face and out at the other passes below it.
  if (Math.sign(p.v) === Math.sign(q.v) || Math.abs(p.v) < half || Math.abs(q.v) < half) return undefined;
  const t = p.v / (p.v - q.v);
  const u = p.u + (q.u - p.u) * t;
  if (u < 0 || u > wallLength(wall)) return undefined;
  return { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t, z: a.z + (b.z - a.z) * t };
}

interface Passing {
  readonly part: VoidPart;
  readonly wall: string;
  readonly at: Xyz;
}

interface Standing {
  readonly wall: Wall;
  readonly bottom: number;
  readonly box: Box3;
}

/** Walls by where they stand in plan, so that a pipe asks only those over it. */
function standing(given: Given): BoxIndex<Standing> {
  const { plan, network } = given;
  return createBoxIndex(
    Object.values(plan.walls).flatMap((wall): Standing[] => {
      const heights = network.alive.has('walls', wall.id) ? wallHeights(plan, wall) : undefined;
      if (!heights) return [];
      const ends = [wall.a, wall.b].map((p) => ({ ...p, z: heights.bottom }));
      return [{ wall, bottom: heights.bottom, box: grow(boxOf(ends), wall.thicknessMm / 2) }];
    }),
  );
}

/** As high as the box of a wall is ever asked for: a pipe below it is below it however deep. */
const over = (box: Box3): Box3 => ({ ...box, maxZ: Number.POSITIVE_INFINITY });

function passings(given: Given): Passing[] {
  const walls = standing(given);
  const through = new Map<string, Crossing[]>();
  for (const c of given.crossings) {
    const { id } = c.pipe.edge;
    through.set(id, [...(through.get(id) ?? []), c]);
  }
  // One wall over another is gone through, and told of so.
  const isThrough = (leg: string, at: Xyz): boolean =>
    (through.get(leg) ?? []).some(
      (c) => Math.hypot(c.at.x - at.x, c.at.y - at.y) <= (given.plan.walls[c.wall]?.thicknessMm ?? 0),
    );
  const found = given.voidParts.flatMap((part) => {
    if (part.space.kind !== 'floor' || part.pipe.edge.state !== 'new') return [];
    const { a, b } = part.pipe.body;
    return walls.search(over(part.pipe.box)).flatMap(({ wall, bottom }): Passing[] => {
      const at = wall.storey === part.space.storey ? below(wall, a, b) : undefined;
      if (!at || at.z >= bottom || isThrough(part.pipe.edge.id, at)) return [];
      return [{ part, wall: wall.id, at }];
    });
  });
  given.counts.boxQueries += walls.counts.queries;
  return found;
}

function judge(given: Given): Fault[] {
  const byVoid = new Map<string, Passing[]>();
  for (const p of passings(given)) byVoid.set(p.part.space.id, [...(byVoid.get(p.part.space.id) ?? []), p]);
  return [...byVoid.values()].flatMap((all): Fault[] => {
    const [first] = all;
    if (!first) return [];
    const runs = [...new Set(all.map((p) => p.part.pipe.run))].sort();
    const walls = new Set(all.map((p) => p.wall)).size;
    return [
      {
        outcome: 'note',
        ids: [first.part.space.id],
        legs: [...new Set(all.map((p) => p.part.pipe.edge.id))],
        words: {
          run: runs.length === 1 ? sayRun(given.plan, runs[0] ?? '') : `${runs.length} pipes`,
          passes: runs.length === 1 ? 'passes' : 'pass',
          walls: walls === 1 ? 'a wall that stands' : `${walls} walls that stand`,
          space: sayVoid(first.part.space),
        },
        at: atPlace(first.part.pipe.storey, first.at),
        more: all.length - 1,
      },
    ];
  });
}

const house = (wallY: number, z = -100) => {
  const e = example().wall('w', [0, wallY], [3000, wallY], { construction: 'stud' });
  e.plan.voids.v = {
    id: 'v',
    storey: 'ground',
    name: '',
    kind: 'floor',
    outline: [
      { x: 0, y: -2000 },
      { x: 3000, y: -2000 },
      { x: 3000, y: 2000 },
      { x: 0, y: 2000 },
    ],
    holes: [],
    bottom: { from: 'datum', of: null, mm: -250 },
    top: { from: 'datum', of: null, mm: 0 },
    joists: null,
    bearings: [],
    ventilated: true,
    mayBeCut: null,
    option: null,
    sureness: 'seen',
  };
  return e.run('c', 'cold', [
    [1000, -1500, z],
    [1000, 1500, z],
  ]).plan;
};

export default defineRule({
  id: 'structure/under-wall',
  topic: 'building',
  since: '1',
  basis: 'practice',
  lifeSafety: false,
  cites: [{ source: 'trade-practice', clause: 'pipe through joists' }],
  needs: ['walls and voids'],
  params: () => ({}),
  judge,
  say: {
    fault: {
      title: '{run} in the {space} {passes} below {walls} on the floor',
      why: 'No board can be lifted under a wall, and one that carries joists goes on down below the floor.',
      todo: 'Look at what the wall stands on, and lift the floor at both sides of it to hand the pipe through.',
    },
    cantTell: { title: "Can't tell what stands over {run}", why: 'The walls are not drawn.', todo: 'Draw them.' },
    pass: 'Nothing stands on the floor over it.',
  },
  examples: [
    { name: 'a cold pipe below a partition', given: () => house(0), expect: 'note' },
    { name: 'a partition beside it', given: () => house(1900), expect: 'pass' },
  ],
});
