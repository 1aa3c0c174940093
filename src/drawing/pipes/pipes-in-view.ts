import type { Alive } from '../../network/cases.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Leg, Stretch } from '../../plan/records/pipework.ts';
import { type DrawnLeg, drawnLeg } from './drawn-leg.ts';
import type { PipeState } from './leg-style.ts';
import type { FacePlane, Plane } from './plane.ts';

/** Further out of a face than this, a pipe belongs to the room and not to the wall. */
export const NEAR_FACE_MM = 600;

export interface PipesInView {
  readonly legs: readonly DrawnLeg[];
  /** Drawn legs that end at each vertex, in the order of the plan. */
  readonly at: ReadonlyMap<string, readonly DrawnLeg[]>;
}

/** How a thing is drawn in a case; null where it is not. Stripped things show only after the work, and only if asked. */
export function stateOf(
  alive: Alive,
  map: 'legs' | 'stretches' | 'points' | 'items' | 'walls',
  id: string,
  stripped: boolean,
): PipeState | null {
  const state = alive.state(id);
  if (alive.has(map, id)) return state === 'new' ? 'new' : 'there';
  return stripped && alive.case.when === 'after' && (state === 'strip' || state === 'cap') ? 'strip' : null;
}

const isFace = (plane: Plane): plane is FacePlane => plane.view.kind === 'face';

function shows(leg: DrawnLeg, plane: Plane, behindMm: number): boolean {
  if (!isFace(plane)) return leg.placeA.storey === plane.storey || leg.placeB.storey === plane.storey;
  const near = Math.min(leg.readerA, leg.readerB);
  const far = Math.max(leg.readerA, leg.readerB);
  const reach = 300;
  return (
    near <= NEAR_FACE_MM &&
    far >= -behindMm &&
    Math.max(leg.a[0], leg.b[0]) >= plane.from &&
    Math.min(leg.a[0], leg.b[0]) <= plane.upTo &&
    Math.max(leg.a[1], leg.b[1]) >= plane.floorZ - reach &&
    Math.min(leg.a[1], leg.b[1]) <= plane.ceilingZ + reach
  );
}

/** How one pipe is drawn in a case; null where it is not. */
export function pipeInView(
  plan: Plan,
  pipe: Leg | Stretch,
  plane: Plane,
  alive: Alive,
  stripped: boolean,
): DrawnLeg | null {
  const map = 'lengthMm' in pipe ? 'stretches' : 'legs';
  const state = stateOf(alive, map, pipe.id, stripped);
  const leg = state && drawnLeg(plan, map, pipe, state, plane);
  const behind = plane.view.kind === 'face' ? (plan.walls[plane.view.wall]?.thicknessMm ?? 0) : 0;
  return leg && shows(leg, plane, behind) ? leg : null;
}

/** Drawn pipes with the places where they meet. */
export function meeting(legs: readonly DrawnLeg[]): PipesInView {
  const at = new Map<string, DrawnLeg[]>();
  for (const leg of legs) {
    for (const vertex of new Set([leg.vertexA, leg.vertexB])) {
      const there = at.get(vertex);
      if (there) there.push(leg);
      else at.set(vertex, [leg]);
    }
  }
  return { legs, at };
}

/** All pipes of a view at once. What nobody has seen is drawn first, so that it never covers what was. */
export function pipesInView(plan: Plan, plane: Plane, alive: Alive, stripped: boolean): PipesInView {
  const pipes = [...Object.values(plan.stretches), ...Object.values(plan.legs)];
  return meeting(pipes.flatMap((pipe) => pipeInView(plan, pipe, plane, alive, stripped) ?? []));
}
