import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

export default defineCommand({
  id: 'listEdit.delete',
  label: () => 'take the quantity of the drawing',
  args: v.object({ listEdit: id<'listEdit'>() }),
  run(draft, args) {
    if (!draft.listEdits[args.listEdit]) refuse('That change is no longer there.');
    delete draft.listEdits[args.listEdit];
    return [];
  },
  example(plan, rng) {
    const listEdit = rng.pick(Object.keys(plan.listEdits));
    return listEdit === undefined ? null : { listEdit };
  },
});
