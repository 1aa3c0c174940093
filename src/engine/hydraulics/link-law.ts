import { constant } from '../../reference/figure.ts';
import { frictionFactor } from './friction.ts';
import type { NetLink, NetMethod } from './hydraulic-net.ts';

/** Loss of head along a link at a flow in m3/s, and how fast it grows with the flow. */
export interface LinkLoss {
  readonly headM: number;
  /** m per m3/s, above 0. */
  readonly slope: number;
}

/** What one link does to a flow. `lift` is what a pump adds at rest. */
export interface LinkLaw {
  readonly loss: (q: number) => LinkLoss;
  /** Loss over flow at a usual speed, without the pump's lift: a straight stand-in to start from. */
  readonly chord: number;
  readonly liftM: number;
}

/**
 * Velocity heads at the usual speed by which every link resists more than its law says, straight in the flow, so that one
 * without length or fittings still settles: a millionth of a metre, far under what any head is told to.
 */
const LEAST_HEADS = 1e-4;
/** Below this Reynolds number the loss is straight in the flow: any law is laminar there, and none is asked at 0. */
const LEAST_RE = 1;
/** Step of the Reynolds number for the slope of a friction law that is given as a function. */
const STEP = 1e-5;
/** m/s to start from. Any value settles; this one is near what pipes are sized for. */
const USUAL = 0.5;

const GRAVITY = constant('hydraulic-constants', 'gravity');

/** Loss of the link as a function of flow; it always rises, so that a net has one answer. */
export function linkLaw(link: NetLink, viscosityM2PerS: number, method: NetMethod): LinkLaw {
  const bore = link.boreMm / 1000;
  const area = (Math.PI / 4) * bore * bore;
  const reOf = bore / (area * viscosityM2PerS);
  const rough = link.roughnessMm / link.boreMm;
  const friction = method.friction ?? frictionFactor;
  const heads = 1 / (2 * (method.gravity ?? GRAVITY) * area * area);
  const slender = link.lengthM / bore;
  const perM3 = (link.pump?.r ?? 0) * 1e6;
  const liftM = link.pump?.h0M ?? 0;
  const least = LEAST_HEADS * heads * USUAL * area;
  const square = heads * link.k + perM3;
  const tube = (size: number): LinkLoss => {
    if (slender === 0) return { headM: 0, slope: 0 };
    const re = Math.max(size * reOf, LEAST_RE);
    const f = friction(re, rough, link.id);
    const scale = heads * slender;
    if (re === LEAST_RE) {
      const slope = (scale * f * LEAST_RE) / reOf;
      return { headM: slope * size, slope };
    }
    const bent = (friction(re * (1 + STEP), rough, link.id) - f) / (re * STEP);
    return { headM: scale * f * size * size, slope: scale * size * (2 * f + re * bent) };
  };
  const loss = (q: number): LinkLoss => {
    const size = Math.abs(q);
    const { headM, slope } = tube(size);
    const all = headM + (square * size + least) * size;
    // A law that dips where flow turns turbulent must not turn the way down into a way up.
    return { headM: Math.sign(q) * all - liftM, slope: Math.max(slope + 2 * square * size, 0) + least };
  };
  const usual = USUAL * area;
  return { loss, chord: (loss(usual).headM + liftM) / usual, liftM };
}
