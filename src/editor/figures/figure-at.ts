import type { PlacedFigure } from '../editor-api.ts';
import type { Hit } from '../hit/hit-test.ts';
import { toPixels } from '../input/camera.ts';
import { TOLERANCE_PX } from '../input/tolerance.ts';
import type { ToolContext, ToolEvent } from '../tools/define-tool.ts';

/** Off its text a figure is touched this far for each kind of pointer: 44 px across for a finger. */
const REACH_PX = TOLERANCE_PX;
/** Spaces lie under everything: they are never what was meant beside a figure. */
const GROUND: ReadonlySet<string> = new Set(['rooms', 'voids', 'roofs', 'grounds', 'blobRefs']);

/** From the pointer to the text and to its middle, px. */
function away(ctx: ToolContext<unknown>, { pane, screen }: ToolEvent, figure: PlacedFigure) {
  const at = toPixels(ctx.state.panes[pane] ?? ctx.state.panes.plan, figure.at);
  const dx = Math.abs(screen[0] - at[0] - figure.offsetPx[0]);
  const dy = Math.abs(screen[1] - at[1] - figure.offsetPx[1]);
  const off = Math.hypot(Math.max(0, dx - figure.halfPx[0]), Math.max(0, dy - figure.halfPx[1]));
  return { off, middle: Math.hypot(dx, dy), reached: Math.max(dx - figure.halfPx[0], dy - figure.halfPx[1]) };
}

/**
 * The figure under the pointer: its own text before everything; beside the text only what is no nearer to something that
 * was drawn. `hits`: what lies there.
 */
export function figureAt(ctx: ToolContext<unknown>, event: ToolEvent, hits: readonly Hit[]): PlacedFigure | undefined {
  let best: { figure: PlacedFigure; off: number; middle: number } | undefined;
  for (const figure of ctx.state.figures[event.pane] ?? []) {
    const { off, middle, reached } = away(ctx, event, figure);
    const reach = Math.max(0, REACH_PX[event.kind] - Math.min(...figure.halfPx));
    if (reached > reach) continue;
    if (!best || off < best.off || (off === best.off && middle < best.middle)) best = { figure, off, middle };
  }
  if (!best || best.off === 0) return best?.figure;
  const nearest = Math.min(...hits.filter((h) => !GROUND.has(h.map)).map((h) => h.distanceMm / ctx.mmPerPx));
  return nearest < best.off ? undefined : best.figure;
}
