import Konva from 'konva/lib/Core';
import type { Layer as LayerNode } from 'konva/lib/Layer';
import { Fragment, useEffect, useMemo, useRef, useState } from 'react';
import { Layer, Shape, Stage } from 'react-konva/lib/ReactKonvaCore';
import { useStore } from 'zustand';
import type { PainterGroup } from '../../drawing/display-list.ts';
import type { Camera, Pane } from '../../editor/editor-api.ts';
import { useEditor, useReport, useSession } from '../app/use-session.ts';
import { useGhosts } from '../ghosts/use-ghosts.ts';
import { theme } from '../look/theme.ts';
import { look } from '../look/tokens.ts';
import { TraceShapes } from '../traces/trace-shapes.tsx';
import { STILL_GROUPS, seenBox, WORK_GROUPS } from './culled.ts';
import { drawCounts, type LayerName, type PaneName } from './draw-counts.ts';
import { frameOf, shiftBetween } from './frame-of.ts';
import { createLivePainter } from './live-painter.ts';
import { PaintedGroup, type Part } from './painted-group.tsx';
import { listenToPane } from './pane-pointers.ts';
import { type PlacedMark, useHidden, usePicture } from './picture.ts';
import { useReachDrawing } from './reach-shown.ts';

/** More than this many device pixels a CSS px only costs memory on a tablet. */
const MOST_PIXEL_RATIO = 2;
/** A wheel has no end: the drawing is made sharp again when it has been still for so long. */
const REST_MS = 130;
const NO_PARTS: readonly Part[] = [];
/** Ways of water lie over the pipes and under what is written. */
const isWritten = (g: PainterGroup): boolean => g === 'label' || g === 'finding';
const OVER_WAYS = WORK_GROUPS.filter(isWritten);
const UNDER_WAYS = WORK_GROUPS.filter((g) => !isWritten(g));

/** Pictures and what is faint lie over the tint of rooms or of the wall looked at, and under every line. */
const ABOVE_TRACES = { plan: 'wall', face: 'opening' } as const;

Konva.pixelRatio = Math.min(globalThis.devicePixelRatio ?? 1, MOST_PIXEL_RATIO);

interface Props {
  readonly pane: Pane;
  readonly name: PaneName;
  readonly label: string;
  /** Told where the marks of findings stand, each time they are placed. */
  readonly onMarks: (marks: readonly PlacedMark[]) => void;
}

/**
 * One pane as a stage of three layers. Still and work are drawn when the plan, the choice or the theme changes and when
 * a camera has come to rest; while it moves they are only shifted. Live is drawn with every frame of a gesture.
 */
