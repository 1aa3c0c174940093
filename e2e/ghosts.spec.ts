import type { Page } from '@playwright/test';
import { expectNoViolations, tooSmall } from './hands/a11y.ts';
import { look, onPlan } from './hands/drawing.ts';
import { handOf } from './hands/hand.ts';
import { expect, HOUSE, openEmpty, openText, test } from './hands/kickset.ts';
import { answer, atRest, draws, held } from './hands/model.ts';

async function openHouse(page: Page): Promise<void> {
  await openEmpty(page);
  await openText(page, HOUSE);
  await expect(page.getByRole('button', { name: /Two-storey house/ })).toBeVisible();
  await answer(page);
  await expect.poll(async () => (await held(page)).camera.centre).not.toEqual([0, 0]);
  await atRest(page);
}

const key = (page: Page) => page.locator('.ghost-key');
const list = (page: Page) => page.getByRole('group', { name: 'Shown faint' });

test('the floor below is shown faint, remembered, and never taken for what is there', async ({ page }) => {
  await openHouse(page);
  const hand = await handOf(page, 'touch');
  const before = (await draws(page)).plan.still;
  await hand.press(key(page));
  await expect(list(page)).toBeVisible();
  await expectNoViolations(page, 'shown faint', true);
  expect(await tooSmall(page, 44)).toEqual([]);
  await list(page).getByText('Floor below: ground floor').tap();
  await expect(key(page)).toHaveText('faint: ground floor');
  await expect.poll(async () => (await draws(page)).plan.still).toBeGreaterThan(before);
  await page.keyboard.press('Escape');
  await expect(list(page)).toBeHidden();
  await page.reload();
  await expect(key(page)).toHaveText('faint: ground floor');
});

test('it is not redrawn while a hand moves, and a tap on it takes nothing', async ({ page }) => {
  await openHouse(page);
  const hand = await handOf(page, 'mouse');
  await hand.press(key(page));
  await list(page).getByText('Floor below: ground floor').click();
  await page.keyboard.press('Escape');
  const { plan } = await held(page);
  // The hob of the ground floor lies under Bed 2.
  const hob = Object.values(plan.points).find((p) => p.kind === 'hob');
  if (hob?.place.on !== 'wall') throw new Error('no hob');
  const from = await onPlan(page, 1500, 4200);
  await atRest(page);
  const start = (await draws(page)).plan;
  await hand.down(from);
  for (let i = 1; i <= 30; i++) await hand.move({ x: from.x + i, y: from.y + i });
  await atRest(page);
  const last = (await draws(page)).plan;
  expect(last.still - start.still).toBeLessThanOrEqual(1);
  await hand.up();
  const storey = plan.storeys[hob.storey];
  expect(storey?.floorMm).toBe(0);
  await look(page, 3300, 3900, 6);
  await hand.tap(await onPlan(page, 3300, 4000));
  for (const { map, id } of (await held(page)).selection) {
    if (map === 'points') expect(plan.points[id]?.storey).not.toBe(hob.storey);
  }
});

test('before and after change places under each other', async ({ page }) => {
  await openHouse(page);
  const hand = await handOf(page, 'mouse');
  await hand.press(key(page));
  await list(page).getByText('Before the work').click();
  await expect(key(page)).toHaveText('faint: before');
  await page.keyboard.press('Escape');
  await page.getByRole('radio', { name: 'Before' }).click();
  await expect(key(page)).toHaveText(/^faint: after/);
  await page.getByRole('radio', { name: /^After/ }).click();
  await expect(key(page)).toHaveText('faint: before');
});
