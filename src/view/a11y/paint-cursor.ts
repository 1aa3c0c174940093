import type { Look } from '../../drawing/look/style-of.ts';
import type { CursorState } from '../../editor/cursor/cursor-api.ts';
import type { Pane } from '../../editor/editor-api.ts';
import { toPixels } from '../../editor/input/camera.ts';

const ARM_PX = 22;
const GAP_PX = 6;
const PEN_PX = 2;
const HALO_PX = 6;
const HELD_PX = 12;

type Ctx = Pick<
  CanvasRenderingContext2D,
  'beginPath' | 'moveTo' | 'lineTo' | 'arc' | 'stroke' | 'setLineDash' | 'lineWidth' | 'lineCap' | 'strokeStyle'
>;

/** The cross that keys move: open in the middle, so that what it is aimed at is seen; with a ring while it holds something. */
export function paintCursor(ctx: Ctx, pane: Pane, { at, held }: CursorState, look: Look): void {
  const [x, y] = toPixels(pane, at);
  ctx.setLineDash([]);
  ctx.lineCap = 'round';
  for (const [ink, width] of [
    [look.halo, HALO_PX],
    [look.ink('ink1'), PEN_PX],
  ] as const) {
    ctx.strokeStyle = ink;
    ctx.lineWidth = width;
    ctx.beginPath();
    for (const [dx, dy] of [
      [1, 0],
      [-1, 0],
      [0, 1],
      [0, -1],
    ] as const) {
      ctx.moveTo(x + dx * GAP_PX, y + dy * GAP_PX);
      ctx.lineTo(x + dx * ARM_PX, y + dy * ARM_PX);
    }
    if (held) {
      ctx.moveTo(x + HELD_PX, y);
      ctx.arc(x, y, HELD_PX, 0, 2 * Math.PI);
    }
    ctx.stroke();
  }
}
