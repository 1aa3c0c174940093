import { joistLines } from '../../geometry/joist-lines.ts';
import { direction, left } from '../../geometry/vec.ts';
import type { Void } from '../../plan/records/building.ts';
import type { Vec } from '../display-list.ts';

export const outlineRings = (v: Void): Vec[][] =>
  [v.outline, ...v.holes].map((ring) => ring.map((p): Vec => [p.x, p.y]));

/** Both edges of each joist at true width as far as it reaches; its centreline where its breadth was not told. */
export function joistEdges(v: Void): [Vec, Vec][] {
  if (!v.joists) return [];
  const side = left(direction(v.joists.wayDeg));
  const { breadthMm } = v.joists;
  const offsets = breadthMm === null ? [0] : [-breadthMm / 2, breadthMm / 2];
  return joistLines(v).flatMap(({ a, b }) =>
    offsets.map((s): [Vec, Vec] => [
      [a.x + side.x * s, a.y + side.y * s],
      [b.x + side.x * s, b.y + side.y * s],
    ]),
  );
}
