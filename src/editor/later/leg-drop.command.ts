import * as v from 'valibot';
import { services } from '../../catalogue/services.ts';
import { layDrop } from '../../network/steps/lay-drop.ts';
import { heightRef, id, mm } from '../../plan/records/parts.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { dropLoose } from '../commands/move-things.ts';
import { adopt } from '../moving/adopt.ts';
import { adoptFates } from '../steps/adopt-fates.ts';

/** Takes a pipe up or down at a place along a leg, and on at a told height from there towards one of its ends. */
export default defineCommand({
  id: 'leg.drop',
  label: () => 'drop to a height',
  args: v.object({ leg: id<'leg'>(), alongMm: mm, toward: v.picklist(['a', 'b']), height: heightRef }),
  run(draft, args, ctx) {
    const { before, ids } = ctx;
    const answer = layDrop(before, args, { ids, runsDownhill: (s) => services.get(s)?.runsDownhill ?? false });
    if (!answer.ok) return refuse(answer.why);
    const made = adopt(draft, before, answer.plan);
    adoptFates(draft, before, answer.plan);
    dropLoose(draft, ctx);
    return made;
  },
  example(plan, rng) {
    const leg = rng.pick(Object.keys(plan.legs));
    const storey = rng.pick(Object.keys(plan.storeys));
    if (leg === undefined || storey === undefined) return null;
    const height = { from: rng.pick(['floor', 'ceiling']), of: storey, mm: rng.below(700) / 7 };
    return { leg, alongMm: rng.below(1500), toward: rng.pick(['a', 'b']), height };
  },
});
