import * as v from 'valibot';
import { resolveHeight } from '../../geometry/heights.ts';
import { nodePlace } from '../../geometry/places.ts';
import { incidence } from '../../network/displace/incidence.ts';
import type { Plan } from '../../plan/plan.ts';
import { heightRef, id } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { otherEnd } from '../commands/legs-at.ts';
import { moveThings } from '../commands/move-things.ts';

/** The node and all that level legs join to it: one height for as long as the pipe runs level. */
function level(plan: Plan, start: string): Set<string> {
  const at = incidence(plan);
  const z = (id: string): number | undefined => {
    const node = plan.nodes[id];
    return node && nodePlace(plan, node)?.at.z;
  };
  const found = new Set([start]);
  for (const here of found) {
    for (const leg of at.legsAt(here)) {
      const other = otherEnd(leg, here);
      const [p, q] = [z(here), z(other)];
      if (p !== undefined && q !== undefined && Math.abs(p - q) < COINCIDENT_MM) found.add(other);
    }
  }
  return found;
}

/**
 * Sets the height of a node, and with it of the level pipe it is part of; uprights grow or shrink. The height stays told
 * from what it was told from: a ceiling that is measured again takes the pipe along.
 */
export default defineCommand({
  id: 'node.height',
  label: () => 'set height',
  args: v.object({ node: id<'node'>(), height: heightRef }),
  run(draft, args, ctx) {
    const { before } = ctx;
    const node = before.nodes[args.node] ?? refuse('That corner is no longer there.');
    if (node.place.on === 'connection') return refuse('A tail has the height of its point: move the point.');
    const to = resolveHeight(before, args.height) ?? refuse('That height is told from something that has none itself.');
    const from = resolveHeight(before, node.place.height);
    const by = from ? to.z - from.z : 0;
    const together = level(before, node.id);
    const far = Math.abs(by) >= COINCIDENT_MM;
    const made = far ? moveThings(draft, [{ node: node.id, by: { x: 0, y: 0, z: by } }], ctx) : [];
    for (const id of together) {
      const there = draft.nodes[id];
      if (there?.place.on !== 'storey') continue;
      const z = resolveHeight(draft, there.place.height)?.z;
      if (id === node.id || (z !== undefined && Math.abs(z - to.z) < COINCIDENT_MM))
        there.place.height = { ...args.height };
    }
    return made;
  },
  example(plan, rng) {
    const node = rng.pick(Object.values(plan.nodes));
    const storey = rng.pick(Object.keys(plan.storeys));
    if (!node || storey === undefined) return null;
    return { node: node.id, height: { from: rng.pick(['floor', 'ceiling']), of: storey, mm: rng.below(700) / 7 } };
  },
});
