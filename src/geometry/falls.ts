import type { Plan } from '../plan/plan.ts';
import type { Xyz } from '../plan/records/parts.ts';
import type { Leg } from '../plan/records/pipework.ts';
import { COINCIDENT_MM } from '../plan/units.ts';
import { type Measured, placesOf } from './places.ts';

/** How one straight piece falls from its first end to its second. */
export interface Fall {
  /** Drop from first to second, mm; below zero where it climbs. */
  readonly dropMm: number;
  /** Length as seen from above. */
  readonly flatMm: number;
  /** Null for an upright piece, which has no gradient. */
  readonly mmPerM: number | null;
  readonly way: 'falls' | 'climbs' | 'level' | 'plumbDown' | 'plumbUp';
}

const MM_PER_M = 1000;

export function fallOf(a: Xyz, b: Xyz): Fall {
  const dropMm = a.z - b.z;
  const flatMm = Math.hypot(b.x - a.x, b.y - a.y);
  if (flatMm <= COINCIDENT_MM) {
    const way = dropMm > COINCIDENT_MM ? 'plumbDown' : dropMm < -COINCIDENT_MM ? 'plumbUp' : 'level';
    return { dropMm, flatMm, mmPerM: null, way };
  }
  const way = dropMm > COINCIDENT_MM ? 'falls' : dropMm < -COINCIDENT_MM ? 'climbs' : 'level';
  return { dropMm, flatMm, mmPerM: (dropMm / flatMm) * MM_PER_M, way };
}

/** A line of places taken piece by piece, in the order water is to run. */
export interface LineFall {
  readonly pieces: readonly Fall[];
  /** Drop from the first place to the last. */
  readonly dropMm: number;
  readonly flatMm: number;
  /** Least gradient of the pieces that are not upright; null where all are, or there is none. */
  readonly leastMmPerM: number | null;
  /** Places in `pieces` that climb: water stands below them. */
  readonly climbing: readonly number[];
}

export function lineFall(places: readonly Xyz[]): LineFall {
  const pieces = places.slice(1).map((b, i) => fallOf(places[i] ?? b, b));
  const gradients = pieces.flatMap((p) => (p.mmPerM === null ? [] : [p.mmPerM]));
  return {
    pieces,
    dropMm: pieces.reduce((sum, p) => sum + p.dropMm, 0),
    flatMm: pieces.reduce((sum, p) => sum + p.flatMm, 0),
    leastMmPerM: gradients.length === 0 ? null : Math.min(...gradients),
    climbing: pieces.flatMap((p, i) => (p.way === 'climbs' || p.way === 'plumbUp' ? [i] : [])),
  };
}

/** Fall of a leg from end `from` to the other, with the bounds that assumed heights leave. */
export interface LegFall extends Fall {
  readonly drop: Measured;
  /** Bounds of the gradient; null for an upright leg. */
  readonly gradient: Measured | null;
}

/** Undefined where an end has no place. */
export function legFall(plan: Plan, leg: Pick<Leg, 'a' | 'b'>, from: 'a' | 'b' = 'a'): LegFall | undefined {
  const first = plan.nodes[from === 'a' ? leg.a : leg.b];
  const second = plan.nodes[from === 'a' ? leg.b : leg.a];
  // The rise from the lower end to the upper is the drop from the upper to the lower.
  const ends = first && second && placesOf(plan, second, first);
  if (!ends) return undefined;
  const drop = ends.rise;
  const fall = fallOf(ends.b.at, ends.a.at);
  const perM = (mm: number) => (mm / fall.flatMm) * MM_PER_M;
  const gradient = fall.mmPerM === null ? null : { mm: perM(drop.mm), lo: perM(drop.lo), hi: perM(drop.hi) };
  return { ...fall, drop, gradient };
}
