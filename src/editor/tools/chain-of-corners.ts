import { distance, sub, unit } from '../../geometry/vec.ts';
import type { Xy, Xyz } from '../../plan/records/parts.ts';
import { SLOP_PX } from '../input/tolerance.ts';
import { wayAsSeen, workPlane } from '../input/work-plane.ts';
import type { SnapOptions } from '../snap/define-snap.ts';
import type { ToolContext, ToolEvent } from './define-tool.ts';

/** Corners told one after the other, where the next would be, and the word for what it caught. */
export interface Chain {
  corners: Xy[];
  aim: Xy | null;
  word: string | null;
}

export const at3 = (p: Xy): Xyz => ({ x: p.x, y: p.y, z: 0 });

/** Right angles are to the last side, else to the plan as it is seen. */
function chainSnap<M extends Chain>({ memory, plan, state }: ToolContext<M>, only: readonly string[]): SnapOptions {
  const [from, before] = [memory.corners.at(-1), memory.corners.at(-2)];
  const first = memory.corners[0];
  const plane = workPlane(plan, state.panes.plan.view);
  return {
    only,
    way: plane && from && before ? wayAsSeen(plane, unit(sub(from, before))) : [1, 0],
    ...(from ? { from: at3(from) } : {}),
    ...(first ? { earlier: [at3(first)] } : {}),
  };
}

/** A chain closes on its first corner once it encloses something. */
const LEAST_CORNERS = 3;

/** Sets where the next corner would be; near the first one it closes the chain, and `closing` is the word for that. */
export function aimChain<M extends Chain>(
  ctx: ToolContext<M>,
  event: ToolEvent,
  only: readonly string[],
  closing: string,
): void {
  const { memory } = ctx;
  const pick = event.snap(chainSnap(ctx, only));
  const first = memory.corners.length >= LEAST_CORNERS ? memory.corners[0] : undefined;
  const closes = first && distance(first, pick.at) <= ctx.mmPerPx * SLOP_PX[event.kind] * 2;
  memory.aim = closes ? first : { x: pick.at.x, y: pick.at.y };
  memory.word = closes ? closing : pick.word;
}
