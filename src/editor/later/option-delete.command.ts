import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { removeAll } from '../commands/cascade.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { optionOfKey, sharedNodes, thingsOf } from './option-things.ts';

const KEPT = ['nodes', 'runs', 'items'] as const;

/** Takes an option away with all that is new in it and all that was said of it. What was surveyed stays. */
export default defineCommand({
  id: 'option.delete',
  label: (args, before) => `delete option ${before.options[args.option]?.name ?? ''}`,
  args: v.object({ option: id<'option'>() }),
  run(draft, args, ctx) {
    const { before } = ctx;
    const { option } = args;
    if (!before.options[option]) refuse('That option is no longer there.');
    const things = thingsOf(before, option);
    const gone = new Set(things.map((t) => t.id));
    for (const node of sharedNodes(before, option)) {
      const record = draft.nodes[node];
      if (record) record.option = null;
    }
    for (const group of Object.values(before.groups)) {
      if (group.members.filter((run) => !gone.has(run)).length < 2 && group.members.some((run) => gone.has(run)))
        delete draft.groups[group.id];
    }
    removeAll(before, draft, things);
    // A lone end that was surveyed goes with the last pipe elsewhere; here it was there before that pipe.
    for (const map of KEPT) {
      for (const record of Object.values(before[map])) {
        if (record.option !== option && !draft[map][record.id])
          (draft[map] as Record<string, object>)[record.id] = structuredClone(record);
      }
    }
    for (const { id: said, key } of Object.values(before.acknowledgements))
      if (optionOfKey(key) === option) delete draft.acknowledgements[said];
    for (const edit of Object.values(before.listEdits)) if (edit.option === option) delete draft.listEdits[edit.id];
    for (const own of Object.values(before.overrides))
      if (own.scope !== null && gone.has(own.scope)) delete draft.overrides[own.id];
    delete draft.options[option];
    return [];
  },
  example(plan, rng) {
    const option = rng.pick(Object.keys(plan.options));
    return option === undefined ? null : { option };
  },
});
