import type { Vec } from '../../drawing/display-list.ts';
import type { PointerInput } from '../editor-api.ts';

/** What the arbiter does with what it has decided. `x`, `y`, `dx`, `dy` in px of the pane. */
export interface ArbiterPorts {
  /** The one pointer a tool may see. */
  tool(event: PointerInput): void;
  /** A second finger came: whatever the tool was doing goes, without a trace. */
  interrupt(): void;
  cancel(): void;
  pan(pane: PointerInput['pane'], dx: number, dy: number): void;
  pinch(pane: PointerInput['pane'], about: Vec, factor: number): void;
}

export interface Arbiter {
  pointer(event: PointerInput): void;
  /** Space bar held: a drag with the main button pans. */
  holdToPan(held: boolean): void;
  /** The window lost the pointer: as if every finger had been lifted, and the gesture given up. */
  reset(): void;
  readonly state: () => 'rest' | 'tool' | 'pan' | 'pinch' | 'spent';
}

type State = ReturnType<Arbiter['state']>;

const MAIN = 1;
const MIDDLE = 4;
/** A hand rests on the glass beside the pen; for this long after the pen was near, touches only pan. */
const PEN_STAYS_MS = 60_000;

const middle = (a: PointerInput, b: PointerInput): Vec => [(a.x + b.x) / 2, (a.y + b.y) / 2];
const spread = (a: PointerInput, b: PointerInput): number => Math.max(Math.hypot(a.x - b.x, a.y - b.y), 1);

/**
 * Owns every pointer before a tool sees it. One pointer drives the tool; a second finger takes the gesture away from the
 * tool for good and moves the paper instead, and the tool starts again only after all fingers have lifted.
 */
export function createArbiter(ports: ArbiterPorts): Arbiter {
  const down = new Map<number, PointerInput>();
  let state: State = 'rest';
  let owner = -1;
  let heldToPan = false;
  let penSeenAt = Number.NEGATIVE_INFINITY;

  const pansOnly = (e: PointerInput): boolean =>
    (e.pointerType === 'mouse' && ((e.buttons & MIDDLE) !== 0 || heldToPan)) ||
    (e.pointerType === 'touch' && e.time - penSeenAt < PEN_STAYS_MS);

  function press(e: PointerInput): void {
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
    state = down.size === 2 ? 'pinch' : 'spent';
  }

  function move(e: PointerInput): void {
    const was = down.get(e.pointerId);
    if (!was) {
      // A mouse or pen that only hovers: nothing is pressed, so the tool may show what would be caught.
      if (down.size === 0) ports.tool(e);
      return;
    }
    const [other] = [...down.values()].filter((p) => p.pointerId !== e.pointerId);
    down.set(e.pointerId, e);
    if (state === 'tool' && e.pointerId === owner) ports.tool(e);
    else if (state === 'pan') ports.pan(e.pane, e.x - was.x, e.y - was.y);
    else if (state === 'pinch' && other) {
      const [x0, y0] = middle(was, other);
      const [x1, y1] = middle(e, other);
      ports.pan(e.pane, x1 - x0, y1 - y0);
      ports.pinch(e.pane, [x1, y1], spread(e, other) / spread(was, other));
    }
  }

  function lift(e: PointerInput): void {
    if (!down.delete(e.pointerId)) return;
    if (down.size > 0) {
      state = down.size === 1 && state !== 'tool' ? 'pan' : state;
      return;
    }
    const was = state;
    state = 'rest';
    if (was !== 'tool' || e.pointerId !== owner) return;
    if (e.type === 'cancel') ports.cancel();
    else ports.tool(e);
  }

  return {
    pointer(e) {
      if (e.pointerType === 'pen') penSeenAt = e.time;
      if (e.type === 'down') press(e);
      else if (e.type === 'move') move(e);
      else lift(e);
    },
    holdToPan(held) {
      heldToPan = held;
    },
    reset() {
      if (state === 'tool') ports.cancel();
      down.clear();
      state = 'rest';
    },
    state: () => state,
  };
}
