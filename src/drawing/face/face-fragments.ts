import type { Alive } from '../../network/cases.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Fragment } from '../display-list.ts';
import type { FacePlane } from '../pipes/plane.ts';

export function faceFragments(_plan: Plan, _plane: FacePlane, _alive: Alive, _stripped: boolean): Fragment[] {
  return [];
}
