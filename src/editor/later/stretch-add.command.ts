import * as v from 'valibot';
import { run, stretch } from '../../plan/records/pipework.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { somePlace } from '../commands/example-places.ts';
import { nodeFor, placeArg } from '../commands/place-arg.ts';

const { lengthMm, bends, tube } = stretch.entries;

/** Existing pipe nobody can see, between two places. Without `run` it is a run of its own. */
export default defineCommand({
  id: 'stretch.add',
  label: () => 'draw unseen stretch',
  args: v.object({
    run: v.optional(stretch.entries.run),
    service: run.entries.service,
    a: placeArg,
    b: placeArg,
    lengthMm,
    bends,
    tube,
  }),
  run(draft, args, ctx) {
    const { service, lengthMm, bends, tube } = args;
    if (lengthMm.lo < 0 || lengthMm.hi < lengthMm.lo) refuse('The least length comes first, and is not below nothing.');
    if (bends.lo < 0 || bends.hi < bends.lo) refuse('The fewest bends come first, and are not below none.');
    let id = args.run;
    if (id === undefined) {
      id = ctx.ids.next('r');
      draft.runs[id] = { id, service, name: '', joining: null, turns: 'elbow', option: ctx.option };
    } else if (draft.runs[id]?.service !== service) refuse('That run is gone, or is of another service.');
    const a = nodeFor(draft, args.a, service, ctx);
    const b = nodeFor(draft, args.b, service, ctx);
    if (a === b) refuse('A stretch needs two places.');
    const made = ctx.ids.next('u');
    draft.stretches[made] = { id: made, run: id, a, b, lengthMm, bends, tube, option: ctx.option };
    return [made, id, a, b];
  },
  example(plan, rng) {
    const a = somePlace(plan, rng, 'gas');
    const b = somePlace(plan, rng, 'gas');
    if (!a || !b) return null;
    const tube = { kind: 'copper', size: null };
    return { service: 'gas', a, b, lengthMm: { lo: 3000, hi: 5000 }, bends: { lo: 1, hi: 3 }, tube };
  },
});
