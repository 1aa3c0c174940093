import { type KeyboardEvent, useEffect, useLayoutEffect, useMemo, useRef } from 'react';
import { useStore } from 'zustand';
import type { Vec } from '../../drawing/display-list.ts';
import { PAINTER_GROUPS } from '../../drawing/display-list.ts';
import type { IsoList } from '../../drawing/iso/annotate-iso.ts';
import { styleOf } from '../../drawing/look/style-of.ts';
import { unplace } from '../../drawing/paint/frame.ts';
import { paintItems } from '../../drawing/paint/paint-canvas.ts';
import type { Camera } from '../../editor/editor-api.ts';
import type { PointerKind } from '../../editor/input/tolerance.ts';
import { theme } from '../look/theme.ts';
import { frameOf, shiftBetween } from '../stage/frame-of.ts';
import { pushedBy, zoomedIn } from './iso-camera.ts';
import type { IsoChosen } from './iso-chosen.ts';
import { listenToIso } from './iso-pointers.ts';

const MOST_PIXEL_RATIO = 2;
const PUSH_PX = 60;
const ZOOM = 1.25;

interface Props {
  readonly list: IsoList;
  readonly chosen: IsoChosen;
  /** The camera that the list was placed for. */
  readonly camera: Camera;
  readonly width: number;
  readonly height: number;
  readonly label: string;
  readonly onCamera: (camera: Camera) => void;
  /** A tap at a place of the plane, with how far the hand can be off there, in mm. */
  readonly onTap: (at: Vec, kind: PointerKind, mmPerPx: number) => void;
  readonly onStep: (by: 1 | -1) => void;
  readonly onTurn: () => void;
  readonly onFit: () => void;
}

const STEPS: Readonly<Record<string, 1 | -1>> = { ArrowLeft: -1, ArrowUp: -1, ArrowRight: 1, ArrowDown: 1 };
const WAYS: Readonly<Record<string, Vec>> = {
  ArrowLeft: [1, 0],
  ArrowRight: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/**
 * The isometric as a drawing of its own. While a hand moves it, what was painted is only shifted; it is placed and painted
 * anew when it has come to rest.
 */
export function IsoStage(props: Props) {
  const { list, chosen, camera, width, height, label } = props;
  const box = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const moving = useRef<Camera>(camera);
  const painted = useRef<Camera>(camera);
  const draws = useRef(0);
  const shown = useStore(theme, (t) => t.shown);
  const frame = useMemo(() => frameOf({ camera, width, height }), [camera, width, height]);
  const now = useRef(props);
  now.current = props;

  useLayoutEffect(() => {
    const element = canvas.current;
    const ctx = element?.getContext('2d');
    if (!element || !ctx) return;
    const ratio = Math.min(devicePixelRatio, MOST_PIXEL_RATIO);
    element.width = Math.round(width * ratio);
    element.height = Math.round(height * ratio);
    ctx.setTransform(ratio, 0, 0, ratio, 0, 0);
    ctx.clearRect(0, 0, width, height);
    const look = styleOf(shown);
    for (const group of PAINTER_GROUPS) {
      if (group === 'run') paintItems(ctx, chosen.band, frame, look);
      for (const part of list.items) if (part.group === group) paintItems(ctx, part.items, frame, look);
    }
    paintItems(ctx, chosen.over, frame, look);
    element.style.transform = '';
    moving.current = camera;
    painted.current = camera;
    draws.current += 1;
    element.dataset.draws = String(draws.current);
  }, [list, chosen, frame, camera, width, height, shown]);

  useEffect(() => {
    const element = box.current;
    if (!element) return;
    // A drawing takes keys of its own; the panel beside it says what is chosen.
    element.tabIndex = 0;
    const shift = (to: Camera): void => {
      moving.current = to;
      const { width: w, height: h } = now.current;
      const { x, y, scale } = shiftBetween(painted.current, to, w, h);
      if (!canvas.current) return;
      canvas.current.style.transformOrigin = '0 0';
      canvas.current.style.transform = `translate(${x}px, ${y}px) scale(${scale})`;
    };
    return listenToIso(element, {
      push: (dx, dy) => shift(pushedBy(moving.current, dx, dy)),
      zoom: (by, about) => shift(zoomedIn(moving.current, by, about)),
      rest: () => now.current.onCamera(moving.current),
      tap(at, kind) {
        const s = now.current;
        s.onTap(unplace(frameOf(s), at), kind, s.camera.mmPerPx);
      },
    });
  }, []);

  const onKeyDown = (e: KeyboardEvent): void => {
    if (e.ctrlKey || e.metaKey || e.altKey) return;
    const step = STEPS[e.key];
    const way = WAYS[e.key];
    if (way && e.shiftKey) props.onCamera(pushedBy(camera, way[0] * PUSH_PX, way[1] * PUSH_PX));
    else if (step) props.onStep(step);
    else if (e.key === '+' || e.key === '=') props.onCamera(zoomedIn(camera, ZOOM));
    else if (e.key === '-') props.onCamera(zoomedIn(camera, 1 / ZOOM));
    else if (e.key === '0') props.onFit();
    else if (e.key === 'Enter') props.onTurn();
    else return;
    e.preventDefault();
    e.stopPropagation();
  };

  return (
    <div ref={box} className="iso-stage" role="application" aria-label={label} onKeyDown={onKeyDown}>
      <canvas ref={canvas} style={{ width, height }} />
    </div>
  );
}
