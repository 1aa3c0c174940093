import type { Editor, PointerInput } from '../../editor/editor-api.ts';
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
  const feed = createPointerFeed((e) => editor.pointer(e));

  const place = (e: { clientX: number; clientY: number }): { x: number; y: number } => {
    const r = box.getBoundingClientRect();
    return { x: e.clientX - r.left, y: e.clientY - r.top };
  };
  const onPointer = (e: PointerEvent): void => {
    const type = TYPES[e.type];
    if (type === undefined) return;
    if (type === 'down') {
      box.setPointerCapture(e.pointerId);
      box.focus({ preventScroll: true });
      editor.setActivePane(pane);
      if (down.size === 0) gesture.starts();
      down.add(e.pointerId);
    }
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
    });
    if ((type === 'up' || type === 'cancel') && down.delete(e.pointerId) && down.size === 0) gesture.ends();
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
  const onBlur = (): void => {
    feed.flush();
    editor.blur();
    if (down.size > 0) gesture.ends();
    down.clear();
  };
  const onMenu = (e: Event): void => e.preventDefault();

  for (const name of Object.keys(TYPES)) box.addEventListener(name, onPointer as EventListener);
  box.addEventListener('wheel', onWheel, { passive: false });
  box.addEventListener('contextmenu', onMenu);
  window.addEventListener('blur', onBlur);
  return () => {
    onBlur();
    feed.stop();
    for (const name of Object.keys(TYPES)) box.removeEventListener(name, onPointer as EventListener);
    box.removeEventListener('wheel', onWheel);
    box.removeEventListener('contextmenu', onMenu);
    window.removeEventListener('blur', onBlur);
  };
}
