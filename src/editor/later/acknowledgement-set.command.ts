import * as v from 'valibot';
import { acknowledgement } from '../../plan/records/statements.ts';
import { defineCommand } from '../commands/define-command.ts';

const { key, note, by, on, found, wanted } = acknowledgement.entries;

/** Notes that a finding was seen, with what was found and wanted at that moment. A second one on a key replaces the first. */
export default defineCommand({
  id: 'acknowledgement.set',
  label: () => 'note finding as seen',
  args: v.object({
    key,
    note: v.optional(note, ''),
    by: v.optional(by, ''),
    on: v.optional(on, null),
    found: v.optional(found, null),
    wanted: v.optional(wanted, null),
  }),
  run(draft, args, ctx) {
    const there = Object.values(draft.acknowledgements).find((a) => a.key === args.key);
    const id = there?.id ?? ctx.ids.next('ack');
    draft.acknowledgements[id] = { id, ...args };
    return [id];
  },
  example: (_plan, rng) => ({
    key: `gas/drop:r${rng.below(3)}`,
    note: 'seen',
    found: { lo: 0.9, hi: 1.1, unit: 'mbar' },
  }),
});
