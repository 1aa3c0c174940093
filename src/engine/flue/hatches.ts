import { insideArea } from '../../geometry/outlines.ts';
import { pointBox, segmentToPoint } from '../../geometry/point-box.ts';
import { voidHeights } from '../../geometry/void-stretches.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Given } from '../given.ts';
import { type FlueJoint, type FlueRoute, flueRoutes, HIDDEN_BY_LESS_MM } from './flue-routes.ts';

/** A hidden joint and the nearest hatch it can be seen through; null where there is none at all. */
export interface Seen {
  readonly joint: FlueJoint;
  readonly space: string;
  readonly hatch: string | null;
  readonly awayMm: number;
}

export interface HiddenFlue {
  readonly route: FlueRoute;
  /** Joints and supports that lie in a void, with the hatch nearest to each. */
  readonly joints: readonly Seen[];
  /** Hatches too small to look through, where they would be near enough. */
  readonly small: readonly string[];
  /** Somebody saw where it runs; false where a leg of it is taken for granted. */
  readonly seen: boolean;
}

/** How far a place is from each hatch that stands. */
function toHatches(given: Given, at: Xyz): { id: string; awayMm: number; clearMm: number }[] {
  return Object.values(given.plan.points).flatMap((p) => {
    const body = p.kind === 'hatch' && given.network.alive.has('points', p.id) ? pointBox(given.plan, p) : undefined;
    if (!body) return [];
    const awayMm = segmentToPoint({ a: at, b: at }, body).distance;
    return [{ id: p.id, awayMm, clearMm: Math.min(p.size.widthMm, p.size.depthMm) }];
  });
}

function inSpace(given: Given, route: FlueRoute, at: Xyz): string | undefined {
  return route.hidden.find(({ space }) => {
    const heights = voidHeights(given.plan, space);
    return heights && at.z >= heights.bottom && at.z <= heights.top && insideArea(at, space.outline, space.holes);
  })?.space.id;
}

/** Drawn flues of which more than a wall's thickness is hidden. `sideMm`: the least clear side of a hatch. */
export function hiddenFlues(given: Given, sideMm: number, withinMm: number): HiddenFlue[] {
  return flueRoutes(given).flatMap((route): HiddenFlue[] => {
    if (route.hiddenM * 1000 < HIDDEN_BY_LESS_MM) return [];
    const small = new Set<string>();
    const joints = route.joints.flatMap((joint): Seen[] => {
      const space = inSpace(given, route, joint.at);
      if (space === undefined) return [];
      const all = toHatches(given, joint.at).sort((a, b) => a.awayMm - b.awayMm || (a.id < b.id ? -1 : 1));
      const [nearest] = all.filter((h) => h.clearMm >= sideMm);
      for (const h of all) if (h.clearMm < sideMm && h.awayMm <= withinMm) small.add(h.id);
      return [{ joint, space, hatch: nearest?.id ?? null, awayMm: nearest?.awayMm ?? Number.POSITIVE_INFINITY }];
    });
    const seen = route.way.steps.every((s) => s.edge.sureness === 'seen');
    return [{ route, joints, small: [...small].sort(), seen }];
  });
}
