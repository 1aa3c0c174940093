import type { Case, Plan } from '../../plan/plan.ts';

/** Before the work, then one key for each option after it. */
export function casesOf(plan: Plan): readonly { readonly chosen: Case; readonly label: string }[] {
  const options = Object.values(plan.options).sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
  return [
    { chosen: { option: null, when: 'before' }, label: 'Before' },
    ...options.map((o) => ({ chosen: { option: o.id, when: 'after' } as const, label: `After, ${o.name}` })),
  ];
}
