import { nodePlace } from '../../geometry/places.ts';
import { distance3 } from '../../geometry/vec.ts';
import { incidence } from '../../network/displace/incidence.ts';
import type { Plan } from '../../plan/plan.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import type { CommandContext } from './define-command.ts';
import { otherEnd } from './legs-at.ts';

/**
 * Takes away a node that does nothing: two legs of one run and one tube go straight through it, and nothing stands on
 * it. They become one leg, which keeps the id of the one drawn first. False where the node does something.
 */
export function joinLegs(draft: Plan, node: string, ctx: CommandContext): boolean {
  const { before } = ctx;
  const at = incidence(before);
  const [one, other, ...more] = at.legsAt(node);
  if (!one || !other || more.length > 0 || at.stretchesAt(node).length + at.itemsAt(node).length > 0) return false;
  const tube = one.tube.kind === other.tube.kind && one.tube.size === other.tube.size;
  if (!tube || one.run !== other.run || one.option !== other.option) return false;
  const record = before.nodes[node];
  const ends = [one, other].map((l) => otherEnd(l, node));
  const places = [ends[0], node, ends[1]].map((id) => {
    const n = before.nodes[id ?? ''];
    return n && nodePlace(before, n)?.at;
  });
  const [a, middle, b] = places;
  if (record?.place.on !== 'storey' || !a || !middle || !b) return false;
  // Longer by way of the node than straight: it is a corner.
  if (distance3(a, middle) + distance3(middle, b) - distance3(a, b) > COINCIDENT_MM / 2) return false;
  const kept = draft.legs[one.id];
  if (!kept) return false;
  const far = otherEnd(other, node);
  if (kept.a === node) kept.a = far;
  else kept.b = far;
  for (const item of Object.values(draft.items)) if (item.along === other.id) item.along = kept.id;
  for (const option of Object.values(draft.options)) delete option.fates[other.id];
  delete draft.legs[other.id];
  delete draft.nodes[node];
  return true;
}
