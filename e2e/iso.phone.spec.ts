import { handOf } from './hands/hand.ts';
import { key, open, stage } from './hands/isometric.ts';
import { expect, openFlat, test } from './hands/kickset.ts';

test('a phone shows one of the two, and one key for the other', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openFlat(page);
  await hand.press(open(page));
  await expect(stage(page)).toBeVisible();
  await expect(page.locator('.pane-plan')).not.toBeVisible();
  await hand.press(page.getByRole('button', { name: 'Plan', exact: true }));
  await expect(stage(page)).toHaveCount(0);
  await expect(page.locator('.pane-plan')).toBeVisible();
  await hand.press(open(page));
  await expect(stage(page)).toBeVisible();
  await hand.press(key(page, 'Close the isometric'));
  await expect(stage(page)).toHaveCount(0);
  await expect(open(page)).toBeVisible();
});
