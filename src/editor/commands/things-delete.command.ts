import * as v from 'valibot';
import { RECORD_MAPS } from '../../plan/plan.ts';
import { type Doomed, removeAll } from './cascade.ts';
import { defineCommand, refuse } from './define-command.ts';
import { joinLegs } from './join-legs.ts';
import { partRuns } from './part-runs.ts';

const DELETABLE = RECORD_MAPS.filter((map) => map !== 'storeys' && map !== 'options');
const PIPEWORK: readonly string[] = ['runs', 'legs', 'stretches', 'points', 'items'];

/**
 * Deletes what is chosen, with all that cannot stand without it. After the work, surveyed pipework is not deleted but
 * marked to strip out: it is still in the house. A node that pipe goes straight through leaves one leg; any other goes with
 * the legs that meet in it.
 */
export default defineCommand({
  id: 'things.delete',
  label: (args) => (args.things.length === 1 ? 'delete' : `delete ${args.things.length} things`),
  args: v.object({
    things: v.pipe(
      v.array(v.object({ map: v.picklist(DELETABLE), id: v.string() })),
      v.minLength(1, 'choose what to delete'),
    ),
  }),
  run(draft, args, ctx) {
    const option = ctx.option === null ? undefined : draft.options[ctx.option];
    const doomed: Doomed[] = [];
    for (const { map, id } of args.things) {
      const record = draft[map][id] ?? refuse('Some of it is no longer there.');
      const surveyed = PIPEWORK.includes(map) && 'option' in record && record.option === null;
      if (option && surveyed) option.fates[id] = 'strip';
      else if (map !== 'nodes' || args.things.length > 1 || !joinLegs(draft, id, ctx)) doomed.push({ map, id });
    }
    removeAll(ctx.before, draft, doomed);
    return partRuns(ctx.before, draft, new Set(Object.keys(draft.runs)), ctx);
  },
  example(plan, rng) {
    const all = DELETABLE.flatMap((map) => Object.keys(plan[map]).map((id) => ({ map, id })));
    const things = [rng.pick(all), rng.pick(all)].flatMap((t) => t ?? []);
    return things.length === 0 ? null : { things };
  },
});
