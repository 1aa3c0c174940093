import type { Vec } from '../../drawing/display-list.ts';

/** A finger that goes no further than this meant what is under it. */
const TAP_PX = 8;
const WHEEL_RATE = 0.0016;
/** px of a line and of a page, where a wheel counts in those. */
const WHEEL_UNIT = [1, 16, 320] as const;

export interface FaceGestures {
  push(dx: number, dy: number): void;
  /** `about`: px from the middle of the pane, y down. */
  zoom(by: number, about: Vec): void;
  /** px from the upper left of the pane. */
  tap(at: Vec): void;
}

/** One pointer pans or taps, two zoom about what is between them, a wheel zooms about itself. Ends when what it gives is called. */
export function listenToFace(box: HTMLElement, to: FaceGestures): () => void {
  const down = new Map<number, Vec>();
  let start: Vec | null = null;
  let moved = false;

  const at = (e: { clientX: number; clientY: number }): Vec => {
    const r = box.getBoundingClientRect();
    return [e.clientX - r.left, e.clientY - r.top];
  };
  const fromMiddle = ([x, y]: Vec): Vec => [x - box.clientWidth / 2, y - box.clientHeight / 2];

  const onDown = (e: PointerEvent): void => {
    box.setPointerCapture(e.pointerId);
    down.set(e.pointerId, at(e));
    if (down.size === 1) {
      start = at(e);
      moved = false;
    } else moved = true;
  };
  const onMove = (e: PointerEvent): void => {
    const before = down.get(e.pointerId);
    if (!before) return;
    const now = at(e);
    if (down.size === 1) {
      if (!moved && start && Math.hypot(now[0] - start[0], now[1] - start[1]) <= TAP_PX) return;
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
    if (e.type === 'pointerup' && !moved) to.tap(at(e));
    start = null;
  };
  const onWheel = (e: WheelEvent): void => {
    e.preventDefault();
    const px = e.deltaY * (WHEEL_UNIT[e.deltaMode] ?? 1);
    to.zoom(Math.exp(-px * WHEEL_RATE), fromMiddle(at(e)));
  };

  box.addEventListener('pointerdown', onDown);
  box.addEventListener('pointermove', onMove);
  box.addEventListener('pointerup', onUp);
  box.addEventListener('pointercancel', onUp);
  box.addEventListener('wheel', onWheel, { passive: false });
  return () => {
    box.removeEventListener('pointerdown', onDown);
    box.removeEventListener('pointermove', onMove);
    box.removeEventListener('pointerup', onUp);
    box.removeEventListener('pointercancel', onUp);
    box.removeEventListener('wheel', onWheel);
  };
}
