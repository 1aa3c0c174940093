import { wallBodies } from '../../geometry/bodies.ts';
import { openingBox } from '../../geometry/opening-box.ts';
import { insideOutline } from '../../geometry/outlines.ts';
import { faceAt, type RoomFace, roomFaces } from '../../geometry/rooms.ts';
import { outOfWall, wallLength } from '../../geometry/wall-frame.ts';
import { type Alive, aliveIn } from '../../network/cases.ts';
import type { Opening } from '../../plan/records/building.ts';
import type { Xy } from '../../plan/records/parts.ts';
import { standingBuilding } from '../clearance/crossings.ts';
import type { Given } from '../given.ts';
import { facesOf, type Sited, site, standing } from './sited.ts';

/** What belongs outside a house and does harm when it is built over. */
const OUTSIDE = [
  'flue-terminal',
  'gully',
  'gas-meter',
  'electricity-meter',
  'outside-end',
  'outside-tap',
  'rainwater-pipe',
  'soil-stack',
  'soakaway',
];

export interface Swallowed {
  readonly terminals: readonly Sited[];
  readonly others: readonly Sited[];
  /** Air bricks and vents that led outside. */
  readonly vents: readonly Opening[];
  /** Outside things among new walls that close no room, so that nobody can tell. */
  readonly unclear: readonly Sited[];
}

const NOTHING: Swallowed = { terminals: [], others: [], vents: [], unclear: [] };
const PAST_MM = 20;

interface Storey {
  readonly before: readonly RoomFace[];
  readonly after: readonly RoomFace[];
  readonly newBody: (p: Xy) => boolean;
  /** Round all corners of the new walls. */
  readonly among: (p: Xy) => boolean;
}

function storeyOf(given: Given, id: string, then: Alive): Storey | null {
  const { plan, network } = given;
  const fresh = Object.values(plan.walls).filter(
    (w) => w.storey === id && network.alive.has('walls', w.id) && network.alive.state(w.id) === 'new',
  );
  if (fresh.length === 0) return null;
  const stood = { has: (x: string) => then.has('walls', x) || then.has('openings', x) };
  const bodies = wallBodies(plan, id, standingBuilding(network)).outlines;
  const ends = fresh.flatMap((w) => [w.a, w.b]);
  const [xs, ys] = [ends.map((p) => p.x), ends.map((p) => p.y)];
  return {
    before: roomFaces(plan, id, stood).faces,
    after: facesOf(given, id),
    newBody: (p) => fresh.some((w) => insideOutline(p, bodies.get(w.id) ?? [])),
    among: (p) => p.x > Math.min(...xs) && p.x < Math.max(...xs) && p.y > Math.min(...ys) && p.y < Math.max(...ys),
  };
}

function ventsIn(given: Given, storeys: ReadonlyMap<string, Storey>): Opening[] {
  return Object.values(given.plan.openings).filter((o) => {
    const wall = given.plan.walls[o.wall];
    const storey = wall && storeys.get(wall.storey);
    const box =
      o.kind === 'vent' &&
      o.option === null &&
      given.network.alive.has('openings', o.id) &&
      openingBox(given.plan, o.id);
    if (!wall || !storey || !box || wallLength(wall) === 0) return false;
    const sides = [1, -1].map((way) =>
      outOfWall(wall, (box.fromMm + box.toMm) / 2, way * (wall.thicknessMm / 2 + PAST_MM)),
    );
    const led = sides.some((p) => !faceAt(storey.before, p));
    return led && sides.every((p) => faceAt(storey.after, p) !== undefined || storey.newBody(p));
  });
}

/** What the walls an option builds close in that stood outside before. Nothing where it builds none. */
export function swallowedBy(given: Given): Swallowed {
  if (given.case.when !== 'after' || given.case.option === null) return NOTHING;
  const then = aliveIn(given.plan, { option: given.case.option, when: 'before' });
  const storeys = new Map<string, Storey>();
  for (const id of Object.keys(given.plan.storeys)) {
    const storey = storeyOf(given, id, then);
    if (storey) storeys.set(id, storey);
  }
  if (storeys.size === 0) return NOTHING;
  const made: { terminals: Sited[]; others: Sited[]; unclear: Sited[] } = { terminals: [], others: [], unclear: [] };
  for (const point of OUTSIDE.flatMap((kind) => standing(given, kind))) {
    const storey = storeys.get(point.storey);
    const sited = storey && point.option === null ? site(given, point) : undefined;
    if (!storey || !sited || faceAt(storey.before, sited.middle)) continue;
    if (sited.face || storey.newBody(sited.middle))
      (point.kind === 'flue-terminal' ? made.terminals : made.others).push(sited);
    else if (storey.among(sited.middle) && storey.after.length <= storey.before.length) made.unclear.push(sited);
  }
  return { ...made, vents: ventsIn(given, storeys) };
}
