import * as v from 'valibot';
import type { BankEnd } from '../../network/bank/bank.ts';
import { layBank } from '../../network/bank/lay-bank.ts';
import { layInBestOrder } from '../../network/bank/order.ts';
import { type ReadMember, rowOf } from '../../network/bank/read-bank.ts';
import type { Plan } from '../../plan/plan.ts';
import { id } from '../../plan/records/parts.ts';
import { bankPlace, cornerOf } from '../bank/bank-place.ts';
import { type FreeTail, freeTails } from '../bank/bank-tails.ts';
import { memberOf, standing, writeAgain } from '../bank/lay-again.ts';
import { endAt } from '../bank/lay-new.ts';
import { type CommandContext, defineCommand, refuse } from '../commands/define-command.ts';
import { serviceWord } from '../commands/service-word.ts';

function tailsAt(plan: Plan, point: string, members: readonly ReadMember[], ctx: CommandContext) {
  const record = plan.points[point] ?? refuse('That point is no longer there.');
  const services = members.map((m) => plan.runs[m.run]?.service ?? '');
  const tails = freeTails(plan, point, services, ctx.option);
  if (tails.every((t) => t === null)) {
    refuse(`${record.name} has no free connection for ${services.map(serviceWord).join(', ')}.`);
  }
  return tails;
}

/** Does a member end in the open, so that the bank can go on? */
const isOpen = (end: BankEnd): boolean => end.is === 'open';

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
    const { members, spacingMm } = now.read;
    if (!members.every((m) => isOpen(m.end))) refuse('The bank has no open ends there to go on from.');
    const corners = [...now.corners, ...args.path.map((p) => cornerOf(before, p))];
    const path = corners.map((c) => c.at);
    const ends: (FreeTail | null)[] = args.end
      ? tailsAt(before, args.end.point, members, ctx)
      : members.map(() => null);
    const asked = (keep: boolean) => members.map((m, i) => ({ ...memberOf(before, m, keep), end: endAt(ends[i]) }));
    const kept = layBank({ members: asked(true), spacingMm, path, across: members.map((m) => m.across) });
    const row = rowOf(now.read);
    const anew = args.end && layInBestOrder({ members: asked(false), spacingMm, path, row }, 'told');
    const otherOrder = anew?.ok && anew.order.some((told, i) => told !== i);
    const better = anew?.ok && (otherOrder || !kept.ok) ? anew : null;
    const laid = better ? better.bank : kept.ok ? kept.bank : refuse(kept.why);
    const made = writeAgain(draft, ctx, { corners, laid: laid.members, members, ends });
    const group = draft.groups[args.group];
    if (better && group) {
      const inRow = new Set(members.map((m) => m.run));
      const order = better.order.flatMap((i) => members[i]?.run ?? []);
      group.members = group.members.map((run) => (inRow.has(run) ? (order.shift() ?? run) : run));
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
