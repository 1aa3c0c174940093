import * as v from 'valibot';
import { basis } from '../../plan/records/basis.ts';
import { change } from '../commands/change-of.ts';
import { defineCommand } from '../commands/define-command.ts';

const { editions, ...rest } = basis.entries;

/** What the sums rest on. Editions that are told are pinned beside those that are. */
export default defineCommand({
  id: 'basis.set',
  label: () => 'change basis',
  args: v.object({ change: v.partial(v.object(rest)), editions: v.optional(editions, {}) }),
  run(draft, args) {
    change(draft.basis, args.change);
    Object.assign(draft.basis.editions, args.editions);
    return [];
  },
  example: (_plan, rng) => ({
    change: rng.pick([{ gas: 'propane' }, { surveyDate: '2026-05-01' }, { designFlowC: 55 }]),
    editions: rng.pick([{}, { 'gas-drop': 'later' }]),
  }),
});
