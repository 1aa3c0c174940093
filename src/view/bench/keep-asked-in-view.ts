import type { Vec } from '../../drawing/display-list.ts';
import type { Editor } from '../../editor/editor-api.ts';
import { fitted } from '../../editor/input/camera.ts';
import { fitBox, marginsOf } from '../../editor/input/fit-box.ts';
import { workPlane } from '../../editor/input/work-plane.ts';
import { toPx } from '../stage/frame-of.ts';

/** What is being made may come this near to an edge before the drawing is moved, px. */
const EDGE_PX = 30;
/** A pad beside the drawing covers less of its width than this. */
const COVERS = 0.5;

/** How much of the foot of the active pane lies under the pad, px. */
function coveredBy(pad: HTMLElement, pane: 'plan' | 'face'): number {
  const box = document.querySelector(`.pane-${pane}`)?.getBoundingClientRect();
  const over = pad.getBoundingClientRect();
  if (!box) return 0;
  const width = Math.min(box.right, over.right) - Math.max(box.left, over.left);
  return width < box.width * COVERS ? 0 : Math.max(0, box.bottom - over.top);
}

/**
 * Brings what is being made back into sight where the pad or an edge hides it: the drawing is moved, and seen from further
 * away only where that is not enough.
 */
export function keepAskedInView(editor: Editor, pad: HTMLElement): void {
  const { plan, panes, draft } = editor.store.getState();
  const pane = panes[panes.active] ?? panes.plan;
  const plane = workPlane(plan, pane.view);
  if (!draft || !plane || pane.width === 0 || draft.pane !== panes.active) return;
  const places = [...draft.marks.map((m) => m.at), ...draft.lines.flatMap((l) => l.pts)].map((p) => plane.onto(p));
  if (places.length === 0) return;
  const covered = coveredBy(pad, panes.active);
  const free = pane.height - covered;
  const isOut = (p: Vec): boolean => {
    const [x, y] = toPx(pane, p);
    return x < EDGE_PX || y < EDGE_PX || x > pane.width - EDGE_PX || y > free - EDGE_PX;
  };
  if (!places.some(isOut)) return;
  const house = fitBox(plan, pane.view);
  const all: Vec[] = [
    ...places,
    ...(house ? [[house.minX, house.minY] as const, [house.maxX, house.maxY] as const] : []),
  ];
  const box = {
    minX: Math.min(...all.map((p) => p[0])),
    minY: Math.min(...all.map((p) => p[1])),
    maxX: Math.max(...all.map((p) => p[0])),
    maxY: Math.max(...all.map((p) => p[1])),
  };
  const margins = marginsOf(pane);
  const under = { ...margins, bottom: covered > 0 ? covered + EDGE_PX : margins.bottom };
  const whole = fitted(pane, box, under);
  // Never nearer than it was looked at: the next wall goes on from here.
  const mmPerPx = Math.max(whole.mmPerPx, pane.camera.mmPerPx);
  const [cx, cy] = [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2];
  const [dx, dy] = [(under.right - under.left) / 2, (under.bottom - under.top) / 2];
  editor.setCamera(panes.active, { centre: [cx + dx * mmPerPx, cy - dy * mmPerPx], mmPerPx });
}
