import type { Roof } from '../../plan/records/building.ts';
import type { Vec } from '../display-list.ts';
import { clipLine } from './clip-line.ts';
import { boundsAlong } from './slope-frame.ts';

/** More of them than this are a hatch and tell nothing. */
const MOST = 120;

/** Middle lines of a roof's rafters from above, one at each end of the eaves and the others at their centres from its start. */
export function rafterLines(roof: Roof): (readonly [Vec, Vec])[] {
  const { rafters } = roof;
  const frame = boundsAlong(roof);
  if (!rafters || !frame || frame.lengthMm / rafters.centresMm > MOST) return [];
  const ring = roof.outline.map((p): Vec => [p.x, p.y]);
  const half = rafters.breadthMm / 2;
  const lines: (readonly [Vec, Vec])[] = [];
  for (let s = half; s <= frame.lengthMm; s += rafters.centresMm) {
    const through = frame.at(s, 0);
    lines.push(...clipLine([ring], through, frame.up));
  }
  return lines;
}
