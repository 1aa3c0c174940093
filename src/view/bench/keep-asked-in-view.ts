import type { Vec } from '../../drawing/display-list.ts';
import type { Editor } from '../../editor/editor-api.ts';
import { fitted, panned } from '../../editor/input/camera.ts';
import { fitBox, marginsOf } from '../../editor/input/fit-box.ts';
import { workPlane } from '../../editor/input/work-plane.ts';
import { toPx } from '../stage/frame-of.ts';

/** What is being made may come this near to an edge before the drawing is moved, px. */
const EDGE_PX = 30;
/** What was out of sight is brought this share of the pane past its edge: the next goes on from there. */
const FURTHER = 0.1;
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
 * How far places along one way of the pane must slide to lie between its edges, px: 0 where they do already, undefined where
 * they reach further than there is room. No further than needed and a little more.
 */
export function slideIn(at: readonly number[], length: number): number | undefined {
  const [lo, hi] = [Math.min(...at), Math.max(...at)];
  if (lo >= EDGE_PX && hi <= length - EDGE_PX) return 0;
  const spare = length - 2 * EDGE_PX - (hi - lo);
  if (spare < 0) return undefined;
  const further = Math.min(spare, length * FURTHER);
  return lo < EDGE_PX ? EDGE_PX + further - lo : length - EDGE_PX - further - hi;
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
  const slide = (pts: readonly Vec[]): Vec | undefined => {
    const px = pts.map((p) => toPx(pane, p));
    const dx = slideIn(
      px.map(([x]) => x),
      pane.width,
    );
    const dy = slideIn(
      px.map(([, y]) => y),
      free,
    );
    return dx === undefined || dy === undefined ? undefined : [dx, dy];
  };
  const own = slide(places);
  if (own && own[0] === 0 && own[1] === 0) return;
  const house = fitBox(plan, pane.view);
  const drawn: Vec[] = house
    ? [
        [house.minX, house.minY],
        [house.maxX, house.maxY],
      ]
    : [];
  const all = [...places, ...drawn];
  // Who looks at a part of the house goes on looking at it from as near; who saw all of it goes on seeing all.
  const sawAll = drawn.every((p) => {
    const [x, y] = toPx(pane, p);
    return x >= 0 && y >= 0 && x <= pane.width && y <= free;
  });
  const way = slide(all) ?? (sawAll ? undefined : own);
  if (way) {
    editor.setCamera(panes.active, panned(pane.camera, ...way));
    return;
  }
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
  const [sx, sy] = [(under.right - under.left) / 2, (under.bottom - under.top) / 2];
  editor.setCamera(panes.active, { centre: [cx + sx * mmPerPx, cy - sy * mmPerPx], mmPerPx });
}
