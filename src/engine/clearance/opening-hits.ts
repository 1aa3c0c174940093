import { overlaps } from '../../geometry/boxes.ts';
import { type OpeningBox, openingBox } from '../../geometry/opening-box.ts';
import { intoWall } from '../../geometry/wall-frame.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import { constant } from '../../reference/figure.ts';
import type { Given } from '../given.ts';
import type { Pipe } from './pipes.ts';

/** A new leg in or across the way of an opening. */
export interface OpeningHit {
  readonly opening: string;
  readonly pipe: Pipe;
  readonly at: Xyz;
  /** Through the opening itself; along the wall across it; or clear of the wall and not along it: upright, or end on. */
  readonly how: 'through' | 'across' | 'stands';
  /** From the face of the wall to the middle of the pipe; 0 inside the wall. */
  readonly offMm: number;
}

const ON_FACE_MM = constant('nearness', 'on the wall');

function hitOf(given: Given, body: OpeningBox, pipe: Pipe): OpeningHit[] {
  const wall = given.plan.walls[body.wall];
  if (!wall) return [];
  const [p, q] = [intoWall(wall, pipe.body.a), intoWall(wall, pipe.body.b)];
  const steps = [0, 1];
  // Where the piece enters and leaves the rectangle of the opening, seen square on to the wall.
  for (const [from, to, lo, hi] of [
    [p.u, q.u, body.fromMm, body.toMm],
    [p.z, q.z, body.bottomZ, body.topZ],
  ] as const) {
    if (from !== to) for (const edge of [lo, hi]) steps.push((edge - from) / (to - from));
  }
  const cuts = steps.filter((t) => t >= 0 && t <= 1).sort((a, b) => a - b);
  for (let i = 0; i + 1 < cuts.length; i++) {
    const t = ((cuts[i] ?? 0) + (cuts[i + 1] ?? 0)) / 2;
    const u = p.u + (q.u - p.u) * t;
    const v = p.v + (q.v - p.v) * t;
    const z = p.z + (q.z - p.z) * t;
    if (u <= body.fromMm || u >= body.toMm || z <= body.bottomZ || z >= body.topZ) continue;
    const inside = Math.abs(v) <= wall.thicknessMm / 2;
    if (!inside && Math.abs(v) > wall.thicknessMm / 2 + ON_FACE_MM) continue;
    const { a, b } = pipe.body;
    const at = { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t, z };
    const through = inside && Math.abs(p.v - q.v) > wall.thicknessMm;
    const along = Math.abs(q.u - p.u) > COINCIDENT_MM;
    const how = through ? 'through' : !along && !inside ? 'stands' : 'across';
    return [{ opening: body.opening, pipe, at, how, offMm: Math.max(0, Math.abs(v) - wall.thicknessMm / 2) }];
  }
  return [];
}

/** New legs that cross standing openings, by box first and then exactly. */
export function findOpeningHits(given: Given): OpeningHit[] {
  return Object.values(given.plan.openings).flatMap((opening) => {
    if (!given.network.alive.has('openings', opening.id)) return [];
    const body = openingBox(given.plan, opening.id);
    if (!body) return [];
    const reach = { ...body.box };
    const around = {
      minX: reach.minX - ON_FACE_MM,
      minY: reach.minY - ON_FACE_MM,
      minZ: reach.minZ,
      maxX: reach.maxX + ON_FACE_MM,
      maxY: reach.maxY + ON_FACE_MM,
      maxZ: reach.maxZ,
    };
    return given.pipeIndex
      .search(around)
      .filter((p) => p.edge.state === 'new' && overlaps(p.box, around))
      .flatMap((pipe) => hitOf(given, body, pipe));
  });
}
