import { voidHeights } from '../../geometry/void-stretches.ts';
import type { Plan } from '../../plan/plan.ts';
import type { FacePlane } from '../pipes/plane.ts';

/** What lies over or under a storey; `solid` where it is the kind that may not be cut. */
export interface SlabPart {
  readonly from: number;
  readonly upTo: number;
  readonly solid: boolean;
}

export interface Slabs {
  readonly over: SlabPart;
  readonly under: SlabPart;
}

/** Does a slab of the storey lie between two levels? One whose heights nobody knows may lie anywhere. */
export function slabBetween(plan: Plan, storey: string, from: number, upTo: number): boolean {
  return Object.values(plan.voids).some((v) => {
    if (v.kind !== 'slab' || v.storey !== storey) return false;
    const heights = voidHeights(plan, v);
    return !heights || (heights.bottom < upTo - 1 && heights.top > from + 1);
  });
}

/** Over: up to the floor above, or as thick as this floor where nothing is above. Under: this floor's own build-up. */
export function slabsOf(plan: Plan, plane: FacePlane): Slabs | undefined {
  const storey = plan.storeys[plane.storey];
  if (!storey) return undefined;
  const ceiling = storey.floorMm + storey.ceilingMm;
  const above = Object.values(plan.storeys)
    .map((s) => s.floorMm)
    .filter((z) => z > ceiling)
    .sort((a, b) => a - b)[0];
  const part = (from: number, upTo: number): SlabPart => ({
    from,
    upTo,
    solid: slabBetween(plan, storey.id, from, upTo),
  });
  return {
    over: part(ceiling, above ?? ceiling + storey.buildUpMm),
    under: part(storey.floorMm - storey.buildUpMm, storey.floorMm),
  };
}
