import { useEffect, useRef } from 'react';
import { useStore } from 'zustand';
import type { Editor, PointerInput } from '../../editor/editor-api.ts';
import { SLOP_PX } from '../../editor/input/tolerance.ts';
import { workPlane } from '../../editor/input/work-plane.ts';
import { screen } from '../app/screen.ts';
import { useEditor } from '../app/use-session.ts';
import { toPx } from '../stage/frame-of.ts';
import { handSettings } from './hand-settings.ts';
import { paintLens } from './lens-picture.ts';
import { LENS, lensPlace, NEARER } from './lens-place.ts';
import { livePainted, touched } from './touched.ts';

/** A tap is over before this: the lens comes for a hand that aims. */
const AIMS_AFTER_MS = 120;

/** What is dragged or placed by a finger now; a finger that moves the paper or only taps places nothing. */
function places(editor: Editor): boolean {
  const { tool, toolState, draft } = editor.store.getState();
  return editor.gesture() === 'tool' && toolState !== 'panning' && (tool !== 'select' || draft !== null);
}

/** The place caught, off the finger, px; null where the finger itself is the place. */
function caughtOff(editor: Editor, at: PointerInput): readonly [number, number] | null {
  const { draft, panes, plan } = editor.store.getState();
  const pane = panes[at.pane];
  const aim = draft?.marks.find((m) => m.mark === 'aim')?.at;
  const plane = pane && workPlane(draft?.plan ?? plan, pane.view);
  if (!aim || !pane || !plane) return null;
  const [x, y] = toPx(pane, plane.onto(aim));
  return [x - at.x, y - at.y];
}

/** What lies under the finger that hides it, twice as large above it, with the caught place and the word for it. */
export function Loupe() {
  const editor = useEditor();
  const on = useStore(handSettings, (s) => s.lens);
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const lens = box.current;
    const room = lens?.parentElement;
    const picture = lens?.querySelector('canvas');
    const cross = lens?.querySelector('svg');
    const words = lens?.querySelector('p');
    if (!on || !lens || !room || !picture || !cross || !words) return;
    let from: PointerInput | null = null;
    let at: PointerInput | null = null;
    let frame = 0;
    let timer = 0;

    const show = (): void => {
      frame = 0;
      const aims =
        from && at && (at.time - from.time >= AIMS_AFTER_MS || performance.now() - from.time >= AIMS_AFTER_MS);
      const moved = from && at && Math.hypot(at.x - from.x, at.y - from.y) >= SLOP_PX.touch;
      const pane = at && room.querySelector(`.pane-box[data-pane="${at.pane}"]`);
      if (!at || !pane || !(aims || moved) || !places(editor)) {
        lens.hidden = true;
        return;
      }
      const [inPane, inRoom] = [pane.getBoundingClientRect(), room.getBoundingClientRect()];
      const [x, y] = [inPane.left + at.x, inPane.top + at.y];
      const drawsWith = screen.getState().hand;
      const { left, top } = lensPlace(x - inRoom.left, y - inRoom.top, inRoom, drawsWith);
      lens.style.transform = `translate(${left}px, ${top}px)`;
      lens.hidden = false;
      paintLens(picture, pane.querySelectorAll('canvas'), x, y);
      const off = caughtOff(editor, at) ?? [0, 0];
      cross.style.transform = `translate(${off[0] * NEARER}px, ${off[1] * NEARER}px)`;
      const { caught, typed } = editor.store.getState();
      const said = typed !== '' ? `typed ${typed}` : (caught ?? 'nothing caught');
      if (words.textContent !== said) words.textContent = said;
      words.dataset.caught = String(caught !== null);
    };
    const ask = (): void => {
      frame ||= requestAnimationFrame(show);
    };
    const end = (): void => {
      from = null;
      at = null;
      clearTimeout(timer);
      ask();
    };
    const hear = ({ last }: { readonly last: PointerInput | null }): void => {
      if (last?.pointerType !== 'touch') end();
      else if (last.type === 'down' && editor.gesture() === 'tool') {
        from = last;
        at = last;
        clearTimeout(timer);
        timer = window.setTimeout(ask, AIMS_AFTER_MS + 10);
      } else if (last.type === 'move' && from?.pointerId === last.pointerId) {
        at = last;
        ask();
      } else if (editor.gesture() !== 'tool') end();
    };
    // The live layer has just been painted in this frame: the lens follows in the same one.
    const repaint = (pane: string): void => {
      if (at?.pane === pane && !lens.hidden) queueMicrotask(show);
    };
    const stop = touched.subscribe(hear);
    livePainted.add(repaint);
    return () => {
      stop();
      livePainted.delete(repaint);
      cancelAnimationFrame(frame);
      clearTimeout(timer);
      lens.hidden = true;
    };
  }, [editor, on]);
  const [w, h] = [LENS.width / 2, LENS.drawing / 2];
  return (
    <div className="lens" ref={box} hidden aria-hidden="true">
      <canvas style={{ width: LENS.width, height: LENS.drawing }} />
      <svg width={LENS.width} height={LENS.drawing} aria-hidden="true">
        <path d={`M${w - 26} ${h}h16M${w + 10} ${h}h16M${w} ${h - 26}v16M${w} ${h + 10}v16`} />
      </svg>
      <p />
    </div>
  );
}
