import { sameTube } from '../../network/network.ts';
import type { Vec } from '../display-list.ts';
import type { DrawnLeg } from './drawn-leg.ts';

/** What is seen where drawn legs meet. */
export interface Joint {
  readonly is: 'corner' | 'tee' | 'reducer' | 'straight' | 'end' | 'riser' | 'none';
  /** Legs that are not seen from their end, those that carry on from each other first. */
  readonly flat: readonly DrawnLeg[];
  readonly endOn: readonly DrawnLeg[];
}

/** Within this sine two legs are in line. */
const IN_LINE = 0.02;

/** Unit direction out of a vertex into a leg, in the view. */
export function outOf(leg: DrawnLeg, vertex: string): Vec {
  const [from, to] = leg.vertexA === vertex ? [leg.a, leg.b] : [leg.b, leg.a];
  const l = leg.lengthMm || 1;
  return [(to[0] - from[0]) / l, (to[1] - from[1]) / l];
}

export const parallel = (a: Vec, b: Vec): boolean => Math.abs(a[0] * b[1] - a[1] * b[0]) < IN_LINE;

export function jointOf(vertex: string, legs: readonly DrawnLeg[]): Joint {
  const flat = legs.filter((leg) => !leg.endOn);
  const endOn = legs.filter((leg) => leg.endOn);
  const joint = (is: Joint['is']): Joint => ({ is, flat, endOn });
  if (endOn.length > 0) return joint('riser');
  const [one, other, ...more] = flat;
  if (!one) return joint('none');
  if (!other) return joint('end');
  if (more.length > 0) return joint('tee');
  if (!parallel(outOf(one, vertex), outOf(other, vertex))) return joint('corner');
  const changes = !sameTube(one.record.tube, other.record.tube) && one.size !== other.size;
  return joint(changes ? 'reducer' : 'straight');
}
