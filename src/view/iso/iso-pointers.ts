import type { Vec } from '../../drawing/display-list.ts';
import { type PointerKind, pointerKind, SLOP_PX } from '../../editor/input/tolerance.ts';
import { storedGloves } from '../help/stored-gloves.ts';

const WHEEL_RATE = 0.0018;
/** px of a line and of a page, where a wheel counts in those. */
const WHEEL_UNIT = [1, 16, 320] as const;
const NOTCH_PX = 50;
/** A wheel has no end of its own: the drawing is made sharp when it has been still for so long. */
const REST_MS = 140;

export interface IsoGestures {
  push(dx: number, dy: number): void;
  /** `about`: px from the middle of the pane, y down. */
  zoom(by: number, about: Vec): void;
  /** px from the upper left of the pane. */
  tap(at: Vec, kind: PointerKind): void;
  /** The last finger was lifted, or the wheel has come to rest. */
  rest(): void;
}

const kindOf = (e: PointerEvent): PointerKind =>
  pointerKind(e.pointerType === 'touch' || e.pointerType === 'pen' ? e.pointerType : 'mouse', storedGloves());

/** One pointer pans or taps, two zoom about what is between them, a wheel zooms about itself. Ends when what it gives is called. */
export function listenToIso(box: HTMLElement, to: IsoGestures): () => void {
  const down = new Map<number, Vec>();
  let start: Vec | null = null;
  let moved = false;
  let timer = 0;

  const at = (e: { clientX: number; clientY: number }): Vec => {
    const r = box.getBoundingClientRect();
    return [e.clientX - r.left, e.clientY - r.top];
  };
  const fromMiddle = ([x, y]: Vec): Vec => [x - box.clientWidth / 2, y - box.clientHeight / 2];
  const restLater = (): void => {
    clearTimeout(timer);
    timer = window.setTimeout(() => to.rest(), REST_MS);
  };

  const onDown = (e: PointerEvent): void => {
    if (e.button > 1) return;
    box.setPointerCapture(e.pointerId);
    box.focus({ preventScroll: true });
    down.set(e.pointerId, at(e));
    start = down.size === 1 ? at(e) : null;
    moved = down.size > 1;
  };
  const onMove = (e: PointerEvent): void => {
    const before = down.get(e.pointerId);
    if (!before) return;
    const now = at(e);
    if (down.size === 1) {
      if (!moved && start && Math.hypot(now[0] - start[0], now[1] - start[1]) <= SLOP_PX[kindOf(e)]) return;
      moved = true;
      to.push(now[0] - before[0], now[1] - before[1]);
    } else {
      const other = [...down].find(([id]) => id !== e.pointerId)?.[1];
      if (other) {
        const [was, is] = [before, now].map((p) => Math.hypot(p[0] - other[0], p[1] - other[1])) as [number, number];
        if (was > 0 && is > 0) to.zoom(is / was, fromMiddle([(now[0] + other[0]) / 2, (now[1] + other[1]) / 2]));
        to.push((now[0] - before[0]) / 2, (now[1] - before[1]) / 2);
      }
    }
    down.set(e.pointerId, now);
  };
  const onUp = (e: PointerEvent): void => {
    if (!down.delete(e.pointerId) || down.size > 0) return;
    if (e.type === 'pointerup' && !moved) to.tap(at(e), kindOf(e));
    else to.rest();
    start = null;
  };
  const onWheel = (e: WheelEvent): void => {
    e.preventDefault();
    const pad = e.deltaMode === 0 && !e.ctrlKey && (e.deltaX !== 0 || Math.abs(e.deltaY) < NOTCH_PX);
    if (pad) to.push(-e.deltaX, -e.deltaY);
    else
      to.zoom(
        Math.exp(-e.deltaY * (WHEEL_UNIT[e.deltaMode] ?? 1) * WHEEL_RATE * (e.ctrlKey ? 4 : 1)),
        fromMiddle(at(e)),
      );
    restLater();
  };
  const onMenu = (e: Event): void => e.preventDefault();

  box.addEventListener('pointerdown', onDown);
  box.addEventListener('pointermove', onMove);
  box.addEventListener('pointerup', onUp);
  box.addEventListener('pointercancel', onUp);
  box.addEventListener('wheel', onWheel, { passive: false });
  box.addEventListener('contextmenu', onMenu);
  return () => {
    clearTimeout(timer);
    box.removeEventListener('pointerdown', onDown);
    box.removeEventListener('pointermove', onMove);
    box.removeEventListener('pointerup', onUp);
    box.removeEventListener('pointercancel', onUp);
    box.removeEventListener('wheel', onWheel);
    box.removeEventListener('contextmenu', onMenu);
  };
}
