import { annotate } from '../../src/drawing/annotate.ts';
import type { Measures } from '../../src/drawing/display-list.ts';
import { fragments } from '../../src/drawing/fragments.ts';
import type { Editor, PlacedFigure } from '../../src/editor/editor-api.ts';
import { toPixels, toPlane } from '../../src/editor/input/camera.ts';

/** Px for a mm of paper: invented, so that no test leans on the look. */
const PX_PER_MM = 3;

/** Places the labels of the active pane as a view does, tells the editor of its figures, and gives them. */
export function placeFigures(editor: Editor): readonly PlacedFigure[] {
  const { plan, panes, chosen, selection } = editor.store.getState();
  const pane = panes[panes.active] ?? panes.plan;
  const measured = new Set(
    selection.flatMap(({ map, id }) => (map === 'runs' ? [id] : map === 'legs' ? [plan.legs[id]?.run ?? ''] : [])),
  );
  const list = annotate(fragments(plan, pane.view, chosen), {
    plan,
    view: pane.view,
    mmPerPaperMm: PX_PER_MM * pane.camera.mmPerPx,
    measured,
    placed: selection,
  });
  const figures = list.items.flatMap(({ figure }): PlacedFigure[] => {
    if (!figure) return [];
    const { measures, mm, a, b, at, offsetMm, halfMm } = figure;
    const [ox, oy] = [offsetMm[0] * PX_PER_MM, -offsetMm[1] * PX_PER_MM];
    return [{ measures, mm, a, b, at, offsetPx: [ox, oy], halfPx: [halfMm[0] * PX_PER_MM, halfMm[1] * PX_PER_MM] }];
  });
  editor.placeFigures(panes.active, figures);
  return figures;
}

/** The one figure of that length and kind. */
export function figureOf(editor: Editor, of: Measures['of'], mm: number): PlacedFigure {
  const all = placeFigures(editor);
  const found = all.filter((f) => f.measures.of === of && Math.round(f.mm) === mm);
  const [only] = found;
  if (!only || found.length > 1) {
    throw new Error(`${found.length} figures of ${of} ${mm}; there are ${all.map((f) => `${f.measures.of} ${f.mm}`)}`);
  }
  return only;
}

/** Where the text of a figure stands, in mm of the plane, off it by so many px. */
export function textAt(editor: Editor, figure: PlacedFigure, off: readonly [number, number] = [0, 0]) {
  const { panes } = editor.store.getState();
  const pane = panes[panes.active] ?? panes.plan;
  const [x, y] = toPixels(pane, figure.at);
  const [px, py] = toPlane(pane, x + figure.offsetPx[0] + off[0], y + figure.offsetPx[1] + off[1]);
  return [px, py] as const;
}
