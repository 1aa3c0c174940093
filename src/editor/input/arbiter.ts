import type { Vec } from '../../drawing/display-list.ts';
import type { GestureState, PenUse, PointerInput } from '../editor-api.ts';
import { isPalm, restsOnGlass } from './palm.ts';

/** What the arbiter does with what it has decided. `x`, `y`, `dx`, `dy` in px of the pane. */
export interface ArbiterPorts {
  /** The one pointer a tool may see. */
  tool(event: PointerInput): void;
  /** A second finger came, or the pointer was lost: whatever the tool was doing in this gesture goes, without a trace. */
  interrupt(): void;
  pan(pane: PointerInput['pane'], dx: number, dy: number): void;
  pinch(pane: PointerInput['pane'], about: Vec, factor: number): void;
}

/** How the hand works, as the user told it. */
export interface HandTold {
  readonly pen: PenUse;
  readonly gloves: boolean;
}

export interface Arbiter {
  pointer(event: PointerInput): void;
  /** Space bar held: a drag with the main button pans. */
  holdToPan(held: boolean): void;
  /** The window lost the pointer: the gesture is given up, and what is still on the glass counts for nothing till it lifts. */
  reset(): void;
  readonly state: () => GestureState;
}

const MAIN = 1;
/** The button at the side of a pen. */
const SIDE = 2;
const MIDDLE = 4;
/** A hand rests on the glass beside the pen; for this long after the pen was near, touches only pan. */
export const PEN_STAYS_MS = 60_000;
const AS_IT_COMES: HandTold = { pen: 'auto', gloves: false };

const middle = (a: PointerInput, b: PointerInput): Vec => [(a.x + b.x) / 2, (a.y + b.y) / 2];
const spread = (a: PointerInput, b: PointerInput): number => Math.max(Math.hypot(a.x - b.x, a.y - b.y), 1);

/**
 * Owns every pointer before a tool sees it. One pointer drives the tool; a second finger takes the gesture away from the
 * tool for good and moves the paper instead, and the tool starts again only after all fingers have lifted. A hand that
 * rests on the glass counts for nothing, and one that lay there first loses to the pen.
 */
export function createArbiter(ports: ArbiterPorts, told: () => HandTold = () => AS_IT_COMES): Arbiter {
  const down = new Map<number, PointerInput>();
  /** Still on the glass, and of no account until they are lifted. */
  const leftOut = new Set<number>();
  let state: GestureState = 'rest';
  let owner = -1;
  let heldToPan = false;
  let penAt = Number.NEGATIVE_INFINITY;

  function pansOnly(e: PointerInput): boolean {
    if (e.pointerType === 'mouse') return (e.buttons & MIDDLE) !== 0 || heldToPan;
    if (e.pointerType === 'pen') return (e.buttons & SIDE) !== 0;
    const { pen } = told();
    return pen === 'pen' || (pen === 'auto' && e.time - penAt < PEN_STAYS_MS);
  }

  const penIsDown = (): boolean => [...down.values()].some((p) => p.pointerType === 'pen');

  /** What goes on after a pointer has gone: one that is left goes on moving the paper, never on with the tool. */
  const after = (): GestureState => (down.size === 0 ? 'rest' : down.size === 1 && state !== 'tool' ? 'pan' : state);

  function leaveOut(id: number): void {
    const drove = state === 'tool' && id === owner;
    down.delete(id);
    leftOut.add(id);
    if (drove) {
      ports.interrupt();
      state = 'spent';
    }
    state = after();
  }

  function press(e: PointerInput): void {
    leftOut.delete(e.pointerId);
    const stale = down.get(e.pointerId);
    // Its lift was never heard.
    if (stale) lift({ ...stale, type: 'cancel' });
    if (e.pointerType === 'pen') {
      for (const p of [...down.values()]) if (p.pointerType === 'touch') leaveOut(p.pointerId);
    }
    if (e.pointerType === 'touch' && (penIsDown() || restsOnGlass(e, told().gloves, penAt))) {
      leftOut.add(e.pointerId);
      return;
    }
    down.set(e.pointerId, e);
    if (down.size === 1) {
      owner = e.pointerId;
      if (pansOnly(e)) state = 'pan';
      else if (e.pointerType !== 'mouse' || (e.buttons & MAIN) !== 0) {
        state = 'tool';
        ports.tool(e);
      } else state = 'spent';
      return;
    }
    if (state === 'tool') ports.interrupt();
    const [first, second] = [...down.values()];
    // Fingers in two panes have no middle between them.
    state = down.size === 2 && first?.pane === second?.pane ? 'pinch' : 'spent';
  }

  function move(e: PointerInput): void {
    if (e.pointerType !== 'touch' && e.buttons === 0) {
      // It only hovers: where it was held, its lift was never heard.
      leftOut.delete(e.pointerId);
      const held = down.get(e.pointerId);
      if (held) lift({ ...held, type: 'cancel' });
    }
    if (leftOut.has(e.pointerId)) return;
    const was = down.get(e.pointerId);
    if (!was) {
      // A mouse or pen that only hovers: nothing is pressed, so the tool may show what would be caught.
      if (down.size === 0) ports.tool(e);
      return;
    }
    if (isPalm(e, told().gloves)) {
      leaveOut(e.pointerId);
      return;
    }
    const [other] = [...down.values()].filter((p) => p.pointerId !== e.pointerId);
    down.set(e.pointerId, e);
    if (state === 'tool' && e.pointerId === owner) drive(e);
    else if (state === 'pan') ports.pan(e.pane, e.x - was.x, e.y - was.y);
    else if (state === 'pinch' && other) {
      const [x0, y0] = middle(was, other);
      const [x1, y1] = middle(e, other);
      ports.pan(e.pane, x1 - x0, y1 - y0);
      ports.pinch(e.pane, [x1, y1], spread(e, other) / spread(was, other));
    }
  }

  /** The main button may be let go while another is still held: that is the lift of it, told as a move. */
  function drive(e: PointerInput): void {
    if (e.pointerType !== 'mouse' || (e.buttons & MAIN) !== 0) {
      ports.tool(e);
      return;
    }
    state = 'spent';
    ports.tool({ ...e, type: 'up', buttons: 0 });
  }

  function lift(e: PointerInput): void {
    leftOut.delete(e.pointerId);
    if (!down.delete(e.pointerId)) return;
    // Only its capture may have been lost: then it goes on telling of a finger that is still on the glass.
    if (e.type === 'cancel' && e.pointerType === 'touch') leftOut.add(e.pointerId);
    const drove = state === 'tool' && e.pointerId === owner;
    state = after();
    if (!drove) return;
    if (e.type === 'cancel') ports.interrupt();
    else ports.tool(e);
  }

  return {
    pointer(e) {
      if (e.type === 'down') press(e);
      else if (e.type === 'move') move(e);
      else lift(e);
      if (e.pointerType === 'pen') penAt = e.time;
    },
    holdToPan(held) {
      heldToPan = held;
    },
    reset() {
      const drove = state === 'tool';
      for (const id of down.keys()) leftOut.add(id);
      down.clear();
      state = 'rest';
      if (drove) ports.interrupt();
    },
    state: () => state,
  };
}
