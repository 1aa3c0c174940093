import { resolveHeight } from '../../geometry/heights.ts';
import { distance3 } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import type { Pick } from '../input/pick.ts';
import { aimed, frameOf, lastPlace } from '../tools/live-run.ts';
import { placeOfPick, routeTo } from '../tools/route-path.ts';
import type { BankContext } from './bank-memory.ts';
import type { BankPlace } from './bank-place.ts';

/** The appliance a pick means: one of its tails was caught. */
export function pointOf(plan: Plan, pick: Pick | null): string | null {
  const { target } = pick ?? {};
  return target?.is === 'connection' && plan.points[target.point] ? target.point : null;
}

const free = (pick: Pick): Pick => ({ ...pick, target: null });

/** A place in the open, as a corner of the bank. */
export function cornerAt(ctx: BankContext, pick: Pick): BankPlace | null {
  const told = placeOfPick(frameOf(ctx), free(pick));
  if (told.at !== 'free') return null;
  const { storey, x, y, height } = told;
  return { storey, x, y, height };
}

/** The first corner lies at the height in hand, where that is what a pick in plan cannot tell. */
export function firstCorner(ctx: BankContext, pick: Pick): BankPlace | null {
  const frame = frameOf(ctx);
  const z = frame.plane.kind === 'plan' ? resolveHeight(ctx.plan, ctx.inHand.height)?.z : undefined;
  return cornerAt(ctx, z === undefined ? pick : { ...pick, at: { ...pick.at, z } });
}

/** Where the next corners are told to be: a rise or drop first where the height in hand has changed. */
export function nextCorners(ctx: BankContext): { readonly path: BankPlace[]; readonly point: string | null } | null {
  const pick = aimed(ctx);
  const from = lastPlace(ctx);
  if (!pick) return null;
  const point = pointOf(ctx.plan, pick);
  if (!from || (ctx.memory.from !== null && ctx.memory.corners.length === 0)) {
    const first = point === null ? firstCorner(ctx, pick) : null;
    return { path: first ? [first] : [], point };
  }
  const frame = frameOf(ctx);
  const { path } = routeTo(frame, from, point === null ? free(pick) : pick);
  const corners = path.flatMap((p): BankPlace[] =>
    p.at === 'free' ? [{ storey: p.storey, x: p.x, y: p.y, height: p.height }] : [],
  );
  if (point === null) return { path: corners, point };
  // Under the tails each run goes by itself: of the way there only the rise or drop at its foot belongs to the bank.
  const upright = corners.filter((c) => Math.hypot(c.x - from.x, c.y - from.y) < COINCIDENT_MM);
  return { path: frame.plane.kind === 'plan' ? upright : [], point };
}

/** Place of a corner in space; null where its height leans on nothing. */
export function placeOf(plan: Plan, { x, y, height }: BankPlace): Xyz | null {
  const z = resolveHeight(plan, height)?.z;
  return z === undefined ? null : { x, y, z };
}

export const isSame = (a: Xyz, b: Xyz): boolean => distance3(a, b) < COINCIDENT_MM;
