import { flatBox } from '../../geometry/boxes.ts';
import { resolveHeight } from '../../geometry/heights.ts';
import { openingSpan } from '../../geometry/opening-box.ts';
import type { Outline } from '../../geometry/outlines.ts';
import { toLocal } from '../../geometry/point-box.ts';
import { outOfWall, wallHeights, wallLength } from '../../geometry/wall-frame.ts';
import type { Opening, Wall } from '../../plan/records/building.ts';
import type { Xy } from '../../plan/records/parts.ts';
import { sayThing } from '../building/points-in-the-way.ts';
import { sayVoid } from '../building/void-parts.ts';
import type { Given } from '../given.ts';
import { midSentence, sayOpening, sayRun } from '../say-names.ts';
import type { Sited } from './sited.ts';
import { boxingsIn, solidPointsIn } from './solid-things.ts';
import { wallsIn } from './walls-round.ts';

/** Something solid round a case, in the case's own frame: an outline in plan between two heights. */
export interface Obstacle {
  readonly outline: Outline;
  readonly bottom: number;
  readonly top: number;
  readonly say: string;
  readonly is: 'wall' | 'door' | 'point' | 'box' | 'pipe';
}

export type ToLocal = (outline: readonly Xy[]) => Xy[];

export const localiser = ({ body }: Sited): ToLocal => {
  const { frame } = body;
  return (outline) => outline.map((p) => toLocal(frame, { ...p, z: frame.origin.z }));
};

const openings = new WeakMap<Given, ReadonlyMap<string, readonly Opening[]>>();

/** Standing openings by their wall. */
export function openingsOf(given: Given, wall: string): readonly Opening[] {
  let found = openings.get(given);
  if (!found) {
    const made = new Map<string, Opening[]>();
    for (const o of Object.values(given.plan.openings)) {
      if (given.network.alive.has('openings', o.id)) made.set(o.wall, [...(made.get(o.wall) ?? []), o]);
    }
    openings.set(given, made);
    found = made;
  }
  return found.get(wall) ?? [];
}

const isWay = (o: Opening): boolean => o.kind === 'door' || o.kind === 'archway';

/** Is any of a wall within `reachMm` of the case? */
function nearWall(wall: Wall, p: Xy, reachMm: number): boolean {
  const [dx, dy] = [wall.b.x - wall.a.x, wall.b.y - wall.a.y];
  const l2 = dx * dx + dy * dy;
  const t = l2 === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - wall.a.x) * dx + (p.y - wall.a.y) * dy) / l2));
  return Math.hypot(p.x - wall.a.x - t * dx, p.y - wall.a.y - t * dy) <= reachMm + wall.thicknessMm;
}

/** Walls of the storey near a case. */
export function wallsNear(given: Given, { point, middle }: Sited, reachMm: number): Wall[] {
  return wallsIn(given, point.storey, flatBox([middle], reachMm)).filter((w) => nearWall(w, middle, reachMm));
}

/** A wall in pieces between its doors; under and over a door it goes on, and the door itself is a thing that opens. */
function ofWall(given: Given, wall: Wall, z: number, local: ToLocal): Obstacle[] {
  const heights = wallHeights(given.plan, wall);
  if (!heights) return [];
  const [half, length] = [wall.thicknessMm / 2, wallLength(wall)];
  const piece = (
    from: number,
    to: number,
    bottom: number,
    top: number,
    is: 'wall' | 'door',
    say: string,
  ): Obstacle[] =>
    to - from <= 0 || top <= bottom
      ? []
      : [
          {
            outline: local([
              outOfWall(wall, from, -half),
              outOfWall(wall, to, -half),
              outOfWall(wall, to, half),
              outOfWall(wall, from, half),
            ]),
            bottom: bottom - z,
            top: top - z,
            say,
            is,
          },
        ];
  const ways = openingsOf(given, wall.id)
    .filter(isWay)
    .map((o) => ({ o, span: openingSpan(o, length) }))
    .sort((p, q) => p.span[0] - q.span[0]);
  const { bottom, top } = heights;
  const made: Obstacle[] = [];
  let from = 0;
  for (const { o, span } of ways) {
    const [sill, head] = [bottom + o.sillMm, Math.min(top, bottom + o.headMm)];
    made.push(...piece(from, span[0], bottom, top, 'wall', 'the wall'));
    made.push(...piece(span[0], span[1], bottom, sill, 'wall', 'the wall'));
    made.push(...piece(span[0], span[1], head, top, 'wall', 'the wall'));
    if (o.kind === 'door')
      made.push(...piece(span[0], span[1], sill, head, 'door', `the ${midSentence(sayOpening(given.plan, o.id))}`));
    from = Math.max(from, span[1]);
  }
  return [...made, ...piece(from, length, bottom, top, 'wall', 'the wall')];
}

