import * as v from 'valibot';
import { hostedXy } from '../../geometry/hosting.ts';
import { length3, scale3 } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import { id, type Xyz, xyz } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import { called } from '../commands/change-of.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { moveThings } from '../commands/move-things.ts';
import type { Selected } from '../editor-api.ts';
import { type Extent, extentOf, isUpright, nodesOfThing } from '../many/extents.ts';
import type { ThingMove } from '../moving/moved-plan.ts';

const MAPS = ['walls', 'points', 'runs', 'legs', 'nodes', 'items'] as const;
const LEAST_THINGS = 2;
/** A way that leads off a wall by more than this part of it leads off the wall. */
const OFF_WALL = 0.02;

function targetOf(extents: readonly Extent[], edge: 'least' | 'middle' | 'most'): number {
  const lo = Math.min(...extents.map((e) => e.lo));
  const hi = Math.max(...extents.map((e) => e.hi));
  return edge === 'least' ? lo : edge === 'most' ? hi : (lo + hi) / 2;
}

const edgeOf = (e: Extent, edge: 'least' | 'middle' | 'most'): number =>
  edge === 'least' ? e.lo : edge === 'most' ? e.hi : (e.lo + e.hi) / 2;

/** What hangs on a wall goes along it only. */
function staysOnWall(plan: Plan, point: string, by: Xyz): void {
  const place = plan.points[point]?.place;
  const host = place?.on === 'wall' ? hostedXy(plan, place) : undefined;
  if (!host) return;
  const off = Math.abs(by.x * host.out.x + by.y * host.out.y);
  if (off > OFF_WALL * length3(by)) {
    refuse(
      `${called(plan, point, 'That')} hangs on a wall that runs another way. Leave it out, or take it off the wall.`,
    );
  }
}

function movesOfThing(plan: Plan, thing: Selected, by: Xyz, nodes: Map<string, Xyz>): ThingMove[] {
  if (thing.map === 'walls') return [{ wall: thing.id, by: { x: by.x, y: by.y } }];
  if (thing.map === 'points') {
    staysOnWall(plan, thing.id, by);
    return [{ point: thing.id, by }];
  }
  for (const node of nodesOfThing(plan, thing)) {
    if (plan.nodes[node]?.place.on === 'storey' && !nodes.has(node)) nodes.set(node, by);
  }
  return [];
}

/**
 * Brings things to one line across a way of the house: their edges or their middles. `way` points to the most; upright, it
 * is heights that are made the same. What hangs on them follows, and runs stay joined.
 */
export default defineCommand({
  id: 'things.align',
  label: (args) => `align ${args.things.length} things`,
  args: v.object({
    things: v.pipe(
      v.array(v.object({ map: v.picklist(MAPS), id: id() })),
      v.minLength(LEAST_THINGS, 'choose two things or more to align'),
    ),
    way: xyz,
    edge: v.picklist(['least', 'middle', 'most']),
  }),
  run(draft, args, ctx) {
    const plan = ctx.before;
    const full = length3(args.way);
    if (full < COINCIDENT_MM) refuse('Nothing lies that way.');
    const way = scale3(args.way, 1 / full);
    const placed = args.things.map((thing) => {
      if (!plan[thing.map][thing.id]) refuse('Some of it is no longer there.');
      if (thing.map === 'walls' && isUpright(way)) refuse('Walls stand on their floor. Leave them out.');
      return { thing, extent: extentOf(plan, thing, way) ?? refuse('Some of it has no height yet, and so no place.') };
    });
    const to = targetOf(
      placed.map((p) => p.extent),
      args.edge,
    );
    const nodes = new Map<string, Xyz>();
    const told = placed.map(({ thing, extent }) => ({ thing, mm: to - edgeOf(extent, args.edge) }));
    const far = (mm: number): boolean => Math.abs(mm) >= COINCIDENT_MM;
    if (!told.some(({ mm }) => far(mm))) return [];
    // A wall that stands where it is to stand is told so, or one that makes a corner with it would pull it aslant.
    const moves = told
      .filter(({ thing, mm }) => far(mm) || thing.map === 'walls')
      .flatMap(({ thing, mm }) => movesOfThing(plan, thing, scale3(way, far(mm) ? mm : 0), nodes));
    for (const [node, by] of nodes) moves.push({ node, by });
    return moveThings(draft, moves, ctx);
  },
  example(plan, rng) {
    const all = MAPS.flatMap((map) => Object.keys(plan[map]).map((thing) => ({ map, id: thing })));
    const [one, other] = [rng.pick(all), rng.pick(all)];
    const way = rng.pick([
      { x: 1, y: 0, z: 0 },
      { x: 0, y: 1, z: 0 },
      { x: 0, y: 0, z: 1 },
    ]);
    if (!one || !other || one.id === other.id) return null;
    return { things: [one, other], way, edge: rng.pick(['least', 'middle', 'most']) };
  },
});
