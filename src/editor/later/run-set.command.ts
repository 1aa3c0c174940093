import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { run } from '../../plan/records/pipework.ts';
import { change } from '../commands/change-of.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { serviceWord } from '../commands/service-word.ts';

const { name, joining, turns, service } = run.entries;

/**
 * Name, joining, turns or service of a run. Another service is refused while the run meets a tail or a pipe of the old
 * one: it would join two services.
 */
export default defineCommand({
  id: 'run.set',
  label: (_args, before) => `change ${serviceWord(before.runs[_args.run]?.service)} run`,
  args: v.object({
    run: id<'run'>(),
    change: v.partial(v.object({ name, joining, turns, service })),
  }),
  run(draft, args) {
    const record = draft.runs[args.run] ?? refuse('That run is no longer there.');
    const next = args.change.service;
    if (next !== undefined && next !== record.service) {
      const pipes = [...Object.values(draft.legs), ...Object.values(draft.stretches)];
      const nodes = new Set(pipes.filter((p) => p.run === record.id).flatMap((p) => [p.a, p.b]));
      const meets = pipes.some((p) => p.run !== record.id && (nodes.has(p.a) || nodes.has(p.b)));
      const tails = [...nodes].some((n) => draft.nodes[n]?.place.on === 'connection');
      if (meets || tails)
        refuse('This run is joined to other pipes or tails. Part it from them, then change its service.');
    }
    change(record, args.change);
    return [];
  },
  example(plan, rng) {
    const run = rng.pick(Object.keys(plan.runs));
    if (run === undefined) return null;
    const changes = [
      { name: 'to the loft' },
      { joining: 'press' },
      { turns: 'bend' },
      { service: 'cold' },
      { joining: null },
    ];
    return { run, change: rng.pick(changes) };
  },
});