function ofPoints(given: Given, boiler: Sited, reachMm: number, local: ToLocal): Obstacle[] {
  const { point: own, middle, body } = boiler;
  return solidPointsIn(given, own.storey, flatBox([middle], reachMm)).flatMap(({ point, body: other }): Obstacle[] => {
    if (point.id === own.id) return [];
    const { box } = other;
    const out = (v: number, lo: number, hi: number): number => Math.max(lo - v, v - hi, 0);
    if (Math.hypot(out(middle.x, box.minX, box.maxX), out(middle.y, box.minY, box.maxY)) > reachMm) return [];
    const bottom = box.minZ - body.frame.origin.z;
    const say = `the ${sayThing(given, point)}`;
    return [{ outline: local(other.footprint), bottom, top: bottom + point.size.heightMm, say, is: 'point' }];
  });
}

function ofBoxes(given: Given, boiler: Sited, reachMm: number, local: ToLocal): Obstacle[] {
  const { z } = boiler.body.frame.origin;
  return boxingsIn(given, boiler.point.storey, flatBox([boiler.middle], reachMm)).flatMap((space): Obstacle[] => {
    const bottom = space.bottom && resolveHeight(given.plan, space.bottom);
    const top = space.top && resolveHeight(given.plan, space.top);
    if (!bottom || !top) return [];
    const say = `the ${midSentence(sayVoid(space))}`;
    return [{ outline: local(space.outline), bottom: bottom.z - z, top: top.z - z, say, is: 'box' }];
  });
}

/** Runs that start or end at a point: its tails, which it needs. */
function ownRuns(given: Given, point: string): ReadonlySet<string> {
  const { vertices, edges } = given.network;
  const tails = given.plan.points[point]?.connections ?? [];
  const at = tails.flatMap((c) => vertices.get(`${point}/${c.id}`)?.edges ?? []);
  return new Set(at.flatMap((e) => edges.get(e)?.run ?? []));
}

/** Pipes of others near a case, each as the upright box round it. */
function ofPipes(given: Given, boiler: Sited, reachMm: number, local: ToLocal): Obstacle[] {
  const { box, frame } = boiler.body;
  const own = ownRuns(given, boiler.point.id);
  const around = {
    minX: box.minX - reachMm,
    maxX: box.maxX + reachMm,
    minY: box.minY - reachMm,
    maxY: box.maxY + reachMm,
    minZ: box.minZ,
    maxZ: box.maxZ,
  };
  return given.pipeIndex.search(around).flatMap((pipe): Obstacle[] => {
    if (own.has(pipe.run) || !pipe.sizeKnown || pipe.heightAssumed) return [];
    // Only pipes square to the house: a slanting one would be taken for the whole box round it.
    const { a, b } = pipe.body;
    if ([a.x !== b.x, a.y !== b.y, Math.abs(a.z - b.z) > 50].filter(Boolean).length > 1) return [];
    const { minX, maxX, minY, maxY, minZ, maxZ } = pipe.box;
    const outline = [
      { x: minX, y: minY },
      { x: maxX, y: minY },
      { x: maxX, y: maxY },
      { x: minX, y: maxY },
    ];
    const z = frame.origin.z;
    const say = midSentence(sayRun(given.plan, pipe.run));
    return [{ outline: local(outline), bottom: minZ - z, top: maxZ - z, say, is: 'pipe' }];
  });
}

/** Everything solid round a case within a distance, seen from it. */
export function obstaclesRound(given: Given, boiler: Sited, reachMm: number): Obstacle[] {
  const local = localiser(boiler);
  const far = reachMm + Math.hypot(boiler.point.size.widthMm, boiler.point.size.depthMm);
  const { z } = boiler.body.frame.origin;
  return [
    ...wallsNear(given, boiler, far).flatMap((w) => ofWall(given, w, z, local)),
    ...ofPoints(given, boiler, far, local),
    ...ofBoxes(given, boiler, far, local),
    ...ofPipes(given, boiler, reachMm, local),
  ];
}
