import type { Case, Plan } from '../../plan/plan.ts';

export interface CaseKey {
  readonly chosen: Case;
  readonly label: string;
  /** Name of the option; null before the work. */
  readonly name: string | null;
}

/** Before the work (with the option that stays in hand), then one key for each option after it. */
export function casesOf(plan: Plan, inHand: string | null = null): readonly CaseKey[] {
  const options = Object.values(plan.options).sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
  return [
    { chosen: { option: inHand, when: 'before' }, label: 'Before', name: null },
    ...options.map((o) => ({
      chosen: { option: o.id, when: 'after' } as const,
      label: `After, ${o.name}`,
      name: o.name,
    })),
  ];
}
