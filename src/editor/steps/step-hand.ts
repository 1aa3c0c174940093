import type { Vec } from '../../drawing/display-list.ts';
import { distance3 } from '../../geometry/vec.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Hit } from '../hit/hit-test.ts';
import { apart, nearestOn } from '../hit/shapes.ts';
import { TOLERANCE_PX } from '../input/tolerance.ts';
import { type WorkPlane, workPlane } from '../input/work-plane.ts';
import type { ToolContext, ToolEvent } from '../tools/define-tool.ts';
import { bodyOf, type Obstacle, obstacleAt } from './obstacle.ts';
import { hasHeadroom, type Proposal, propose, type Told } from './proposal.ts';
import { anglesOf } from './step-ask.ts';
import { type Way, wayOfHand, waysAcross } from './ways.ts';

/** A leg under the finger, with what lies across it there. */
export interface Pressed {
  readonly leg: string;
  readonly alongMm: number;
  readonly ways: readonly Way[];
  readonly obstacle: Obstacle | null;
}

export interface StepMemory {
  screen: Vec | null;
  from: Vec | null;
  /** Every leg under the finger, the one that was chosen first. */
  pipes: readonly Pressed[];
  told: Told | null;
  proposal: Proposal | null;
  figure: 'offset' | 'over';
  typed: string;
  over: string;
}
export type StepContext = ToolContext<StepMemory>;

export const blank = (): StepMemory => ({
  screen: null,
  from: null,
  pipes: [],
  told: null,
  proposal: null,
  figure: 'offset',
  typed: '',
  over: '',
});

/** Offsets go in these steps where nothing is caught. */
const STEP_MM = 5;
const UPRIGHT_MM = 1;

function planeOf(ctx: StepContext): WorkPlane | undefined {
  const { panes } = ctx.state;
  return workPlane(ctx.plan, (panes[panes.active] ?? panes.plan).view);
}

/** How far along a leg it was pressed; on one that is seen end on, at the height in hand. */
function alongOf(a: Xyz, b: Xyz, plane: WorkPlane, at: Vec, depth: number): number {
  const [p, q] = [plane.onto(a), plane.onto(b)];
  const full = distance3(a, b);
  if (apart(p, q) >= UPRIGHT_MM) return nearestOn(p, q, at).t * full;
  const t = (depth - plane.depth(a)) / (plane.depth(b) - plane.depth(a));
  return (t > 0 && t < 1 ? t : 0.5) * full;
}

export function pressedOn(ctx: StepContext, event: ToolEvent): Pressed[] {
  const plane = planeOf(ctx);
  if (!plane) return [];
  const hits = event.hits();
  const depth = plane.depth(event.raw().at);
  const reachMm = TOLERANCE_PX[event.kind] * ctx.mmPerPx;
  const chosen = (hit: Hit): boolean =>
    ctx.state.selection.some((s) => s.id === hit.id || (s.map === 'runs' && s.id === ctx.plan.legs[hit.id]?.run));
  const legs = hits.filter((h) => h.map === 'legs');
  return [...legs.filter(chosen), ...legs.filter((h) => !chosen(h))].flatMap((hit): Pressed[] => {
    const body = bodyOf(ctx.plan, hit.id)?.body;
    if (!body) return [];
    const alongMm = alongOf(body.a, body.b, plane, event.plane, depth);
    const ways = waysAcross(body.a, body.b, plane);
    return [{ leg: hit.id, alongMm, ways, obstacle: obstacleAt(ctx.plan, hit.id, alongMm, reachMm, hits) }];
  });
}

/** One way clears what lies across and has room. */
export function clears(ctx: StepContext, of: Pressed, way: Way, angleDeg: number): boolean {
  const found = of.obstacle?.clear(way.way, angleDeg);
  return found != null && found.offsetMm > 0 && hasHeadroom(ctx.plan, of.leg, way, found.offsetMm);
}

export function runOf(ctx: StepContext, leg: string) {
  return ctx.plan.runs[ctx.plan.legs[leg]?.run ?? ''];
}

/** The angle in hand, or the nearest one this run can turn by. */
export function angleFor(ctx: StepContext, leg: string): number {
  const able = anglesOf(runOf(ctx, leg)?.turns ?? 'elbow');
  const { angleDeg } = ctx.inHand.step;
  return able.includes(angleDeg) ? angleDeg : (able[0] ?? angleDeg);
}

export function show(ctx: StepContext): void {
  const { memory } = ctx;
  memory.proposal = memory.told && propose(ctx.plan, memory.told);
  const { proposal } = memory;
  if (!proposal) {
    ctx.draft(null);
    ctx.caught(null);
    return;
  }
  const { laid, corners, figures, word } = proposal;
  ctx.caught(laid.ok ? (word ?? figures) : laid.why);
  const at = corners[corners.length > 2 ? 1 : corners.length - 1];
  const labels = at ? [{ at, text: figures }] : [];
  ctx.draft(
    laid.ok
      ? { plan: laid.plan, moved: laid.touched, labels }
      : { marks: corners.map((c) => ({ mark: 'aim', at: c })) },
  );
}

/** The leg the hand goes most squarely away from, the way it goes, and how far. */
export function dragTo(ctx: StepContext, event: ToolEvent): void {
  const { memory, inHand } = ctx;
  const plane = planeOf(ctx);
  if (!plane || !memory.from) return;
  const { from } = memory;
  const pulls = memory.pipes.flatMap((pipe) => {
    const hand = wayOfHand(pipe.ways, plane, from, event.plane);
    return hand ? [{ pipe, ...hand }] : [];
  });
  const most = Math.max(...pulls.map((p) => p.mm));
  // Of pipes that cross, the one that is drawn square to itself; of those that lie together, the one on top.
  const pull = pulls.find((p) => p.mm >= most * 0.8);
  if (!pull) {
    memory.told = null;
    show(ctx);
    return;
  }
  const { pipe, mm } = pull;
  const angleDeg = angleFor(ctx, pipe.leg);
  const upright = inHand.step.goes === 'aside' ? null : inHand.step.goes === 'over' ? 'up' : 'down';
  const told = pipe.ways.find((w) => w.id === upright) ?? pull.way;
  const swaps = upright === null && pipe.obstacle !== null && !clears(ctx, pipe, told, angleDeg);
  // What cannot be passed the way of the hand is passed over, or under where there is no room above.
  const way =
    (swaps && pipe.ways.find((w) => w.label !== told.label && clears(ctx, pipe, w, angleDeg) && w.way.z !== 0)) || told;
  const found = pipe.obstacle?.clear(way.way, angleDeg);
  const least = found && found.offsetMm > 0 ? found.offsetMm : null;
  const hand = Math.max(STEP_MM, Math.round(mm / STEP_MM) * STEP_MM);
  const magnet = TOLERANCE_PX[event.kind] * ctx.mmPerPx;
  const offsetMm =
    memory.typed !== ''
      ? Number(memory.typed)
      : event.alt
        ? mm
        : least !== null && hand <= least + magnet
          ? null
          : hand;
  memory.told = {
    leg: pipe.leg,
    alongMm: pipe.alongMm,
    kind: inHand.step.kind,
    way,
    offsetMm,
    overMm: null,
    angleDeg,
    flipped: false,
    obstacle: pipe.obstacle,
  };
  show(ctx);
}
