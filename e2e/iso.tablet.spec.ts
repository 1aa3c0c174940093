import type { Page } from '@playwright/test';
import { look, onPlan, takeTool } from './hands/drawing.ts';
import { handOf } from './hands/hand.ts';
import { draws, open, stage } from './hands/isometric.ts';
import { expect, openFlat, test } from './hands/kickset.ts';
import { answer, atRest, held } from './hands/model.ts';

test('a drag on the plan draws the isometric once, when it is done', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openFlat(page);
  await hand.press(open(page));
  await expect(stage(page)).toBeVisible();
  await takeTool(page, hand, 'Select');
  const { plan } = await held(page);
  const node = Object.values(plan.nodes).find(
    (n) => n.place.on === 'storey' && Object.values(plan.legs).filter((l) => l.a === n.id || l.b === n.id).length === 2,
  );
  if (node?.place.on !== 'storey') throw new Error('no corner');
  const { x, y } = node.place;
  await look(page, x, y, 6);
  const leg = Object.values(plan.legs).find((l) => l.a === node.id || l.b === node.id);
  await page.evaluate((id) => window.__kickset?.editor?.select([{ map: 'nodes', id }]), node.id);
  await atRest(page);
  const from = await onPlan(page, x, y);
  const before = await draws(page);
  await hand.down(from);
  for (let i = 1; i <= 20; i++) await hand.move({ x: from.x, y: from.y + i * 2 });
  await atRest(page);
  expect((await held(page)).drafting).toBe(true);
  expect(await draws(page)).toBe(before);
  await hand.up();
  await answer(page);
  expect(leg).toBeDefined();
  await expect.poll(() => draws(page)).toBeGreaterThan(before);
  expect((await held(page)).undo).toHaveLength(1);
});

test('the bar between the panes is dragged and stepped, and the device keeps it', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openFlat(page);
  await hand.press(open(page));
  const bar = page.getByRole('separator', { name: 'Width of the plan' });
  await expect(bar).toHaveAttribute('aria-valuenow', '50');
  const box = await bar.boundingBox();
  const whole = await page.locator('.stages').boundingBox();
  if (!box || !whole) throw new Error('no bar');
  const at = { x: box.x + box.width / 2, y: box.y + box.height / 3 };
  await hand.drag([at, { x: whole.x + whole.width * 0.62, y: at.y }]);
  await expect(bar).toHaveAttribute('aria-valuenow', '62');
  await bar.focus();
  await page.keyboard.press('ArrowLeft');
  await expect(bar).toHaveAttribute('aria-valuenow', '57');
  await page.keyboard.press('End');
  await expect(bar).toHaveAttribute('aria-valuenow', '75');
  await page.reload();
  await openFlatAgain(page);
  // It is kept with the job, and stands there again by itself.
  await expect(stage(page)).toBeVisible();
  await expect(bar).toHaveAttribute('aria-valuenow', '75');
});

async function openFlatAgain(page: Page): Promise<void> {
  const demo = page.getByRole('button', { name: 'open the demo flat' });
  const job = page.getByRole('button', { name: /First-floor flat/ }).first();
  await expect(demo.or(job).first()).toBeVisible();
  if (await demo.isVisible()) await demo.click();
  await answer(page);
}

test('a wall folds up and down beside it', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openFlat(page);
  await hand.press(open(page));
  await expect(stage(page)).toBeVisible();
  const { plan } = await held(page);
  const wall = Object.keys(plan.walls)[0] ?? '';
  await page.evaluate((id) => window.__kickset?.editor?.foldUp({ wall: id, side: 'left' }), wall);
  await expect(page.locator('.pane-face')).toBeVisible();
  await atRest(page);
  const { camera, faceCamera } = await held(page);
  expect(faceCamera?.mmPerPx).toBeCloseTo(camera.mmPerPx, 6);
  await expect(stage(page)).toBeVisible();
  await hand.press(page.getByRole('button', { name: 'fold down' }));
  await expect(page.locator('.pane-face')).toHaveCount(0);
  await expect(stage(page)).toBeVisible();
});
