import * as v from 'valibot';
import { withChanges } from '../../network/displace/changes.ts';
import { retell } from '../../network/displace/retell.ts';
import { heightRef, id, positiveMm } from '../../plan/records/parts.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { dropLoose } from '../commands/move-things.ts';
import { serviceWord } from '../commands/service-word.ts';
import { adopt } from '../moving/adopt.ts';

/** Tells one leg of a run anew: how long it is, or the height it goes to. What was told after it goes along. */
export default defineCommand({
  id: 'run.retell',
  label: (args, before) => `tell ${serviceWord(before.runs[args.run]?.service)} run again`,
  args: v.object({
    run: id<'run'>(),
    /** Counts the steps of the run from its source. */
    index: v.pipe(v.number(), v.integer(), v.minValue(0)),
    change: v.union([v.object({ lengthMm: positiveMm }), v.object({ height: heightRef })]),
  }),
  run(draft, args, ctx) {
    const { before, chosen, ids } = ctx;
    if (!before.runs[args.run]) refuse('That run is no longer there.');
    const told = retell(before, chosen, args.run, args.index, args.change, { ids });
    if (!told.ok) return refuse(told.why);
    const made = adopt(draft, before, withChanges(before, told.changes));
    dropLoose(draft, ctx);
    return made;
  },
  example(plan, rng) {
    const leg = rng.pick(Object.values(plan.legs));
    const storey = rng.pick(Object.keys(plan.storeys));
    if (!leg || storey === undefined) return null;
    const height = { from: 'ceiling', of: storey, mm: -rng.below(700) / 7 };
    const change = rng.below(2) ? { lengthMm: 200 + rng.below(9000) / 7 } : { height };
    return { run: leg.run, index: rng.below(2), change };
  },
});
