import type { Vec } from '../../drawing/display-list.ts';
import { nodePlace } from '../../geometry/places.ts';
import { sub, sub3, unit } from '../../geometry/vec.ts';
import { wallLength } from '../../geometry/wall-frame.ts';
import { legsBeside } from '../../network/bank/beside.ts';
import { laidOver } from '../../network/displace/laid-over.ts';
import { countingIds } from '../../plan/ids.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Wall } from '../../plan/records/building.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import { movesOf } from '../commands/moves-of.ts';
import type { Selected } from '../editor-api.ts';
import type { Hit } from '../hit/hit-test.ts';
import { TOLERANCE_PX } from '../input/tolerance.ts';
import { acrossDeg, floorOnto, type WorkPlane, wayAsSeen, wayInHouse, workPlane } from '../input/work-plane.ts';
import { movedPlan } from '../moving/moved-plan.ts';
import type { ToolContext, ToolEvent } from './define-tool.ts';
import { nearestWall } from './on-wall.ts';
import { type VoidChange, voidDrag, voidPreview } from './void-drag.ts';

/** A command that would carry out the drag as it stands. */
export interface Drag {
  readonly command: string;
  readonly args: unknown;
  readonly word: string | null;
}

/** Drags go in these steps where nothing is caught. */
const STEP_MM = 10;
const round = (mm: number): number => Math.round(mm / STEP_MM) * STEP_MM;
/** A free point is taken onto a wall, and off it, at this many tolerances. */
const REACH = 2;

function planeOf(ctx: ToolContext<unknown>): WorkPlane | undefined {
  const { panes } = ctx.state;
  return workPlane(ctx.plan, (panes[panes.active] ?? panes.plan).view);
}

const nothing: Xyz = { x: 0, y: 0, z: 0 };

/** How far the hand went in the plane of the pane, as a way in the house, in round steps. */
function way(plane: WorkPlane, from: Vec, to: Vec): Xyz {
  return wayInHouse(plane, [round(to[0] - from[0]), round(to[1] - from[1])]);
}

/** Only what goes across a line: along itself a leg or wall has nowhere to go. */
function across(a: Vec, b: Vec, from: Vec, to: Vec): Vec {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const l = Math.hypot(dx, dy);
  if (l === 0) return to;
  const off = round((dx * (to[1] - from[1]) - dy * (to[0] - from[0])) / l);
  return [from[0] - (dy / l) * off, from[1] + (dx / l) * off];
}

function nodeDrag(ctx: ToolContext<unknown>, node: string, event: ToolEvent, plane: WorkPlane): Drag | null {
  const record = ctx.plan.nodes[node];
  const at = record && nodePlace(ctx.plan, record)?.at;
  if (!at) return null;
  const legs = Object.values(ctx.plan.legs).filter((l) => l.a === node || l.b === node);
  const ends = legs.map((l) => ctx.plan.nodes[l.a === node ? l.b : l.a]).flatMap((n) => n ?? []);
  const places = ends.flatMap((n) => nodePlace(ctx.plan, n)?.at ?? []);
  const without = new Set([node, ...legs.map((l) => l.id)]);
  const only = ['alignment', 'openingEdge', 'wallFace', 'wallCorner', 'level', 'grid'];
  const pick = event.snap({ depth: plane.depth(at), without, earlier: places, only });
  const to = plane.place(plane.onto(pick.at), plane.depth(at));
  return { command: 'node.move', args: { node, to }, word: pick.word };
}

function legDrag(ctx: ToolContext<unknown>, leg: string, from: Vec, event: ToolEvent, plane: WorkPlane): Drag | null {
  const record = ctx.plan.legs[leg];
  const [a, b] = [record && ctx.plan.nodes[record.a], record && ctx.plan.nodes[record.b]];
  const [pa, pb] = [a && nodePlace(ctx.plan, a)?.at, b && nodePlace(ctx.plan, b)?.at];
  if (!pa || !pb) return null;
  const to = event.alt ? event.plane : across(plane.onto(pa), plane.onto(pb), from, event.plane);
  const by = sub3(plane.place(to, 0), plane.place(from, 0));
  const row = legsBeside(ctx.plan, leg);
  if (row.length === 1) return { command: 'leg.move', args: { leg, by }, word: null };
  const things = row.map((id) => ({ map: 'legs', id }) as const);
  return { command: 'things.move', args: { things, by }, word: `bank of ${row.length}` };
}

function wallDrag(ctx: ToolContext<unknown>, hit: Hit, from: Vec, event: ToolEvent, plane: WorkPlane): Drag | null {
  const wall = ctx.plan.walls[hit.id];
  if (!wall) return null;
  if (hit.end) {
    const other = hit.end === 'a' ? wall.b : wall.a;
    const only = ['wallCorner', 'rightAngle', 'wallFace', 'wallCentreline', 'grid'];
    const [dx, dy] = wayAsSeen(plane, sub(wall.b, wall.a));
    const l = wallLength(wall);
    const pick = event.snap({
      only,
      from: { ...other, z: 0 },
      way: l === 0 ? [1, 0] : [dx / l, dy / l],
      without: new Set([wall.id]),
    });
    const to = { x: pick.at.x, y: pick.at.y };
    return { command: 'wall.move', args: { wall: wall.id, end: hit.end, to }, word: pick.word };
  }
  const [a, b] = floorOnto(plane, [wall.a, wall.b]);
  const to = event.alt || !a || !b ? event.plane : across(a, b, from, event.plane);
  const { x, y } = sub3(plane.place(to, 0), plane.place(from, 0));
  return { command: 'wall.move', args: { wall: wall.id, by: { x, y } }, word: null };
}

