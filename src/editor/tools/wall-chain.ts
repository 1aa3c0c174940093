import { add, cross, direction, distance, dot, left, scale, sub } from '../../geometry/vec.ts';
import type { Xy } from '../../plan/records/parts.ts';
import type { Sizes } from '../editor-api.ts';

/** One wall as it was told: turned so much from the wall before it, anticlockwise, and so long. */
export interface ToldWall {
  readonly turnDeg: number;
  readonly mm: number;
  /** Between which lines of the walls at its ends the length was measured. */
  readonly sizes: Sizes;
  readonly thicknessMm: number;
}

/** Walls told one after the other, from a place and a way; the first turns from `headingDeg`. */
export interface WallChain {
  readonly start: Xy;
  readonly headingDeg: number;
  readonly walls: readonly ToldWall[];
  /** From the start to the face of the wall it stands in, along the first wall; null where it stands in none. */
  readonly startInMm: number | null;
}

/** How far the end of a chain is from its start: along its last wall and square to that. */
export interface ClosingError {
  readonly mm: number;
  readonly alongMm: number;
  readonly acrossMm: number;
  /** Length of all the walls together. */
  readonly lengthMm: number;
}

/** Turns nearer to straight on or straight back than this have no corner that a length could be taken to. */
const LEAST_SIN = 0.1;

const inRange = (deg: number): number => ((((deg + 180) % 360) + 360) % 360) - 180;

/** The way each wall goes, degrees anticlockwise from x. */
export function waysOf({ headingDeg, walls }: WallChain): number[] {
  let way = headingDeg;
  return walls.map(({ turnDeg }) => {
    way += turnDeg;
    return way;
  });
}

/** On which side the walls close a space in: +1 left, -1 right. Walls that do not turn are told from the right, as walked. */
function insideOf({ walls }: WallChain): 1 | -1 {
  const turned = walls.slice(1).reduce((sum, w) => sum + inRange(w.turnDeg), 0);
  return turned > 0 ? 1 : -1;
}

/** From the corner of the middle lines to the corner of the inner faces, along a wall; `deg` is the turn to the inside. */
function inwards(own: ToldWall, other: ToldWall, deg: number): number {
  const a = (deg * Math.PI) / 180;
  const sin = Math.sin(a);
  return Math.abs(sin) < LEAST_SIN ? 0 : (other.thicknessMm - own.thicknessMm * Math.cos(a)) / 2 / sin;
}

interface Ends {
  readonly start: number;
  readonly end: number;
}

/** What of a wall lies between the corner of the middle lines and that of the inner faces, at both its ends. */
function endsOf(chain: WallChain, i: number, closed: boolean): Ends {
  const { walls, startInMm } = chain;
  const own = walls[i];
  if (!own) return { start: 0, end: 0 };
  const side = insideOf(chain);
  const first = walls[0] ?? own;
  const ways = waysOf(chain);
  const before = walls[i - 1];
  const after = walls[i + 1];
  const round = side * inRange((ways[0] ?? 0) - (ways[walls.length - 1] ?? 0));
  const last = walls[walls.length - 1] ?? own;
  // An end that meets nothing yet is taken to meet a wall like itself at a right angle.
  const open = own.thicknessMm / 2;
  const start = before
    ? inwards(own, before, side * inRange(own.turnDeg))
    : closed
      ? inwards(own, last, round)
      : (startInMm ?? open);
  const end = after ? inwards(own, after, side * inRange(after.turnDeg)) : closed ? inwards(own, first, round) : open;
  return { start, end };
}

/** Length along the middle line of a wall that was measured inside, outside or along it; never less than nothing. */
function middleLength(chain: WallChain, i: number, closed: boolean): number {
  const wall = chain.walls[i];
  if (!wall || wall.sizes === 'middle') return wall?.mm ?? 0;
  const { start, end } = endsOf(chain, i, closed);
  return Math.max(0, wall.sizes === 'inside' ? wall.mm + start + end : wall.mm - start - end);
}

