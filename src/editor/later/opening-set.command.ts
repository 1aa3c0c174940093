import * as v from 'valibot';
import { opening } from '../../plan/records/building.ts';
import { id } from '../../plan/records/parts.ts';
import { change } from '../commands/change-of.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { mustFit } from '../commands/opening-fits.ts';

const { kind, name, from, alongMm, widthMm, sillMm, headMm, opens, hinge, swings, sureness } = opening.entries;

export default defineCommand({
  id: 'opening.set',
  label: (args, before) => `change ${before.openings[args.opening]?.kind ?? 'opening'}`,
  args: v.object({
    opening: id<'opening'>(),
    change: v.partial(v.object({ kind, name, from, alongMm, widthMm, sillMm, headMm, opens, hinge, swings, sureness })),
  }),
  run(draft, args) {
    const record = draft.openings[args.opening] ?? refuse('That opening is no longer there.');
    change(record, args.change);
    mustFit(draft, record);
    return [];
  },
  example(plan, rng) {
    const opening = rng.pick(Object.keys(plan.openings));
    const changes = [{ name: 'side door' }, { opens: true }, { widthMm: 555.55 }, { hinge: 'a' }, { swings: 'left' }];
    return opening === undefined ? null : { opening, change: rng.pick(changes) };
  },
});
