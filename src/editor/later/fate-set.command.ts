import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

const FATES = { keep: 'keep', strip: 'strip out', cap: 'cap off' } as const;
const SURVEYED = ['walls', 'openings', 'voids', 'points', 'runs', 'legs', 'stretches', 'items'] as const;

/** What becomes of surveyed things in an option. New things have no fate: they are drawn or they are not. */
export default defineCommand({
  id: 'fate.set',
  label: (args) => FATES[args.fate],
  args: v.object({
    option: id<'option'>(),
    ids: v.pipe(v.array(v.string()), v.minLength(1, 'choose what it is about')),
    fate: v.picklist(['keep', 'strip', 'cap']),
  }),
  run(draft, args) {
    const option = draft.options[args.option] ?? refuse('That option is no longer there.');
    for (const thing of args.ids) {
      const map =
        SURVEYED.find((m) => draft[m][thing]) ?? refuse('That is no longer there, or has no fate of its own.');
      if (draft[map][thing]?.option !== null) refuse('Only what was surveyed is kept, stripped out or capped off.');
      if (args.fate === 'keep') delete option.fates[thing];
      else option.fates[thing] = args.fate;
    }
    return [];
  },
  example(plan, rng) {
    const option = rng.pick(Object.keys(plan.options));
    const all = SURVEYED.flatMap((m) => Object.values(plan[m])).filter((r) => r.option === null);
    const thing = rng.pick(all);
    return option === undefined || !thing
      ? null
      : { option, ids: [thing.id], fate: rng.pick(['keep', 'strip', 'cap']) };
  },
});
