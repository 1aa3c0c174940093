import { connectionPlace, hostedXy } from '../../geometry/hosting.ts';
import { nodePlace } from '../../geometry/places.ts';
import { left, scale, unit } from '../../geometry/vec.ts';
import { buildNetwork } from '../../network/graph.ts';
import { orderedLegs } from '../../network/runs.ts';
import type { Case, Plan } from '../../plan/plan.ts';
import type { Xy, Xyz } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';

/** As somebody walking along the pipe says it. */
export type Direction = 'up' | 'down' | 'ahead' | 'left' | 'right' | 'own angle';

export interface ToldStep {
  /** Among all steps of the run, unseen stretches too. */
  readonly index: number;
  readonly leg: string;
  readonly from: string;
  readonly to: string;
  readonly dir: Direction;
  /** Turn on the level from what one faced, degrees, to the left above nothing. */
  readonly turnDeg: number;
  readonly lengthMm: number;
  /** Level way one faces after the step. */
  readonly facing: Xy;
}

export interface Told {
  readonly run: string;
  readonly service: string;
  /** Where it starts: a node. */
  readonly start: string;
  /** The node at which it would go on. */
  readonly end: string;
  readonly steps: readonly ToldStep[];
}

/** The right of the sheet: where nothing else says which way somebody faces. */
export const TO_THE_RIGHT: Xy = { x: 1, y: 0 };

/** What a walker faces at a tail: the way it faces itself, else out of the wall that its point hangs on. */
export function facingOf(plan: Plan, point: string, connection: string): Xy | undefined {
  const tail = connectionPlace(plan, point, connection);
  if (tail && Math.hypot(tail.facing.x, tail.facing.y) > 0.5) return unit(tail.facing);
  const host = plan.points[point]?.place;
  return host?.on === 'wall' ? hostedXy(plan, host)?.out : undefined;
}

function firstFacing(plan: Plan, node: string): Xy | undefined {
  const place = plan.nodes[node]?.place;
  return place?.on === 'connection' ? facingOf(plan, place.point, place.connection) : undefined;
}

const SQUARE = 1e-3;

function directionOf(way: Xyz, faced: Xy | undefined): { dir: Direction; facing: Xy | undefined; turnDeg: number } {
  const level = Math.hypot(way.x, way.y);
  if (level < COINCIDENT_MM) return { dir: way.z > 0 ? 'up' : 'down', facing: faced, turnDeg: 0 };
  const on = { x: way.x / level, y: way.y / level };
  // Where nothing says what one faces, the first level leg does.
  const facing = faced ?? on;
  const ahead = on.x * facing.x + on.y * facing.y;
  const aside = facing.x * on.y - facing.y * on.x;
  const turnDeg = (Math.atan2(aside, ahead) * 180) / Math.PI;
  // A fall is a slope that is told ahead; anything steeper is an angle of its own.
  const steep = Math.abs(way.z) > level / 5;
  const found = { facing: on, turnDeg };
  if (steep) return { dir: 'own angle', ...found };
  if (ahead > 1 - SQUARE) return { dir: 'ahead', ...found };
  if (aside > 1 - SQUARE) return { dir: 'left', ...found };
  if (aside < -1 + SQUARE) return { dir: 'right', ...found };
  return { dir: 'own angle', ...found };
}

const kept = new WeakMap<Plan, Map<string, Told | undefined>>();

/** A run in words, from its source on; undefined for one with no live leg that has a place. Read once for each plan. */
export function toldRun(plan: Plan, chosen: Case, run: string): Told | undefined {
  const key = `${chosen.when}/${chosen.option ?? ''}/${run}`;
  const known = kept.get(plan) ?? new Map<string, Told | undefined>();
  kept.set(plan, known);
  if (!known.has(key)) known.set(key, read(plan, chosen, run));
  return known.get(key);
}

function read(plan: Plan, chosen: Case, run: string): Told | undefined {
  const record = plan.runs[run];
  const network = buildNetwork(plan, chosen);
  const told = orderedLegs(network, run);
  const nodeOf = (leg: { a: string; b: string }, vertex: string): string =>
    network.vertexOf.get(leg.a) === vertex ? leg.a : leg.b;
  const steps: ToldStep[] = [];
  let facing: Xy | undefined;
  let start: string | undefined;
  for (const [index, step] of told.steps.entries()) {
    const leg = plan.legs[step.edge];
    if (!leg) continue;
    const from = nodeOf(leg, step.from);
    const to = from === leg.a ? leg.b : leg.a;
    const [na, nb] = [plan.nodes[from], plan.nodes[to]];
    const [pa, pb] = [na && nodePlace(plan, na)?.at, nb && nodePlace(plan, nb)?.at];
    start ??= from;
    if (steps.length === 0) facing = firstFacing(plan, from);
    if (!pa || !pb) continue;
    const way = { x: pb.x - pa.x, y: pb.y - pa.y, z: pb.z - pa.z };
    const next = directionOf(way, facing);
    facing = next.facing;
    steps.push({
      index,
      leg: leg.id,
      from,
      to,
      dir: next.dir,
      turnDeg: next.turnDeg,
      lengthMm: Math.hypot(way.x, way.y, way.z),
      facing: facing ?? TO_THE_RIGHT,
    });
  }
  const end = steps.at(-1)?.to;
  if (!record || start === undefined || end === undefined) return undefined;
  return { run, service: record.service, start, end, steps };
}

/** Where a step leads on the level, from what one faces; null for steps that are told by their height. */
export function wayOf(dir: Direction, facing: Xy, turnDeg?: number): Xy | null {
  if (dir === 'ahead') return facing;
  if (turnDeg !== undefined && (dir === 'left' || dir === 'right')) {
    const turn = ((dir === 'left' ? turnDeg : -turnDeg) * Math.PI) / 180;
    const [c, s] = [Math.cos(turn), Math.sin(turn)];
    return { x: facing.x * c - facing.y * s, y: facing.x * s + facing.y * c };
  }
  if (dir === 'left') return left(facing);
  return dir === 'right' ? scale(left(facing), -1) : null;
}
