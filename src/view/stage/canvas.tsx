import { lazy, type PointerEvent, Suspense, useCallback, useEffect, useLayoutEffect, useRef } from 'react';
import { useStore } from 'zustand';
import type { View } from '../../drawing/display-list.ts';
import type { Editor, Pane } from '../../editor/editor-api.ts';
import type { Plan } from '../../plan/plan.ts';
import { sayFace } from '../a11y/say-face.ts';
import { afterFirstLine } from '../app/first-line.ts';
import { openFinding } from '../app/screen.ts';
import { useEditor, useEditorState, useReport, useScreen } from '../app/use-session.ts';
import { useSize } from '../app/use-size.ts';
import { takeKeptLook } from '../hands/kept-look.ts';
import { Icon } from '../look/icon.tsx';
import { showBeside, useShows } from './beside.ts';
import type { PaneName } from './draw-counts.ts';
import { fitFace } from './fit-face.ts';
import { FloorSwitch } from './floor-switch.tsx';
import { toPx } from './frame-of.ts';
import { PaneStage } from './pane-stage.tsx';
import type { PlacedMark } from './picture.ts';
import { reachShown, useReachChapterOpen } from './reach-shown.ts';
import { ScaleBar } from './scale-bar.tsx';
import './stage.css';

const Hands = lazy(afterFirstLine(() => import('../hands/hands.tsx')));
const SeveralKey = lazy(afterFirstLine(() => import('../many/several-key.tsx')));
const SeveralBar = lazy(() => import('../many/several-key.tsx').then((m) => ({ default: m.SeveralBar })));
const GhostKey = lazy(afterFirstLine(() => import('../ghosts/ghost-key.tsx')));

/** A press is a tap on a mark while it is lifted within this of where it went down. */
const TAP_PX = 8;
const MARK_REACH_PX = 22;
/** Half of a mark as it is drawn. */
const MARK_PX = 13;

const BesidePanes = lazy(() => import('./beside-panes.tsx'));

/** The drawing: the plan with the face of a wall folded up out of it, and what stands beside it. */
export function Canvas() {
  const stages = useRef<HTMLDivElement>(null);
  const shows = useShows(useSize(stages));
  const share = useScreen((s) => s.planShare);
  const beside = useScreen((s) => s.beside !== null);
  return (
    <div className="stages" ref={stages} data-shows={shows}>
      <div className="stage-plan" style={shows === 'both' ? { flexGrow: share } : undefined}>
        <PlanPanes both={shows === 'both'} />
      </div>
      {beside && (
        <Suspense fallback={null}>
          <BesidePanes shows={shows} />
        </Suspense>
      )}
    </div>
  );
}

function PlanPanes({ both }: { readonly both: boolean }) {
  const editor = useEditor();
  const face = useEditorState((s) => s.panes.face);
  const chosen = useEditorState((s) => s.selection.length > 0);
  const several = useEditorState((s) => s.toolState === 'several' || s.toolState === 'boxing');
  const beside = useScreen((s) => s.beside);
  useFittedFace(face?.view);
  return (
    <div className="panes" data-face={face !== null}>
      {face && (
        <>
          <PaneBox name="face" both={both} />
          <FoldLine />
        </>
      )}
      <PaneBox name="plan" both={both} />
      {!face && (
        <>
          <ScaleBar />
          <FloorSwitch />
        </>
      )}
      <div className="canvas-keys">
        {chosen && (
          <Suspense fallback={null}>
            <SeveralKey />
          </Suspense>
        )}
        {!face && (
          <>
            <HideWays />
            <Suspense fallback={null}>
              <GhostKey />
            </Suspense>
          </>
        )}
        {!(both && beside) && (
          <button
            type="button"
            className="key slight"
            onClick={() => showBeside(beside ?? { what: 'iso', scope: 'all', run: null })}
          >
            Isometric
          </button>
        )}
        {!face && (
          <button type="button" className="key slight" aria-label="Show all" onClick={() => editor.zoomToFit()}>
            <Icon name="fit" size={22} />
          </button>
        )}
      </div>
      <Suspense fallback={null}>
        <Hands />
        {(chosen || several) && <SeveralBar />}
      </Suspense>
    </div>
  );
}

/** While the ways of water stay on the plan without their chapter, they are put away here. */
function HideWays() {
  const kept = useStore(reachShown, (s) => s.kept);
  const told = useReport((s) => (s.report?.reach.length ?? 0) > 0);
  const open = useReachChapterOpen();
  if (!kept || open || !told) return null;
  return (
    <button type="button" className="key slight" onClick={() => reachShown.setState({ kept: false, looked: null })}>
      Hide ways
    </button>
  );
}

/** A face that folds up is fitted to its pane. */
function useFittedFace(view: View | undefined): void {
  const editor = useEditor();
  useEffect(() => {
    if (view === undefined || takeKeptLook(editor, 'face')) return;
    // Both panes have got their new size by the frame after next.
    let frame = requestAnimationFrame(() => {
      frame = requestAnimationFrame(() => fitFace(editor));
    });
    return () => cancelAnimationFrame(frame);
  }, [editor, view]);
}

