import { direction } from '../../geometry/vec.ts';
import type { Box, Vec } from '../display-list.ts';
import type { Obstacles } from '../labels/obstacles.ts';
import { boxAt } from '../labels/paper.ts';

/** Height of the letters that are looked at, in parts of their size. */
const HIGH_EM = 0.86;

/** The room that a turned line of words takes, as a row of boxes along it: one box about it all would hold off too much. */
export function boxesOf([x, y]: Vec, turnDeg: number, width: number, sizeMm: number): Box[] {
  const { x: c, y: s } = direction(turnDeg);
  const high = sizeMm * HIGH_EM;
  const upright = Math.abs(s) < 1e-6 || Math.abs(c) < 1e-6;
  const n = upright ? 1 : Math.max(1, Math.ceil(width / high));
  const piece = width / n;
  const [w, h] = [piece * Math.abs(c) + high * Math.abs(s), piece * Math.abs(s) + high * Math.abs(c)];
  return Array.from({ length: n }, (_, i) => {
    const along = (i + 0.5) * piece - width / 2;
    return boxAt(x + along * c, y + along * s, w, h);
  });
}

export const allFree = (boxes: readonly Box[], to: Obstacles): boolean => boxes.every((b) => to.isFree(b));

/** What a row of boxes covers: the worst of each. */
export const costOf = (boxes: readonly Box[], to: Obstacles, own: ReadonlySet<string>): number =>
  boxes.reduce((sum, b) => sum + to.cost(b, own), 0);

/** Along its line, read from below or from the right. */
export function asRead(deg: number): number {
  const turn = ((((deg + 90) % 180) + 180) % 180) - 90;
  return turn <= -89.999 ? 90 : turn;
}
