import * as v from 'valibot';
import { sayTubeSize } from '../../catalogue/tubes.ts';
import { id } from '../../plan/records/parts.ts';
import { tube } from '../../plan/records/pipework.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

/** Tubes of several legs at once, as a way that a report offers names them: one step of undo. */
export default defineCommand({
  id: 'legs.size',
  label: ({ legs }) => {
    const sizes = [...new Set(legs.map((l) => (l.tube.size === null ? 'not known' : sayTubeSize(l.tube))))];
    return sizes.length === 1 ? `size ${sizes[0]}` : `sizes ${sizes.join(', ')}`;
  },
  args: v.object({
    legs: v.pipe(v.array(v.object({ leg: id<'leg'>(), tube })), v.minLength(1, 'choose legs to size')),
  }),
  run(draft, { legs }) {
    for (const { leg, tube } of legs) {
      const record = draft.legs[leg];
      if (!record) refuse('Some of it is no longer there.');
      record.tube = { ...tube };
    }
    return [];
  },
  example(plan, rng) {
    const all = Object.keys(plan.legs);
    const [one, other] = [rng.pick(all), rng.pick(all)];
    const size = rng.pick(['15x0.7', '22x0.9', '28x0.9', null]) ?? null;
    const legs = [...new Set([one, other])].flatMap((leg) =>
      leg === undefined ? [] : [{ leg, tube: { kind: 'copper', size } }],
    );
    return legs.length === 0 ? null : { legs };
  },
});
