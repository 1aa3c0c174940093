import { tubeOdMm } from '../../catalogue/tubes.ts';
import { resolveHeight } from '../../geometry/heights.ts';
import { clipToArea } from '../../geometry/outlines.ts';
import { voidFinder, voidHeights } from '../../geometry/void-stretches.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Void } from '../../plan/records/building.ts';
import { standingBuilding } from '../clearance/crossings.ts';
import type { Given } from '../given.ts';
import type { CondensateDrain, CondensateStep } from './condensate-drains.ts';

/** A piece of a falling pipe inside a floor or ceiling, and the depth it eats there. All mm. */
export interface VoidFall {
  readonly step: CondensateStep;
  readonly space: Void;
  /** As seen from above, inside the void. */
  readonly flatMm: number;
  /** Drop as drawn over that part. */
  readonly dropMm: number;
  readonly odMm: number | null;
  /** Between the two faces it must stay inside: of the joists where there are any, else of the void. */
  readonly depthMm: number;
  /** Below zero: it comes out under the void or the joists. */
  readonly belowMm: number;
  /** Below zero: it stands out above. */
  readonly aboveMm: number;
}

/** Underside and top a pipe between joists must keep: of the timber where it is told, else of the void. */
function depthOf(plan: Plan, space: Void): { bottom: number; top: number } | null {
  const heights = voidHeights(plan, space);
  if (!heights) return null;
  const timber = space.joists?.bottom ? resolveHeight(plan, space.joists.bottom)?.z : undefined;
  const bottom = Math.max(heights.bottom, timber ?? heights.bottom);
  const deep = space.joists?.depthMm ?? null;
  const top = timber === undefined || deep === null ? heights.top : Math.min(heights.top, timber + deep);
  return { bottom, top };
}

/** Where a condensate pipe falls inside a floor or ceiling. An upright pipe only passes through. */
export function voidFalls(given: Given, drain: CondensateDrain): VoidFall[] {
  const standing = standingBuilding(given.network);
  const voids = voidFinder(given.plan, standing);
  return drain.steps.flatMap((step): VoidFall[] => {
    const { a, b, lie, flatMm } = step;
    if (!a || !b || lie.is !== 'slopes' || flatMm === null) return [];
    const met = new Set(voids.spaces({ a: a.at, b: b.at }).map((s) => s.void));
    return [...met].flatMap((id): VoidFall[] => {
      const space = given.plan.voids[id];
      const depth = space && depthOf(given.plan, space);
      if (!space || !depth || (space.kind !== 'floor' && space.kind !== 'ceiling')) return [];
      const [part] = clipToArea(a.at, b.at, space.outline, space.holes);
      if (!part) return [];
      const z = (t: number): number => a.at.z + (b.at.z - a.at.z) * t;
      const odMm = tubeOdMm(step.edge.tube) ?? null;
      const half = (odMm ?? 0) / 2;
      return [
        {
          step,
          space,
          flatMm: flatMm * (part[1] - part[0]),
          dropMm: z(part[0]) - z(part[1]),
          odMm,
          depthMm: depth.top - depth.bottom,
          belowMm: Math.min(z(part[0]), z(part[1])) - half - depth.bottom,
          aboveMm: depth.top - Math.max(z(part[0]), z(part[1])) - half,
        },
      ];
    });
  });
}
