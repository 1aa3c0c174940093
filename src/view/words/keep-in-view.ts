import type { Editor, Pane } from '../../editor/editor-api.ts';
import { fitted } from '../../editor/input/camera.ts';
import { fitBox, marginsOf } from '../../editor/input/fit-box.ts';
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

/** Runs that are told now: the one in hand, and one that is only shown so far. */
function toldRuns(shown: Plan, plan: Plan, run: string | null): readonly string[] {
  const fresh = Object.keys(shown.runs).filter((id) => !plan.runs[id]);
  return run === null ? fresh : [run, ...fresh];
}

/**
 * Brings the whole drawing back into its pane where something of a told run has left it, the leg that is being told too.
 * True where it did.
 */
export function keepInView(editor: Editor, run: string | null): boolean {
  const { plan, panes, draft } = editor.store.getState();
  const shown = draft?.plan ?? plan;
  if (panes.plan.width === 0 || panes.plan.height === 0 || panes.active !== 'plan') return false;
  const spots = toldRuns(shown, plan, run).flatMap((id) => spotsOf(shown, id));
  const out = (): boolean => spots.some((spot) => isOut(editor.store.getState().panes.plan, spot));
  if (!out()) return false;
  editor.setCamera('plan', fitted(panes.plan, fitBox(shown, panes.plan.view), marginsOf(panes.plan)));
  for (let n = 0; n < MOST_STEPS && out(); n++) {
    const { centre, mmPerPx } = editor.store.getState().panes.plan.camera;
    editor.setCamera('plan', { centre, mmPerPx: mmPerPx * STEP_BACK });
  }
  return true;
}
