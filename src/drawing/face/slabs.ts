import type { Plan } from '../../plan/plan.ts';
import type { FacePlane } from '../pipes/plane.ts';

/** Thickness of what lies over and under a storey, and whether it is the kind that may not be cut. */
export interface Slabs {
  readonly over: { readonly from: number; readonly upTo: number };
  readonly under: { readonly from: number; readonly upTo: number };
  readonly solid: boolean;
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
  const solid = Object.values(plan.voids).some((v) => v.kind === 'slab' && v.storey === storey.id);
  return {
    over: { from: ceiling, upTo: above ?? ceiling + storey.buildUpMm },
    under: { from: storey.floorMm - storey.buildUpMm, upTo: storey.floorMm },
    solid,
  };
}
