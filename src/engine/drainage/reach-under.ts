import { resolveHeight } from '../../geometry/heights.ts';
import { joistsMet } from '../../geometry/joist-lines.ts';
import { clipToArea, insideArea } from '../../geometry/outlines.ts';
import { voidHeights } from '../../geometry/void-stretches.ts';
import type { Standing } from '../../geometry/wall-frame.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Void } from '../../plan/records/building.ts';
import type { Xy, Xyz } from '../../plan/records/parts.ts';
import { CLEAR_MM } from './reach-figures.ts';
import type { WayPiece } from './reach-net.ts';
import { compareIds } from './reach-order.ts';
import { OUTSIDE } from './reach-rings.ts';

/** A way straight down from the tail into a void under it, and through that. */
export interface UnderWay {
  readonly space: Void;
  readonly pieces: readonly WayPiece[];
  /** Height the pipe may have at most where it enters, and least it may have inside. */
  readonly topZ: number;
  readonly bottomZ: number;
  /** Joists that lie across it, and the first of them. */
  readonly joists: number;
  readonly firstJoist: Xyz | null;
}

interface Room {
  readonly topZ: number;
  readonly bottomZ: number;
  /** Runs through the timber's own height, so that joists across it have to be holed. */
  readonly amongJoists: boolean;
}

/** Below the joists where there is room, else among them. */
function roomIn(plan: Plan, space: Void): Room | undefined {
  const heights = voidHeights(plan, space);
  if (!heights) return undefined;
  const bottom = space.joists?.bottom ? resolveHeight(plan, space.joists.bottom)?.z : undefined;
  if (space.joists && bottom !== undefined && bottom - 2 * CLEAR_MM > heights.bottom) {
    return { topZ: bottom - CLEAR_MM, bottomZ: heights.bottom + CLEAR_MM, amongJoists: false };
  }
  return { topZ: heights.top - CLEAR_MM, bottomZ: heights.bottom + CLEAR_MM, amongJoists: space.joists !== null };
}

/** Nearer to each other than their own breadth, or than a hand, they are no joists that a pipe could cross. */
const areJoists = ({ joists }: Void): boolean =>
  joists !== null && joists.centresMm > (joists.breadthMm ?? 0) + 2 * CLEAR_MM;

const length = (a: Xy, b: Xy): number => Math.hypot(b.x - a.x, b.y - a.y);

/** A square way, cut where it leaves the void: what lies beyond is outside, in the ground or on the wall. */
function squareWay(space: Void, from: Xy, turn: Xy, to: Xy): WayPiece[] {
  return [
    [from, turn],
    [turn, to],
  ].flatMap(([a, b]): WayPiece[] => {
    if (!a || !b || length(a, b) < 1) return [];
    const at = (t: number): Xy => ({ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t });
    const inside = clipToArea(a, b, space.outline, space.holes);
    const cuts = [...new Set([0, ...inside.flat(), 1])].sort((p, q) => p - q);
    return cuts.slice(1).map((t, i) => {
      const [p, q] = [at(cuts[i] ?? 0), at(t)];
      const within = inside.some(([lo, hi]) => lo <= (cuts[i] ?? 0) && hi >= t);
      return { a: p, b: q, mm: length(p, q), how: 'across' as const, outside: !within, region: OUTSIDE, passes: [] };
    });
  });
}

/** Voids right under a place that water could drop into, the highest first. */
function voidsUnder(plan: Plan, standing: Standing, from: Xyz, endZ: number): { space: Void; room: Room }[] {
  return Object.values(plan.voids)
    .filter((v) => standing.has(v.id) && (v.kind === 'floor' || v.kind === 'ceiling'))
    .sort(compareIds)
    .flatMap((space) => {
      const room = insideArea(from, space.outline, space.holes) ? roomIn(plan, space) : undefined;
      return room && room.topZ < from.z && endZ < room.topZ ? [{ space, room }] : [];
    })
    .sort((a, b) => b.room.topZ - a.room.topZ);
}

/** The way through the void under the tail that crosses fewest joists; undefined where there is none to go through. */
export function wayUnder(plan: Plan, standing: Standing, from: Xyz, to: Xyz): UnderWay | undefined {
  const [found] = voidsUnder(plan, standing, from, to.z);
  if (!found) return undefined;
  const { space, room } = found;
  const joistsOn = (pieces: readonly WayPiece[]) =>
    room.amongJoists && areJoists(space)
      ? pieces
          .filter((p) => p.outside === false)
          .flatMap((p) => joistsMet(plan, space, { ...p.a, z: room.topZ }, { ...p.b, z: room.topZ }, [0, 1]))
          .filter((j) => j.angleDeg > 1)
      : [];
  const tried = [
    { x: to.x, y: from.y },
    { x: from.x, y: to.y },
  ].map((turn) => {
    const pieces = squareWay(space, from, turn, to);
    return { pieces, met: joistsOn(pieces) };
  });
  const [p, q] = tried;
  const best = p && q && q.met.length < p.met.length ? q : p;
  if (!best || best.pieces.length === 0) return undefined;
  const { topZ, bottomZ } = room;
  return {
    space,
    pieces: best.pieces,
    topZ,
    bottomZ,
    joists: new Set(best.met.map((j) => j.index)).size,
    firstJoist: best.met[0]?.at ?? null,
  };
}
