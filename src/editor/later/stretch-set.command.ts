import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { stretch } from '../../plan/records/pipework.ts';
import { change } from '../commands/change-of.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

const { lengthMm, bends, tube } = stretch.entries;

export default defineCommand({
  id: 'stretch.set',
  label: () => 'change unseen stretch',
  args: v.object({ stretch: id<'stretch'>(), change: v.partial(v.object({ lengthMm, bends, tube })) }),
  run(draft, args) {
    const { lengthMm: length, bends: turns } = args.change;
    if (length && (length.lo < 0 || length.hi < length.lo)) refuse('The least length comes first.');
    if (turns && (turns.lo < 0 || turns.hi < turns.lo)) refuse('The fewest bends come first.');
    change(draft.stretches[args.stretch] ?? refuse('That stretch is no longer there.'), args.change);
    return [];
  },
  example(plan, rng) {
    const stretch = rng.pick(Object.keys(plan.stretches));
    const changes = [
      { lengthMm: { lo: 1000.04, hi: 2000 } },
      { bends: { lo: 0, hi: 2 } },
      { lengthMm: { lo: 9, hi: 2 } },
    ];
    return stretch === undefined ? null : { stretch, change: rng.pick(changes) };
  },
});
