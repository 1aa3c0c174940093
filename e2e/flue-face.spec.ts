import { readFileSync } from 'node:fs';
import type { Locator, Page } from '@playwright/test';
import { expectNoViolations, tooSmall } from './hands/a11y.ts';
import { panel, pullSheet } from './hands/drawing.ts';
import { type Hand, handOf } from './hands/hand.ts';
import { expect, openEmpty, openText, test } from './hands/kickset.ts';
import { answer, held } from './hands/model.ts';

const SEMI = readFileSync(new URL('../demo-plans/semi.plan.json', import.meta.url), 'utf8');
const TERMINAL = 'A-NF';
const LEAST_PX = 44;

const sheet = (page: Page): Locator => page.getByRole('dialog', { name: 'Flue face' });
const rows = (page: Page): Locator => sheet(page).locator('.flue-row');
const row = (page: Page, name: RegExp): Locator => sheet(page).getByRole('button', { name }).first();
const stage = (page: Page): Locator => sheet(page).getByRole('application');
const picture = (page: Page): Promise<string> =>
  stage(page)
    .locator('canvas')
    .evaluate((c: HTMLCanvasElement) => c.toDataURL());

async function openFace(page: Page, hand: Pick<Hand, 'press'>): Promise<void> {
  await openEmpty(page);
  await openText(page, SEMI);
  await expect(page.getByRole('button', { name: /Semi-detached house/ })).toBeVisible();
  await answer(page);
  await page.evaluate((id) => window.__kickset?.editor?.select([{ map: 'points', id }]), TERMINAL);
  await pullSheet(page, hand, 'full');
  await hand.press(panel(page).getByRole('button', { name: 'Show the flue face' }));
  await expect(sheet(page)).toBeVisible();
  await expect(stage(page)).toBeVisible();
}

/** What the report says was found of one of its distances, mm. */
async function found(page: Page, of: string): Promise<number> {
  const report = await answer(page);
  const face = report.flueFaces.find((f) => f.terminal === TERMINAL);
  const distance = face?.distances.find((d) => d.row === of);
  if (!distance) throw new Error(`no ${of}`);
  return distance.found.lo;
}

test('every distance stands in the list, and a tap lights it up on the drawing', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openFace(page, hand);
  const face = (await answer(page)).flueFaces.find((f) => f.terminal === TERMINAL);
  await expect(rows(page)).toHaveCount(face?.distances.length ?? -1);
  const corner = row(page, /^from a corner/);
  await expect(corner).toContainText('1900 mm');
  await expect(corner).toContainText('wanted 300 mm');

  const before = await picture(page);
  await hand.press(corner);
  await expect(corner).toHaveAttribute('aria-pressed', 'true');
  await expect.poll(() => picture(page)).not.toBe(before);
  await expect(sheet(page).locator('.cites')).toBeVisible();
  await expect(
    sheet(page)
      .getByRole('status')
      .filter({ hasText: /1900 mm found/ }),
  ).toBeAttached();
  await hand.press(corner);
  await expect(corner).toHaveAttribute('aria-pressed', 'false');
  await expect(sheet(page).locator('.cites')).toHaveCount(0);
});

test('a tap on a measured line brings its row forward', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openFace(page, hand);
  await hand.press(sheet(page).getByRole('button', { name: 'Terminal', exact: true }));
  const box = await stage(page).boundingBox();
  if (!box) throw new Error('no drawing');
  // Lines run out from the terminal: some place of a coarse net lies on one.
  const pressed = sheet(page).locator('.flue-row[aria-pressed="true"]');
  let tapped = 0;
  for (const [u, v] of [0.5, 0.4, 0.6, 0.3, 0.7].flatMap((v) =>
    [0.5, 0.4, 0.6, 0.3, 0.7].map((u) => [u, v] as const),
  )) {
    tapped += 1;
    await hand.tap({ x: box.x + box.width * u, y: box.y + box.height * v });
    if ((await pressed.count()) > 0) break;
  }
  await expect(pressed, `after ${tapped} taps`).toHaveCount(1);
  await expect(pressed).toBeInViewport();
  // The empty corner of the drawing lets go of it.
  await hand.tap({ x: box.x + 3, y: box.y + box.height - 3 });
  await expect(pressed).toHaveCount(0);
});

test('the terminal is nudged, its figures follow, and undo takes it back', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openFace(page, hand);
  const { plan } = await held(page);
  const before = await found(page, 'beside-corner');
  const ground = await found(page, 'above-ground');
  await hand.press(sheet(page).getByRole('radio', { name: '100', exact: true }));
  await hand.press(sheet(page).getByRole('button', { name: 'Terminal 100 right' }));
  expect(await found(page, 'beside-corner')).toBeCloseTo(before - 100, 1);
  await expect(row(page, /^from a corner/)).toContainText(`${before - 100} mm`);
  await hand.press(sheet(page).getByRole('button', { name: 'Terminal 100 down' }));
  expect(await found(page, 'above-ground')).toBeCloseTo(ground - 100, 1);
  expect((await held(page)).undo).toHaveLength(2);

  const undo = sheet(page).getByRole('button', { name: 'Undo' });
  await hand.press(undo);
  expect(await found(page, 'above-ground')).toBeCloseTo(ground, 1);
  await hand.press(undo);
  expect(await found(page, 'beside-corner')).toBeCloseTo(before, 1);
  expect((await held(page)).plan).toEqual(plan);
  await expect(undo).toHaveAttribute('aria-disabled', 'true');
});

test('looked at, nudged and left by keys', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openFace(page, hand);
  await stage(page).focus();
  const first = await picture(page);
  await page.keyboard.press('+');
  await expect.poll(() => picture(page)).not.toBe(first);
  const near = await picture(page);
  await page.keyboard.press('ArrowLeft');
  await expect.poll(() => picture(page)).not.toBe(near);
  const { plan } = await held(page);
  await page.keyboard.press('Shift+ArrowUp');
  await expect.poll(async () => (await held(page)).undo.length).toBe(1);
  await page.keyboard.press('Control+z');
  await expect.poll(async () => (await held(page)).plan).toEqual(plan);

  await rows(page).first().focus();
  await page.keyboard.press('Enter');
  await expect(rows(page).first()).toHaveAttribute('aria-pressed', 'true');
  await page.keyboard.press('Escape');
  await expect(sheet(page)).toBeHidden();
  await expect(panel(page).getByRole('button', { name: 'Show the flue face' })).toBeFocused();
});

test('sound by day and by night', async ({ page }) => {
  test.setTimeout(90_000);
  const hand = await handOf(page, 'mouse');
  await openFace(page, hand);
  await hand.press(rows(page).first());
  await expectNoViolations(page, 'flue face', true);
  expect(await tooSmall(page, LEAST_PX)).toEqual([]);
  const wider = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(wider).toBeLessThanOrEqual(0);
});

test('no terminal is told in words', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openFace(page, hand);
  await page.evaluate(
    (id) => window.__kickset?.editor?.run('things.delete', { things: [{ map: 'points', id }] }),
    TERMINAL,
  );
  await expect(sheet(page).getByText('No flue terminal stands here.')).toBeVisible();
});
