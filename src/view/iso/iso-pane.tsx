import { useDeferredValue, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { useStore } from 'zustand';
import type { Box, Vec } from '../../drawing/display-list.ts';
import { boxAround } from '../../drawing/fragments/fragment.ts';
import { annotateIso } from '../../drawing/iso/annotate-iso.ts';
import { type IsoDrawing, isoDrawing } from '../../drawing/iso/iso-drawing.ts';
import { isoHits } from '../../drawing/iso/iso-hit.ts';
import type { IsoScope } from '../../drawing/iso/iso-scope.ts';
import { isoWalk } from '../../drawing/iso/iso-walk.ts';
import type { Camera, Selected } from '../../editor/editor-api.ts';
import { type PointerKind, TOLERANCE_PX } from '../../editor/input/tolerance.ts';
import { type Beside, screen } from '../app/screen.ts';
import { useEditor, useEditorState, useScreen } from '../app/use-session.ts';
import { useSize } from '../app/use-size.ts';
import { look } from '../look/tokens.ts';
import { nameOf } from '../panels/name-of.ts';
import { seenBox } from '../stage/culled.ts';
import { fittedTo, showing } from './iso-camera.ts';
import { isoChosen } from './iso-chosen.ts';
import { CloseKey, LookKeys, ScopeKeys } from './iso-keys.tsx';
import { IsoNorth } from './iso-north.tsx';
import { IsoStage } from './iso-stage.tsx';
import { isoView, turnIso } from './iso-view.ts';
import { plural, sayLeg, saySelected } from './iso-words.ts';
import { nextOf } from './next-of.ts';
import './iso.css';

const NOT_YET: Camera = { centre: [0, 0], mmPerPx: 20 };
/** Keys over and under the drawing, px: no label goes there. In a narrow pane they stand in two rows. */
const KEYS_PX = 60;
const TWO_ROWS_PX = 110;
const NARROW_PX = 330;

/** Runs are looked at one by one as they are chosen, whole or in part. */
function runOf(plan: { legs: object; stretches: object }, selection: readonly Selected[]): string | null {
  for (const { map, id } of selection) {
    if (map === 'runs') return id;
    if (map !== 'legs' && map !== 'stretches') continue;
    const run = (plan[map] as Readonly<Record<string, { readonly run: string }>>)[id]?.run;
    if (run !== undefined) return run;
  }
  return null;
}

/** The run that is shown, or whose system is: the one chosen last, while it is there. */
function useRunShown(beside: Beside): string | null {
  const chosen = useEditorState((s) => runOf(s.plan, s.selection));
  const there = useEditorState((s) => beside.run !== null && beside.run in s.plan.runs);
  useEffect(() => {
    if (chosen === null || chosen === beside.run) return;
    screen.setState((s) => (s.beside ? { beside: { ...s.beside, run: chosen } } : {}));
  }, [chosen, beside.run]);
  return chosen ?? (there ? beside.run : null);
}

const scopeOf = (beside: Beside, run: string | null): IsoScope | null => {
  if (beside.scope === 'all') return { of: 'all' };
  return run === null ? null : { of: beside.scope, run };
};

/** The isometric beside the plan, or in its place where there is not room for both. It only selects. */
export default function IsoPane() {
  const beside = useScreen((s) => s.beside);
  if (!beside) return null;
  return <Pane beside={beside} />;
}

function Pane({ beside }: { readonly beside: Beside }) {
  const plan = useDeferredValue(useEditorState((s) => s.plan));
  const chosen = useDeferredValue(useEditorState((s) => s.chosen));
  const { quarter } = useStore(isoView);
  const run = useRunShown(beside);
  const scope = scopeOf(beside, run);
  const key = scope === null ? '' : scope.of === 'all' ? 'all' : `${scope.of} ${scope.run}`;
  const drawing = useMemo(
    () => (key === '' ? null : isoDrawing(plan, chosen, scopeOf(beside, run) ?? { of: 'all' }, quarter)),
    [plan, chosen, key, quarter, beside, run],
  );
  const empty = drawing === null || drawing.legs.length === 0;
  const name = run === null ? '' : nameOf(plan, { map: 'runs', id: run });
  const title = beside.scope === 'all' ? 'all pipes' : beside.scope === 'run' ? name : `all that hangs on ${name}`;
  const place = useRef<HTMLElement>(null);
  const { width } = useSize(place);
  return (
    <section className="iso-pane" aria-label="Isometric" ref={place} data-narrow={width < NARROW_PX}>
      {empty || !drawing ? (
        <p className="iso-none">{sayEmpty(beside, run, Object.keys(plan.runs).length)}</p>
      ) : (
        <Shown drawing={drawing} fitKey={`${key} ${quarter}`} title={title} />
      )}
      <div className="iso-head">
        <ScopeKeys beside={beside} />
        <CloseKey />
      </div>
    </section>
  );
}

function sayEmpty(beside: Beside, run: string | null, runs: number): string {
  if (runs === 0) return 'No pipe is drawn yet. What you draw on the plan stands here in isometric.';
  if (beside.scope !== 'all' && run === null) return 'Choose a run on the plan, and it stands here in isometric.';
  return 'Nothing of this stands before or after the work, whichever is shown on the plan.';
}

interface ShownProps {
  readonly drawing: IsoDrawing;
  /** What is fitted anew when it changes. */
  readonly fitKey: string;
  readonly title: string;
}

function Shown({ drawing, fitKey, title }: ShownProps) {
  const editor = useEditor();
  const place = useRef<HTMLDivElement>(null);
  const { width, height } = useSize(place);
  const { lengths, rooms } = useStore(isoView);
  const selection = useEditorState((s) => s.selection);
  const [camera, setCamera] = useState<Camera>(NOT_YET);
  const [said, setSaid] = useState('');
  const fitted = useRef('');
  const fit = (): void => setCamera(fittedTo(drawing.box, width, height));
  useLayoutEffect(() => {
    if (width === 0 || height === 0 || fitted.current === fitKey) return;
    fitted.current = fitKey;
    setCamera(fittedTo(drawing.box, width, height));
  }, [drawing, fitKey, width, height]);

  const list = useMemo(() => {
    const pane = { camera, width, height };
    const visible = seenBox(pane, 0);
    const strip = (width < NARROW_PX ? TWO_ROWS_PX : KEYS_PX) * camera.mmPerPx;
    const taken: Box[] = [
      { ...visible, minY: visible.maxY - strip },
      { ...visible, maxY: visible.minY + strip },
    ];
    return annotateIso(drawing, { mmPerPaperMm: look.screen.pxPerMm * camera.mmPerPx, visible, taken, lengths, rooms });
  }, [drawing, camera, width, height, lengths, rooms]);
  const marked = useMemo(() => isoChosen(drawing, selection), [drawing, selection]);
  const walk = useMemo(() => isoWalk(drawing, [...new Set(drawing.legs.map((l) => l.run))].sort()), [drawing]);

  const tap = (at: Vec, kind: PointerKind, mmPerPx: number): void => {
    const state = editor.store.getState();
    const hits = isoHits(drawing, at, TOLERANCE_PX[kind] * mmPerPx);
    const next = nextOf(state.plan, hits, state.selection);
    editor.select(next ? [next] : []);
    setSaid(next ? saySelected(state.plan, next) : 'Nothing chosen');
  };
  const step = (by: 1 | -1): void => {
    const at = walk.findIndex((l) => selection.some((s) => s.id === l.record.id));
    const to = at < 0 ? (by > 0 ? 0 : walk.length - 1) : (at + by + walk.length) % walk.length;
    const leg = walk[to];
    if (!leg) return;
    editor.select([{ map: leg.map, id: leg.record.id }]);
    setSaid(sayLeg(editor.store.getState().plan, leg, to + 1, walk.length));
    setCamera((c) => showing(c, boxAround([leg.a, leg.b]), width, height));
  };
  const note = list.crowded
    ? 'Zoom in for sizes, levels and lengths'
    : list.untold > 0
      ? `Zoom in for ${plural(list.untold, 'more length')}`
      : '';
  return (
    <>
      <div ref={place} className="iso-place">
        {width > 0 && (
          <IsoStage
            list={list}
            chosen={marked}
            camera={camera}
            width={width}
            height={height}
            label={`Isometric of ${title}: arrows go from pipe to pipe, Enter turns the house`}
            onCamera={setCamera}
            onTap={tap}
            onStep={step}
            onTurn={turnIso}
            onFit={fit}
          />
        )}
      </div>
      <p className="iso-note">{note}</p>
      <div className="iso-foot">
        <IsoNorth plane={drawing.plane} />
        <LookKeys onFit={fit} />
      </div>
      <div className="out-of-sight" role="status">
        {said}
      </div>
    </>
  );
}
