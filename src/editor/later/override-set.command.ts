import * as v from 'valibot';
import { override } from '../../plan/records/statements.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

const { limit, scope, value, unit, note, page } = override.entries;

/**
 * A limit from the appliance's own sheet, in place of the general one. It needs the page or a note, so that somebody can
 * look it up. A second one for the same limit and thing replaces the first.
 */
export default defineCommand({
  id: 'override.set',
  label: (args) => `limit from the sheet: ${args.value} ${args.unit}`,
  args: v.object({ limit, scope, value, unit, note: v.optional(note, ''), page: v.optional(page, '') }),
  run(draft, args, ctx) {
    if (args.note.trim() === '' && args.page.trim() === '') refuse('Say where the figure stands: the page, or a note.');
    const there = Object.values(draft.overrides).find((o) => o.limit === args.limit && o.scope === args.scope);
    const id = there?.id ?? ctx.ids.next('limit');
    draft.overrides[id] = { id, ...args };
    return [id];
  },
  example(plan, rng) {
    const scope = rng.pick([null, ...Object.keys(plan.points)]) ?? null;
    const page = rng.pick(['12', '']);
    return { limit: rng.pick(['boiler/clear-front', 'gas/drop']), scope, value: 300 + rng.below(9), unit: 'mm', page };
  },
});
