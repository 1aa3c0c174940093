import type { Plan } from '../../plan/plan.ts';

const over = (plan: Plan, z: number, storey: string): number => Math.round(z - (plan.storeys[storey]?.floorMm ?? 0));

/** A level over the floor of a storey, with the floor's name where it is not the one that is looked at. */
export function levelOf(plan: Plan, z: number, storey: string, seenFrom: string = storey): string {
  const mm = over(plan, z, storey);
  const name = storey === seenFrom ? undefined : plan.storeys[storey]?.name;
  if (mm < 0) return `${-mm} below ${name ?? 'the floor'}`;
  return name === undefined ? mm.toString() : `${mm} on ${name}`;
}

/** The same for a list of levels, where the floor goes without saying. */
export function shortLevel(plan: Plan, z: number, storey: string): string {
  const mm = over(plan, z, storey);
  return mm < 0 ? `${-mm} below` : mm.toString();
}

/** On a section, where the floor is a line of its own: a level mark, with a minus below it. */
export function levelMark(plan: Plan, z: number, storey: string): string {
  const mm = over(plan, z, storey);
  return mm < 0 ? `-${-mm}` : mm.toString();
}