export function PaneStage({ pane, name, label, onMarks }: Props) {
  const editor = useEditor();
  const { join } = useSession();
  const box = useRef<HTMLDivElement>(null);
  const layers = useRef<Partial<Record<LayerName, LayerNode>>>({});
  const drawn = useRef<Camera>(pane.camera);
  const gesturing = useRef(false);
  const [settled, setSettled] = useState<Camera>(pane.camera);
  const shown = useStore(theme, (t) => t.shown);

  const { width, height, view } = pane;
  const sharp = useMemo(() => ({ camera: settled, width, height, view }), [settled, width, height, view]);
  const frame = useMemo(() => frameOf(sharp), [sharp]);
  const hidden = useHidden(name);
  const findings = useReport((s) => s.report?.findings);
  const reach = useReachDrawing(view);
  const seen = useMemo(() => seenBox(sharp), [sharp]);
  const faint = useGhosts(view, seen);
  const picture = usePicture(sharp, hidden, findings, reach?.taken ?? null);
  const ways = useMemo(() => (reach ? [{ items: reach.ways }] : NO_PARTS), [reach]);
  const reachMarks = useMemo(
    () => (reach ? [{ items: reach.marks(look.screen.pxPerMm * sharp.camera.mmPerPx, seenBox(sharp, 0)) }] : NO_PARTS),
    [reach, sharp],
  );

  useEffect(() => onMarks(picture.marks), [picture.marks, onMarks]);
  useEffect(() => editor.placeFigures(name, picture.figures), [editor, name, picture.figures]);

  useEffect(() => {
    let timer = 0;
    let wheeled = Number.NEGATIVE_INFINITY;
    const shift = (): void => {
      const now = editor.store.getState().panes[name];
      if (!now) return;
      const { x, y, scale } = shiftBetween(drawn.current, now.camera, now.width, now.height);
      const still = x === 0 && y === 0 && scale === 1;
      for (const layer of [layers.current.still, layers.current.work]) {
        const canvas = layer?.getNativeCanvasElement();
        if (!canvas) continue;
        canvas.style.transformOrigin = '0 0';
        canvas.style.transform = still ? '' : `translate(${x}px, ${y}px) scale(${scale})`;
      }
    };
    const rest = (): void => {
      clearTimeout(timer);
      const now = editor.store.getState().panes[name];
      if (now) setSettled(now.camera);
    };
    /** A camera set from elsewhere is drawn at once; one that a hand or a wheel moves, when it has come to rest. */
    const later = (): void => {
      clearTimeout(timer);
      if (gesturing.current) return;
      if (performance.now() - wheeled > REST_MS) rest();
      else timer = window.setTimeout(rest, REST_MS);
    };
    const stopWatching = editor.store.subscribe((s, before) => {
      const now = s.panes[name];
      const then = before.panes[name];
      if (!now || now === then) return;
      if (now.camera !== then?.camera) {
        shift();
        layers.current.live?.batchDraw();
        later();
      }
    });
    const still = layers.current.still;
    const onDraw = (): void => shift();
    still?.on('draw', onDraw);
    const element = box.current;
    const stopListening = element
      ? listenToPane(element, name, editor, {
          starts: () => {
            gesturing.current = true;
            join.gestureStarts();
          },
          ends: () => {
            gesturing.current = false;
            join.gestureEnds();
            rest();
          },
          wheel: () => {
            wheeled = performance.now();
          },
        })
      : undefined;
    return () => {
      clearTimeout(timer);
      stopWatching();
      stopListening?.();
      still?.off('draw', onDraw);
    };
  }, [editor, join, name]);

  useEffect(() => {
    drawn.current = settled;
  }, [settled]);

  useEffect(() => {
    const counted: (() => void)[] = [];
    for (const key of ['still', 'work', 'live'] as const) {
      const layer = layers.current[key];
      if (!layer) continue;
      const count = (): void => {
        drawCounts[name][key] += 1;
      };
      layer.on('draw', count);
      counted.push(() => layer.off('draw', count));
    }
    return () => {
      for (const stop of counted) stop();
    };
  }, [name]);

  const live = useMemo(() => createLivePainter(editor, name), [editor, name]);
  useEffect(
    () =>
      editor.store.subscribe((s, before) => {
        if (s.draft !== before.draft || s.cursor !== before.cursor) layers.current.live?.batchDraw();
      }),
    [editor],
  );

  const layer = (key: LayerName) => (node: LayerNode | null) => {
    if (node) layers.current[key] = node;
    else delete layers.current[key];
  };
  return (
    <div
      ref={box}
      className="pane-box"
      role="application"
      aria-label={label}
      aria-describedby="drawing-how"
      data-pane={name}
    >
      <Stage width={width} height={height} listening={false}>
        <Layer ref={layer('still')} name="still" listening={false}>
          {STILL_GROUPS.map((g) => (
            <Fragment key={g}>
              {g === ABOVE_TRACES[view.kind] && (
                <>
                  <TraceShapes view={view} frame={frame} />
                  <PaintedGroup parts={faint} frame={frame} theme={shown} />
                </>
              )}
              <PaintedGroup parts={picture.group(g)} frame={frame} theme={shown} />
            </Fragment>
          ))}
        </Layer>
        <Layer ref={layer('work')} name="work" listening={false}>
          <PaintedGroup parts={picture.band} frame={frame} theme={shown} />
          {UNDER_WAYS.map((g) => (
            <PaintedGroup key={g} parts={picture.group(g)} frame={frame} theme={shown} />
          ))}
          <PaintedGroup parts={ways} frame={frame} theme={shown} />
          {OVER_WAYS.map((g) => (
            <PaintedGroup key={g} parts={picture.group(g)} frame={frame} theme={shown} />
          ))}
          <PaintedGroup parts={reachMarks} frame={frame} theme={shown} />
          <PaintedGroup parts={picture.handles} frame={frame} theme={shown} />
        </Layer>
        <Layer ref={layer('live')} name="live" listening={false}>
          <Shape sceneFunc={live} listening={false} perfectDrawEnabled={false} />
        </Layer>
      </Stage>
    </div>
  );
}
