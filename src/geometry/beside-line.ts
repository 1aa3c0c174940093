import type { Xy } from '../plan/records/parts.ts';
import { add, cross, distance, dot, left, scale, sub, unit } from './vec.ts';

/** A line beside another one, and what is asked of places on it. */
const HAIR = 1e-9;
/** Sides that turn by less than this in all are one side: their lines have no corner to speak of. */
const LEAST_SIN = 0.01;

/** Where the lines through two sides, each moved aside, meet; in line with each other, the moved corner itself. */
function corner(at: Xy, before: Xy, after: Xy, mm: number): Xy {
  const [p, q] = [add(at, scale(left(before), mm)), add(at, scale(left(after), mm))];
  const sin = cross(before, after);
  if (Math.abs(sin) < LEAST_SIN) return dot(before, after) > 0 ? p : q;
  return add(p, scale(before, cross(sub(q, p), after) / sin));
}

const ways = (line: readonly Xy[], closed: boolean): Xy[] =>
  line.flatMap((p, i) => {
    const next = line[i + 1] ?? (closed ? line[0] : undefined);
    return next ? [unit(sub(next, p))] : [];
  });

/** Without corners that lie on each other or on the straight way between their neighbours. */
export function plainLine<P extends Xy>(line: readonly P[], closed = false, least = HAIR): P[] {
  const apart = line.filter((p, i) => i === 0 || distance(p, line[i - 1] ?? p) > least);
  const [first, last] = [apart[0], apart.at(-1)];
  if (closed && first && last && apart.length > 1 && distance(first, last) <= least) apart.pop();
  return apart.filter((p, i) => {
    const [a, b] = [
      apart[i - 1] ?? (closed ? apart.at(-1) : undefined),
      apart[i + 1] ?? (closed ? apart[0] : undefined),
    ];
    return !a || !b || Math.abs(cross(unit(sub(p, a)), unit(sub(b, p)))) > LEAST_SIN || dot(sub(p, a), sub(b, p)) < 0;
  });
}

/**
 * A line moved aside by so much, to its left; its corners stay corners. Below zero: to its right. Sides that the move
 * swallows turn round on themselves and are left out.
 */
export function besideLine(line: readonly Xy[], mm: number, closed: boolean): Xy[] {
  const plain = plainLine(line, closed);
  const along = ways(plain, closed);
  const made = plain.map((at, i): Xy => {
    const [before, after] = [along[i - 1] ?? (closed ? along.at(-1) : undefined), along[i]];
    if (!before || !after) return add(at, scale(left(before ?? after ?? { x: 1, y: 0 }), mm));
    return corner(at, before, after, mm);
  });
  const kept = made.filter((p, i) => {
    const next = made[i + 1] ?? (closed ? made[0] : undefined);
    const way = along[i];
    return !next || !way || dot(sub(next, p), way) > HAIR;
  });
  return kept;
}

/** The nearest place of a line to a place: which side it lies on, how far along the whole line, and how far off. */
export interface OnLine {
  readonly at: Xy;
  readonly side: number;
  readonly alongMm: number;
  readonly offMm: number;
}

export function nearestOnLine(p: Xy, line: readonly Xy[], closed: boolean): OnLine | undefined {
  let best: OnLine | undefined;
  let done = 0;
  for (const [side, a] of line.entries()) {
    const b = line[side + 1] ?? (closed ? line[0] : undefined);
    if (!b) break;
    const l = distance(a, b);
    const t = l === 0 ? 0 : Math.min(1, Math.max(0, dot(sub(p, a), sub(b, a)) / (l * l)));
    const at = add(a, scale(sub(b, a), t));
    const offMm = distance(p, at);
    if (!best || offMm < best.offMm - HAIR) best = { at, side, alongMm: done + t * l, offMm };
    done += l;
  }
  return best;
}

/** Along a line from one place on it to another, corners between among them. A ring is gone round the shorter way. */
export function alongBetween(line: readonly Xy[], closed: boolean, from: OnLine, to: OnLine): Xy[] {
  const forward = (): Xy[] => {
    const between: Xy[] = [];
    if (from.alongMm <= to.alongMm) for (let i = from.side + 1; i <= to.side; i++) between.push(line[i] ?? from.at);
    else {
      for (let i = from.side + 1; i < line.length; i++) between.push(line[i] ?? from.at);
      for (let i = 0; i <= to.side; i++) between.push(line[i] ?? from.at);
    }
    return [from.at, ...between, to.at];
  };
  const backward = (): Xy[] => {
    const between: Xy[] = [];
    if (from.alongMm >= to.alongMm) for (let i = from.side; i > to.side; i--) between.push(line[i] ?? from.at);
    else {
      for (let i = from.side; i >= 0; i--) between.push(line[i] ?? from.at);
      for (let i = line.length - 1; i > to.side; i--) between.push(line[i] ?? from.at);
    }
    return [from.at, ...between, to.at];
  };
  if (!closed) return from.alongMm <= to.alongMm ? forward() : backward();
  const whole = line.reduce((sum, p, i) => sum + distance(p, line[(i + 1) % line.length] ?? p), 0);
  const ahead = (((to.alongMm - from.alongMm) % whole) + whole) % whole;
  return ahead <= whole / 2 ? forward() : backward();
}
