import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { point } from '../../plan/records/pipework.ts';
import { called } from '../commands/change-of.ts';
import { defineCommand } from '../commands/define-command.ts';
import { setTails } from '../commands/set-tails.ts';

const { connections } = point.entries;

/**
 * Gives a point all its tails anew: places, sizes, further ones. Pipes that meet a tail which moves follow it, in one step; a
 * tail that a pipe meets cannot be taken away.
 */
export default defineCommand({
  id: 'point.tails',
  label: (args, before) => `tails of ${called(before, args.point, 'point').toLowerCase()}`,
  args: v.object({ point: id<'point'>(), connections }),
  run(draft, args, ctx) {
    const lost = (label: string) => `A pipe meets the ${label} tail. Part it first, then take the tail away.`;
    return setTails(draft, args.point, args.connections, ctx, lost).made;
  },
  example(plan, rng) {
    const p = rng.pick(Object.values(plan.points).filter((q) => q.connections.length > 1));
    if (!p) return null;
    const [a, b, ...rest] = p.connections;
    const swapped = a && b ? [{ ...a, at: b.at }, { ...b, at: a.at, size: '15' }, ...rest] : p.connections;
    return { point: p.id, connections: rng.pick([swapped, rest, p.connections.map((c) => ({ ...c, size: null }))]) };
  },
});
