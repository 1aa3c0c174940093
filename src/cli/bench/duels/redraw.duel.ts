import { fragments } from '../../../drawing/fragments.ts';
import type { Plan } from '../../../plan/plan.ts';
import { defineDuel } from '../duel.ts';
import { AFTER, demoPlan } from '../houses.ts';

const VIEW = { kind: 'plan', storey: 'B' } as const;

/** The plan with one leg a size up: a new record, and all the others as they were. */
function edited(plan: Plan, size: string): Plan {
  const leg = Object.values(plan.legs)[0];
  return leg ? { ...plan, legs: { ...plan.legs, [leg.id]: { ...leg, tube: { ...leg.tube, size } } } } : plan;
}

export default defineDuel({
  id: 'redraw',
  ours: 'draw the flat again after one leg changed',
  peer: 'draw it from records nobody has seen',
  atMost: 0.8,
  prepare() {
    const plan = demoPlan('flat');
    let turn = 0;
    fragments(plan, VIEW, AFTER);
    const next = () => edited(plan, turn++ % 2 === 0 ? '22x0.9' : '28x0.9');
    const bytes = (of: Plan) => JSON.stringify(fragments(of, VIEW, AFTER));
    const change = edited(plan, '22x0.9');
    if (bytes(change) !== bytes(structuredClone(change))) throw new Error('kept fragments draw another picture');
    return {
      ours: () => fragments(next(), VIEW, AFTER),
      peer: () => fragments(structuredClone(next()), VIEW, AFTER),
    };
  },
});
