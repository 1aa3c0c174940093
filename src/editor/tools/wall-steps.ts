import { distance, sub } from '../../geometry/vec.ts';
import { aliveIn } from '../../network/cases.ts';
import type { Wall } from '../../plan/records/building.ts';
import type { Xy } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import { acrossDeg, workPlane } from '../input/work-plane.ts';
import { storeyOf } from '../panes.ts';
import type { Chain } from './chain-of-corners.ts';
import type { ToolContext } from './define-tool.ts';
import { layChain, outOf, type ToldWall, type WallChain } from './wall-chain.ts';

/** What the wall tool remembers between two events. `corners` are those of the walls that are drawn, middle lines. */
export interface WallMemory extends Chain {
  chain: WallChain | null;
  /** Ids of the drawn walls, one to each of the chain. */
  ids: string[];
  typed: string;
  /** Turn that was told for the next wall; null: as the hand points, or as the turn before. */
  turnDeg: number | null;
  /** Digits of an own angle while it is typed. */
  angle: string | null;
  pressed: readonly [number, number] | null;
  lastDown: { readonly screen: readonly [number, number]; readonly time: number } | null;
}

export type WallCtx = ToolContext<WallMemory>;

export const blankWall = (): WallMemory => ({
  corners: [],
  aim: null,
  word: null,
  chain: null,
  ids: [],
  typed: '',
  turnDeg: null,
  angle: null,
  pressed: null,
  lastDown: null,
});

/** Up the sheet, as the house lies in the plan now. */
const upDeg = ({ plan, state }: WallCtx): number => {
  const plane = workPlane(plan, state.panes.plan.view);
  return (plane ? acrossDeg(plane) : 0) + 90;
};

/** A chain begins where the first corner is put; nothing is drawn yet. */
export function begin(ctx: WallCtx, start: Xy): void {
  ctx.memory.corners = [start];
  ctx.memory.ids = [];
  ctx.memory.chain = { start, headingDeg: upDeg(ctx), walls: [], startInMm: null };
}

/** Is the pointer somewhere a wall could go to? On glass it is only while a finger is down. */
export function aimed({ aim, corners }: WallMemory): Xy | null {
  const from = corners.at(-1);
  return aim && from && distance(aim, from) >= COINCIDENT_MM ? aim : null;
}

const inRange = (deg: number): number => ((((deg + 180) % 360) + 360) % 360) - 180;
const degOf = (d: Xy): number => (Math.atan2(d.y, d.x) * 180) / Math.PI;

function headingOf(chain: WallChain): number {
  return chain.walls.reduce((deg, w) => deg + w.turnDeg, chain.headingDeg);
}

/** First ahead, then to the right, then as the turn before: a room is walked round one way. */
export function usualTurn({ walls }: WallChain): number {
  if (walls.length === 0) return 0;
  return walls.length === 1 ? -90 : (walls.at(-1)?.turnDeg ?? -90);
}

/** The turn of the next wall: as told, else as the hand points, else the usual one. */
export function nextTurn(memory: WallMemory, chain: WallChain): number {
  if (memory.turnDeg !== null) return memory.turnDeg;
  const aim = aimed(memory);
  const from = memory.corners.at(-1);
  return aim && from ? inRange(degOf(sub(aim, from)) - headingOf(chain)) : usualTurn(chain);
}

/** From the start to the face of a wall that stood there before, along the first wall. */
function startIn(ctx: WallCtx, chain: WallChain, firstTurn: number): number | null {
  const storey = storeyOf(ctx.state.panes);
  const alive = aliveIn(ctx.plan, ctx.state.chosen);
  const own = new Set(ctx.memory.ids);
  const others = (w: Wall): boolean => w.storey === storey && alive.has('walls', w.id) && !own.has(w.id);
  const found = Object.values(ctx.plan.walls)
    .filter(others)
    .flatMap((w) => outOf(w.a, w.b, w.thicknessMm, chain.start, chain.headingDeg + firstTurn) ?? []);
  return found.length === 0 ? null : Math.max(...found);
}

/** The chain with one wall more of a typed length; undefined where nothing was typed. */
export function typedWall(ctx: WallCtx): WallChain | undefined {
  const { memory, inHand } = ctx;
  const { chain, typed } = memory;
  if (!chain || typed === '') return undefined;
  const wall: ToldWall = {
    turnDeg: nextTurn(memory, chain),
    mm: Number(typed),
    sizes: inHand.sizes,
    thicknessMm: inHand.wallThicknessMm,
  };
  const startInMm = chain.walls.length === 0 ? startIn(ctx, chain, wall.turnDeg) : chain.startInMm;
  return { ...chain, startInMm, walls: [...chain.walls, wall] };
}

/** The corners with one more under the pointer, unless the way was told: what stands before it stays as it is laid. */
export function aimedCorners({ memory }: WallCtx): Xy[] | undefined {
  const aim = memory.turnDeg === null ? aimed(memory) : null;
  return aim ? [...memory.corners, aim] : undefined;
}

/** Middle lines as they would be drawn now. */
export const nextCorners = (ctx: WallCtx): Xy[] | undefined => {
  const told = typedWall(ctx);
  return told ? layChain(told) : aimedCorners(ctx);
};
