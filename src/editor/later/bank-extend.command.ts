import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { bankPlace, cornerOf } from '../bank/bank-place.ts';
import { extended } from '../bank/extended.ts';
import { standing, writeAgain } from '../bank/lay-again.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

/**
 * Carries a bank on from its open ends through more corners, and to an appliance where `end` tells one. Where its tails
 * lie in another order than the row, the row is laid anew in theirs; else what is laid stays as it is.
 */
export default defineCommand({
  id: 'bank.extend',
  label: (args, before) =>
    args.end ? `take bank to ${before.points[args.end.point]?.name ?? 'a point'}` : 'carry on bank',
  args: v.object({
    group: id<'group'>(),
    path: v.pipe(v.array(bankPlace), v.maxLength(200)),
    end: v.optional(v.nullable(v.object({ point: id<'point'>() })), null),
  }),
  run(draft, args, ctx) {
    const { before } = ctx;
    if (args.path.length === 0 && !args.end) refuse('A bank goes on to somewhere.');
    const now = standing(before, args.group, ctx);
    const { members } = now.read;
    const more = args.path.map((p) => cornerOf(before, p));
    const { corners, laid, ends, order } = extended(before, now, more, args.end?.point ?? null, ctx.option);
    const made = writeAgain(draft, ctx, { corners, laid, members, ends });
    const group = draft.groups[args.group];
    if (order && group) {
      const left = [...order];
      group.members = group.members.map((run) => (order.includes(run) ? (left.shift() ?? run) : run));
    }
    return made;
  },
  example(plan, rng) {
    const group = rng.pick(Object.keys(plan.groups));
    const storey = rng.pick(Object.keys(plan.storeys));
    if (group === undefined || storey === undefined) return null;
    const height = { from: 'floor', of: storey, mm: 2000 };
    return { group, path: [{ storey, x: rng.below(9000), y: rng.below(9000) / 3, height }] };
  },
});
