import { type KeyboardEvent, lazy, type PointerEvent, Suspense, useCallback, useRef, useState } from 'react';
import type { RibbonLevel } from '../../drawing/ribbon.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { besideRibbon } from './beside-ribbon.ts';
import { CATCH_PX, heightAt, type StoreyHeights, sayWorkHeight } from './levels.ts';
import { type RibbonScale, tabY } from './ribbon-scale.ts';

const HeightBox = lazy(() => import('./height-box.tsx'));

const STEPS: Readonly<Record<string, number>> = { ArrowUp: 10, ArrowDown: -10, PageUp: 100, PageDown: -100 };
/** A press that goes no further is a tap. */
const TAP_PX = 4;
const BOX_PX = 440;
const TOP_PX = 60;

interface Props {
  readonly heights: StoreyHeights;
  readonly levels: readonly RibbonLevel[];
  readonly scale: RibbonScale;
  readonly z: number;
  readonly storey: string;
  readonly height: number;
}

/** The work height: dragged, stepped with keys, or typed after a tap. It is a place, so that it follows a new measurement. */
export function HeightTab({ heights, levels, scale, z, storey, height }: Props) {
  const editor = useEditor();
  const ref = useEditorState((s) => s.inHand.height);
  const plan = useEditorState((s) => s.plan);
  const tab = useRef<HTMLButtonElement>(null);
  const drag = useRef<{ readonly id: number; readonly grab: number; moved: boolean } | null>(null);
  const [dragging, setDragging] = useState(false);
  const [typing, setTyping] = useState(false);
  const set = (to: number, catchMm: number): void =>
    editor.setInHand({ height: heightAt(levels, storey, heights.floor, to, catchMm) });
  const close = useCallback(() => {
    setTyping(false);
    tab.current?.focus();
  }, []);

  const down = (e: PointerEvent<HTMLButtonElement>): void => {
    e.currentTarget.setPointerCapture(e.pointerId);
    drag.current = { id: e.pointerId, grab: e.clientY - scale.y(z), moved: false };
  };
  const move = (e: PointerEvent<HTMLButtonElement>): void => {
    const d = drag.current;
    if (!d || d.id !== e.pointerId) return;
    const y = e.clientY - d.grab;
    if (!d.moved && Math.abs(y - scale.y(z)) < TAP_PX) return;
    d.moved = true;
    setDragging(true);
    set(scale.z(y), CATCH_PX / scale.perMm);
  };
  const up = (e: PointerEvent<HTMLButtonElement>): void => {
    const d = drag.current;
    drag.current = null;
    setDragging(false);
    if (d && d.id === e.pointerId && !d.moved) setTyping(true);
  };
  const key = (e: KeyboardEvent<HTMLButtonElement>): void => {
    const step = STEPS[e.key];
    if (step !== undefined) {
      e.preventDefault();
      set(z + (e.shiftKey ? step * 5 : step), 0);
    } else if (e.key === 'Enter' || e.key === ' ') {
      e.preventDefault();
      setTyping(true);
    }
  };
  const y = tabY(scale, z, height);
  const figure = Math.round(z - heights.floor);
  const says = sayWorkHeight(plan, levels, ref);
  const pageY = (tab.current?.closest('.ribbon')?.getBoundingClientRect().top ?? 0) + y;
  return (
    <>
      <button
        ref={tab}
        type="button"
        role="slider"
        className="height-tab"
        style={{ top: y - 22 }}
        aria-label="Work height"
        aria-orientation="vertical"
        aria-valuemin={Math.round(-heights.buildUpMm)}
        aria-valuemax={Math.round(heights.ceiling - heights.floor + heights.buildUpMm)}
        aria-valuenow={figure}
        aria-valuetext={`${figure}, ${says}`}
        onPointerDown={down}
        onPointerMove={move}
        onPointerUp={up}
        onPointerCancel={() => {
          drag.current = null;
          setDragging(false);
        }}
        onKeyDown={key}
      >
        <span>{figure}</span>
      </button>
      {dragging && (
        <p className="height-says" aria-hidden="true" style={besideRibbon(tab.current, pageY - 17)}>
          {says}
        </p>
      )}
      {typing && (
        <Suspense fallback={null}>
          <HeightBox
            at={besideRibbon(tab.current, Math.max(TOP_PX, Math.min(pageY - 90, innerHeight - BOX_PX)))}
            says={says}
            offFloorMm={z - heights.floor}
            floor={heights.floor}
            levels={levels}
            now={ref}
            onType={(mm) => editor.setInHand({ height: { from: 'floor', of: storey, mm } })}
            onTake={(to) => {
              editor.setInHand({ height: to });
              close();
            }}
            onClose={close}
          />
        </Suspense>
      )}
    </>
  );
}
