import * as v from 'valibot';
import { services } from '../../catalogue/services.ts';
import { id } from '../../plan/records/parts.ts';
import { group, run, tube } from '../../plan/records/pipework.ts';
import { bankPlace, cornerOf } from '../bank/bank-place.ts';
import { workOut } from '../bank/lay-new.ts';
import { writeMember } from '../bank/write-member.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

const pointEnd = v.nullable(v.object({ point: id<'point'>() }));
const { service, joining, turns } = run.entries;
const MEMBERS = ['gas', 'heatingFlow', 'heatingReturn', 'cold', 'hot'] as const;

/**
 * Lays several runs at once beside each other along one path, corners nested, each from and to its own connection where
 * `start` or `end` tells an appliance. A member it has no connection for stays open. Gives the group, then its runs.
 */
export default defineCommand({
  id: 'bank.lay',
  label: (args) => `lay bank of ${args.members.length}`,
  args: v.object({
    members: v.pipe(
      v.array(v.object({ service, tube, joining, turns })),
      v.minLength(2, 'a bank has two runs or more'),
      v.maxLength(12, 'a bank has twelve runs at most'),
    ),
    spacingMm: group.entries.spacingMm,
    row: v.optional(v.picklist(['level', 'upright']), 'level'),
    path: v.pipe(v.array(bankPlace), v.minLength(2, 'a bank needs two corners'), v.maxLength(200)),
    start: v.optional(pointEnd, null),
    end: v.optional(pointEnd, null),
  }),
  run(draft, args, ctx) {
    if (args.spacingMm <= 0) refuse('The runs of a bank need a spacing.');
    const corners = args.path.map((p) => cornerOf(draft, p));
    const { members: pipes, spacingMm, row } = args;
    const ends = { start: args.start?.point ?? null, end: args.end?.point ?? null };
    const laid = workOut(ctx.before, { pipes, spacingMm, row, corners, ...ends }, ctx.option);
    const made = ctx.ids.next('g');
    const runs = pipes.map((pipe, i) => {
      const run = ctx.ids.next('r');
      const { service, joining, turns } = pipe;
      draft.runs[run] = { id: run, service, name: '', joining, turns, option: ctx.option };
      const tails = { start: laid.starts[i] ?? null, end: laid.ends[i] ?? null };
      const one = laid.members[i] ?? refuse('A bank has two runs or more.');
      writeMember(draft, ctx, corners, { run, laid: one, old: null, tails, tube: pipe.tube });
      return run;
    });
    const members = laid.order.flatMap((i) => runs[i] ?? []);
    draft.groups[made] = { id: made, name: '', members, spacingMm };
    return [made, ...runs];
  },
  example(plan, rng) {
    const storey = rng.pick(Object.keys(plan.storeys));
    if (storey === undefined) return null;
    const points = Object.values(plan.points).filter((p) => p.connections.length > 2);
    const at = (x: number, y: number) => ({ storey, x, y, height: { from: 'floor', of: storey, mm: 2000 } });
    const [x, y] = [rng.below(9000) / 3, rng.below(9000) / 3];
    const members = MEMBERS.slice(0, 2 + rng.below(4)).map((id) => {
      const kind = services.get(id);
      return { service: id, tube: { ...kind?.defaultTube }, joining: kind?.defaultJoining ?? null, turns: 'elbow' };
    });
    const end = rng.below(2) ? rng.pick(points) : undefined;
    const path = [at(x, y), at(x + 3000, y), ...(rng.below(2) ? [at(x + 3000, y + 2500.05)] : [])];
    return { members, spacingMm: 60 + rng.below(9) / 7, path, start: null, end: end ? { point: end.id } : null };
  },
});
