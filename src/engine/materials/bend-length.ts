import { figure } from '../../reference/figure.ts';
import { type Editions, edition } from '../../reference/tables.ts';
import { exact, leastSure, type Quantity } from '../../report/quantity.ts';
import type { Cite, Working, WorkingStep } from '../../report/working.ts';
import { cannot, citesOf, quantityOf, step } from '../gas/said.ts';

const rad = (deg: number): number => (deg * Math.PI) / 180;

/** Length of tube in a bend: centre-line radius (mm) by the angle it turns (degrees). */
export const bendArc = (radiusMm: number, deg: number): number => radiusMm * rad(deg);
/** What each leg gives up to the bend, from the corner of the two centre lines to where the tube turns, mm. */
export const bendSetback = (radiusMm: number, deg: number): number => radiusMm * Math.tan(rad(deg) / 2);
/** How much shorter the tube is than its two legs measured to the corner, mm. */
export const bendGain = (radiusMm: number, deg: number): number =>
  2 * bendSetback(radiusMm, deg) - bendArc(radiusMm, deg);

export interface BendAsk {
  readonly kind: string;
  /** Spoken size: "15". */
  readonly size: string;
  /** How far the pipe turns, degrees: 90 for a square bend. */
  readonly deg: number;
  /** Centre-line radius of the former, mm, as measured; null for that of the table. */
  readonly radiusMm: number | null;
  /** Both legs to the corner of the centre lines, mm; null where only the bend is asked for. */
  readonly legsMm: readonly [number, number] | null;
  readonly editions: Editions;
}

const title = 'Length of a bend';
const SQUARE = 90;

interface Radius {
  readonly radius: Quantity | null;
  readonly how: string;
  readonly cites: readonly Cite[];
}

/** The measured radius goes first. No table lists formers for anything but copper, nor every size of that. */
function radiusOf({ kind, size, radiusMm, editions }: BendAsk): Radius {
  if (radiusMm !== null) {
    return { radius: radiusMm > 0 ? exact(radiusMm, 'mm', 1, 'page') : null, how: 'as measured', cites: [] };
  }
  const of = kind === 'copper' ? edition('bend-radius', editions) : undefined;
  const found = of && figure(of, size, 'radius');
  if (found?.is !== 'known') return { radius: null, how: '', cites: [] };
  return { radius: quantityOf(found), how: of?.title ?? '', cites: citesOf(found.cite) };
}

/** The steps of a cut length, or why there is none. */
function cutSteps(legs: readonly [number, number], setback: number, gain: Quantity): WorkingStep | string {
  const [a, b] = legs;
  if (!(a >= setback && b >= setback)) return `legs of at least ${setback.toFixed(1)} mm to turn this bend in`;
  return step('Length to cut', `${a} + ${b} less the saving`, exact(a + b - gain.lo, 'mm', 1, gain.sureness));
}

/**
 * Length of tube in a bend, mm. Null for an angle that is no bend (0 or less, 180 or more), a tube without a radius in the
 * table and none measured, a radius the tube cannot take, or legs too short to hold it.
 */
export function bendLength(ask: BendAsk): Working {
  const { kind, size, deg, legsMm } = ask;
  if (!(deg > 0 && deg < 180)) return cannot(title, ['an angle above 0 and below 180 degrees']);
  const { radius, how, cites } = radiusOf(ask);
  if (!radius) return cannot(title, [`the radius of the former for ${kind} ${size}`]);
  const steps = [step('Radius on the centre line', how, radius, cites)];
  const assumed: string[] = [];
  const least = figure('bend-least-radius', `${kind} ${size}`, 'radius');
  if (least.is === 'known' && radius.lo < least.lo) {
    steps.push(step('Tightest the tube takes', 'on the centre line', quantityOf(least), citesOf(least.cite)));
    if (least.sureness !== 'memory') return cannot(title, [`a radius of at least ${least.lo} mm`], steps);
    assumed.push(`the former bends it tighter than the ${least.lo} mm that is remembered: measure the former`);
  }
  const sure = leastSure('derived', radius.sureness);
  const mm = (of: number): Quantity => exact(of, 'mm', 1, sure);
  const [arc, setback, gain] = [bendArc, bendSetback, bendGain].map((f) => f(radius.lo, deg)) as [
    number,
    number,
    number,
  ];
  steps.push(
    step('In the bend', `radius x ${rad(deg).toFixed(3)}`, mm(arc)),
    step('Each leg gives up', 'radius x tangent of half the angle', mm(setback)),
    step('Saving against centre to centre', 'twice that less the bend', mm(gain)),
  );
  const thumb = kind === 'copper' && deg === SQUARE ? figure('bend-saving', size, 'mm') : undefined;
  if (thumb?.is === 'known') {
    steps.push(step('Saving by the rule of thumb', 'beside it', quantityOf(thumb), citesOf(thumb.cite)));
  }
  const cut = legsMm === null ? null : cutSteps(legsMm, setback, mm(gain));
  if (typeof cut === 'string') return cannot(title, [cut], steps);
  return { title, steps: cut ? [...steps, cut] : steps, result: mm(arc), missing: [], assumed };
}
