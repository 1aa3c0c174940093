import { floorZ } from '../../geometry/heights.ts';
import { distance3, left, sub, unit } from '../../geometry/vec.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import type { SnapOptions } from '../snap/define-snap.ts';
import { frameOf, lastPlace, planeOf, type ReRouteContext, type ReRouteMemory } from './reroute-hand.ts';

/** The way the last corner was come to over the floor; of the first one, that of the part that is lifted. */
function wayOn(ctx: ReRouteContext): Xyz {
  const { corners, part } = ctx.memory;
  const line = [...(part ? [part.line[0]] : []), ...corners.map((c) => c.at)].flatMap((p) => p ?? []);
  const pairs = line.slice(1).map((p, i) => [line[i] ?? p, p] as const);
  const old = (part?.line ?? []).slice(1).map((p, i) => [part?.line[i] ?? p, p] as const);
  const flat = [...pairs.reverse(), ...old].find(([p, q]) => Math.hypot(q.x - p.x, q.y - p.y) > COINCIDENT_MM);
  return flat ? { ...unit(sub(flat[1], flat[0])), z: 0 } : { x: 1, y: 0, z: 0 };
}

export function wayOfKey(ctx: ReRouteContext, key: string): Xyz | null {
  const ahead = wayOn(ctx);
  const side = { ...left(ahead), z: 0 };
  if (key === 'ahead') return ahead;
  if (key === 'left') return side;
  if (key === 'right') return { x: -side.x, y: -side.y, z: 0 };
  if (key === 'up' || key === 'down') return { x: 0, y: 0, z: key === 'up' ? 1 : -1 };
  return null;
}

export function put(ctx: ReRouteContext, corners: ReRouteMemory['corners']): void {
  const { memory } = ctx;
  const from = lastPlace(ctx);
  const fresh = corners.filter((c, i) => distance3(c.at, corners[i - 1]?.at ?? from ?? c.at) > COINCIDENT_MM);
  if (fresh.length === 0) return;
  memory.corners.push(...fresh);
  memory.taps.push(fresh.length);
  memory.typed = '';
  memory.aim = null;
}

/** A typed length along one of the ways of someone who walks along the pipe, or the way the pointer shows. */
export function typedCorner(ctx: ReRouteContext, way: Xyz): void {
  const { memory } = ctx;
  const from = lastPlace(ctx);
  const mm = Number(memory.typed);
  if (!from || mm <= 0) return;
  const at = { x: from.x + way.x * mm, y: from.y + way.y * mm, z: from.z + way.z * mm };
  const storey = frameOf(ctx)?.storey ?? '';
  const floor = floorZ(ctx.plan, storey);
  if (floor === undefined) return;
  put(ctx, [{ at, via: { storey, x: at.x, y: at.y, height: { from: 'floor', of: storey, mm: at.z - floor } } }]);
  if (way.z !== 0) ctx.setInHand({ height: { from: 'floor', of: storey, mm: at.z - floor } });
}

export function laySnap(ctx: ReRouteContext): SnapOptions {
  const { part, corners } = ctx.memory;
  const from = lastPlace(ctx);
  const plane = planeOf(ctx);
  const way = wayOn(ctx);
  const seen = plane && from ? [plane.onto(from), plane.onto({ ...from, x: from.x + way.x, y: from.y + way.y })] : [];
  const [p, q] = seen;
  const gone = part ? [...part.legs.map((l) => l.id), ...part.between] : [];
  return {
    only: ['alignment', 'rightAngle', 'level', 'wallFace', 'wallCorner', 'openingEdge', 'roomCorner', 'grid'],
    without: new Set(gone),
    earlier: [...corners.map((c) => c.at), ...(part?.line.slice(-1) ?? [])],
    ...(from ? { from } : {}),
    ...(p && q ? { way: [q[0] - p[0], q[1] - p[1]] } : {}),
    ...(from && plane?.kind === 'face' ? { depth: plane.depth(from) } : {}),
  };
}
