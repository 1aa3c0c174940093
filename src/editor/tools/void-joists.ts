import type { AssumedJoists } from '../../catalogue/void-choices.ts';
import { grid } from '../../geometry/joist-lines.ts';
import { add, cross, distance, dot, left, scale, sub, unit } from '../../geometry/vec.ts';
import type { Joists } from '../../plan/records/building.ts';
import type { HeightRef, Xy } from '../../plan/records/parts.ts';

/** What was told of the joists of a void; null where nobody knows. */
export interface ToldJoists {
  readonly kind: 'ceiling' | 'floor';
  readonly storey: string;
  readonly outline: readonly Xy[];
  readonly wayDeg: number;
  readonly centresMm: number | null;
  readonly depthMm: number | null;
}

/** The same way, from 0 up to below 180 degrees. */
export const wayOf = (deg: number): number => ((deg % 180) + 180) % 180;

/** Two ways that nobody on a ladder tells apart. */
const SAME_WAY_DEG = 1;

export function sameWay(a: number, b: number): boolean {
  const apart = Math.abs(wayOf(a) - wayOf(b));
  return Math.min(apart, 180 - apart) <= SAME_WAY_DEG;
}

/** Least place of an outline across its joists, as the way across and how far along it. */
export function lowestAcross(outline: readonly Xy[], wayDeg: number): { across: Xy; at: number } {
  const { across } = grid({ wayDeg });
  return { across, at: Math.min(...outline.map((p) => dot(p, across))) };
}

/** The first joist from one side of an outline: its centreline so far from the least edge across. */
export function firstFrom(outline: readonly Xy[], wayDeg: number, mm: number): Xy {
  const { across, at } = lowestAcross(outline, wayDeg);
  const [corner] = outline;
  return corner ? add(corner, scale(across, at + mm - dot(corner, across))) : { x: 0, y: 0 };
}

/** How far the joist nearest to the least edge stands off it, within the outline. */
export function offFirst(outline: readonly Xy[], joists: Joists): number {
  const { across, at } = lowestAcross(outline, joists.wayDeg);
  const off = dot(joists.first, across) - at;
  return joists.centresMm > 0 ? ((off % joists.centresMm) + joists.centresMm) % joists.centresMm : off;
}

/** Underside of joists over a ceiling, or under the deck of a floor: null under a floor whose joists have no depth told. */
export function underside(
  told: Pick<ToldJoists, 'kind' | 'storey' | 'depthMm'>,
  usual: AssumedJoists,
): HeightRef | null {
  const { kind, storey, depthMm } = told;
  if (kind === 'ceiling') {
    const { mm, lo, hi } = usual.underside;
    return { from: 'ceiling', of: storey, mm, assumed: { lo, hi } };
  }
  if (depthMm === null) return null;
  const { mm, lo, hi } = usual.deck;
  return { from: 'floor', of: storey, mm: -depthMm - mm, assumed: { lo: -depthMm - hi, hi: -depthMm - lo } };
}

/** Joists as they were told; whatever was not is taken as usual, and named in `assumed`. */
export function joistsFor(told: ToldJoists, usual: AssumedJoists): Joists {
  const wayDeg = wayOf(told.wayDeg);
  const bottom = underside(told, usual);
  return {
    kind: 'solid',
    wayDeg,
    centresMm: told.centresMm ?? usual.centresMm,
    first: firstFrom(told.outline, wayDeg, usual.offWallMm + usual.breadthMm / 2),
    depthMm: told.depthMm,
    breadthMm: usual.breadthMm,
    bottom,
    spanMm: null,
    exceptions: [],
    assumed: ['kind', ...(told.centresMm === null ? (['centresMm'] as const) : []), 'first', 'breadthMm', 'bottom'],
  };
}

/** The two ways that lie square in an outline, and the one across which it is narrower: joists take the short span. */
export interface Ways {
  readonly acrossDeg: number;
  readonly alongDeg: number;
  readonly short: 'across' | 'along';
}

const degrees = (way: Xy): number => wayOf((Math.atan2(way.y, way.x) * 180) / Math.PI);

/** `seen` gives a way of the house as it lies on the page. Square to the longest side, so that a house askew has its own. */
export function waysOf(outline: readonly Xy[], seen: (way: Xy) => readonly [number, number]): Ways {
  let longest: Xy = { x: 1, y: 0 };
  let most = 0;
  outline.forEach((p, i) => {
    const q = outline[(i + 1) % outline.length] ?? p;
    if (distance(p, q) > most) [most, longest] = [distance(p, q), unit(sub(q, p))];
  });
  const extent = (way: Xy): number => {
    const far = outline.map((p) => dot(p, way));
    return Math.max(...far) - Math.min(...far);
  };
  const [sx, sy] = seen(longest);
  const level = Math.abs(sx) >= Math.abs(sy);
  const [across, along] = level ? [longest, left(longest)] : [left(longest), longest];
  const short = extent(across) <= extent(along) ? 'across' : 'along';
  return { acrossDeg: degrees(across), alongDeg: degrees(along), short };
}

/** An outline that closes round something. */
export function encloses(outline: readonly Xy[]): boolean {
  const area = outline.reduce((sum, p, i) => sum + cross(p, outline[(i + 1) % outline.length] ?? p), 0);
  return outline.length > 2 && Math.abs(area) >= 1;
}
