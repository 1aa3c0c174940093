import { services } from '../../catalogue/services.ts';
import type { Connection } from '../../plan/records/pipework.ts';

const isUp = (t: Connection): number => Number(t.facing === 'up');

/** Left to right, as one faces the thing; those one over another from the top. What leaves at the top comes last. */
export const inOrder = (tails: readonly Connection[]): readonly Connection[] =>
  [...tails].sort((a, b) => isUp(a) - isUp(b) || a.at.x - b.at.x || b.at.z - a.at.z || (a.id < b.id ? -1 : 1));

/** All tails leave the underside, but for what leaves at the top: then their places are across and out, and a picture of it from above tells all. */
export const isUnderside = (tails: readonly Connection[]): boolean =>
  tails.every((t) => t.facing === 'down' || isUp(t) === 1);

/** Changes places with its neighbour: what is at a place goes there, the places themselves stay. */
export function swapped(tails: readonly Connection[], id: string, by: -1 | 1): Connection[] {
  const row = inOrder(tails);
  const at = row.findIndex((t) => t.id === id);
  const [a, b] = [row[at], row[at + by]];
  if (!a || !b) return [...tails];
  return tails.map((t) => (t.id === a.id ? { ...t, at: b.at } : t.id === b.id ? { ...t, at: a.at } : t));
}

/** A further tail of a service, right of the last one where there is room. */
export function withTail(
  tails: readonly Connection[],
  service: string,
  widthMm: number,
  depthMm: number,
): Connection[] {
  const kind = services.get(service);
  let id = service;
  for (let n = 2; tails.some((t) => t.id === id); n++) id = `${service}${n}`;
  const right = Math.max(-widthMm / 2, ...tails.map((t) => t.at.x));
  const at = { x: Math.min(widthMm / 2, (right + widthMm / 2) / 2), y: depthMm / 2, z: 0 };
  return [...tails, { id, service, label: kind?.label ?? service, size: null, at, facing: 'down' }];
}
