import type { Vec } from '../../drawing/display-list.ts';
import { distance3 } from '../../geometry/vec.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Entry } from '../hit/pipework-entries.ts';
import { apart, nearestOn } from '../hit/shapes.ts';
import { defineSnap, type SnapContext } from './define-snap.ts';

const UPRIGHT_MM = 1;
const between = (a: Xyz, b: Xyz, t: number): Xyz => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
  z: a.z + (b.z - a.z) * t,
});

/** Where along the leg: square to the last node if that is near, else nearest; on an upright, at the height in hand. */
function share(ctx: SnapContext, e: Entry, a: Vec, b: Vec): number | undefined {
  const [p, q] = e.ends;
  if (!p || !q) return undefined;
  if (apart(a, b) < UPRIGHT_MM) {
    const [from, to] = [ctx.plane.depth(p), ctx.plane.depth(q)];
    const t = (ctx.depth - from) / (to - from);
    return t > 0 && t < 1 ? t : undefined;
  }
  if (ctx.from) {
    const square = nearestOn(a, b, ctx.plane.onto(ctx.from));
    if (apart(square.at, ctx.at) <= ctx.toleranceMm && square.t > 0 && square.t < 1) return square.t;
  }
  return nearestOn(a, b, ctx.at).t;
}

/** A place along a leg: a run that starts or ends here makes a tee. */
export default defineSnap({
  id: 'leg',
  priority: 30,
  find: (ctx) =>
    ctx.near.flatMap((e) => {
      if (e.kind !== 'leg' || e.shape.is !== 'line') return [];
      if (ctx.service !== undefined && e.service !== ctx.service) return [];
      const t = share(ctx, e, e.shape.a, e.shape.b);
      const [p, q] = e.ends;
      if (t === undefined || !p || !q) return [];
      const xyz = between(p, q, t);
      const target = { is: 'leg', leg: e.id, alongMm: distance3(p, xyz) } as const;
      return [{ is: 'place', at: ctx.plane.onto(xyz), xyz, target, word: 'on the pipe' } as const];
    }),
});
