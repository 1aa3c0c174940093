import type { Item } from '../../drawing/display-list.ts';
import { serviceLook } from '../../drawing/look/tokens.ts';
import type { Draft } from '../../editor/editor-api.ts';
import type { WorkPlane } from '../../editor/input/work-plane.ts';

/** What is being made, as things to paint in the plane of a pane. */
export function draftItems(draft: Draft, plane: WorkPlane): Item[] {
  const items: Item[] = [];
  for (const line of draft.lines) {
    items.push({
      t: 'line',
      pts: line.pts.map((p) => plane.onto(p)),
      style:
        line.beat === undefined
          ? { ink: line.ink, pen: line.pen, dash: [], fit: false, cap: 'round' }
          : { ink: line.ink, pen: line.pen, dash: serviceLook(line.beat).dashMm, fit: true },
    });
  }
  for (const mark of draft.marks) {
    items.push({
      t: 'mark',
      mark: mark.mark,
      at: plane.onto(mark.at),
      turnDeg: 0,
      ink: 'live',
      ...(mark.text === undefined ? {} : { text: mark.text }),
    });
  }
  for (const label of draft.labels) {
    items.push({
      t: 'text',
      at: plane.onto(label.at),
      text: label.text,
      size: 'flag',
      weight: 600,
      align: 'left',
      ink: 'ink1',
      turnDeg: 0,
      halo: true,
      offsetMm: [2.4, 2.4],
    });
  }
  return items;
}
