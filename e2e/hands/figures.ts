import { expect, type Page } from '@playwright/test';
import type { PaneName } from './model.ts';

/** Where the text of a figure stands in the page: the one of a kind that measures so many mm. */
export async function figureAt(page: Page, of: string, mm: number, pane: PaneName = 'plan') {
  const find = () =>
    page.evaluate(
      ({ of, mm, pane }) => {
        const s = window.__kickset?.editor?.store.getState();
        const shown = s?.panes[pane];
        const box = document.querySelector(`.pane-box[data-pane="${pane}"]`)?.getBoundingClientRect();
        const found = (s?.figures[pane] ?? []).filter((f) => f.measures.of === of && Math.round(f.mm) === mm);
        const [only] = found;
        if (!shown || !box || !only || found.length > 1) return null;
        const [cx, cy] = shown.camera.centre;
        return {
          x: box.left + shown.width / 2 + (only.at[0] - cx) / shown.camera.mmPerPx + only.offsetPx[0],
          y: box.top + shown.height / 2 - (only.at[1] - cy) / shown.camera.mmPerPx + only.offsetPx[1],
        };
      },
      { of, mm, pane },
    );
  await expect.poll(find, { message: `the figure of ${of} ${mm} stands in the ${pane}` }).not.toBeNull();
  const at = await find();
  if (!at) throw new Error('the figure went away');
  return at;
}
