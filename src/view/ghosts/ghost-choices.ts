import type { Case, Plan } from '../../plan/plan.ts';
import { type Ghosts, nextFloor, otherShown, sameCase } from './ghosts.ts';

export interface GhostChoice {
  readonly key: string;
  /** In a list: "Floor below: Ground floor". */
  readonly label: string;
  /** In the title: "ground floor". */
  readonly short: string;
  readonly on: boolean;
  /** The store as a tap leaves it. */
  readonly to: Ghosts;
}

const lower = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1);

/** Everything that can be shown faint under what is looked at now, with what a tap on it does. */
export function ghostChoices(plan: Plan, storey: string, chosen: Case, shown: Ghosts): GhostChoice[] {
  const floors = (['below', 'above'] as const).flatMap((way): GhostChoice[] => {
    const floor = nextFloor(plan, storey, way);
    if (!floor) return [];
    const on = shown[way];
    const short = lower(floor.name === '' ? `floor ${way}` : floor.name);
    return [{ key: way, label: `Floor ${way}: ${short}`, short, on, to: { ...shown, [way]: !on } }];
  });
  const options = Object.values(plan.options);
  const cases: { readonly of: Case; readonly short: string }[] = [
    ...(options.length > 0 ? [{ of: { option: null, when: 'before' } as const, short: 'before' }] : []),
    ...options.map((o) => ({ of: { option: o.id, when: 'after' } as const, short: `after, ${o.name}` })),
  ];
  const now = otherShown(plan, chosen, shown);
  return [
    ...floors,
    ...cases
      .filter(({ of }) => !sameCase(of, chosen))
      .map(({ of, short }): GhostChoice => {
        const on = now !== null && sameCase(now, of);
        const label = of.when === 'before' ? 'Before the work' : `After the work, ${short.slice('after, '.length)}`;
        return { key: `${of.when} ${of.option ?? ''}`, label, short, on, to: { ...shown, other: on ? null : of } };
      }),
  ];
}

/** "faint: ground floor, before": the one title of everything that is shown faint. Null where nothing is. */
export function ghostTitle(choices: readonly GhostChoice[]): string | null {
  const on = choices.filter((c) => c.on);
  return on.length === 0 ? null : `faint: ${on.map((c) => c.short).join(', ')}`;
}
