import type { Editor, Pane } from '../../editor/editor-api.ts';
import { nodePlace } from '../../geometry/places.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import { toPx } from '../stage/frame-of.ts';

/** A told leg may come this near to the edge of the pane before the drawing is fitted again, px. */
const EDGE_PX = 36;

/** How much further away each step back is, and how many of them at the most. */
const STEP_BACK = 1.12;
const MOST_STEPS = 12;

interface Spot {
  readonly at: Xyz;
  /** How far what stands there reaches about it, mm. */
  readonly reach: number;
}

/** The corners of a run, and the points it meets. */
function spotsOf(plan: Plan, run: string): Spot[] {
  return Object.values(plan.legs)
    .filter((leg) => leg.run === run)
    .flatMap((leg) => [leg.a, leg.b])
    .flatMap((id) => {
      const node = plan.nodes[id];
      const at = node && nodePlace(plan, node)?.at;
      const size = node?.place.on === 'connection' ? plan.points[node.place.point]?.size : undefined;
      return at ? [{ at, reach: size ? Math.max(size.widthMm, size.depthMm) : 0 }] : [];
    });
}

function isOut({ camera, width, height }: Pane, { at, reach }: Spot): boolean {
  const [x, y] = toPx({ camera, width, height }, [at.x, at.y]);
  const edge = Math.max(EDGE_PX, reach / camera.mmPerPx);
  return x < edge || y < edge || x > width - edge || y > height - edge;
}

/** Brings the whole drawing back into its pane where something of a told run has left it. True where it did. */
export function keepInView(editor: Editor, run: string | null): boolean {
  if (run === null) return false;
  const { plan, panes } = editor.store.getState();
  if (panes.plan.width === 0 || panes.plan.height === 0 || panes.active !== 'plan') return false;
  const spots = spotsOf(plan, run);
  const out = (): boolean => spots.some((spot) => isOut(editor.store.getState().panes.plan, spot));
  if (!out()) return false;
  editor.zoomToFit();
  for (let n = 0; n < MOST_STEPS && out(); n++) {
    const { centre, mmPerPx } = editor.store.getState().panes.plan.camera;
    editor.setCamera('plan', { centre, mmPerPx: mmPerPx * STEP_BACK });
  }
  return true;
}
