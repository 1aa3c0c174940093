import type { Plan } from '../plan/plan.ts';
import type { Joists, Void } from '../plan/records/building.ts';
import type { Xy, Xyz } from '../plan/records/parts.ts';
import { resolveHeight } from './heights.ts';
import { between, clipToArea, type Part, shared } from './outlines.ts';
import { alongLine } from './segments.ts';
import { add, cross, direction, distance3, dot, left, scale, sub } from './vec.ts';

/** One joist of a void: its centreline as far as the outline reaches. */
export interface JoistLine {
  /** Counted from the first: towards rising x, or towards rising y where joists run along x. */
  readonly index: number;
  readonly a: Xy;
  readonly b: Xy;
  /** What the survey says of this one; empty: like the others. */
  readonly what: string;
}

/** Where a piece of pipe meets a joist of a void it runs in. */
export interface JoistCrossing {
  readonly index: number;
  readonly at: Xyz;
  /** Along the piece from its first end: over the breadth of the timber. */
  readonly fromMm: number;
  readonly toMm: number;
  /** Between pipe and joist in plan: 90 is square across, 0 along it. */
  readonly angleDeg: number;
  /** Null where the timber's height or depth was not told. */
  readonly passes: 'through' | 'over' | 'under' | null;
  /** Pipe centre above the underside of the timber; null where that was not told. */
  readonly aboveBottomMm: number | null;
  /** Along the joist from its nearest end to the pipe, and from end to end. `ends`: what the ends were taken from. */
  readonly toNearEndMm: number;
  readonly spanMm: number;
  readonly ends: 'bearings' | 'span' | 'outline';
  readonly what: string;
}

/** More than this in one void are a slip of the pen: no floor has them, and counting them would never end. */
const MOST_JOISTS = 100_000;

/** Told of a joist that is not there. */
const MISSING = 'missing';

interface Grid {
  readonly way: Xy;
  /** Across the joists, in the direction they are counted. */
  readonly across: Xy;
}

/** The way joists run, and the way they are counted. */
export function grid(joists: Pick<Joists, 'wayDeg'>): Grid {
  const way = direction(joists.wayDeg);
  const side = left(way);
  const hair = 1e-9;
  const rising = side.x > hair || (Math.abs(side.x) <= hair && side.y > 0);
  return { way, across: rising ? side : scale(side, -1) };
}

/** Offsets of the joists across the void, by index, between two offsets; exceptions moved, missing ones left out. */
function offsets(joists: Joists, lo: number, hi: number): { index: number; offset: number; what: string }[] {
  if (joists.centresMm <= 0 || (hi - lo) / joists.centresMm > MOST_JOISTS) return [];
  const told = new Map(joists.exceptions.map((e) => [e.index, e]));
  const most = Math.max(0, ...joists.exceptions.map((e) => Math.abs(e.offsetMm)));
  const found = [];
  const [first, last] = [Math.ceil((lo - most) / joists.centresMm) + 0, Math.floor((hi + most) / joists.centresMm)];
  for (let index = first; index <= last; index++) {
    const exception = told.get(index);
    if (exception?.what === MISSING) continue;
    const offset = index * joists.centresMm + (exception?.offsetMm ?? 0);
    if (offset >= lo && offset <= hi) found.push({ index, offset, what: exception?.what ?? '' });
  }
  return found;
}

function lineAt(space: Pick<Void, 'outline' | 'holes'>, joists: Joists, offset: number): { a: Xy; b: Xy }[] {
  const { way, across } = grid(joists);
  const on = add(joists.first, scale(across, offset));
  const far = space.outline.map((p) => dot(sub(p, on), way));
  const [from, to] = [add(on, scale(way, Math.min(...far) - 1)), add(on, scale(way, Math.max(...far) + 1))];
  return clipToArea(from, to, space.outline, space.holes).map(([s, t]) => ({
    a: add(from, scale(sub(to, from), s)),
    b: add(from, scale(sub(to, from), t)),
  }));
}

/** Every joist of a void as far as it reaches. A hole parts a joist in two of one index. */
export function joistLines(space: Pick<Void, 'outline' | 'holes' | 'joists'>): JoistLine[] {
  const { joists } = space;
  if (!joists) return [];
  const { across } = grid(joists);
  const far = space.outline.map((p) => dot(sub(p, joists.first), across));
  return offsets(joists, Math.min(...far), Math.max(...far)).flatMap(({ index, offset, what }) =>
    lineAt(space, joists, offset).map((line) => ({ index, ...line, what })),
  );
}

