import { type BoxOnWall, boxOnWall, outlineOnWall } from '../../drawing/building/box-on-wall.ts';
import { facePlane } from '../../geometry/face-plane.ts';
import { ceilingZ, floorZ, resolveHeight } from '../../geometry/heights.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Void } from '../../plan/records/building.ts';
import type { HeightRef, Xyz } from '../../plan/records/parts.ts';
import type { Hit } from '../hit/hit-test.ts';
import type { WorkPlane } from '../input/work-plane.ts';
import type { ToolContext, ToolEvent } from './define-tool.ts';
import type { Drag } from './drag.ts';

export interface VoidChange {
  readonly void: string;
  readonly change: Partial<Pick<Void, 'outline' | 'bottom' | 'top'>>;
}

/** A box keeps at least this much of each side while it is dragged. */
const LEAST_MM = 20;
const ONLY = ['wallCorner', 'wallFace', 'openingEdge', 'level', 'roomCorner', 'alignment', 'grid'];

/** A level as it was told from, moved to another z; from the floor where nobody told it. */
function movedTo(plan: Plan, height: HeightRef | null, z: number, storey: string): HeightRef {
  const now = height && resolveHeight(plan, height)?.z;
  const ceiling = ceilingZ(plan, storey);
  if (ceiling !== undefined && Math.abs(z - ceiling) < 1) return { from: 'ceiling', of: storey, mm: 0 };
  if (height && typeof now === 'number' && height.from !== 'ceiling') return { ...height, mm: height.mm + z - now };
  return { from: 'floor', of: storey, mm: z - (floorZ(plan, storey) ?? 0) };
}

/** One end of a range taken to another place, never past the other end. */
function endTo([lo, hi]: readonly [number, number], isLo: boolean, to: number): [number, number] {
  return isLo ? [Math.min(to, hi - LEAST_MM), hi] : [lo, Math.max(to, lo + LEAST_MM)];
}

function onFace(plan: Plan, v: Void, on: BoxOnWall, corner: number, [s, z]: readonly [number, number]) {
  const wall = plan.walls[on.wall];
  const z0 = v.bottom && resolveHeight(plan, v.bottom)?.z;
  const z1 = v.top && resolveHeight(plan, v.top)?.z;
  if (!wall || typeof z0 !== 'number' || typeof z1 !== 'number') return null;
  const [fromS, toS] = endTo([on.fromS, on.toS], corner === 0 || corner === 3, s);
  const isBottom = corner < 2;
  const [bottom, top] = endTo([z0, z1], isBottom, z);
  const heights = isBottom
    ? { bottom: movedTo(plan, v.bottom, bottom, v.storey) }
    : { top: movedTo(plan, v.top, top, v.storey) };
  return { outline: outlineOnWall(wall, { ...on, fromS, toS }), ...heights };
}

function boxInPlan(plan: Plan, v: Void, on: BoxOnWall, corner: number, at: Xyz) {
  const wall = plan.walls[on.wall];
  if (!wall) return null;
  const face = facePlane(wall, on.side);
  const { s, depth } = face.toFace(at);
  const was = v.outline[corner];
  if (!was) return null;
  const held = face.toFace({ ...was, z: 0 });
  const isFrom = Math.abs(held.s - on.fromS) < 1;
  const isFar = Math.abs(held.depth) > on.depthMm / 2;
  const [fromS, toS] = endTo([on.fromS, on.toS], isFrom, s);
  const most = on.into ? wall.thicknessMm - LEAST_MM / 2 : Number.MAX_VALUE;
  const off = Math.min(most, Math.max(LEAST_MM / 2, on.into ? -depth : depth));
  const depthMm = isFar ? off : on.depthMm;
  return { outline: outlineOnWall(wall, { ...on, fromS, toS, depthMm }) };
}

/** What a drag of one corner of a void does: a box stays a box against its wall, any other outline goes where the hand goes. */
export function voidDrag(ctx: ToolContext<unknown>, hit: Hit, event: ToolEvent, plane: WorkPlane): Drag | null {
  const v = ctx.plan.voids[hit.id];
  const { corner } = hit;
  if (!v || corner === undefined) return null;
  const on = boxOnWall(ctx.plan, v);
  const pick = event.snap({ only: ONLY, depth: 0 });
  if (plane.kind === 'face') {
    const change = on && onFace(ctx.plan, v, on, corner, plane.onto(pick.at) as [number, number]);
    return change ? { command: 'void.set', args: { void: v.id, change }, word: pick.word } : null;
  }
  if (on) {
    const change = boxInPlan(ctx.plan, v, on, corner, pick.at);
    return change ? { command: 'void.set', args: { void: v.id, change }, word: pick.word } : null;
  }
  const outline = v.outline.map((p, i) => (i === corner ? { x: pick.at.x, y: pick.at.y } : p));
  return { command: 'void.set', args: { void: v.id, change: { outline } }, word: pick.word };
}

/** The plan as it would be with the void changed. */
export function voidPreview(plan: Plan, { void: id, change }: VoidChange) {
  const v = plan.voids[id];
  if (!v) return { ok: false, why: 'That void is no longer there.' } as const;
  const voids = { ...plan.voids, [id]: { ...v, ...change } };
  return { ok: true, plan: { ...plan, voids }, touched: new Set<string>([id]) } as const;
}
