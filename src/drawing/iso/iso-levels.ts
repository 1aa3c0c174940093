import type { Plan } from '../../plan/plan.ts';
import type { Vec } from '../display-list.ts';
import type { DrawnLeg } from '../pipes/drawn-leg.ts';
import { levelMark } from '../text/say-level.ts';

/** A height that is told once, at the first of its places that has room. */
export interface IsoLevel {
  readonly id: string;
  readonly places: readonly Vec[];
  readonly text: string;
  /** Somebody took it for granted. */
  readonly unsure: boolean;
}

/** Nearer than this two heights are one. */
const SAME_MM = 0.5;

interface End {
  readonly vertex: string;
  readonly at: Vec;
  readonly z: number;
  readonly unsure: boolean;
  readonly storey: string;
  readonly id: string;
}

const endsOf = (leg: DrawnLeg): readonly [End, End] => [
  {
    vertex: leg.vertexA,
    at: leg.a,
    z: leg.placeA.at.z,
    unsure: leg.placeA.zLo !== leg.placeA.zHi,
    storey: leg.placeA.storey,
    id: leg.record.a,
  },
  {
    vertex: leg.vertexB,
    at: leg.b,
    z: leg.placeB.at.z,
    unsure: leg.placeB.zLo !== leg.placeB.zHi,
    storey: leg.placeB.storey,
    id: leg.record.b,
  },
];

const isLevel = (leg: DrawnLeg): boolean => Math.abs(leg.placeA.at.z - leg.placeB.at.z) < SAME_MM;

/** Vertices joined by level legs, as one. */
function joined(legs: readonly DrawnLeg[]): (vertex: string) => string {
  const over = new Map<string, string>();
  const root = (v: string): string => {
    let top = v;
    for (let next = over.get(top); next !== undefined; next = over.get(top)) top = next;
    return top;
  };
  for (const leg of legs) {
    if (leg.map !== 'legs' || !isLevel(leg)) continue;
    const [p, q] = [root(leg.vertexA), root(leg.vertexB)];
    if (p !== q) over.set(p, q);
  }
  return root;
}

const pointOf = (vertex: string): string | undefined => (vertex.includes('/') ? vertex.split('/')[0] : undefined);

/** Carries straight on upwards: no height of its own. */
function passesThrough(vertex: string, at: ReadonlyMap<string, readonly DrawnLeg[]>): boolean {
  const there = at.get(vertex) ?? [];
  return there.length === 2 && there.every((l) => !isLevel(l) && Math.abs(l.a[0] - l.b[0]) < SAME_MM);
}

/**
 * Heights over the floor of their storey: of every level that pipes run at, once, at a rise or drop if there is one, else
 * at an end; of both ends of what falls; of tails, once for each point and height. With more than one storey in the
 * drawing the floor is named.
 */
export function isoLevels(
  plan: Plan,
  legs: readonly DrawnLeg[],
  at: ReadonlyMap<string, readonly DrawnLeg[]>,
): IsoLevel[] {
  const root = joined(legs);
  const groups = new Map<string, { end: End; worth: number }[]>();
  const seen = new Set<string>();
  const storeys = new Set(legs.flatMap((l) => [l.placeA.storey, l.placeB.storey]));
  for (const leg of legs) {
    for (const end of endsOf(leg)) {
      if (seen.has(end.vertex)) continue;
      seen.add(end.vertex);
      const there = at.get(end.vertex) ?? [];
      const rises = there.some((l) => !isLevel(l));
      if ((!rises && there.length > 1) || passesThrough(end.vertex, at)) continue;
      const group = groups.get(root(end.vertex));
      const one = { end, worth: rises ? 0 : 1 };
      if (group) group.push(one);
      else groups.set(root(end.vertex), [one]);
    }
  }
  const told = new Map<string, IsoLevel>();
  for (const [key, group] of groups) {
    const ends = [...group].sort((p, q) => p.worth - q.worth).map((g) => g.end);
    const [first] = ends;
    if (!first) continue;
    const point = ends.length === 1 ? pointOf(first.vertex) : undefined;
    const mark = levelMark(plan, first.z, first.storey);
    const floor = storeys.size > 1 ? ` on ${plan.storeys[first.storey]?.name ?? 'its floor'}` : '';
    const level = { id: first.id, places: ends.map((e) => e.at), text: `${mark}${floor}`, unsure: first.unsure };
    const once = point === undefined ? key : `${point} ${mark}`;
    const before = told.get(once);
    told.set(once, before ? { ...before, places: [...before.places, ...level.places] } : level);
  }
  return [...told.values()];
}
