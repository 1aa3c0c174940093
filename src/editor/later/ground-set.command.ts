import * as v from 'valibot';
import { ground } from '../../plan/records/building.ts';
import { id } from '../../plan/records/parts.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

const { line, kind, sureness } = ground.entries;

/** Ground level along the outside. Without `ground` a new line is made. */
export default defineCommand({
  id: 'ground.set',
  label: (args) => (args.ground === undefined ? 'draw ground level' : 'change ground level'),
  args: v.object({ ground: v.optional(id<'ground'>()), line, kind, sureness: v.optional(sureness, 'assumed') }),
  run(draft, args, ctx) {
    const { ground: of, ...told } = args;
    if (of !== undefined && !draft.grounds[of]) refuse('That line is no longer there.');
    const made = of ?? ctx.ids.next('ground');
    draft.grounds[made] = { id: made, ...told };
    return [made];
  },
  example: (_plan, rng) => ({ kind: 'paving', line: [{ x: 0, y: 0, z: -150 - rng.below(9) / 7 }] }),
});
