import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { group } from '../../plan/records/pipework.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

const { name, members, spacingMm } = group.entries;

/** Runs that travel together, in order, at one spacing. Without `group` a new one is made. A run is in one group only. */
export default defineCommand({
  id: 'group.set',
  label: (args) => `bank of ${args.members.length}`,
  args: v.object({
    group: v.optional(id<'group'>()),
    name: v.optional(name, ''),
    members: v.pipe(members, v.minLength(2, 'a bank has two runs or more')),
    spacingMm,
  }),
  run(draft, args, ctx) {
    if (args.group !== undefined && !draft.groups[args.group]) refuse('That bank is no longer there.');
    if (new Set(args.members).size !== args.members.length) refuse('A run stands in a bank once.');
    if (args.spacingMm <= 0) refuse('The runs of a bank need a spacing.');
    for (const run of args.members) {
      if (!draft.runs[run]) refuse('One of the runs is no longer there.');
      const other = Object.values(draft.groups).find((g) => g.id !== args.group && g.members.includes(run));
      if (other) refuse('One of the runs is in another bank.');
    }
    const made = args.group ?? ctx.ids.next('g');
    draft.groups[made] = { id: made, name: args.name, members: [...args.members], spacingMm: args.spacingMm };
    return [made];
  },
  example(plan, rng) {
    const runs = Object.keys(plan.runs);
    const group = rng.below(2) ? rng.pick(Object.keys(plan.groups)) : undefined;
    const told = { members: [...runs].sort().slice(0, 2 + rng.below(2)), spacingMm: 75 + rng.below(9) / 7 };
    return runs.length < 2 ? null : group === undefined ? told : { ...told, group };
  },
});
