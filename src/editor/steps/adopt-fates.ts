import type { Plan } from '../../plan/plan.ts';

/** Writes into a draft of `before` what another plan, made from it, says otherwise of kept, stripped and capped pipe. */
export function adoptFates(draft: Plan, before: Plan, next: Plan): void {
  for (const option of Object.values(next.options)) {
    const to = draft.options[option.id];
    if (to && before.options[option.id] !== option) to.fates = { ...option.fates };
  }
}
