import { readingOf } from '../../catalogue/reading-kinds.ts';
import type { Point } from '../../plan/records/pipework.ts';
import type { Given } from '../given.ts';
import { bar, reducersOn } from './reducers.ts';
import { inletsOf, isNewWay, type Way, wayTo, wholeWay } from './way-back.ts';

/** What the cold of an unvented vessel passes, in the order it wants to be passed. */
export const PARTS = ['strainer', 'reducer', 'check', 'relief'] as const;
export type Part = (typeof PARTS)[number];
/** Seen on the way, told not to be there, or neither: the way is not drawn whole. */
export type Had = 'there' | 'missing' | 'unseen';

export interface Inlet {
  readonly vessel: Point;
  readonly way: Way;
  readonly isNew: boolean;
  readonly has: Readonly<Record<Part, Had>>;
  /** A check valve the water meets before a reducer, as drawn. */
  readonly checkFirst: boolean;
}

const AS_ITEM: Readonly<Record<string, Part>> = {
  strainer: 'strainer',
  'pressure-reducer': 'reducer',
  'check-valve': 'check',
  'double-check': 'check',
};
const IN_GROUP: Readonly<Record<string, Part>> = { hasStrainer: 'strainer', hasCheck: 'check', hasRelief: 'relief' };

function partsOn(way: Way): { met: Part[]; told: Set<Part> } {
  const met: Part[] = [];
  const told = new Set<Part>();
  for (const s of way.steps) {
    const part = s.is === 'item' ? AS_ITEM[s.item.kind] : undefined;
    if (part) met.push(part);
    if (s.is !== 'point' || s.point.kind !== 'inlet-group') continue;
    const { fields } = s.point;
    for (const [key, held] of Object.entries(IN_GROUP)) if (fields[key] === false) told.add(held);
    if (fields.hasStrainer !== false) met.push('strainer');
    met.push('reducer');
    if (fields.hasCheck !== false) met.push('check');
    if (fields.hasRelief !== false) met.push('relief');
  }
  return { met, told };
}

function inletOf(given: Given, vessel: Point): Inlet | null {
  const [at] = inletsOf(given, vessel);
  if (at === undefined) return null;
  const way = wayTo(given, vessel, at);
  const { met, told } = partsOn(way);
  const whole = wholeWay(way);
  const had = (part: Part): Had => {
    if (met.includes(part)) return 'there';
    if (told.has(part)) return 'missing';
    // No single valve of the catalogue is an expansion relief, so only a group can be without one.
    return whole && part !== 'relief' ? 'missing' : 'unseen';
  };
  const [check, reducer] = [met.indexOf('check'), met.indexOf('reducer')];
  return {
    vessel,
    way,
    isNew: vessel.option !== null || isNewWay(given, way),
    has: { strainer: had('strainer'), reducer: had('reducer'), check: had('check'), relief: had('relief') },
    checkFirst: check >= 0 && reducer >= 0 && check < reducer,
  };
}

const known = new WeakMap<Given, readonly Inlet[]>();

/** Cold inlets of the unvented vessels that stand. */
export function inletsOfVessels(given: Given): readonly Inlet[] {
  const kept = known.get(given);
  if (kept) return kept;
  const found = Object.values(given.plan.points)
    .filter((p) => (p.kind === 'cylinder' || p.kind === 'preheat-vessel') && p.fields.unvented !== false)
    .filter((p) => given.network.alive.has('points', p.id))
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .flatMap((p) => inletOf(given, p) ?? []);
  known.set(given, found);
  return found;
}

/** Standing pressure of the main, bar: as read on the day, else as told at its stop tap; null where neither is. */
export function standingBar(given: Given, way: Way): number | null {
  const read = readingOf(given.plan, 'mains-standing')?.value;
  if (read !== undefined) return read;
  return way.origin.is === 'main' ? bar(way.origin.point.fields.standingBar) : null;
}

/** Highest pressure that can stand at the end of a way, bar: the least of what its reducers let by and what the main has. */
export function arrivingBar(given: Given, way: Way): { readonly bar: number; readonly by: string } | null {
  const sets = reducersOn(given, way).flatMap((r) => (r.setBar === null ? [] : [{ bar: r.setBar, by: r.say }]));
  const standing = standingBar(given, way);
  const all = standing === null ? sets : [...sets, { bar: standing, by: 'the main' }];
  return all.reduce<{ bar: number; by: string } | null>((a, b) => (a !== null && a.bar <= b.bar ? a : b), null);
}
