import { segmentToPoint } from '../../geometry/point-box.ts';
import { add3, distance3, dot3, scale3, sub3, unit3 } from '../../geometry/vec.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import type { Tail } from './bank.ts';
import { cross3, isBack, sameWay } from './nest.ts';
import { withSet } from './set.ts';

/** One way from the parallel part to a tail. */
export interface Way {
  /** From where it leaves the last leg of the bank to the tail, both among them. */
  readonly pts: readonly Xyz[];
  readonly cost: number;
}

export interface Leaving {
  /** The last corner of the member, and the way it comes along. */
  readonly at: Xyz;
  readonly way: Xyz;
  /** Way of the row there. */
  readonly row: Xyz;
  /** So far back along its last leg it may leave the bank. */
  readonly backMm: number;
  /** No leg is shorter: its fittings need that much. */
  readonly leastMm: number;
  readonly radiusMm: number;
}

export interface Steps {
  readonly stepMm: number;
  readonly count: number;
}

/** A bend is worth this much pipe to somebody who has the choice: only ways are weighed against each other by it. */
const BEND_MM = 300;

/** Of ways that are alike every member takes the same, where it can: that much more is a way that turns otherwise. */
const LIKE_MM = 5;

/** Ways dearer than so many others are not weighed. */
const MOST_WAYS = 160;

const ORDERS: readonly (readonly number[])[] = [
  [0, 1, 2],
  [0, 2, 1],
  [1, 0, 2],
  [1, 2, 0],
  [2, 0, 1],
  [2, 1, 0],
];

/** Right-angled axes about a tail: the way it faces, and two across that fit the way the bank comes along. */
function axesAbout(facing: Xyz, { way, row }: Leaving): Axes {
  const flat = (v: Xyz): Xyz => sub3(v, scale3(facing, dot3(v, facing)));
  const along = flat(way);
  const second = Math.hypot(along.x, along.y, along.z) > 0.05 ? unit3(along) : unit3(flat(row));
  return [facing, second, cross3(facing, second)];
}

/** Without places on a straight line between two others. */
export function cornersOnly(pts: readonly Xyz[]): Xyz[] {
  const kept: Xyz[] = [];
  for (const p of pts) {
    const [last, before] = [kept.at(-1), kept.at(-2)];
    if (last && distance3(last, p) < COINCIDENT_MM) continue;
    if (last && before && sameWay(unit3(sub3(last, before)), unit3(sub3(p, last)))) kept.pop();
    kept.push(p);
  }
  return kept;
}

const square = (a: Xyz, b: Xyz): boolean => Math.abs(dot3(a, b)) < 0.05;

function goes(leaving: Leaving, tail: Tail, pts: readonly Xyz[], backMm: number): boolean {
  let before = leaving.way;
  for (let i = 1; i < pts.length; i++) {
    const [a, b] = [pts[i - 1] as Xyz, pts[i] as Xyz];
    const on = unit3(sub3(b, a));
    if (isBack(before, on)) return false;
    const goesOn = i === 1 && sameWay(before, on);
    const mm = distance3(a, b) - (goesOn ? backMm : 0);
    // The slanting piece of a set may be as short as the step aside is.
    const least = goesOn || !square(before, on) ? 0 : leaving.leastMm / 2;
    if (mm < least) return false;
    const last = i === pts.length - 1;
    if (!last && tail.body && segmentToPoint({ a, b }, tail.body).distance < leaving.radiusMm) return false;
    before = on;
  }
  return true;
}

/** How far back it may leave: in steps, and just where it is level with the place it turns to. */
function backs(leaving: Leaving, under: Xyz, { stepMm, count }: Steps): number[] {
  const level = -dot3(sub3(under, leaving.at), leaving.way);
  const all = Array.from({ length: count + 1 }, (_, i) => i * stepMm);
  const told = all.some((mm) => Math.abs(mm - level) < COINCIDENT_MM) ? all : [...all, level];
  return told.filter((mm) => mm >= 0 && mm <= leaving.backMm);
}

/**
 * Right-angled ways from the last leg of a bank into a tail, cheapest first: they leave the bank further back or on, and
 * come from further off or nearer under the tail, in steps. None turns straight back, or goes through the appliance.
 */
export function waysTo(leaving: Leaving, tail: Tail, steps: Steps): Way[] {
  const axes = axesAbout(tail.facing, leaving);
  const found = new Map<string, Way>();
  for (let d = 1; d <= steps.count + 1; d++) {
    const under = add3(tail.at, scale3(tail.facing, d * steps.stepMm));
    for (const back of backs(leaving, under, steps)) {
      const from = sub3(leaving.at, scale3(leaving.way, back));
      for (const { pts, turn } of waysUnder(leaving, axes, from, under)) {
        const way = cornersOnly([...pts, tail.at]);
        const key = way.map((p) => `${Math.round(p.x)} ${Math.round(p.y)} ${Math.round(p.z)}`).join();
        if (found.has(key) || !goes(leaving, tail, way, back)) continue;
        found.set(key, { pts: way, cost: costOf(leaving.way, way) - back + turn * LIKE_MM });
      }
    }
  }
  return [...found.values()].sort((a, b) => a.cost - b.cost).slice(0, MOST_WAYS);
}

type Axes = readonly [Xyz, Xyz, Xyz];

/** Right-angled ways between two places, a leg to an axis in every order; steps aside too small for that become a set. */
function* waysUnder(
  leaving: Leaving,
  axes: Axes,
  from: Xyz,
  under: Xyz,
): Generator<{ readonly pts: readonly Xyz[]; readonly turn: number }> {
  const left = sub3(under, from);
  const legs = axes.map((axis) => dot3(left, axis));
  const small = legs.map(
    (mm, i) => i > 0 && Math.abs(mm) < leaving.leastMm && Math.abs(dot3(axes[i] as Xyz, leaving.way)) < 0.05,
  );
  const by = axes.reduce((sum, axis, i) => (small[i] ? add3(sum, scale3(axis, legs[i] ?? 0)) : sum), {
    x: 0,
    y: 0,
    z: 0,
  });
  for (const [turn, order] of ORDERS.entries()) {
    const pts = [from];
    for (const i of order) {
      if (!small[i]) pts.push(add3(pts.at(-1) ?? from, scale3(axes[i] as Xyz, legs[i] ?? 0)));
    }
    for (const near of ['to', 'from'] as const) {
      const set = withSet(cornersOnly(pts), { by, clearMm: leaving.leastMm / 2, near });
      if (set) yield { pts: set, turn };
    }
  }
}

function costOf(way: Xyz, pts: readonly Xyz[]): number {
  let cost = 0;
  let before = way;
  for (let i = 1; i < pts.length; i++) {
    const [a, b] = [pts[i - 1] as Xyz, pts[i] as Xyz];
    const on = unit3(sub3(b, a));
    cost += distance3(a, b) + (sameWay(before, on) ? 0 : BEND_MM);
    before = on;
  }
  return cost;
}
