import type { Box } from '../../drawing/display-list.ts';
import { textWidth } from '../../drawing/text/measure.ts';
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

/** What stands over a plan: scale bar, and the keys at the lower right, in a row or one over the other. Labels keep off these. */
const WIDE: readonly Over[] = [
  { left: 20, bottom: 8, width: 360, height: 46 },
  { right: 16, bottom: 6, width: 290, height: 56 },
];
const NARROW: readonly Over[] = [
  { left: 8, bottom: 6, width: 230, height: 42 },
  { right: 4, bottom: 6, width: 122, height: 222 },
];
/** The handle of the panel at the right edge: half way down the drawing, or as far below as a panel that goes past the bench takes it. */
const HANDLE = { width: 18, over: 33, under: 67 };
/** The fold between a face and its plan, px. */
const FOLD_PX = 44;

/** The keys of the floors, in the margin at the top right: as wide as their names. */
const FLOORS = {
  wide: { right: 16, top: 6 },
  narrow: { right: 8, top: 2 },
  high: 46,
  key: { text: 14, sides: 31, apart: 6 },
} as const;

function floorKeys(floors: readonly string[], narrow: boolean, paneWidth: number) {
  const { right, top } = narrow ? FLOORS.narrow : FLOORS.wide;
  const { text, sides, apart } = FLOORS.key;
  const all = floors.reduce((sum, name) => sum + textWidth(name, text, 600) + sides + apart, -apart);
  const width = Math.min(all, paneWidth - 2 * right);
  return { left: paneWidth - right - width, top, width, height: FLOORS.high };
}

/** Those places in mm of the view's plane. `folded`: heights of both panes in px while a wall is folded up; `floors`: names on the keys of the floors. */
export function overDrawing(
  pane: Pick<Pane, 'camera' | 'width' | 'height' | 'view'>,
  folded: { readonly face: number; readonly plan: number } | null,
  floors: readonly string[] = [],
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
  const { over: up, under } = HANDLE;
  const handle = boxAt(width - HANDLE.width, whole / 2 - up - top, HANDLE.width, up + under);
  if (!folded && floors.length > 1) {
    const f = floorKeys(floors, narrow, width);
    keys.push(boxAt(f.left, f.top, f.width, f.height));
  }
  return narrow ? keys : [...keys, handle];
}
