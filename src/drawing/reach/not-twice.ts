import type { Vec } from '../display-list.ts';

/** Lines nearer each other than this lie on one another, mm of the plane. */
const ON_MM = 2;

type Piece = readonly [a: Vec, b: Vec];

const between = ([a, b]: Piece, t: number): Vec => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];

/** The part of a piece that another covers, as parts of its length; undefined where it does not lie on it. */
function covered([a, b]: Piece, [c, d]: Piece): readonly [number, number] | undefined {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const l = Math.hypot(dx, dy);
  const off = (p: Vec): number => Math.abs((dx * (p[1] - a[1]) - dy * (p[0] - a[0])) / l);
  if (off(c) > ON_MM || off(d) > ON_MM) return undefined;
  const along = (p: Vec): number => ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / (l * l);
  const [s, t] = [along(c), along(d)];
  return [Math.min(s, t), Math.max(s, t)];
}

/** What is left of a piece that nothing drawn before lies on. */
function left(piece: Piece, drawn: readonly Piece[]): Piece[] {
  let free: (readonly [number, number])[] = [[0, 1]];
  for (const other of drawn) {
    const gone = covered(piece, other);
    if (!gone) continue;
    free = free.flatMap(([from, to]): (readonly [number, number])[] => [
      [from, Math.min(to, gone[0])],
      [Math.max(from, gone[1]), to],
    ]);
    free = free.filter(([from, to]) => to - from > 1e-6);
  }
  return free.map(([from, to]) => [between(piece, from), between(piece, to)]);
}

const same = (p: Vec | undefined, q: Vec): boolean => p !== undefined && Math.hypot(p[0] - q[0], p[1] - q[1]) < ON_MM;

/**
 * Draws lines one after the other, each only where none of those before lies: two dashed lines on one another would be
 * neither. Gives each line what is left of it, in pieces that hang together.
 */
export function notTwice(lines: readonly (readonly Vec[])[]): Vec[][][] {
  const drawn: Piece[] = [];
  return lines.map((line) => {
    const parts: Vec[][] = [];
    const own: Piece[] = [];
    line.slice(1).forEach((b, i) => {
      const a = line[i];
      if (!a || same(a, b)) return;
      for (const [p, q] of left([a, b], [...drawn, ...own])) {
        own.push([p, q]);
        const last = parts[parts.length - 1];
        if (last && same(last[last.length - 1], p)) last.push(q);
        else parts.push([p, q]);
      }
    });
    drawn.push(...own);
    return parts;
  });
}
