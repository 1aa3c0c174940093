import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import type { RibbonLevel } from '../../drawing/ribbon.ts';
import { screen } from '../app/screen.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { heightAt, type StoreyHeights, sayHeight } from './levels.ts';
import type { RibbonScale } from './ribbon-scale.ts';

const CATCH_PX = 9;

const STEPS: Readonly<Record<string, number>> = { ArrowUp: 10, ArrowDown: -10, PageUp: 100, PageDown: -100 };

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
  const drag = useRef<{ readonly id: number; readonly grab: number; moved: boolean } | null>(null);
  const set = (to: number, catchMm: number): void =>
    editor.setInHand({ height: heightAt(levels, storey, heights.floor, to, catchMm) });

  const down = (e: PointerEvent<HTMLButtonElement>): void => {
    e.currentTarget.setPointerCapture(e.pointerId);
    drag.current = { id: e.pointerId, grab: e.clientY - scale.y(z), moved: false };
  };
  const move = (e: PointerEvent<HTMLButtonElement>): void => {
    const d = drag.current;
    if (!d || d.id !== e.pointerId) return;
    const y = e.clientY - d.grab;
    if (!d.moved && Math.abs(y - scale.y(z)) < 4) return;
    d.moved = true;
    set(scale.z(y), CATCH_PX / scale.perMm);
  };
  const up = (e: PointerEvent<HTMLButtonElement>): void => {
    const d = drag.current;
    drag.current = null;
    if (d && d.id === e.pointerId && !d.moved) screen.setState({ tray: true });
  };
  const key = (e: KeyboardEvent<HTMLButtonElement>): void => {
    const step = STEPS[e.key];
    if (step !== undefined) {
      e.preventDefault();
      set(z + (e.shiftKey ? step * 5 : step), 0);
    } else if (e.key === 'Enter' || e.key === ' ') {
      e.preventDefault();
      screen.setState({ tray: true });
    }
  };
  const y = Math.min(Math.max(scale.y(z), 24), height - 24);
  const figure = Math.round(z - heights.floor);
  return (
    <button
      type="button"
      role="slider"
      className="height-tab"
      style={{ top: y - 22 }}
      aria-label="Work height"
      aria-orientation="vertical"
      aria-valuemin={Math.round(-heights.buildUpMm)}
      aria-valuemax={Math.round(heights.ceiling - heights.floor + heights.buildUpMm)}
      aria-valuenow={figure}
      aria-valuetext={`${figure}, ${sayHeight(plan, ref)}`}
      onPointerDown={down}
      onPointerMove={move}
      onPointerUp={up}
      onPointerCancel={() => {
        drag.current = null;
      }}
      onKeyDown={key}
    >
      <span>{figure}</span>
    </button>
  );
}
