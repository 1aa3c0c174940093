import type { Box } from '../../drawing/display-list.ts';
import type { Pane } from '../../editor/editor-api.ts';
import { NARROW_PX } from './scale-bar.tsx';

interface Over {
  /** px from the left, or from the right. */
  readonly left?: number;
  readonly right?: number;
  /** px from the bottom. */
  readonly bottom: number;
  readonly width: number;
  readonly height: number;
}

/** What stands over a plan: scale bar, and the key that shows all. Labels keep off these. */
const WIDE: readonly Over[] = [
  { left: 20, bottom: 8, width: 360, height: 46 },
  { right: 16, bottom: 6, width: 62, height: 62 },
];
const NARROW: readonly Over[] = [
  { left: 8, bottom: 6, width: 230, height: 42 },
  { right: 4, bottom: 6, width: 62, height: 62 },
];
/** The handle of the panel, half way down the right edge of the whole drawing. */
const HANDLE = { width: 18, height: 66 };
/** The fold between a face and its plan, px. */
const FOLD_PX = 44;

/** Those places in mm of the view's plane. `folded`: heights of both panes in px while a wall is folded up. */
export function overDrawing(
  pane: Pick<Pane, 'camera' | 'width' | 'height' | 'view'>,
  folded: { readonly face: number; readonly plan: number } | null,
): Box[] {
  const { camera, width, height, view } = pane;
  const [cx, cy] = camera.centre;
  const mm = camera.mmPerPx;
  const boxAt = (x: number, y: number, w: number, h: number): Box => ({
    minX: cx + (x - width / 2) * mm,
    maxX: cx + (x + w - width / 2) * mm,
    minY: cy + (height / 2 - y - h) * mm,
    maxY: cy + (height / 2 - y) * mm,
  });
  const narrow = width < NARROW_PX;
  // With a face folded up the key is away and the bar is on the fold.
  const over = folded ? [] : narrow ? NARROW : WIDE;
  const keys = over.map((o) =>
    boxAt(o.left ?? width - (o.right ?? 0) - o.width, height - o.bottom - o.height, o.width, o.height),
  );
  const whole = folded ? folded.face + FOLD_PX + folded.plan : height;
  const top = folded && view.kind === 'plan' ? folded.face + FOLD_PX : 0;
  const handle = boxAt(width - HANDLE.width, (whole - HANDLE.height) / 2 - top, HANDLE.width, HANDLE.height);
  return narrow ? keys : [...keys, handle];
}
