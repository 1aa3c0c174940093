import { joistLines } from '../../geometry/joist-lines.ts';
import { cross, direction, dot, sub } from '../../geometry/vec.ts';
import type { Joists, Void } from '../../plan/records/building.ts';
import type { Xy } from '../../plan/records/parts.ts';

/** Both ends of a joist's span as distances along the way the joists run, from the first joist's place. */
export interface JoistEnds {
  readonly lo: number;
  readonly hi: number;
}

/** How far along its joist a place lies, from the place told of the first joist. */
export const alongJoist = (joists: Joists, p: Xy): number => dot(sub(p, joists.first), direction(joists.wayDeg));

function middleOf(space: Void, joists: Joists, index: number, p: Xy, byBearings: boolean): number {
  const here = alongJoist(joists, p);
  if (byBearings) {
    const way = direction(joists.wayDeg);
    const met = space.bearings.flatMap(({ a, b }) => {
      const e = sub(b, a);
      const det = cross(way, e);
      if (det === 0) return [];
      const u = cross(sub(a, p), way) / det;
      return u >= 0 && u <= 1 ? [here + cross(sub(a, p), e) / det] : [];
    });
    return (Math.max(...met.filter((s) => s <= here)) + Math.min(...met.filter((s) => s > here))) / 2;
  }
  const line = joistLines(space)
    .filter((l) => l.index === index)
    .map((l) => [alongJoist(joists, l.a), alongJoist(joists, l.b)] as const)
    .find(([s, t]) => here >= Math.min(s, t) - 1 && here <= Math.max(s, t) + 1);
  return line ? (line[0] + line[1]) / 2 : here;
}

/** The ends of the span a place was measured in: `toNearEndMm` and `spanMm` as the crossing gives them. */
export function joistEnds(
  space: Void,
  joists: Joists,
  met: {
    readonly index: number;
    readonly at: Xy;
    readonly toNearEndMm: number;
    readonly spanMm: number;
    readonly ends: string;
  },
): JoistEnds {
  const here = alongJoist(joists, met.at);
  const nearIsLo = here <= middleOf(space, joists, met.index, met.at, met.ends === 'bearings');
  const lo = nearIsLo ? here - met.toNearEndMm : here + met.toNearEndMm - met.spanMm;
  return { lo, hi: lo + met.spanMm };
}

/** "x 3400 to 4060": a band along the joists in figures of the plan, where they run along one of its axes. */
export function sayBand(joists: Joists, ends: JoistEnds, band: readonly [number, number]): string | null {
  const way = direction(joists.wayDeg);
  const axis = way.y === 0 ? 'x' : way.x === 0 ? 'y' : null;
  if (axis === null) return null;
  const at = band.map((mm) => Math.round(joists.first[axis] + (ends.lo + mm) * way[axis]));
  return `${axis} ${Math.min(...at)} to ${Math.max(...at)}`;
}

/** Every band in figures of the plan, the lower first; empty where the joists run aslant. */
export function sayBands(joists: Joists, ends: JoistEnds, bands: readonly (readonly [number, number])[]): string {
  const said = bands.flatMap((band) => {
    const words = sayBand(joists, ends, band);
    return words === null ? [] : [{ words, from: Number(words.split(' ')[1]) }];
  });
  return said
    .sort((a, b) => a.from - b.from)
    .map((b) => b.words)
    .join(' or ');
}
