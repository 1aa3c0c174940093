import type { Vec } from '../../drawing/display-list.ts';
import { joistLines } from '../../geometry/joist-lines.ts';
import type { Joists, Void } from '../../plan/records/building.ts';
import type { Xy, Xyz } from '../../plan/records/parts.ts';
import { apart } from '../hit/shapes.ts';
import { SLOP_PX } from '../input/tolerance.ts';
import { at3, type Chain } from './chain-of-corners.ts';
import type { ToolContext, ToolEvent } from './define-tool.ts';

/** A rectangle dragged on the face of a wall, in mm of that face. */
export interface OnFaceBox {
  readonly wall: string;
  readonly side: 'left' | 'right';
  readonly from: Vec;
  readonly to: Vec;
}

export interface Memory extends Chain {
  pressed: Vec | null;
  /** Place on the floor where the press went down. */
  start: Xy | null;
  /** The closed space under the pointer, where a tap would take it. */
  room: readonly Xy[] | null;
  /** Outline that waits for what is asked of its joists. */
  outline: readonly Xy[];
  wayDeg: number | null;
  centresMm: number | null;
  /** Digits typed for what is asked. */
  figure: string;
  box: OnFaceBox | null;
  /** Index of the joist in the hand. */
  index: number | null;
  bearings: { a: Xy; b: Xy }[];
}
export type Ctx = ToolContext<Memory>;

export const LIVE_PEN = 0.35;

export const blank = (): Memory => ({
  corners: [],
  aim: null,
  word: null,
  pressed: null,
  start: null,
  room: null,
  outline: [],
  wayDeg: null,
  centresMm: null,
  figure: '',
  box: null,
  index: null,
  bearings: [],
});

export function leave(ctx: Ctx): string {
  Object.assign(ctx.memory, blank());
  ctx.draft(null);
  ctx.caught(null);
  ctx.ask(null);
  return 'idle';
}

/** What was done to a void is done: the hand goes back to choosing. Gives no state, for the tool is another one now. */
export function backToSelect(ctx: Ctx): undefined {
  leave(ctx);
  ctx.setInHand({ voidTask: 'room' });
  ctx.setTool('select');
}

export const slid = (ctx: Ctx, event: ToolEvent): boolean =>
  ctx.memory.pressed !== null && apart(ctx.memory.pressed, event.screen) >= SLOP_PX[event.kind];

export const ring3 = (ring: readonly Xy[]): Xyz[] => [...ring, ...ring.slice(0, 1)].map(at3);

/** The void that is chosen, where one is. */
export function chosenVoid({ state, plan }: Ctx): Void | undefined {
  const chosen = state.selection.find((s) => s.map === 'voids');
  return chosen && plan.voids[chosen.id];
}

/** Lines of the joists an outline would have, for the draft. */
export function joistsShown(outline: readonly Xy[], joists: Joists) {
  return joistLines({ outline: [...outline], holes: [], joists }).map(({ a, b }) => ({
    pts: [at3(a), at3(b)],
    ink: 'live',
    pen: LIVE_PEN,
  }));
}
