import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { leg, tube } from '../../plan/records/pipework.ts';
import { addPath } from './add-path.ts';
import { defineCommand, refuse } from './define-command.ts';
import { somePath } from './example-places.ts';
import { placeArg } from './place-arg.ts';
import { serviceWord } from './service-word.ts';

/** Ends a run at a tail, at a node or on a leg of the same service, which it splits for the tee. */
export default defineCommand({
  id: 'run.finish',
  label: (args, before) => `finish ${serviceWord(before.runs[args.run]?.service)} run`,
  args: v.object({
    run: id<'run'>(),
    from: id<'node'>(),
    tube,
    insulation: v.optional(leg.entries.insulation, null),
    sureness: v.optional(leg.entries.sureness, 'seen'),
    path: v.pipe(v.array(placeArg), v.minLength(1, 'a run ends somewhere'), v.maxLength(200)),
  }),
  run(draft, args, ctx) {
    const run = draft.runs[args.run] ?? refuse('That run is no longer there.');
    if (!draft.nodes[args.from]) refuse('The end of that run is no longer there.');
    if (args.path.at(-1)?.at === 'free') refuse('A run is finished at a connection or on another pipe.');
    return addPath(draft, run, args.from, args.path, args, ctx);
  },
  example(plan, rng) {
    const leg = rng.pick(Object.values(plan.legs));
    const service = leg && plan.runs[leg.run]?.service;
    const path = service === undefined ? null : somePath(plan, rng, service, 1);
    return leg && path ? { run: leg.run, from: leg.b, tube: leg.tube, path } : null;
  },
});
