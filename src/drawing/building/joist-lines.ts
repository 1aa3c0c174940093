import type { Joists, Void } from '../../plan/records/building.ts';
import type { Vec } from '../display-list.ts';
import { clipLine } from './clip-line.ts';

/** One joist of a void: its place across the way they run, and its centreline's parts inside the void. */
export interface JoistLine {
  readonly index: number;
  readonly through: Vec;
  readonly way: Vec;
  readonly breadthMm: number | null;
}

/** More than this is a mistake in the record, not a floor. */
const MOST = 400;

export const outlineRings = (v: Void): Vec[][] =>
  [v.outline, ...v.holes].map((ring) => ring.map((p): Vec => [p.x, p.y]));

/** Joists that cross a void, by their centres from the first one, less and plus its single exceptions. */
export function joistLines(v: Void, joists: Joists): JoistLine[] {
  const angle = (joists.wayDeg * Math.PI) / 180;
  const way: Vec = [Math.cos(angle), Math.sin(angle)];
  const n: Vec = [-way[1], way[0]];
  if (joists.centresMm <= 0) return [];
  const across = v.outline.map((p) => (p.x - joists.first.x) * n[0] + (p.y - joists.first.y) * n[1]);
  // The breadth of the last joist may still lie inside the outline when its centre does not.
  const from = Math.ceil((Math.min(...across) - 1) / joists.centresMm);
  const upTo = Math.floor((Math.max(...across) + 1) / joists.centresMm);
  const lines: JoistLine[] = [];
  for (let index = from; index <= upTo && lines.length < MOST; index++) {
    const off = index * joists.centresMm + (joists.exceptions.find((e) => e.index === index)?.offsetMm ?? 0);
    lines.push({
      index,
      through: [joists.first.x + n[0] * off, joists.first.y + n[1] * off],
      way,
      breadthMm: joists.breadthMm,
    });
  }
  return lines;
}

/** Both edges of each joist where they lie inside the void; its centreline where its breadth was not told. */
export function joistEdges(v: Void, joists: Joists): [Vec, Vec][] {
  const rings = outlineRings(v);
  return joistLines(v, joists).flatMap(({ through, way, breadthMm }) => {
    const sides = breadthMm === null ? [0] : [-breadthMm / 2, breadthMm / 2];
    return sides.flatMap((s) => clipLine(rings, [through[0] - way[1] * s, through[1] + way[0] * s], way));
  });
}
