import { type Capsule, capsuleGap } from '../../geometry/segments.ts';
import { add3, distance3, dot3, length3, scale3, sub3, unit3 } from '../../geometry/vec.ts';
import { stepShape } from '../../network/steps/step-shape.ts';
import type { Xyz } from '../../plan/records/parts.ts';

/** How far a pipe goes aside to clear something, and how much of it has to stay there, mm. */
export interface Clearing {
  readonly offsetMm: number;
  readonly overMm: number;
}

/** The pipe that steps, and the place on it that is to be cleared. */
export interface Stepping {
  readonly body: Capsule;
  readonly at: Xyz;
  readonly alongMm: number;
}

/** Further than this is another route. */
export const MOST_MM = 1000;
const STEP_MM = 1;
const LONGER_MM = 5;
const HAIR = 1e-6;

const rad = (deg: number): number => (deg * Math.PI) / 180;
/** A slope that leaves a straight piece this far beyond a round thing passes it as near as the straight piece does. */
export const beyond = (clearMm: number, angleDeg: number): number => clearMm * Math.tan(rad(angleDeg) / 2);
const up = (mm: number): number => Math.ceil(mm / LONGER_MM - HAIR) * LONGER_MM;

/** Pieces of a pass over something, out and back, as bodies. */
function pieces(of: Stepping, way: Xyz, clear: Clearing, angleDeg: number): Capsule[] {
  const { body, alongMm } = of;
  const step = {
    leg: '',
    kind: 'passover' as const,
    alongMm,
    offset: scale3(way, clear.offsetMm),
    overMm: clear.overMm,
    angleDeg,
  };
  const { corners } = stepShape(step, body.a, body.b);
  return corners.slice(1).map((b, i) => ({ a: corners[i] ?? b, b, radiusMm: body.radiusMm }));
}

/**
 * The least step one way that passes a round body as far off as is wanted, surface to surface; null where it does not come
 * clear that way within reach. Nothing to be cleared gives an offset of 0.
 */
export function clearOfBody(of: Stepping, other: Capsule, wanted: number, way: Xyz, angleDeg: number): Clearing | null {
  const { body, at } = of;
  const along = unit3(sub3(body.b, body.a));
  const its = sub3(other.b, other.a);
  const its1 = unit3(its);
  const D = body.radiusMm + other.radiusMm + wanted;
  const cos = length3(its) === 0 ? 0 : Math.abs(dot3(along, its1));
  const sin = Math.sqrt(Math.max(0, 1 - cos * cos));
  // As long as the other pipe lies along this one, at most; crossing it, only so far as it is near.
  const shadow = length3(its) * cos + 2 * D;
  const overMm = up(Math.min(shadow, sin > HAIR ? (2 * beyond(D, angleDeg)) / sin : shadow));
  const half = scale3(along, Math.max(overMm / 2, D));
  for (let mm = 0; mm <= MOST_MM; mm += STEP_MM) {
    const by = scale3(way, mm);
    const over: Capsule = { a: add3(sub3(at, half), by), b: add3(add3(at, half), by), radiusMm: body.radiusMm };
    if (capsuleGap(over, other).gapMm < wanted - HAIR) continue;
    if (mm === 0) return { offsetMm: 0, overMm };
    for (let longer = 0; longer <= MOST_MM; longer += LONGER_MM) {
      const found = { offsetMm: mm, overMm: overMm + longer };
      const clear = pieces(of, way, found, angleDeg).every((p) => capsuleGap(p, other).gapMm >= wanted - HAIR);
      if (clear) return found;
    }
    return null;
  }
  return null;
}

/** The least step one way that passes some corners of a squared body, each by so much of the pipe's middle line. */
export function clearOfCorners(
  of: Stepping,
  corners: readonly Xyz[],
  wanted: number,
  way: Xyz,
  angleDeg: number,
): (Clearing & { readonly alongMm: number }) | null {
  const along = unit3(sub3(of.body.b, of.body.a));
  const clear = of.body.radiusMm + wanted;
  const [aside, on] = [corners.map((c) => dot3(sub3(c, of.at), way)), corners.map((c) => dot3(sub3(c, of.at), along))];
  const offsetMm = Math.ceil(Math.max(...aside) + clear - HAIR);
  if (offsetMm <= 0 || offsetMm > MOST_MM) return null;
  const [lo, hi] = [Math.min(...on), Math.max(...on)];
  const overMm = up(hi - lo + 2 * beyond(clear, angleDeg));
  return { offsetMm, overMm, alongMm: of.alongMm + (lo + hi) / 2 };
}

export const stepping = (body: Capsule, at: Xyz): Stepping => ({ body, at, alongMm: distance3(body.a, at) });
