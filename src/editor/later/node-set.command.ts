import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { node } from '../../plan/records/pipework.ts';
import { change } from '../commands/change-of.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

/** How this one corner turns, whatever its run says; null goes by the run. */
export default defineCommand({
  id: 'node.set',
  label: (args) => (args.change.turn === null ? 'turn as the run' : `turn with ${args.change.turn}`),
  args: v.object({ node: id<'node'>(), change: v.object({ turn: node.entries.turn }) }),
  run(draft, args) {
    change(draft.nodes[args.node] ?? refuse('That node is no longer there.'), args.change);
    return [];
  },
  example(plan, rng) {
    const node = rng.pick(Object.keys(plan.nodes));
    return node === undefined ? null : { node, change: { turn: rng.pick(['elbow', 'bend', null]) } };
  },
});
