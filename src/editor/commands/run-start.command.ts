import * as v from 'valibot';
import { text } from '../../plan/records/parts.ts';
import { leg, run, tube } from '../../plan/records/pipework.ts';
import { addPath } from './add-path.ts';
import { defineCommand } from './define-command.ts';
import { somePath } from './example-places.ts';
import { nodeFor, placeArg } from './place-arg.ts';
import { serviceWord } from './service-word.ts';

/** Starts a run at the first place and takes it through the others. Its last node is an open end or a tail. */
export default defineCommand({
  id: 'run.start',
  label: (args) => `start ${serviceWord(args.service)} run`,
  args: v.object({
    service: run.entries.service,
    name: v.optional(text, ''),
    joining: run.entries.joining,
    turns: run.entries.turns,
    tube,
    insulation: v.optional(leg.entries.insulation, null),
    sureness: v.optional(leg.entries.sureness, 'seen'),
    path: v.pipe(v.array(placeArg), v.minLength(2, 'a run needs two places'), v.maxLength(200)),
  }),
  run(draft, args, ctx) {
    const id = ctx.ids.next('r');
    const { service, name, joining, turns } = args;
    draft.runs[id] = { id, service, name, joining, turns, option: ctx.option };
    const [first, ...rest] = args.path;
    if (!first) return [];
    const start = nodeFor(draft, first, service, ctx);
    return [
      id,
      start,
      ...addPath(draft, { id, service, name, joining, turns, option: ctx.option }, start, rest, args, ctx),
    ];
  },
  example(plan, rng) {
    const path = somePath(plan, rng, 'gas', 2 + rng.below(3));
    return path && { service: 'gas', joining: null, turns: 'elbow', tube: { kind: 'copper', size: '22x0.9' }, path };
  },
});
