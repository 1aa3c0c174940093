import { grid } from '../../geometry/joist-lines.ts';
import { insideArea } from '../../geometry/outlines.ts';
import { type RoomFace, roomFaces } from '../../geometry/rooms.ts';
import { add, distance, dot, scale } from '../../geometry/vec.ts';
import { aliveIn } from '../../network/cases.ts';
import type { Case, Plan } from '../../plan/plan.ts';
import type { Void } from '../../plan/records/building.ts';
import type { Xy } from '../../plan/records/parts.ts';

const middleOf = (ring: readonly Xy[]): Xy => ({
  x: ring.reduce((sum, p) => sum + p.x, 0) / ring.length,
  y: ring.reduce((sum, p) => sum + p.y, 0) / ring.length,
});

/** The room a void lies in: where its middle is, else the one that most of its corners lie in. */
function roomOf(space: Void, faces: readonly RoomFace[]): RoomFace | undefined {
  const middle = middleOf(space.outline);
  const found = faces.find((f) => insideArea(middle, f.outline, f.holes));
  if (found) return found;
  const inside = (f: RoomFace) => space.outline.filter((p) => insideArea(p, f.outline, f.holes)).length;
  return [...faces].sort((a, b) => inside(b) - inside(a)).find((f) => inside(f) > 0);
}

const lowest = (ring: readonly Xy[], way: Xy): number => Math.min(...ring.map((p) => dot(p, way)));

/** Outlines are kept to a tenth. */
const SAME_MM = 0.2;
const sameRing = (a: readonly Xy[], b: readonly Xy[]): boolean =>
  a.length === b.length && a.every((p) => b.some((q) => distance(p, q) <= SAME_MM));

/**
 * What of a void changes when it takes the outline of its room again, after walls have moved; null where it is the
 * room's already or no closed room lies under it. Joists nobody has placed keep off the wall as they were.
 */
export function retaken(plan: Plan, space: Void, chosen: Case): Partial<Pick<Void, 'outline' | 'joists'>> | null {
  const alive = aliveIn(plan, chosen);
  const { faces } = roomFaces(plan, space.storey, { has: (wall) => alive.has('walls', wall) });
  const outline = roomOf(space, faces)?.outline.map(({ x, y }) => ({ x, y }));
  if (!outline || sameRing(outline, space.outline)) return null;
  const { joists } = space;
  if (!joists?.assumed?.includes('first')) return { outline };
  const { across } = grid(joists);
  const by = lowest(outline, across) - lowest(space.outline, across);
  return { outline, joists: { ...joists, first: add(joists.first, scale(across, by)) } };
}
