import { createStore } from 'zustand/vanilla';
import type { Case, Plan } from '../../plan/plan.ts';

/**
 * What is shown faint under the drawing. It belongs to whoever looks, not to the plan. `other`: another side of the work
 * or another option; null where none is.
 */
export interface Ghosts {
  readonly below: boolean;
  readonly above: boolean;
  readonly other: Case | null;
}

const KEY = 'kickset.faint';
const NONE: Ghosts = { below: false, above: false, other: null };

const isWhen = (w: unknown): w is Case['when'] => w === 'before' || w === 'after';

function read(text: string | null): Ghosts {
  if (text === null) return NONE;
  const held: unknown = JSON.parse(text);
  if (typeof held !== 'object' || held === null) return NONE;
  const { below, above, other } = held as Record<string, unknown>;
  const { option, when } = (other ?? {}) as Record<string, unknown>;
  const told = isWhen(when) && (option === null || typeof option === 'string') ? { option, when } : null;
  return { below: below === true, above: above === true, other: told };
}

function stored(): Ghosts {
  try {
    return read(localStorage.getItem(KEY));
  } catch {
    return NONE;
  }
}

/** Kept on the device, and the same for every job until it is changed. */
export const ghosts = createStore<Ghosts>(stored);

ghosts.subscribe(({ below, above, other }) => {
  try {
    localStorage.setItem(KEY, JSON.stringify({ below, above, other }));
  } catch {
    // It holds until the page is closed.
  }
});

export const sameCase = (a: Case, b: Case): boolean =>
  a.when === b.when && (a.when === 'before' || a.option === b.option);

/** The floor next below or above one; undefined where there is none. */
export function nextFloor(plan: Plan, storey: string, way: 'below' | 'above') {
  const here = plan.storeys[storey];
  if (!here) return undefined;
  const sign = way === 'below' ? -1 : 1;
  return Object.values(plan.storeys)
    .filter((s) => (s.floorMm - here.floorMm) * sign > 0)
    .sort((a, b) => (a.floorMm - b.floorMm) * sign)[0];
}

/** The other case, where there is one to show: not the one that is looked at, and its option still there. */
export function otherShown(plan: Plan, chosen: Case, { other }: Ghosts): Case | null {
  if (!other || sameCase(other, chosen)) return null;
  if (other.when === 'after' && (other.option === null || !plan.options[other.option])) return null;
  return other;
}

/** While what was there before is shown faint, what comes out is shown in that, not struck out a second time. */
export const hidesStripped = (plan: Plan, chosen: Case, shown: Ghosts): boolean =>
  chosen.when === 'after' && otherShown(plan, chosen, shown)?.when === 'before';
