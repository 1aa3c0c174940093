import * as v from 'valibot';
import { listEdit } from '../../plan/records/statements.ts';
import { defineCommand } from '../commands/define-command.ts';

const { piece, size, joining, madeOn, quantity, note } = listEdit.entries;

/** Changes a line of the list by hand, or notes something on it. One edit to a line and option. */
export default defineCommand({
  id: 'listEdit.set',
  label: (args) => `change list: ${args.piece}`,
  args: v.object({ piece, size, joining, madeOn, quantity: v.optional(quantity, null), note: v.optional(note, '') }),
  run(draft, args, ctx) {
    const there = Object.values(draft.listEdits).find(
      (e) => e.option === ctx.option && e.piece === args.piece && e.size === args.size && e.joining === args.joining,
    );
    const id = there?.id ?? ctx.ids.next('line');
    draft.listEdits[id] = { id, option: ctx.option, ...args };
    return [id];
  },
  example: (_plan, rng) => ({
    piece: rng.pick(['elbow', 'tee']),
    size: '22',
    joining: 'endFeed',
    madeOn: 3,
    quantity: rng.below(9),
  }),
});