/** How far the hand went along a wall, as it is seen. */
function alongWall(wall: Wall, from: Vec, to: Vec, plane: WorkPlane): number {
  const l = wallLength(wall);
  const [ux, uy] = wayAsSeen(plane, sub(wall.b, wall.a));
  return l === 0 ? 0 : ((to[0] - from[0]) * ux + (to[1] - from[1]) * uy) / l;
}

function openingDrag(
  ctx: ToolContext<unknown>,
  id: string,
  from: Vec,
  event: ToolEvent,
  plane: WorkPlane,
): Drag | null {
  const opening = ctx.plan.openings[id];
  const wall = opening && ctx.plan.walls[opening.wall];
  if (!opening || !wall) return null;
  const s = alongWall(wall, from, event.plane, plane);
  const along = opening.alongMm + round(opening.from === 'a' ? s : -s);
  const alongMm = Math.min(Math.max(along, 0), Math.max(wallLength(wall) - opening.widthMm, 0));
  return { command: 'opening.move', args: { opening: id, alongMm }, word: 'on wall' };
}

/** On a wall it slides; drawn away it comes off, and near a wall's side it goes on. */
function pointDrag(ctx: ToolContext<unknown>, id: string, from: Vec, event: ToolEvent, plane: WorkPlane): Drag | null {
  const point = ctx.plan.points[id];
  if (!point) return null;
  const by = way(plane, from, event.plane);
  if (plane.kind === 'face') return { command: 'point.move', args: { point: id, by }, word: null };
  const reach = TOLERANCE_PX[event.kind] * ctx.mmPerPx * REACH;
  const on = nearestWall(ctx.state, event.plane, reach);
  const { place } = point;
  if (on && (place.on !== 'wall' || place.wall !== on.wall.id || place.side !== on.side)) {
    const standOffMm = place.on === 'wall' ? place.standOffMm : 0;
    const { side, alongMm } = on;
    const host = { on: 'wall', wall: on.wall.id, side, from: 'a', alongMm, standOffMm, height: place.height };
    return { command: 'point.move', args: { point: id, place: host }, word: 'on wall' };
  }
  if (place.on !== 'wall') return { command: 'point.move', args: { point: id, by }, word: null };
  if (!on) {
    const [x, y] = [round(event.floor.x), round(event.floor.y)];
    const free = { on: 'storey', x, y, angleDeg: acrossDeg(plane), height: place.height };
    return { command: 'point.move', args: { point: id, place: free }, word: null };
  }
  const along = unit(sub(on.wall.b, on.wall.a));
  const s = round(alongWall(on.wall, from, event.plane, plane));
  return { command: 'point.move', args: { point: id, by: { x: along.x * s, y: along.y * s, z: 0 } }, word: 'on wall' };
}

/** What a drag of this thing from there to the pointer would do. `chosen`: everything that goes along with it. */
export function dragOf(
  ctx: ToolContext<unknown>,
  hit: Hit,
  chosen: readonly Selected[],
  from: Vec,
  event: ToolEvent,
): Drag | null {
  const plane = planeOf(ctx);
  if (!plane) return null;
  const movable = ['walls', 'points', 'runs', 'legs', 'nodes', 'items'];
  if (chosen.length > 1) {
    const things = chosen.filter((c) => movable.includes(c.map));
    return things.length === 0
      ? null
      : { command: 'things.move', args: { things, by: way(plane, from, event.plane) }, word: null };
  }
  if (hit.map === 'voids') return voidDrag(ctx, hit, event, plane);
  if (hit.map === 'nodes') return nodeDrag(ctx, hit.id, event, plane);
  if (hit.map === 'items') return nodeDrag(ctx, ctx.plan.items[hit.id]?.node ?? '', event, plane);
  if (hit.map === 'legs') return legDrag(ctx, hit.id, from, event, plane);
  if (hit.map === 'walls') return wallDrag(ctx, hit, from, event, plane);
  if (hit.map === 'openings') return plane.kind === 'plan' ? openingDrag(ctx, hit.id, from, event, plane) : null;
  return hit.map === 'points' ? pointDrag(ctx, hit.id, from, event, plane) : null;
}

type Args = Record<string, unknown> & { readonly things?: readonly Selected[]; readonly by?: Xyz };

/** The plan as the drag would leave it, or why not. Ids of what is only shown are its own. */
export function previewOf(plan: Plan, drag: Drag) {
  const ids = countingIds(new Set(), 1);
  const shown = { next: (prefix: string) => ids.next(`shown-${prefix}`) };
  const args = drag.args as Args;
  if (drag.command === 'void.set') return voidPreview(plan, drag.args as VoidChange);
  if (drag.command === 'opening.move') {
    const opening = plan.openings[String(args.opening)];
    if (!opening) return { ok: false, why: 'That opening is no longer there.' } as const;
    const moved = { ...opening, alongMm: Number(args.alongMm) };
    const openings = { ...plan.openings, [opening.id]: moved };
    // The wall is drawn round its openings, so it is drawn anew too.
    return { ok: true, plan: { ...plan, openings }, touched: new Set([opening.id, opening.wall]) } as const;
  }
  const moves =
    drag.command === 'things.move' ? movesOf(plan, args.things ?? [], args.by ?? nothing) : [drag.args as never];
  // Walls are gone through whole; pipes are looked at one by one, so what moves of them need only lie over the plan.
  return movedPlan(plan, moves, shown, moves.some((m) => 'wall' in m) ? undefined : laidOver);
}
