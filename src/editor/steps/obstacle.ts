import { type PipeGaps, pipeGaps } from '../../catalogue/pipe-gaps.ts';
import { sayTubeSize, tubeOdMm } from '../../catalogue/tubes.ts';
import { resolveHeight } from '../../geometry/heights.ts';
import { grid } from '../../geometry/joist-lines.ts';
import { nodePlace } from '../../geometry/places.ts';
import { type Capsule, segmentDistance } from '../../geometry/segments.ts';
import { add3, cross, scale3, sub, unit } from '../../geometry/vec.ts';
import { voidFinder } from '../../geometry/void-stretches.ts';
import { wallFinder } from '../../geometry/wall-crossings.ts';
import { outOfWall, wallHeights, wallLength } from '../../geometry/wall-frame.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Leg } from '../../plan/records/pipework.ts';
import { serviceWord } from '../commands/service-word.ts';
import type { Hit } from '../hit/hit-test.ts';
import { type Clearing, clearOfBody, clearOfCorners, stepping } from './clearing.ts';

/** Something that lies across a pipe. */
export interface Obstacle {
  /** "the heating flow 22", "the joist". */
  readonly name: string;
  readonly alongMm: number;
  /** The least step one way that passes it; null where it does not come clear that way. */
  clear(way: Xyz, angleDeg: number): (Clearing & { readonly alongMm?: number }) | null;
  /** What of it was not known, so that the step is the least there can be; null where all was. */
  readonly unsure: string | null;
}

interface Body {
  readonly leg: Leg;
  readonly body: Capsule;
  readonly sized: boolean;
}

/** A leg as a body, lagging included; one whose size nobody read is a line. */
export function bodyOf(plan: Plan, id: string): Body | undefined {
  const leg = plan.legs[id];
  const [a, b] = [leg && plan.nodes[leg.a], leg && plan.nodes[leg.b]];
  const [pa, pb] = [a && nodePlace(plan, a)?.at, b && nodePlace(plan, b)?.at];
  if (!leg || !pa || !pb) return undefined;
  const od = tubeOdMm(leg.tube);
  const radiusMm = (od ?? 0) / 2 + (leg.insulation?.thicknessMm ?? 0);
  return { leg, body: { a: pa, b: pb, radiusMm }, sized: od !== undefined };
}

const along = ({ a, b }: Capsule, t: number): Xyz => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
  z: a.z + (b.z - a.z) * t,
});

function gapFor(plan: Plan, gaps: PipeGaps, one: Leg, other: Leg): number | null {
  const gas = [one, other].some((l) => plan.runs[l.run]?.service === 'gas');
  return gas && one.run !== other.run ? gaps.gas : gaps.crossing;
}

/** Do two legs meet in a corner? There they are near each other because they are meant to be. */
const meet = (p: Leg, q: Leg): boolean => [p.a, p.b].some((n) => n === q.a || n === q.b);

function pipeAcross(plan: Plan, of: Body, id: string, gaps: PipeGaps): Obstacle | null {
  const other = bodyOf(plan, id);
  if (!other || other.leg.id === of.leg.id || meet(of.leg, other.leg)) return null;
  const found = segmentDistance(of.body, other.body);
  const gap = gapFor(plan, gaps, of.leg, other.leg);
  const wanted = gap ?? 0;
  if (found.distance - of.body.radiusMm - other.body.radiusMm >= wanted) return null;
  const place = stepping(of.body, along(of.body, found.s));
  const unsure = !of.sized || !other.sized ? 'a size is not known' : gap === null ? 'the clearance is not known' : null;
  return {
    name: `the ${serviceWord(plan.runs[other.leg.run]?.service)} ${sayTubeSize(other.leg.tube)}`,
    alongMm: place.alongMm,
    clear: (way, angleDeg) => clearOfBody(place, other.body, wanted, way, angleDeg),
    unsure,
  };
}

