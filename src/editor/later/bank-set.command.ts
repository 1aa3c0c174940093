import * as v from 'valibot';
import { resolveHeight } from '../../geometry/heights.ts';
import { scale3 } from '../../geometry/vec.ts';
import { evenly } from '../../network/bank/nest.ts';
import { rowOf } from '../../network/bank/read-bank.ts';
import type { Plan } from '../../plan/plan.ts';
import type { HeightRef } from '../../plan/records/parts.ts';
import { heightRef, id } from '../../plan/records/parts.ts';
import { group } from '../../plan/records/pipework.ts';
import type { BankCorner } from '../bank/bank-place.ts';
import { layAgain, type Standing, standing } from '../bank/lay-again.ts';
import { levelLeg, levelPart } from '../bank/level-part.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

/** The path with its level part at another height. */
function moved(plan: Plan, now: Standing, height: HeightRef, leg: string | null): BankCorner[] {
  const at = levelLeg(now.read, leg);
  const part = at === null ? null : levelPart(now.read.path, at);
  if (!part) return refuse('That bank has no level part to set a height for.');
  const z = resolveHeight(plan, height)?.z ?? refuse('That height is told from something that has no height itself.');
  const [from, to] = part;
  for (const [inner, outer] of [
    [from, from - 1],
    [to, to + 1],
  ] as const) {
    const [a, b] = [now.corners[inner], now.corners[outer]];
    if (a && b && Math.hypot(a.at.x - b.at.x, a.at.y - b.at.y) > 0.2) {
      refuse('The bank slants there: a slanting part takes its height from both its ends.');
    }
    if (b && Math.abs(b.at.z - z) < 1) refuse('At that height there is no rise or drop left in the bank.');
  }
  return now.corners.map((c, k) => (k < from || k > to ? c : { ...c, at: { ...c.at, z }, height }));
}

/**
 * Changes the order, the spacing or the height of a bank: the part in which its runs lie beside each other is laid anew
 * about its middle, and each run keeps its own ends. `leg` says which level part a height is for.
 */
export default defineCommand({
  id: 'bank.set',
  label: (args) => (args.order ? 'order of bank' : args.height ? 'height of bank' : 'spacing of bank'),
  args: v.object({
    group: id<'group'>(),
    order: v.optional(group.entries.members),
    spacingMm: v.optional(group.entries.spacingMm),
    height: v.optional(heightRef),
    leg: v.optional(v.nullable(id<'leg'>()), null),
  }),
  run(draft, args, ctx) {
    const now = standing(ctx.before, args.group, ctx);
    const record = draft.groups[args.group] ?? refuse('That bank is no longer there.');
    const order = args.order ?? record.members;
    const told = [...order].sort().join();
    if (told !== [...record.members].sort().join()) refuse('The order names every run of the bank once.');
    const spacingMm = args.spacingMm ?? record.spacingMm;
    if (spacingMm <= 0) refuse('The runs of a bank need a spacing.');
    const corners = args.height ? moved(ctx.before, now, args.height, args.leg) : now.corners;
    const { members } = now.read;
    const inRow = order.filter((run) => members.some((m) => m.run === run));
    const places = evenly(inRow.length, spacingMm);
    const row = rowOf(now.read);
    const evened = args.order !== undefined || args.spacingMm !== undefined;
    const across = members.map((m) => (evened ? scale3(row, places[inRow.indexOf(m.run)] ?? 0) : m.across));
    const made = layAgain(draft, ctx, { corners, members, across, spacingMm });
    record.members = [...order];
    record.spacingMm = spacingMm;
    return made;
  },
  example(plan, rng) {
    const group = rng.pick(Object.values(plan.groups));
    const storey = rng.pick(Object.keys(plan.storeys));
    if (!group || storey === undefined) return null;
    const which = rng.below(3);
    if (which === 0) return { group: group.id, order: [...group.members].reverse() };
    if (which === 1) return { group: group.id, spacingMm: 80 + rng.below(9) / 7 };
    return { group: group.id, height: { from: 'floor', of: storey, mm: 1900 + rng.below(50) / 3 } };
  },
});
