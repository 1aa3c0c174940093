import { legsAt } from '../commands/legs-at.ts';
import { apart } from '../hit/shapes.ts';
import type { Pick } from '../input/pick.ts';
import { TOLERANCE_PX } from '../input/tolerance.ts';
import type { ToolContext, ToolEvent } from './define-tool.ts';
import { frameOf, type RunMemory } from './live-run.ts';

/** A tail of the service in hand may be so much further off than another's, as a share of what counts as touching. A finger is wider
 * than a row of tails: it means the appliance, and the service in hand says which of them. */
const FURTHER = { mouse: 0.5, pen: 0.5, touch: 1, glove: 1 } as const;

/**
 * What a first tap starts on. The tails of an appliance stand closer than a finger is wide: where the one of the service in hand is
 * free and not clearly further off than the nearest, it is meant. Else a tail brings its own service into the hand. A tap on the box
 * of a meter, where nothing else is touched, means its outlet.
 */
export function firstPick(ctx: ToolContext<RunMemory>, event: ToolEvent, only?: readonly string[]): Pick {
  const limits = only ? { only } : {};
  const nearest = event.snap(limits);
  const { service } = ctx.inHand;
  if ((nearest.target === null || nearest.target.is === 'wall') && !only) {
    const body = event.snap({ only: ['body'], service });
    const tail = body.target?.is === 'connection' ? body.target : null;
    return tail && !isTaken(ctx, tail.point, tail.connection) ? body : nearest;
  }
  if (nearest.target?.is !== 'connection' || nearest.target.service === service) return nearest;
  const own = event.snap({ ...limits, service });
  if (own.target?.is !== 'connection' || isTaken(ctx, own.target.point, own.target.connection)) return nearest;
  const { plane } = frameOf(ctx);
  const away = (pick: Pick): number => apart(plane.onto(pick.at), event.plane);
  const further = FURTHER[event.kind] * TOLERANCE_PX[event.kind] * ctx.mmPerPx;
  return away(own) - away(nearest) <= further ? own : nearest;
}

/** A pipe is on the tail already. */
function isTaken({ plan }: ToolContext<RunMemory>, point: string, connection: string): boolean {
  return Object.values(plan.nodes).some(
    ({ id, place }) =>
      place.on === 'connection' &&
      place.point === point &&
      place.connection === connection &&
      legsAt(plan, id).length > 0,
  );
}