/** The bearings a joist's line meets, as places along it. */
function bearingsOn(space: Void, on: Xy, way: Xy): number[] {
  return space.bearings.flatMap(({ a, b }) => {
    const e = sub(b, a);
    const det = cross(way, e);
    if (det === 0) return [];
    const u = cross(sub(a, on), way) / det;
    return u >= 0 && u <= 1 ? [cross(sub(a, on), e) / det] : [];
  });
}

/** How a place lies in its joist's span. Bearings go first, then the span that was told, then the outline. */
function inSpan(space: Void, joists: Joists, p: Xy): Pick<JoistCrossing, 'toNearEndMm' | 'spanMm' | 'ends'> {
  const { way, across } = grid(joists);
  const offset = dot(sub(p, joists.first), across);
  const on = p;
  const bearings = bearingsOn(space, on, way);
  const before = bearings.filter((s) => s <= 0);
  const after = bearings.filter((s) => s > 0);
  if (before.length > 0 && after.length > 0) {
    const [lo, hi] = [Math.max(...before), Math.min(...after)];
    return { toNearEndMm: Math.min(-lo, hi), spanMm: hi - lo, ends: 'bearings' };
  }
  const along = dot(sub(p, joists.first), way);
  const here = lineAt(space, joists, offset).find(({ a, b }) => {
    const [s, t] = [dot(sub(a, joists.first), way), dot(sub(b, joists.first), way)];
    return along >= s && along <= t;
  });
  if (!here) return { toNearEndMm: 0, spanMm: joists.spanMm ?? 0, ends: joists.spanMm === null ? 'outline' : 'span' };
  const [s, t] = [dot(sub(here.a, p), way), dot(sub(here.b, p), way)];
  // A span told is clear between bearings: what the outline has more than that lies on them, half at each end.
  const over = joists.spanMm === null ? 0 : Math.max(0, t - s - joists.spanMm) / 2;
  const near = Math.max(0, Math.min(-s, t) - over);
  return { toNearEndMm: near, spanMm: t - s - 2 * over, ends: joists.spanMm === null ? 'outline' : 'span' };
}

function passing(
  bottom: number | null | undefined,
  joists: Joists,
  z: number,
): Pick<JoistCrossing, 'passes' | 'aboveBottomMm'> {
  if (bottom === null || bottom === undefined) return { passes: null, aboveBottomMm: null };
  const aboveBottomMm = z - bottom;
  if (aboveBottomMm < 0) return { passes: 'under', aboveBottomMm };
  if (joists.depthMm === null) return { passes: null, aboveBottomMm };
  return { passes: aboveBottomMm > joists.depthMm ? 'over' : 'through', aboveBottomMm };
}

/** Half of a timber whose breadth nobody told: a line, but one that can be hit. */
const LINE_MM = 0.1;

/** Joists of a void that a piece of pipe meets on one part of it, in order. */
export function joistsMet(plan: Plan, space: Void, a: Xyz, b: Xyz, on: Part): JoistCrossing[] {
  const { joists } = space;
  if (!joists) return [];
  const { way, across } = grid(joists);
  let bottom: number | null | undefined;
  const lengthMm = distance3(a, b);
  const [p, q] = [dot(sub(a, joists.first), across), dot(sub(b, joists.first), across)];
  const half = Math.max((joists.breadthMm ?? 0) / 2, LINE_MM);
  const flatMm = Math.hypot(b.x - a.x, b.y - a.y);
  const angleDeg =
    flatMm === 0 ? 0 : (Math.asin(Math.min(1, Math.abs(cross(way, sub(b, a))) / flatMm)) * 180) / Math.PI;
  const ends = [p + (q - p) * on[0], p + (q - p) * on[1]];
  return offsets(joists, Math.min(...ends) - half, Math.max(...ends) + half)
    .flatMap(({ index, offset, what }): JoistCrossing[] => {
      const band = between(p, q, offset - half, offset + half);
      const part = band && shared(band, on);
      if (!part) return [];
      const at = alongLine({ a, b }, (part[0] + part[1]) / 2);
      const span = inSpan(space, joists, at);
      const [fromMm, toMm] = [part[0] * lengthMm, part[1] * lengthMm];
      bottom ??= joists.bottom && resolveHeight(plan, joists.bottom)?.z;
      return [{ index, at, fromMm, toMm, angleDeg, ...passing(bottom, joists, at.z), ...span, what }];
    })
    .sort((m, n) => m.fromMm - n.fromMm || m.index - n.index);
}
