import * as v from 'valibot';
import { services } from '../../catalogue/services.ts';
import { reRoute } from '../../network/steps/re-route.ts';
import { heightRef, id, mm } from '../../plan/records/parts.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { otherEnd } from '../commands/legs-at.ts';
import { dropLoose } from '../commands/move-things.ts';
import { serviceWord } from '../commands/service-word.ts';
import { adopt } from '../moving/adopt.ts';
import { adoptFates } from '../steps/adopt-fates.ts';

const onRun = v.variant('at', [
  v.object({ at: v.literal('node'), node: id<'node'>() }),
  v.object({ at: v.literal('leg'), leg: id<'leg'>(), alongMm: mm }),
]);

/** Lays the part of a run between two of its places another way. The rest of the run, its ids and its ends stay. */
export default defineCommand({
  id: 'run.reroute',
  label: (args, before) => `re-route ${serviceWord(before.runs[args.run]?.service)} run`,
  args: v.object({
    run: id<'run'>(),
    from: onRun,
    to: onRun,
    path: v.pipe(v.array(v.object({ storey: id<'storey'>(), x: mm, y: mm, height: heightRef })), v.maxLength(200)),
  }),
  run(draft, args, ctx) {
    const { before, ids, option } = ctx;
    const runsDownhill = (s: string): boolean => services.get(s)?.runsDownhill ?? false;
    const answer = reRoute(before, args, { ids, runsDownhill, option });
    if (!answer.ok) return refuse(answer.why);
    const made = adopt(draft, before, answer.plan);
    adoptFates(draft, before, answer.plan);
    dropLoose(draft, ctx);
    return made;
  },
  example(plan, rng) {
    const leg = rng.pick(Object.values(plan.legs));
    const storey = rng.pick(Object.keys(plan.storeys));
    if (!leg || storey === undefined) return null;
    const near = Object.values(plan.legs).filter((l) => l.run === leg.run && (l.a === leg.b || l.b === leg.b));
    const beside = rng.pick(near) ?? leg;
    const via = () => ({
      storey,
      x: rng.below(40_000) / 7,
      y: rng.below(40_000) / 7,
      height: { from: 'floor', of: storey, mm: rng.below(14_000) / 7 },
    });
    const from = rng.below(2) ? { at: 'node', node: leg.a } : { at: 'leg', leg: leg.id, alongMm: rng.below(900) };
    const end = otherEnd(beside, leg.b);
    const to = rng.below(2) ? { at: 'node', node: leg.b } : { at: 'node', node: end };
    return { run: leg.run, from, to, path: Array.from({ length: rng.below(3) }, via) };
  },
});
