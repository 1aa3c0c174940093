import { storeyOf } from '../panes.ts';
import { defineTool, type ToolContext, type ToolEvent } from '../tools/define-tool.ts';

type Ctx = ToolContext<null>;

/** The thing under the finger that a photo may be of. */
function thingAt(event: ToolEvent): string | undefined {
  return event.hits().find((h) => h.map === 'points')?.id;
}

function show(ctx: Ctx, event: ToolEvent): void {
  if (event.pane === 'face' || ctx.inHand.photo === null) {
    ctx.caught(null);
    ctx.draft(null);
    return;
  }
  const point = ctx.plan.points[thingAt(event) ?? ''];
  ctx.caught(point ? `of ${point.name}` : 'of this place');
  const { x, y } = event.floor;
  ctx.draft({ marks: [{ mark: 'photo', at: { x, y, z: 0 } }] });
}

function leave(ctx: Ctx): string {
  ctx.draft(null);
  ctx.caught(null);
  return 'idle';
}

function pin(ctx: Ctx, event: ToolEvent): string {
  const { photo } = ctx.inHand;
  const taken = photo === null ? undefined : ctx.plan.blobRefs[photo];
  if (!taken) {
    ctx.say('Take or choose a photo first: in the panel, under Job and basis.');
    return leave(ctx);
  }
  if (event.pane === 'face') {
    ctx.say('A photo is pinned on the floor plan.');
    return leave(ctx);
  }
  const thing = thingAt(event);
  const { x, y } = event.floor;
  const to =
    thing === undefined ? { is: 'place', storey: storeyOf(ctx.state.panes), x, y } : { is: 'thing', id: thing };
  if (ctx.commit('blob.pin', { blobRef: taken.id, to }).ok) {
    leave(ctx);
    ctx.setInHand({ photo: null });
    ctx.select([{ map: 'blobRefs', id: taken.id }]);
    ctx.setTool('select');
  }
  return leave(ctx);
}

/** Says what the photo in hand is of: a tap on a thing, or on a place of the floor. */
export default defineTool<null>({
  id: 'photo',
  label: 'Pin photo',
  key: 'h',
  order: 96,
  initial: 'idle',
  memory: () => null,
  states: {
    idle: {
      move: show,
      down(ctx, event) {
        show(ctx, event);
        return 'pinning';
      },
      cancel: leave,
    },
    pinning: { move: show, up: pin, cancel: leave },
  },
});
