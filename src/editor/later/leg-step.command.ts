import * as v from 'valibot';
import { services } from '../../catalogue/services.ts';
import { layStep } from '../../network/steps/lay-step.ts';
import { finite, id, mm, xyz } from '../../plan/records/parts.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { dropLoose } from '../commands/move-things.ts';
import { adopt } from '../moving/adopt.ts';
import { adoptFates } from '../steps/adopt-fates.ts';

const SAID = { set: 'set', passover: 'passover', kick: 'kick', swanNeck: 'swan neck' } as const;

/**
 * Steps a leg round something. `alongMm` is the middle of the place that is cleared, from end a; `offset` goes across the
 * leg; `overMm` is how much of it lies clear. Without `toward` a set shifts the side of end b, or that of end a where b is held.
 */
export default defineCommand({
  id: 'leg.step',
  label: (args) => SAID[args.kind],
  args: v.object({
    leg: id<'leg'>(),
    kind: v.picklist(['set', 'passover', 'kick', 'swanNeck']),
    alongMm: mm,
    offset: xyz,
    overMm: v.pipe(finite, v.minValue(0), v.maxValue(100_000)),
    angleDeg: v.pipe(finite, v.minValue(10), v.maxValue(90)),
    toward: v.optional(v.picklist(['a', 'b'])),
  }),
  run(draft, args, ctx) {
    const { before, ids } = ctx;
    const answer = layStep(before, args, { ids, runsDownhill: (s) => services.get(s)?.runsDownhill ?? false });
    if (!answer.ok) return refuse(answer.why);
    const made = adopt(draft, before, answer.plan);
    adoptFates(draft, before, answer.plan);
    dropLoose(draft, ctx);
    return made;
  },
  example(plan, rng) {
    const leg = rng.pick(Object.keys(plan.legs));
    if (leg === undefined) return null;
    const kind = rng.pick(['set', 'passover', 'kick', 'swanNeck']);
    const far = (20 + rng.below(900) / 7) * (rng.below(2) ? 1 : -1);
    const offset = rng.pick([
      { x: far, y: 0, z: 0 },
      { x: 0, y: far, z: 0 },
      { x: 0, y: 0, z: far },
    ]);
    return { leg, kind, alongMm: 200 + rng.below(1500), offset, overMm: 40 + rng.below(100), angleDeg: 45 };
  },
});
