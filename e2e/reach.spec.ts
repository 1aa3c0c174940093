import { readFileSync } from 'node:fs';
import type { Locator, Page } from '@playwright/test';
import { bench, openChapter, panel, pullSheet } from './hands/drawing.ts';
import { handOf } from './hands/hand.ts';
import { expect, openEmpty, openText, test } from './hands/kickset.ts';
import { answer, atRest, held } from './hands/model.ts';

const EXTENSION = readFileSync(new URL('../demo-plans/extension.plan.json', import.meta.url), 'utf8');
const CHAPTER = 'Where water can run';

const row = (page: Page, name: RegExp): Locator => panel(page).locator('.verdict').filter({ hasText: name }).first();

/** Draws of the layer that the ways are on. */
const workDraws = (page: Page): Promise<number> => page.evaluate(() => window.__kickset?.draws.plan.work ?? 0);

async function openHouse(page: Page): Promise<void> {
  await openEmpty(page);
  await openText(page, EXTENSION);
  await expect(page.getByRole('button', { name: /House with a rear extension/ })).toBeVisible();
  await answer(page);
  await expect.poll(async () => (await held(page)).camera.centre).not.toEqual([0, 0]);
}

test('every drain has its mark and its sentence, and the map changes when the boiler is raised', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openHouse(page);
  await openChapter(page, hand, CHAPTER);
  const foul = row(page, /Foul gully/);
  await expect(foul).toContainText(/stop\. \d\.\d m.*crosses the side door at \d+ to \d+/);
  const before = await answer(page);
  const first = before.reach.find((a) => a.end === 'D-FG' && a.service === 'condensate');
  expect(first?.state).toBe('stop');
  const said = await foul.textContent();

  // Up the wall by the field of the boiler, so far that the pipe goes over the head of the door.
  await pullSheet(page, hand, 'full');
  await openChapter(page, hand, 'Things');
  await hand.press(
    panel(page)
      .getByRole('button', { name: /^New combi/ })
      .first(),
  );
  const height = panel(page).getByRole('textbox', { name: 'Underside off floor' });
  await height.fill('2650');
  await height.press('Enter');
  const after = await answer(page);
  const raised = after.reach.find((a) => a.end === 'D-FG' && a.service === 'condensate');
  expect(raised?.blocks.some((b) => b.ids.includes('dd3'))).toBe(false);
  expect(raised?.arrivesMm?.lo ?? 0).toBeGreaterThan((first?.arrivesMm?.lo ?? 0) + 1000);
  await openChapter(page, hand, CHAPTER);
  await expect(foul).not.toHaveText(said ?? '');
  await expect(foul).not.toContainText('crosses the side door');

  // Taken back, the door is in the way again.
  await pullSheet(page, hand, 'low');
  await hand.press(bench(page, 'Undo'));
  await answer(page);
  await openChapter(page, hand, CHAPTER);
  await expect(foul).toHaveText(said ?? '');
});

test('the ways are on the plan while their chapter is open, and stay where they are kept', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openHouse(page);
  const hide = page.getByRole('button', { name: 'Hide ways' });
  await openChapter(page, hand, 'List');
  await atRest(page);
  const without = await workDraws(page);
  await openChapter(page, hand, CHAPTER);
  await expect.poll(() => workDraws(page)).toBeGreaterThan(without);
  await expect(hide).toBeHidden();

  const keep = panel(page).getByRole('button', { name: 'Keep the ways on the plan' });
  await expect(keep).toHaveAttribute('aria-pressed', 'false');
  await hand.press(keep);
  await expect(keep).toHaveAttribute('aria-pressed', 'true');
  await openChapter(page, hand, 'List');
  await pullSheet(page, hand, 'low');
  await expect(hide).toBeVisible();
  await hand.press(hide);
  await expect(hide).toBeHidden();
  await openChapter(page, hand, CHAPTER);
  await expect(keep).toHaveAttribute('aria-pressed', 'false');
});

test('a tap on one brings it forward and leaves the chapter open', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openHouse(page);
  await openChapter(page, hand, CHAPTER);
  const foul = row(page, /Foul gully/);
  await atRest(page);
  const before = await workDraws(page);
  await hand.press(foul);
  await expect(foul).toHaveAttribute('aria-pressed', 'true');
  await expect.poll(() => workDraws(page)).toBeGreaterThan(before);
  await expect(panel(page).getByRole('heading', { name: CHAPTER, level: 2 })).toBeVisible();
  expect((await held(page)).selection).toEqual([]);
  await pullSheet(page, hand, 'full');
  await hand.press(foul);
  await expect(foul).toHaveAttribute('aria-pressed', 'false');
});
