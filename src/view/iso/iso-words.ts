import { services } from '../../catalogue/services.ts';
import { sayTubeSize } from '../../catalogue/tubes.ts';
import type { DrawnLeg } from '../../drawing/pipes/drawn-leg.ts';
import { levelMark } from '../../drawing/text/say-level.ts';
import type { Selected } from '../../editor/editor-api.ts';
import { distance3 } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import { sayThing } from '../a11y/say-thing.ts';
import { nameOf } from '../panels/name-of.ts';

const LEVEL_MM = 0.5;
/** Off the upright by less than this part of its length it rises or drops. */
const UPRIGHT = 0.02;

function way(plan: Plan, leg: DrawnLeg): string {
  const [a, b] = [leg.placeA, leg.placeB];
  const dz = b.at.z - a.at.z;
  const from = levelMark(plan, a.at.z, a.storey);
  const upTo = levelMark(plan, b.at.z, b.storey);
  const over = a.storey === b.storey ? '' : ` on ${plan.storeys[b.storey]?.name ?? 'the other floor'}`;
  if (Math.abs(dz) < LEVEL_MM) return `level at ${from}`;
  const upright = Math.hypot(a.at.x - b.at.x, a.at.y - b.at.y) < UPRIGHT * Math.abs(dz);
  if (upright) return dz > 0 ? `up ${from} to ${upTo}${over}` : `down ${from} to ${upTo}${over}`;
  return `from ${from} to ${upTo}${over}`;
}

/** "Leg 3 of 9: gas 22, 1450 mm, up 500 to 1950". */
export function sayLeg(plan: Plan, leg: DrawnLeg, place: number, of: number): string {
  const service = services.get(leg.serviceKey)?.label ?? leg.serviceKey;
  if (leg.map === 'stretches') return `Pipe ${place} of ${of}: unseen stretch, ${leg.tag}`;
  const mm = Math.round(distance3(leg.placeA.at, leg.placeB.at));
  return `Pipe ${place} of ${of}: ${service} ${sayTubeSize(leg.record.tube)}, ${mm} mm, ${way(plan, leg)}`;
}

/** What was tapped, in a line. */
export function saySelected(plan: Plan, what: Selected): string {
  const more = sayThing(plan, what);
  return more === '' ? nameOf(plan, what) : `${nameOf(plan, what)}, ${more}`;
}

export const plural = (n: number, one: string): string => `${n} ${n === 1 ? one : `${one}s`}`;