/** A plan that gives up half of its width, or has it back, shows as much of the house across as before; a face is fitted. */
function keepAcross(editor: Editor, before: Pane, width: number): void {
  const { face, plan } = editor.store.getState().panes;
  if (face) {
    requestAnimationFrame(() => fitFace(editor));
    return;
  }
  editor.setCamera('plan', { ...plan.camera, mmPerPx: (before.camera.mmPerPx * before.width) / width });
}

const wallWord = (plan: Plan, wall: string): string => plan.walls[wall]?.construction || 'wall';

function PaneBox({ name, both }: { readonly name: PaneName; readonly both: boolean }) {
  const editor = useEditor();
  const box = useRef<HTMLDivElement>(null);
  const size = useSize(box);
  const pane = useEditorState((s) => s.panes[name]);
  const label = useEditorState((s) => {
    const view = s.panes[name]?.view;
    if (view?.kind === 'face') return `Drawing: face of the ${wallWord(s.plan, view.wall)}`;
    return `Drawing: plan of ${view ? (s.plan.storeys[view.storey]?.name ?? 'the floor') : 'the floor'}`;
  });
  const fitted = useRef(false);
  const was = useRef(both);
  const tap = useMarkTaps(name);
  useLayoutEffect(() => {
    if (size.width === 0 || size.height === 0) return;
    const before = editor.store.getState().panes[name];
    editor.resizePane(name, size.width, size.height);
    if (fitted.current) {
      if (was.current === both || before?.width === size.width) return;
      was.current = both;
      if (name === 'plan' && before) keepAcross(editor, before, size.width);
      return;
    }
    was.current = both;
    fitted.current = true;
    if (name === 'plan' && !takeKeptLook(editor, name)) editor.zoomToFit();
  }, [editor, name, size, both]);
  const ready = pane !== null && size.width > 0 && pane.width === size.width && pane.height === size.height;
  return (
    <div className={`pane pane-${name}`} ref={box} onPointerDown={tap.down} onPointerUp={tap.up}>
      {ready && <PaneStage pane={pane} name={name} label={label} onMarks={tap.marks} />}
    </div>
  );
}

/** A tap on a finding's mark opens the finding, whatever tool is in hand. */
function useMarkTaps(name: PaneName) {
  const editor = useEditor();
  const placed = useRef<readonly PlacedMark[]>([]);
  const from = useRef<{ readonly x: number; readonly y: number } | null>(null);
  const under = (e: PointerEvent<HTMLElement>, reach: number): string | null => {
    const pane = editor.store.getState().panes[name];
    if (!pane) return null;
    const r = e.currentTarget.getBoundingClientRect();
    for (const mark of placed.current) {
      const [x, y] = toPx(pane, mark.at, mark.offsetMm);
      if (Math.hypot(e.clientX - r.left - x, e.clientY - r.top - y) <= reach) return mark.key;
    }
    return null;
  };
  const marks = useCallback((now: readonly PlacedMark[]) => {
    placed.current = now;
  }, []);
  return {
    marks,
    down: (e: PointerEvent<HTMLElement>): void => {
      from.current = editor.store.getState().tool === 'select' ? { x: e.clientX, y: e.clientY } : null;
    },
    up: (e: PointerEvent<HTMLElement>): void => {
      const start = from.current;
      from.current = null;
      if (!start || Math.hypot(e.clientX - start.x, e.clientY - start.y) > TAP_PX) return;
      const { toolState } = editor.store.getState();
      // A tap while several are chosen is about things; one that was taken for a figure, about that unless it is on the mark.
      if (toolState === 'several') return;
      const key = under(e, toolState === 'asking' ? MARK_PX : MARK_REACH_PX);
      if (key === null) return;
      if (toolState === 'asking') editor.cancel();
      openFinding(key);
    },
  };
}

const SWIPE_PX = 36;

/** The fold: a key, and for a hand that has just come over the edge, a swipe down along it. */
function FoldLine() {
  const editor = useEditor();
  const from = useRef<number | null>(null);
  const said = useEditorState((s) => {
    const view = s.panes.face?.view;
    const wall = view?.kind === 'face' ? s.plan.walls[view.wall] : undefined;
    return wall && view?.kind === 'face' ? sayFace(s.plan, wall, view.side) : null;
  });
  return (
    <div
      className="fold-line"
      onPointerDown={(e) => {
        from.current = e.clientY;
      }}
      onPointerMove={(e) => {
        if (from.current === null || e.clientY - from.current < SWIPE_PX) return;
        from.current = null;
        editor.foldUp(null);
      }}
      onPointerUp={() => {
        from.current = null;
      }}
      onPointerCancel={() => {
        from.current = null;
      }}
    >
      <button type="button" className="fold-key" onClick={() => editor.foldUp(null)}>
        <span>fold down</span>
      </button>
      {said !== null && <span className="wall-fold-says">{said}</span>}
      <ScaleBar folded />
    </div>
  );
}
