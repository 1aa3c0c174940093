import { segmentDistance } from '../../geometry/segments.ts';
import type { Network } from '../../network/network.ts';
import { saidService } from '../../network/said.ts';
import { odMm, sayTube } from '../../network/tube-sizes.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xy, Xyz } from '../../plan/records/parts.ts';
import type { Leg } from '../../plan/records/pipework.ts';
import { isLevel, type LaidLeg, laidLeg } from './level-stretch.ts';

/** A pipe that lies over or under another, or crosses it. */
export interface Passing {
  readonly leg: string;
  readonly run: string;
  /** "heating flow 22". */
  readonly name: string;
  readonly service: string;
  /** Where the two are nearest in plan, on the pipe that is asked about. */
  readonly at: Xy;
  readonly of: string;
  /** Heights its outside takes up there, insulation with it. */
  readonly low: number;
  readonly high: number;
}

/** Half the outside of a pipe with its insulation; 0 for a size nobody read. */
export function outerRadius(leg: Pick<Leg, 'tube' | 'insulation'>): number {
  return (odMm(leg.tube) ?? 0) / 2 + (leg.insulation?.thicknessMm ?? 0);
}

const flat = (p: Xyz): Xyz => ({ ...p, z: 0 });

function lengthOf({ a, b }: LaidLeg): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

function passes(one: LaidLeg, other: LaidLeg, plan: Plan): Passing | null {
  const reach = outerRadius(one.leg) + outerRadius(other.leg);
  const near = segmentDistance({ a: flat(one.a), b: flat(one.b) }, { a: flat(other.a), b: flat(other.b) });
  if (near.distance >= Math.max(reach, 1)) return null;
  const service = plan.runs[other.leg.run]?.service ?? '';
  const r = outerRadius(other.leg);
  const z = other.a.z + (other.b.z - other.a.z) * near.t;
  const upright = !isLevel(other) && lengthOf(other) < reach;
  return {
    leg: other.leg.id,
    run: other.leg.run,
    name: `${saidService(service)}${other.leg.tube.size === null ? '' : ` ${sayTube(other.leg.tube)}`}`,
    service,
    at: { x: near.onA.x, y: near.onA.y },
    of: one.leg.id,
    low: upright ? Math.min(other.a.z, other.b.z) : z - r,
    high: upright ? Math.max(other.a.z, other.b.z) : z + r,
  };
}

/**
 * Pipes of other runs that pass over, under or through some pieces of pipe, as seen from above. What is joined to the
 * pieces is not among them: it goes along. `moving`: further legs that go along.
 */
export function passingPipes(
  plan: Plan,
  network: Network,
  pieces: readonly LaidLeg[],
  moving: ReadonlySet<string> = new Set(),
): Passing[] {
  const own = new Set(pieces.map((p) => p.leg.id));
  const runs = new Set(pieces.map((p) => p.leg.run));
  const joined = new Set(pieces.flatMap((p) => [p.leg.a, p.leg.b]));
  const found: Passing[] = [];
  for (const id of network.edges.keys()) {
    const leg = plan.legs[id];
    if (!leg || own.has(id) || moving.has(id) || runs.has(leg.run) || joined.has(leg.a) || joined.has(leg.b)) continue;
    const other = laidLeg(plan, id);
    if (!other) continue;
    for (const piece of pieces) {
      const passing = passes(piece, other, plan);
      if (passing) found.push(passing);
    }
  }
  return found;
}

/** Free height between a pipe whose middle is at `z` and one that passes; under 0 they run into each other. */
export function clearOf(z: number, radius: number, p: Pick<Passing, 'low' | 'high'>): number {
  return Math.max(z - radius - p.high, p.low - (z + radius));
}

/** "under the heating flow 22 by 12 clear", of the nearest; null where nothing passes. */
export function sayClear(z: number, radius: number, passing: readonly Passing[]): string | null {
  let best: Passing | undefined;
  let gap = Number.POSITIVE_INFINITY;
  for (const p of passing) {
    const clear = clearOf(z, radius, p);
    if (clear >= gap) continue;
    gap = clear;
    best = p;
  }
  if (!best) return null;
  if (gap < 0) return `runs into the ${best.name}`;
  const side = z > (best.low + best.high) / 2 ? 'over' : 'under';
  return gap === 0 ? `${side} the ${best.name}, touching` : `${side} the ${best.name} by ${Math.round(gap)} clear`;
}
