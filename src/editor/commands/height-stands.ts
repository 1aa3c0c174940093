import { resolveHeight } from '../../geometry/heights.ts';
import type { Plan } from '../../plan/plan.ts';
import type { HeightRef } from '../../plan/records/parts.ts';
import { refuse } from './define-command.ts';

/** Refuses a height that leans on nothing, or in a ring on itself. Null is a height that was not told, and may stand. */
export function mustStand(plan: Plan, ...heights: readonly (HeightRef | null | undefined)[]): void {
  for (const height of heights) {
    if (!height) continue;
    const leans = height.of === null ? height.from === 'datum' : resolveHeight(plan, height) !== undefined;
    if (!leans) refuse('That height is told from something that has no height itself.');
  }
}
