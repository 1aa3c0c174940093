import { dot3 } from '../geometry/vec.ts';
import type { Xyz } from '../plan/records/parts.ts';
import { figure, word } from '../reference/figure.ts';

export type AngleClass = 0 | 45 | 90;

const TABLE = 'angle-tolerance';
const CLASSES: readonly AngleClass[] = [0, 45, 90];

const known = new Map<string, number>();

function toleranceOf(tubeKind: string): number {
  const found = known.get(tubeKind) ?? readTolerance(tubeKind);
  known.set(tubeKind, found);
  return found;
}

function readTolerance(tubeKind: string): number {
  const own = figure(TABLE, tubeKind, 'tolerance');
  const found = own.is === 'known' ? own : figure(TABLE, 'other', 'tolerance');
  return found.is === 'known' ? found.lo : 0;
}

/** Of two kinds that meet, the one that gives less decides. */
export const tolerance = (kinds: readonly string[]): number => Math.min(...kinds.map(toleranceOf));

export function canBePulled(tubeKind: string): boolean {
  const found = word(TABLE, tubeKind, 'pulled');
  return found.is === 'known' && found.word === 'yes';
}

export function hasBranchesAt45(tubeKind: string): boolean {
  const found = word(TABLE, tubeKind, 'branch45');
  return found.is === 'known' && found.word === 'yes';
}

/** Degrees by which the way through turns: 0 goes straight on. Both vectors are unit and point out of the corner. */
export function turnBetween(intoOne: Xyz, intoOther: Xyz): number {
  const cos = Math.max(-1, Math.min(1, -dot3(intoOne, intoOther)));
  return (Math.acos(cos) * 180) / Math.PI;
}

/** The nearest of 0, 45 and 90 within the tolerance; undefined where no made fitting turns so far. */
export function angleClass(turnDeg: number, toleranceDeg: number): AngleClass | undefined {
  // A rounding error of the place must not decide at the very edge of the tolerance.
  return CLASSES.find((c) => Math.abs(turnDeg - c) <= toleranceDeg + 1e-6);
}

export const sayDegrees = (deg: number): string => `${Math.round(deg * 10) / 10} degrees`;
