import { makePoint, type PointChoices } from '../../catalogue/make-point.ts';
import { pointKinds } from '../../catalogue/point-kinds.ts';
import { floorZ } from '../../geometry/heights.ts';
import { wallSide } from '../../geometry/hosting.ts';
import { scale } from '../../geometry/vec.ts';
import type { Wall } from '../../plan/records/building.ts';
import { pointRing } from '../hit/point-entries.ts';
import { TOLERANCE_PX } from '../input/tolerance.ts';
import { acrossDeg, workPlane } from '../input/work-plane.ts';
import { storeyOf } from '../panes.ts';
import { defineTool, type ToolContext, type ToolEvent } from './define-tool.ts';
import { nearestWall, onWall } from './on-wall.ts';

interface Told {
  readonly kind: string;
  readonly storey: string;
  readonly place: PointChoices['place'];
}
interface Memory {
  told: Told | null;
}
type Ctx = ToolContext<Memory>;
const REACH = 3;
const LIVE_PEN = 0.45;

function hosted(ctx: Ctx, event: ToolEvent): Told | undefined {
  const { state, plan, inHand } = ctx;
  const kind = inHand.pointKind;
  const on = nearestWall(state, event.plane, TOLERANCE_PX[event.kind] * ctx.mmPerPx * REACH);
  if (!on || !plan.walls[on.wall.id] || !pointKinds.get(kind)?.hostedOnWall) return undefined;
  const { side, alongMm, wall } = on;
  return {
    kind,
    storey: wall.storey,
    place: { on: 'wall', wall: wall.id, side, from: 'a', alongMm, standOffMm: 0 } as const,
  };
}

/** How something is turned that stands with its back to a side of a wall, degrees. */
function backedDeg(wall: Wall, side: 'left' | 'right'): number {
  const { along } = wallSide(wall, side);
  const right = side === 'left' ? scale(along, -1) : along;
  return Math.round((Math.atan2(right.y, right.x) * 180_000) / Math.PI) / 1000;
}

/** On a face: on that side of that wall, at the height that was tapped. */
function onFace(ctx: Ctx, event: ToolEvent): Told | undefined {
  const view = ctx.state.panes.face?.view;
  const wall = view?.kind === 'face' ? ctx.plan.walls[view.wall] : undefined;
  if (view?.kind !== 'face' || !wall) return undefined;
  const { at } = event.snap({ only: ['grid', 'level', 'openingEdge'], depth: 0 });
  const { alongMm } = onWall(wall, at.x, at.y);
  const height = { from: 'floor', of: wall.storey, mm: at.z - (floorZ(ctx.plan, wall.storey) ?? 0) } as const;
  const place = { on: 'wall', wall: wall.id, side: view.side, from: 'a', alongMm, standOffMm: 0, height } as const;
  return { kind: ctx.inHand.pointKind, storey: wall.storey, place };
}

/** Free on the floor: with its back to the face of a wall that was caught, else level as the plan is seen. */
function free(ctx: Ctx, event: ToolEvent): Told {
  const { at, target } = event.snap({ only: ['wallFace', 'wallCorner', 'alignment', 'grid'] });
  const plane = workPlane(ctx.plan, ctx.state.panes.plan.view);
  const wall = target?.is === 'wall' && target.side !== null ? ctx.plan.walls[target.wall] : undefined;
  const backed = wall && target?.is === 'wall' && target.side !== null ? backedDeg(wall, target.side) : undefined;
  const place = { on: 'storey', x: at.x, y: at.y, angleDeg: backed ?? (plane ? acrossDeg(plane) : 0) } as const;
  return { kind: ctx.inHand.pointKind, storey: storeyOf(ctx.state.panes), place };
}

function look(ctx: Ctx, event: ToolEvent): void {
  const told = event.pane === 'face' ? onFace(ctx, event) : (hosted(ctx, event) ?? free(ctx, event));
  ctx.memory.told = told ?? null;
  ctx.caught(told?.place.on === 'wall' ? 'on wall' : null);
  const pane = ctx.state.panes[event.pane] ?? ctx.state.panes.plan;
  const plane = workPlane(ctx.plan, pane.view);
  if (!told || !plane || !pointKinds.has(told.kind)) {
    ctx.draft(null);
    return;
  }
  const { thing } = ctx.inHand;
  const size = thing?.kind === told.kind && thing.size ? { size: thing.size } : {};
  const ghost = makePoint(told.kind, { id: 'ghost', storey: told.storey, place: told.place, option: null, ...size });
  const ring = pointRing(ctx.plan, plane, ghost);
  if (!ring) {
    ctx.draft(null);
    return;
  }
  const pts = [...ring, ...ring.slice(0, 1)].map((p) => plane.place(p, 0));
  ctx.draft({ lines: [{ pts, ink: 'symbol', pen: LIVE_PEN }] });
}

function leave(ctx: Ctx): string {
  ctx.memory.told = null;
  ctx.draft(null);
  ctx.caught(null);
  return 'idle';
}

/** Places a boiler, meter, tap… on the nearest wall's side, or free on the floor where there is none or it stands free. */
export default defineTool<Memory>({
  id: 'point',
  label: 'Point',
  key: 'p',
  order: 60,
  initial: 'idle',
  memory: () => ({ told: null }),
  states: {
    idle: {
      move: look,
      down(ctx, event) {
        look(ctx, event);
        return 'placing';
      },
      cancel: leave,
    },
    placing: {
      move: look,
      up(ctx, event) {
        look(ctx, event);
        const { told } = ctx.memory;
        const { thing } = ctx.inHand;
        const own = thing !== null && thing.kind === told?.kind ? { carried: thing } : {};
        const outcome = told ? ctx.commit('point.add', { ...told, ...own }) : undefined;
        const made = outcome?.ok ? outcome.made[0] : undefined;
        if (made !== undefined) ctx.select([{ map: 'points', id: made }]);
        return leave(ctx);
      },
      cancel: leave,
    },
  },
});