/** Corners of a joist's section about the pipe, as far along the joist as the pipe is wide. */
function joistAcross(plan: Plan, of: Body, alongMm: number, reachMm: number, gaps: PipeGaps): Obstacle | null {
  for (const stretch of voidFinder(plan).stretches(of.body)) {
    const met = stretch.joists.find(
      (j) => j.passes === 'through' && alongMm >= j.fromMm - reachMm && alongMm <= j.toMm + reachMm,
    );
    const joists = plan.voids[stretch.void]?.joists;
    const bottom = joists?.bottom && resolveHeight(plan, joists.bottom)?.z;
    if (!met || !joists || joists.depthMm === null || bottom === null || bottom === undefined) continue;
    const place = stepping(of.body, met.at);
    const half = (joists.breadthMm ?? 0) / 2;
    const across = grid(joists).across;
    const sin = Math.abs(cross(grid(joists).way, unit(sub(of.body.b, of.body.a))));
    if (sin < 0.2) continue;
    const top = bottom + joists.depthMm;
    // Square to the joist the section is as broad as the timber; at a slant the pipe is over it for longer.
    const side = scale3({ ...across, z: 0 }, half / sin);
    const corners = [bottom, top].flatMap((z) => [side, scale3(side, -1)].map((s) => add3({ ...met.at, z }, s)));
    return {
      name: 'the joist',
      alongMm: place.alongMm,
      clear: (way, angleDeg) =>
        Math.abs(way.z) < 0.5 ? null : clearOfCorners(place, corners, gaps.touching ?? 0, way, angleDeg),
      unsure: !of.sized ? 'a size is not known' : joists.breadthMm === null ? 'its breadth is not known' : null,
    };
  }
  return null;
}

function wallAcross(plan: Plan, of: Body, alongMm: number, reachMm: number, gaps: PipeGaps): Obstacle | null {
  const met = wallFinder(plan)
    .crossings(of.body.a, of.body.b, null)
    .find((c) => c.opening === null && alongMm >= c.fromMm - reachMm && alongMm <= c.toMm + reachMm);
  const wall = met && plan.walls[met.wall];
  const heights = wall && wallHeights(plan, wall);
  if (!met || !wall || !heights) return null;
  const place = stepping(of.body, met.at);
  const [l, h] = [wallLength(wall), wall.thicknessMm / 2];
  const flat = [outOfWall(wall, 0, h), outOfWall(wall, 0, -h), outOfWall(wall, l, h), outOfWall(wall, l, -h)];
  const corners = [heights.bottom, heights.top].flatMap((z) => flat.map((p) => ({ ...p, z })));
  // Over or under it only what the pipe is in counts.
  const over = [heights.bottom, heights.top].flatMap((z) =>
    [met.fromMm, met.toMm].map((mm) => ({ ...along(of.body, mm / lengthOf(of.body)), z })),
  );
  return {
    name: 'the wall',
    alongMm: place.alongMm,
    clear: (way, angleDeg) =>
      clearOfCorners(place, Math.abs(way.z) > 0.5 ? over : corners, gaps.touching ?? 0, way, angleDeg),
    unsure: of.sized ? null : 'a size is not known',
  };
}

const lengthOf = ({ a, b }: Capsule): number => Math.hypot(b.x - a.x, b.y - a.y, b.z - a.z);

/**
 * What lies across a leg where it was pressed: another pipe nearer than the tables ask, else a joist it would go through,
 * else a wall. Null where nothing does. `hits` is what lay under the finger.
 */
export function obstacleAt(
  plan: Plan,
  leg: string,
  alongMm: number,
  reachMm: number,
  hits: readonly Hit[],
): Obstacle | null {
  const of = bodyOf(plan, leg);
  if (!of) return null;
  const gaps = pipeGaps(plan.basis.editions);
  for (const hit of hits) {
    const pipe = hit.map === 'legs' ? pipeAcross(plan, of, hit.id, gaps) : null;
    if (pipe) return pipe;
  }
  // Seen on a wall, a pipe that comes out of it may be no more than a dot, or not be drawn at all.
  const near = pipesAcross(plan, leg).find((o) => Math.abs(o.alongMm - alongMm) <= reachMm);
  return near ?? joistAcross(plan, of, alongMm, reachMm, gaps) ?? wallAcross(plan, of, alongMm, reachMm, gaps);
}

/** Pipes that lie across a leg nearer than the tables ask, in order along it. */
export function pipesAcross(plan: Plan, leg: string): readonly Obstacle[] {
  const of = bodyOf(plan, leg);
  if (!of) return [];
  const gaps = pipeGaps(plan.basis.editions);
  return Object.keys(plan.legs)
    .flatMap((id) => pipeAcross(plan, of, id, gaps) ?? [])
    .sort((p, q) => p.alongMm - q.alongMm);
}

/** Another pipe as something that lies across a leg; null where it is as far off as the tables ask, or is joined to it. */
export function pipeAsObstacle(plan: Plan, leg: string, other: string): Obstacle | null {
  const of = bodyOf(plan, leg);
  return of ? pipeAcross(plan, of, other, pipeGaps(plan.basis.editions)) : null;
}
