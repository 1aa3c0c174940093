import { nodePlace } from '../../geometry/places.ts';
import { add3, distance3 } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import { withChanges } from '../displace/changes.ts';
import { displace } from '../displace/displace.ts';
import { fresh, itemsAlong, type LayOptions, NotLaid, nodeAt, type PlacedLeg, partOf, withFates } from './edit.ts';

/** A part of a leg carried aside, with the piece that joins it to the part that stays. */
export interface Shift {
  /** The end whose side goes. */
  readonly toward: 'a' | 'b';
  /** Last place of the part that stays and first of the part that goes, the latter where it is to be. */
  readonly stays: Xyz;
  readonly goes: Xyz;
  readonly by: Xyz;
}

export interface Shifted {
  readonly plan: Plan;
  /** Nodes at both ends of the joining piece. */
  readonly near: string;
  readonly far: string;
  /** The leg of the part that went. */
  readonly moved: string;
}

export const HELD = 'Beyond it that pipe is held: by a tail, or by pipe that was there.';

/** Did the end of the moved part go just as far as it? Then the part lies as it lay. */
export function wentWhole(before: Plan, after: Plan, node: string, by: Xyz): boolean {
  const [was, is] = [before.nodes[node], after.nodes[node]];
  const [p, q] = [was && nodePlace(before, was)?.at, is && nodePlace(after, is)?.at];
  return !is || (p !== undefined && q !== undefined && distance3(add3(p, by), q) <= 2 * COINCIDENT_MM);
}

/**
 * Parts a leg and moves the one part across it; everything beyond follows as in any move, and a short piece joins the two.
 * Where the part that stays has no length the joining piece starts at the corner itself. Throws NotLaid.
 */
export function shift(plan: Plan, placed: PlacedLeg, how: Shift, options: LayOptions): Shifted {
  const { leg, storey } = placed;
  const { toward, by } = how;
  const { ids } = options;
  const keeps = toward === 'b' ? leg.a : leg.b;
  const end = toward === 'b' ? leg.b : leg.a;
  const atCorner = distance3(how.stays, toward === 'b' ? placed.a : placed.b) <= COINCIDENT_MM;
  const nodes = { ...plan.nodes };
  const legs = { ...plan.legs };
  let next: Plan = { ...plan, nodes, legs };
  const newNode = (at: Xyz): string => {
    const id = fresh(next, ids, 'n');
    nodes[id] = nodeAt(plan, id, leg.a, storey, at, leg.option);
    return id;
  };
  const near = atCorner ? keeps : newNode(how.stays);
  const far = newNode({ x: how.goes.x - by.x, y: how.goes.y - by.y, z: how.goes.z - by.z });
  // The side of end a keeps the id; a leg that is parted at its corner goes whole.
  const moved = atCorner || toward === 'a' ? leg.id : fresh(next, ids, 'l');
  const between = (id: string, x: string, y: string) => partOf(leg, id, toward === 'b' ? x : y, toward === 'b' ? y : x);
  legs[moved] = between(moved, far, end);
  let rest = leg.id;
  if (!atCorner) {
    if (toward === 'a') rest = fresh(next, ids, 'l');
    legs[rest] = between(rest, keeps, near);
  }
  const itemEnd = toward === 'b' ? end : keeps;
  const itemLeg = toward === 'b' ? moved : rest;
  next = { ...next, nodes: { ...nodes }, legs: { ...legs }, items: itemsAlong(plan, leg.id, itemEnd, itemLeg) };
  const answer = displace(next, [{ leg: moved, by }], { ids, runsDownhill: options.runsDownhill });
  if (!answer.ok) throw new NotLaid(answer.why);
  let after = withChanges(next, answer.changes);
  if (!wentWhole(next, after, end, by) || !after.legs[moved] || !after.nodes[far]) throw new NotLaid(HELD);
  const joint = fresh(after, ids, 'l');
  const put = nodeAt(after, far, far, storey, how.goes, leg.option);
  after = {
    ...after,
    nodes: { ...after.nodes, [far]: put },
    legs: { ...after.legs, [joint]: between(joint, near, far) },
    options: withFates(
      plan,
      leg.id,
      [moved, rest, joint].filter((id) => id !== leg.id),
    ),
  };
  return { plan: after, near, far, moved };
}
