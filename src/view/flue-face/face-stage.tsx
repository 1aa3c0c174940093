import { type KeyboardEvent, useEffect, useLayoutEffect, useMemo, useRef } from 'react';
import { useStore } from 'zustand';
import type { Vec } from '../../drawing/display-list.ts';
import { distanceAt } from '../../drawing/flue-face/distance-items.ts';
import { type FlueFaceDrawing, layFigures } from '../../drawing/flue-face/flue-face-drawing.ts';
import { styleOf } from '../../drawing/look/style-of.ts';
import { mmPerPaperMm, unplace } from '../../drawing/paint/frame.ts';
import { paintItems } from '../../drawing/paint/paint-canvas.ts';
import type { Camera } from '../../editor/editor-api.ts';
import { theme } from '../look/theme.ts';
import { look } from '../look/tokens.ts';
import { frameOf } from '../stage/frame-of.ts';
import { paintLaid } from '../traces/paint-laid.ts';
import { pushed, zoomed } from './face-camera.ts';
import type { LaidPhoto } from './face-photos.ts';
import { listenToFace } from './face-pointers.ts';

const MOST_PIXEL_RATIO = 2;
const PUSH_PX = 60;
const ZOOM = 1.25;

interface Props {
  readonly drawing: FlueFaceDrawing;
  readonly photos: readonly LaidPhoto[];
  /** 0 to 1; null: as each picture was set. */
  readonly fade: number | null;
  readonly camera: Camera;
  readonly width: number;
  readonly height: number;
  readonly chosen: string | null;
  readonly label: string;
  readonly onCamera: (change: (camera: Camera) => Camera) => void;
  readonly onChoose: (key: string | null) => void;
  readonly onFit: () => void;
  /** Shift and an arrow: so many steps to the right and up. */
  readonly onNudge: (across: number, up: number) => void;
}

const ARROWS: Readonly<Record<string, Vec>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** The face as a drawing of its own: panned, zoomed, tapped. What it shows stands beside it as a list. */
export function FaceStage(props: Props) {
  const { drawing, photos, fade, camera, width, height, chosen, label } = props;
  const box = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const shown = useStore(theme, (t) => t.shown);
  const frame = useMemo(() => frameOf({ camera, width, height }), [camera, width, height]);
  const scale = mmPerPaperMm(frame);
  const figures = useMemo(() => layFigures(drawing, scale, chosen), [drawing, scale, chosen]);

  useLayoutEffect(() => {
    const element = canvas.current;
    const ctx = element?.getContext('2d');
    if (!element || !ctx) return;
    const ratio = Math.min(devicePixelRatio, MOST_PIXEL_RATIO);
    element.width = Math.round(width * ratio);
    element.height = Math.round(height * ratio);
    ctx.setTransform(ratio, 0, 0, ratio, 0, 0);
    ctx.clearRect(0, 0, width, height);
    const painted = styleOf(shown);
    paintItems(ctx, drawing.ground, frame, painted);
    for (const { record, across, laid } of photos) {
      if (!record.place) continue;
      const place = { ...record.place, x: record.place.x + across, opacity: fade ?? record.place.opacity };
      paintLaid(ctx, laid, place, frame, 0);
    }
    paintItems(ctx, drawing.lines, frame, painted);
    paintItems(ctx, figures.items, frame, painted);
  }, [drawing, figures, photos, fade, frame, width, height, shown]);

  const now = useRef({ ...props, frame, scale, figures });
  now.current = { ...props, frame, scale, figures };
  useEffect(() => {
    const element = box.current;
    if (!element) return;
    // A drawing takes keys of its own; the list beside it is the way in for a screen reader.
    element.tabIndex = 0;
    return listenToFace(element, {
      push: (dx, dy) => now.current.onCamera((c) => pushed(c, dx, dy)),
      zoom: (by, about) => now.current.onCamera((c) => zoomed(c, by, about)),
      tap(at) {
        const s = now.current;
        const [x, y] = unplace(s.frame, at);
        const reach = look.size.hitFinger / look.screen.pxPerMm;
        s.onChoose(distanceAt(s.figures.laid, [x / s.scale, y / s.scale], reach));
      },
    });
  }, []);

  const onKeyDown = (e: KeyboardEvent): void => {
    if (e.ctrlKey || e.metaKey || e.altKey) return;
    const way = ARROWS[e.key];
    if (way && e.shiftKey) props.onNudge(...way);
    else if (way) props.onCamera((c) => pushed(c, -way[0] * PUSH_PX, way[1] * PUSH_PX));
    else if (e.key === '+' || e.key === '=') props.onCamera((c) => zoomed(c, ZOOM));
    else if (e.key === '-') props.onCamera((c) => zoomed(c, 1 / ZOOM));
    else if (e.key === '0') props.onFit();
    else return;
    e.preventDefault();
    e.stopPropagation();
  };

  return (
    <div ref={box} className="flue-stage" role="application" aria-label={label} onKeyDown={onKeyDown}>
      <canvas ref={canvas} style={{ width, height }} />
    </div>
  );
}
