import * as v from 'valibot';
import { add3, scale3 } from '../../geometry/vec.ts';
import { cross3, waysOf } from '../../network/bank/nest.ts';
import { rowOf } from '../../network/bank/read-bank.ts';
import type { Plan } from '../../plan/plan.ts';
import { finite, id } from '../../plan/records/parts.ts';
import { layAgain, sideOf, standing } from '../bank/lay-again.ts';
import { type CommandContext, defineCommand, refuse } from '../commands/define-command.ts';
import { serviceWord } from '../commands/service-word.ts';

/** Steps one run aside: the first and last of the row away from the others, one between them out of the row. */
function step(draft: Plan, ctx: CommandContext, group: string, run: string, mm: number): string[] {
  const { read, corners } = standing(ctx.before, group, ctx);
  if (!read.members.some((m) => m.run === run)) refuse('That run has left the others already: move it by itself.');
  const row = rowOf(read);
  const side = sideOf(read.members, run, row);
  const out = side === 0 ? cross3(waysOf(read.path)[0] ?? row, row) : scale3(row, side);
  const across = read.members.map((m) => (m.run === run ? add3(m.across, scale3(out, mm)) : m.across));
  const keep = new Set(read.members.filter((m) => m.run !== run).map((m) => m.run));
  return layAgain(draft, ctx, { corners, members: read.members, across, spacingMm: read.spacingMm, keep });
}

/**
 * Takes one run out of a bank. With `asideMm` it steps aside by so much: the first and last of the row away from the
 * others, one in between out of the row, to the other side where the figure is below zero. The others stay where they are.
 */
export default defineCommand({
  id: 'bank.peel',
  label: (args, before) => `take ${serviceWord(before.runs[args.run]?.service)} out of bank`,
  args: v.object({ group: id<'group'>(), run: id<'run'>(), asideMm: v.optional(v.nullable(finite), null) }),
  run(draft, args, ctx) {
    const record = draft.groups[args.group] ?? refuse('That bank is no longer there.');
    if (!record.members.includes(args.run)) refuse('That run is not in that bank.');
    const made = args.asideMm ? step(draft, ctx, args.group, args.run, args.asideMm) : [];
    record.members = record.members.filter((run) => run !== args.run);
    if (record.members.length < 2) delete draft.groups[args.group];
    return made;
  },
  example(plan, rng) {
    const group = rng.pick(Object.values(plan.groups));
    const run = group && rng.pick(group.members);
    if (run === undefined) return null;
    return { group: group?.id, run, asideMm: rng.pick([null, 150, 200.05]) ?? null };
  },
});
