import type { Plan } from '../../plan/plan.ts';

/** A level over the floor of a storey, with the floor's name where it is not the one that is looked at. */
export function levelOf(plan: Plan, z: number, storey: string, seenFrom: string = storey): string {
  const floor = plan.storeys[storey];
  const over = Math.round(z - (floor?.floorMm ?? 0));
  const figure = over < 0 ? `${-over} below the floor` : over.toString();
  return floor && storey !== seenFrom ? `${figure} on ${floor.name}` : figure;
}
