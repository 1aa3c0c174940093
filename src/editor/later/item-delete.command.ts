import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { removeAll } from '../commands/cascade.ts';
import { called } from '../commands/change-of.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

export default defineCommand({
  id: 'item.delete',
  label: (args, before) => `delete ${called(before, args.item, 'item').toLowerCase()}`,
  args: v.object({ item: id<'item'>() }),
  run(draft, args, ctx) {
    if (!draft.items[args.item]) refuse('That item is no longer there.');
    removeAll(ctx.before, draft, [{ map: 'items', id: args.item }]);
    return [];
  },
  example(plan, rng) {
    const item = rng.pick(Object.keys(plan.items));
    return item === undefined ? null : { item };
  },
});