/** Corners of the middle lines, one more than there are walls. `closed`: the last wall is known to meet the first. */
export function layChain(chain: WallChain, closed = false): Xy[] {
  const corners: Xy[] = [chain.start];
  let at = chain.start;
  for (const [i, deg] of waysOf(chain).entries()) {
    at = add(at, scale(direction(deg), middleLength(chain, i, closed)));
    corners.push(at);
  }
  return corners;
}

/** The same walls with their lengths along the middle, as they lie now. */
export function asLaid(chain: WallChain, corners: readonly Xy[]): WallChain {
  let way = chain.headingDeg;
  const walls = chain.walls.map((wall, i): ToldWall => {
    const [a, b] = [corners[i] ?? chain.start, corners[i + 1] ?? chain.start];
    const d = sub(b, a);
    const deg = (Math.atan2(d.y, d.x) * 180) / Math.PI;
    const turnDeg = distance(a, b) === 0 ? wall.turnDeg : inRange(deg - way);
    way += turnDeg;
    return { ...wall, turnDeg, mm: distance(a, b), sizes: 'middle' };
  });
  return { ...chain, start: corners[0] ?? chain.start, walls };
}

/** What is missing at the end of a chain that should be back where it began; undefined with fewer than two walls. */
export function closingError(corners: readonly Xy[]): ClosingError | undefined {
  const [first, last, before] = [corners[0], corners.at(-1), corners.at(-2)];
  if (!first || !last || !before || corners.length < 3) return undefined;
  const off = sub(last, first);
  const l = distance(last, before);
  const way = l === 0 ? { x: 1, y: 0 } : scale(sub(last, before), 1 / l);
  const lengthMm = corners.reduce((sum, p, i) => sum + distance(p, corners[i - 1] ?? p), 0);
  return { mm: Math.hypot(off.x, off.y), alongMm: dot(off, way), acrossMm: cross(way, off), lengthMm };
}

/**
 * Spreads the closing error: every wall is changed by the error in proportion to its own length, so that the last corner is
 * the first one (the compass rule of surveying).
 */
export function spreadError(corners: readonly Xy[]): Xy[] {
  const [first, last] = [corners[0], corners.at(-1)];
  const error = closingError(corners);
  if (!first || !last || !error || error.lengthMm === 0) return [...corners];
  const off = sub(last, first);
  let gone = 0;
  return corners.map((p, i) => {
    gone += distance(p, corners[i - 1] ?? p);
    return i === 0 || i === corners.length - 1 ? first : sub(p, scale(off, gone / error.lengthMm));
  });
}

/** The last wall takes the whole error: it ends where the first began. */
export const lastTakesError = (corners: readonly Xy[]): Xy[] => [...corners.slice(0, -1), ...corners.slice(0, 1)];

/** An error larger than this part of the way round is no error of measuring: a wall is missing. */
const MOST_OF_LENGTH = 0.05;

/** Is it small enough to be an error of measuring? Then it may be spread or given to the last wall. */
export const isMeasuring = ({ mm, lengthMm }: ClosingError): boolean => mm <= lengthMm * MOST_OF_LENGTH;

/** From a place within a wall's body to the face it comes out at, going one way; null where it stands outside. */
export function outOf(a: Xy, b: Xy, thicknessMm: number, p: Xy, wayDeg: number): number | null {
  const l = distance(a, b);
  if (l === 0) return null;
  const along = scale(sub(b, a), 1 / l);
  const [s, off] = [dot(sub(p, a), along), dot(sub(p, a), left(along))];
  const half = thicknessMm / 2;
  if (Math.abs(off) > half + 1 || s < -half - 1 || s > l + half + 1) return null;
  const across = dot(direction(wayDeg), left(along));
  return Math.abs(across) < LEAST_SIN ? null : Math.max(0, half - Math.sign(across) * off) / Math.abs(across);
}
