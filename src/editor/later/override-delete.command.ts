import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

export default defineCommand({
  id: 'override.delete',
  label: () => 'use the general limit again',
  args: v.object({ override: id<'override'>() }),
  run(draft, args) {
    if (!draft.overrides[args.override]) refuse('That limit is no longer there.');
    delete draft.overrides[args.override];
    return [];
  },
  example(plan, rng) {
    const override = rng.pick(Object.keys(plan.overrides));
    return override === undefined ? null : { override };
  },
});
