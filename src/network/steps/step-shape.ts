import { add3, dot3, length3, scale3, sub3, unit3 } from '../../geometry/vec.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';

/**
 * How a pipe gets round something. `set`: two bends, and it carries on beside where it ran. `passover`: out, over and back.
 * `kick`: a small set near an end. `swanNeck`: out and back near an end.
 */
export type StepKind = 'set' | 'passover' | 'kick' | 'swanNeck';
export const STEP_KINDS: readonly StepKind[] = ['set', 'passover', 'kick', 'swanNeck'];

/** Out and back again, so that both ends of the leg stay where they are. */
export const comesBack = (kind: StepKind): boolean => kind === 'passover' || kind === 'swanNeck';

/** The lengths a bender is set by. */
export interface StepFigures {
  /** Centre to centre, across the leg. */
  readonly offsetMm: number;
  /** Along the slope: offset / sin(angle). */
  readonly travelMm: number;
  /** What one slope takes of the leg: offset / tan(angle), nothing at 90. */
  readonly runMm: number;
}

const SQUARE_DEG = 90;
const rad = (deg: number): number => (deg * Math.PI) / 180;

/** Offset by trigonometry. The angle is that of one bend: over 0, at most 90. */
export function stepFigures(offsetMm: number, angleDeg: number): StepFigures {
  if (angleDeg >= SQUARE_DEG) return { offsetMm, travelMm: offsetMm, runMm: 0 };
  const a = rad(angleDeg);
  return { offsetMm, travelMm: offsetMm / Math.sin(a), runMm: offsetMm / Math.tan(a) };
}

export interface Step {
  readonly leg: string;
  readonly kind: StepKind;
  /** Middle of the place that is cleared, from end a of the leg. */
  readonly alongMm: number;
  /** Across the leg, mm. */
  readonly offset: Xyz;
  /** How much of the leg is clear of its old line about that place. */
  readonly overMm: number;
  readonly angleDeg: number;
  /** Which part of the leg is shifted by a set or kick. */
  readonly toward?: 'a' | 'b' | undefined;
}

/** New corners of a step, from end a on, and the share of the leg it takes. */
export interface StepShape {
  readonly corners: readonly Xyz[];
  readonly fromMm: number;
  readonly toMm: number;
}

/** The part of a leg a step takes, from end a, mm. */
export function stepSpan(step: Pick<Step, 'kind' | 'alongMm' | 'overMm' | 'toward'>, runMm: number): [number, number] {
  const { kind, alongMm, overMm, toward } = step;
  const [lo, hi] = [alongMm - overMm / 2, alongMm + overMm / 2];
  if (comesBack(kind)) return [lo - runMm, hi + runMm];
  return toward === 'a' ? [hi, hi + runMm] : [lo - runMm, lo];
}

/** Where the corners of a step lie on a leg from `a` to `b`. Nothing is asked of the room there is for it. */
export function stepShape(step: Step, a: Xyz, b: Xyz): StepShape {
  const { runMm } = stepFigures(length3(step.offset), step.angleDeg);
  const way = unit3(sub3(b, a));
  const on = (mm: number): Xyz => add3(a, scale3(way, mm));
  const off = (mm: number): Xyz => add3(on(mm), step.offset);
  const [fromMm, toMm] = stepSpan(step, runMm);
  if (!comesBack(step.kind)) {
    const corners = step.toward === 'a' ? [off(fromMm), on(toMm)] : [on(fromMm), off(toMm)];
    return { corners, fromMm, toMm };
  }
  const [near, far] = [off(fromMm + runMm), off(toMm - runMm)];
  // Without a straight piece over it the two slopes meet in one bend.
  const over = step.overMm <= COINCIDENT_MM ? [near] : [near, far];
  return { corners: [on(fromMm), ...over, on(toMm)], fromMm, toMm };
}

/** Cosine above which an offset goes along the pipe rather than across it; a pipe that falls is not quite level. */
const ALONG = 0.2;

/** Why a shape cannot stand on a leg so long, in words; null where it can. */
export function shapeFault(step: Step, lengthMm: number, a: Xyz, b: Xyz): string | null {
  const offsetMm = length3(step.offset);
  if (offsetMm <= COINCIDENT_MM) return 'A step needs an offset.';
  if (Math.abs(dot3(unit3(step.offset), unit3(sub3(b, a)))) > ALONG)
    return 'That offset goes along the pipe. A step goes across it.';
  const { runMm } = stepFigures(offsetMm, step.angleDeg);
  if (comesBack(step.kind) && step.overMm <= COINCIDENT_MM && runMm === 0)
    return 'With square bends it needs a length over what it passes.';
  const [from, to] = stepSpan(step, runMm);
  const needs = Math.ceil(to - from);
  if (needs > lengthMm - 2 * COINCIDENT_MM)
    return `There is no room for it: it takes ${needs} of the leg, which is ${Math.floor(lengthMm)} long.`;
  if (from < COINCIDENT_MM || to > lengthMm - COINCIDENT_MM)
    return `It would run past the end of the leg: it takes ${needs} of it, less near an end.`;
  return null;
}
