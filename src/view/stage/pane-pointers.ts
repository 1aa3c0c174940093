import type { Editor, PointerInput } from '../../editor/editor-api.ts';
import { touched } from '../hands/touched.ts';
import { createPointerFeed } from './pointer-feed.ts';

const TYPES: Readonly<Record<string, PointerInput['type']>> = {
  pointerdown: 'down',
  pointermove: 'move',
  pointerup: 'up',
  pointercancel: 'cancel',
};
const KINDS = new Set(['mouse', 'pen', 'touch']);
/** A mouse wheel's notch is far coarser than anything a trackpad sends in one event. */
const NOTCH_PX = 50;

/** How far a touch is from the nearest rim of what the page is shown in, px. */
const rimOf = (e: PointerEvent): number =>
  Math.min(e.clientX, e.clientY, innerWidth - e.clientX, innerHeight - e.clientY);

export interface GestureEnds {
  starts(): void;
  ends(): void;
  /** A notch or a stroke on the trackpad: such gestures have no end of their own. */
  wheel(): void;
}

/**
 * Listens on a pane's box and hands what it hears to the editor: every pointer is captured while it is down, moves are
 * joined to one a frame.
 */
export function listenToPane(
  box: HTMLElement,
  pane: PointerInput['pane'],
  editor: Editor,
  gesture: GestureEnds,
): () => void {
  // A drawing takes keys of its own; the list of things beside it is the way in for a screen reader.
  box.tabIndex = 0;
  const down = new Set<number>();
  let going = false;
  /** A hand that only rests on the glass is no gesture: what waits for the end of one does not wait for it. */
  const follow = (): void => {
    const now = down.size > 0 && editor.gesture() !== 'rest';
    if (now === going) return;
    going = now;
    if (now) gesture.starts();
    else gesture.ends();
  };
  const feed = createPointerFeed((e) => {
    editor.pointer(e);
    follow();
    touched.setState({ last: e });
  });

  const place = (e: { clientX: number; clientY: number }): { x: number; y: number } => {
    const r = box.getBoundingClientRect();
    return { x: e.clientX - r.left, y: e.clientY - r.top };
  };
  const hear = (type: PointerInput['type'], e: PointerEvent): void => {
    if (type === 'down') {
      box.setPointerCapture(e.pointerId);
      box.focus({ preventScroll: true });
      editor.setActivePane(pane);
      down.add(e.pointerId);
    } else if (type !== 'move') down.delete(e.pointerId);
    feed.push({
      type,
      pointerId: e.pointerId,
      pointerType: KINDS.has(e.pointerType) ? (e.pointerType as PointerInput['pointerType']) : 'mouse',
      pane,
      ...place(e),
      buttons: e.buttons,
      shift: e.shiftKey,
      alt: e.altKey,
      ctrl: e.ctrlKey || e.metaKey,
      time: e.timeStamp,
      ...(e.pointerType === 'touch' ? { contactPx: Math.max(e.width, e.height), rimPx: rimOf(e) } : {}),
    });
  };
  const onPointer = (e: PointerEvent): void => {
    const type = TYPES[e.type];
    if (type !== undefined) hear(type, e);
  };
  /** Taken away without a word that it was lifted: by the system, or by something that came over the page. */
  const onLost = (e: PointerEvent): void => {
    if (down.has(e.pointerId)) hear('cancel', e);
  };
  const onWheel = (e: WheelEvent): void => {
    e.preventDefault();
    gesture.wheel();
    const trackpad = e.deltaMode === 0 && (e.deltaX !== 0 || Math.abs(e.deltaY) < NOTCH_PX);
    editor.wheel({
      pane,
      ...place(e),
      deltaX: e.deltaX,
      deltaY: e.deltaY,
      ctrl: e.ctrlKey || e.metaKey,
      pixelMode: trackpad,
    });
  };
  /** A call, a lock, another window, the tablet turned: the gesture is given up and every finger on the glass forgotten. */
  const giveUp = (): void => {
    feed.stop();
    editor.blur();
    down.clear();
    touched.setState({ last: null });
    follow();
  };
  const onHidden = (): void => {
    if (document.visibilityState === 'hidden') giveUp();
  };
  const onMenu = (e: Event): void => e.preventDefault();

  const listeners: readonly (readonly [EventTarget, string, EventListener])[] = [
    ...Object.keys(TYPES).map((name) => [box, name, onPointer as EventListener] as const),
    [box, 'lostpointercapture', onLost as EventListener],
    [box, 'contextmenu', onMenu],
    [window, 'blur', giveUp],
    [matchMedia('(orientation: portrait)'), 'change', giveUp],
    [document, 'visibilitychange', onHidden],
  ];
  for (const [on, name, listener] of listeners) on.addEventListener(name, listener);
  box.addEventListener('wheel', onWheel, { passive: false });
  return () => {
    giveUp();
    for (const [on, name, listener] of listeners) on.removeEventListener(name, listener);
    box.removeEventListener('wheel', onWheel);
  };
}
