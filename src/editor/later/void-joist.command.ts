import * as v from 'valibot';
import { joists } from '../../plan/records/building.ts';
import { id } from '../../plan/records/parts.ts';
import { called } from '../commands/change-of.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

const { offsetMm, what } = joists.entries.exceptions.item.entries;

/** One joist that is not like the others: moved from its place by so much, missing, doubled. Null: like the others again. */
export default defineCommand({
  id: 'void.joist',
  label: (args, before) =>
    args.change === null
      ? `joist of ${called(before, args.void, 'void')} like the others`
      : `change a joist of ${called(before, args.void, 'void')}`,
  args: v.object({
    void: id<'void'>(),
    index: v.pipe(v.number(), v.integer()),
    change: v.nullable(v.object({ offsetMm, what })),
  }),
  run(draft, args) {
    const space = draft.voids[args.void] ?? refuse('That void is no longer there.');
    const grid = space.joists ?? refuse('No joists were told of this void.');
    const others = grid.exceptions.filter((e) => e.index !== args.index);
    const { change } = args;
    if (change && Math.abs(change.offsetMm) >= grid.centresMm)
      refuse('A joist moved so far would stand in the place of the next one.');
    const plain = change === null || (change.offsetMm === 0 && change.what === '');
    grid.exceptions = plain ? others : [...others, { index: args.index, ...change }].sort((a, b) => a.index - b.index);
    return [];
  },
  example(plan, rng) {
    const space = rng.pick(Object.values(plan.voids));
    if (!space) return null;
    const what = rng.pick(['', 'missing', 'doubled', 'trimmer']);
    const change = rng.pick([null, { offsetMm: 40.06, what: '' }, { offsetMm: 0, what }]);
    return { void: space.id, index: rng.below(5), change };
  },
});
