import type { Box } from '../../drawing/display-list.ts';
import type { Pane } from '../../editor/editor-api.ts';
import { NARROW_PX } from './scale-bar.tsx';

interface Over {
  /** px from the left, or from the right. */
  readonly left?: number;
  readonly right?: number;
  /** px from the bottom, or from the middle of the height up and down. */
  readonly bottom?: number;
  readonly width: number;
  readonly height: number;
}

/** What stands over a plan: scale bar, the key that shows all, the handle of the panel. Labels keep off these. */
const WIDE: readonly Over[] = [
  { left: 20, bottom: 8, width: 360, height: 46 },
  { right: 16, bottom: 6, width: 62, height: 62 },
  { right: 0, width: 18, height: 66 },
];
const NARROW: readonly Over[] = [
  { left: 8, bottom: 6, width: 230, height: 42 },
  { right: 4, bottom: 6, width: 62, height: 62 },
];

/** Those places in mm of the view's plane. */
export function overDrawing(pane: Pick<Pane, 'camera' | 'width' | 'height' | 'view'>): Box[] {
  const { camera, width, height, view } = pane;
  const all = width < NARROW_PX ? NARROW : WIDE;
  const [cx, cy] = camera.centre;
  return all.flatMap((o): Box[] => {
    // With a face folded up the keys and the bar are away; the handle stays.
    if (view.kind === 'face' && o.bottom !== undefined) return [];
    const x = o.left ?? width - (o.right ?? 0) - o.width;
    const y = o.bottom === undefined ? (height - o.height) / 2 : height - o.bottom - o.height;
    const mm = camera.mmPerPx;
    return [
      {
        minX: cx + (x - width / 2) * mm,
        maxX: cx + (x + o.width - width / 2) * mm,
        minY: cy + (height / 2 - y - o.height) * mm,
        maxY: cy + (height / 2 - y) * mm,
      },
    ];
  });
}
