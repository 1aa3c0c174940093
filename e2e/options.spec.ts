import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { expectNoViolations, tooSmall } from './hands/a11y.ts';
import { look, onPlan, openChapter, panel, pullSheet } from './hands/drawing.ts';
import { type Hand, handOf } from './hands/hand.ts';
import { expect, isPhone, openEmpty, openFlat, openText, test } from './hands/kickset.ts';
import { answer, held } from './hands/model.ts';

const EXTENSION = readFileSync(new URL('../demo-plans/extension.plan.json', import.meta.url), 'utf8');
const LEAST_PX = 44;

const cases = (page: Page) => page.getByRole('group', { name: 'Before or after the work' });
const table = (page: Page) => page.getByRole('dialog', { name: 'Options side by side' });
const chosen = (page: Page) => page.evaluate(() => window.__kickset?.editor?.store.getState().chosen);
const faint = (page: Page) => page.evaluate(() => localStorage.getItem('kickset.faint'));

/** Copies option A from its row, and gives the id of the copy. */
async function copyA(page: Page, hand: Hand): Promise<string> {
  await openChapter(page, hand, 'Options');
  await hand.press(panel(page).getByRole('button', { name: 'Copy, name or delete option A' }));
  await hand.press(panel(page).getByRole('button', { name: 'Copy A', exact: true }));
  await expect(cases(page).getByRole('radio', { name: 'After, B' })).toBeChecked();
  const now = await chosen(page);
  return now?.option ?? '';
}

/** The demo house with four options. */
async function openExtension(page: Page): Promise<void> {
  await openEmpty(page);
  await openText(page, EXTENSION);
  await expect(page.getByRole('button', { name: /House with a rear extension/ })).toBeVisible();
  await answer(page);
}

test('an option is copied, changed, compared, shown and deleted by touch', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openFlat(page);
  const first = (await held(page)).plan;
  const made = await copyA(page, hand);
  const copied = await held(page);
  expect(copied.undo).toEqual(['copy option A']);
  expect(copied.plan.options[made]?.name).toBe('B');
  const legs = (option: string, plan = copied.plan) => Object.values(plan.legs).filter((l) => l.option === option);
  expect(legs(made)).toHaveLength(legs('A').length);

  // A leg of the copy is moved: the first one stays where it is.
  await pullSheet(page, hand, 'low');
  await look(page, 4200, 3000, 12);
  await hand.tap(await onPlan(page, 4200, 3950));
  // Past the height it comes from: so it gets longer by the way back.
  await hand.drag([await onPlan(page, 4200, 3950), await onPlan(page, 4200, 1800)]);
  const moved = await held(page);
  expect(moved.undo).toHaveLength(2);
  const first3 = first.nodes[first.legs['B-g1-3']?.a ?? ''];
  expect(moved.plan.nodes[first3?.id ?? '']).toEqual(first3);
  await answer(page);

  // What differs is listed by system, in words, and shown with the other one faint.
  await openChapter(page, hand, 'Options');
  const differs = panel(page).getByRole('region', { name: 'What differs', exact: true });
  await differs.getByLabel('From').selectOption({ label: 'After, A' });
  await expect(differs.getByLabel('To')).toHaveValue(`after ${made}`);
  const gas = differs.getByRole('region', { name: 'Gas', exact: true });
  const row = gas.getByRole('button', { name: /^changed Gas from the meter to the hob tee/ });
  await expect(row).toBeVisible();
  await expect(row).toContainText(/\d m longer/);
  await hand.press(row);
  await expect(row).toHaveAttribute('aria-pressed', 'true');
  const [shown] = (await held(page)).selection;
  expect(shown?.map).toBe('runs');
  expect(moved.plan.runs[shown?.id ?? '']?.option).toBe(made);
  expect(JSON.parse((await faint(page)) ?? '{}').other).toEqual({ option: 'A', when: 'after' });
  await expect(page.getByRole('button', { name: 'faint: after, A' })).toBeVisible();
  // The list stays, so that the next one can be looked at.
  await expect(panel(page).getByRole('heading', { name: 'Options', level: 2 })).toBeVisible();

  // Side by side.
  await pullSheet(page, hand, 'full');
  await hand.press(panel(page).getByRole('button', { name: 'Compare', exact: true }));
  const pipe = table(page).getByRole('row', { name: /^New pipe, gas/ });
  await expect(pipe.getByRole('cell')).toHaveCount(3);
  const [, a, b] = await pipe.getByRole('cell').allInnerTexts();
  expect(a).toMatch(/^\d+\.\d m/);
  expect(b).toMatch(/^\d+\.\d m/);
  expect(a?.split('\n')[0]).not.toBe(b?.split('\n')[0]);
  await expect(pipe.getByText('best', { exact: true })).toHaveCount(1);
  await expect(table(page).getByRole('row', { name: /^New pipe, heating flow same in every option/ })).toBeVisible();
  await hand.press(table(page).getByRole('radio', { name: 'Only those that differ' }));
  await expect(table(page).getByRole('row', { name: /^New pipe, heating flow/ })).toBeHidden();
  await expect(pipe).toBeVisible();

  // A figure opens its chapter in the case it belongs to.
  await hand.press(table(page).getByRole('radio', { name: 'All figures' }));
  const drop = table(page).getByRole('row', { name: /^Gas drop at the boiler/ });
  await hand.press(drop.getByRole('cell').nth(1).getByRole('button'));
  await expect(table(page)).toBeHidden();
  expect(await chosen(page)).toEqual({ option: 'A', when: 'after' });
  await expect(panel(page).getByRole('heading', { name: 'Gas drop', level: 2 })).toBeVisible();

  // Deleted, after it was asked for in words; brought back with all of it.
  await openChapter(page, hand, 'Options');
  await hand.press(panel(page).getByRole('button', { name: 'Copy, name or delete option B' }));
  await hand.press(panel(page).getByRole('button', { name: 'Delete', exact: true }));
  const asked = panel(page).getByRole('alertdialog', { name: 'Delete option B?' });
  await expect(asked).toContainText(/runs and \d+ pieces of pipe go with it/);
  await hand.press(asked.getByRole('button', { name: 'Delete it' }));
  expect(Object.keys((await held(page)).plan.options)).toEqual(['A']);
  expect((await held(page)).plan.legs).toEqual(first.legs);
  await hand.press(page.getByRole('button', { name: 'Bring it back' }));
  expect((await held(page)).plan.options[made]?.name).toBe('B');
  expect(Object.keys((await held(page)).plan.legs).sort()).toEqual(Object.keys(moved.plan.legs).sort());
});

test('before and after are flipped with one key, and go back to the option that was looked at', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openExtension(page);
  const radio = (name: string) => cases(page).getByRole('radio', { name });
  await hand.press(cases(page).locator('label').filter({ hasText: 'C' }));
  await expect(radio('After, C')).toBeChecked();
  await page.keyboard.press('b');
  await expect(radio('Before')).toBeChecked();
  await page.keyboard.press('b');
  await expect(radio('After, C')).toBeChecked();
  if (isPhone(page)) return;
  await hand.press(page.getByRole('button', { name: 'To before the work and back' }));
  await expect(radio('Before')).toBeChecked();
  await hand.press(page.getByRole('button', { name: 'Back to after the work' }));
  await expect(radio('After, C')).toBeChecked();
  // Nothing of the strip lies over anything else of it.
  const [switched, counts] = [await cases(page).boundingBox(), await page.locator('.counts').boundingBox()];
  expect((switched?.x ?? 0) + (switched?.width ?? 0)).toBeLessThanOrEqual(counts?.x ?? 0);
});

test('the chapter of options can be read and touched by anybody', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openExtension(page);
  await openChapter(page, hand, 'Options');
  await hand.press(panel(page).getByRole('button', { name: 'Copy, name or delete option D' }));
  await hand.press(panel(page).getByRole('button', { name: 'Delete', exact: true }));
  await expectNoViolations(page, 'options', true);
  expect(await tooSmall(page, LEAST_PX)).toEqual([]);
  await hand.press(panel(page).getByRole('button', { name: 'Keep it' }));
  expect(Object.keys((await held(page)).plan.options)).toHaveLength(4);
});

test('four options side by side can be read and touched by anybody', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openExtension(page);
  await openChapter(page, hand, 'Options');
  await hand.press(panel(page).getByRole('button', { name: 'Compare', exact: true }));
  const condensate = table(page).getByRole('row', { name: /^Condensate way/ });
  await expect(condensate.getByRole('cell')).toHaveText([/no figure/, /pumped/, /by gravity/, /by gravity/, /best/]);
  await expectNoViolations(page, 'options side by side', true);
  expect(await tooSmall(page, LEAST_PX)).toEqual([]);
  // On a phone the names of the figures stay while the options are pushed past.
  const name = condensate.getByRole('rowheader');
  const before = await name.boundingBox();
  await page.locator('.compare-scroll').evaluate((e) => e.scrollBy(300, 0));
  expect((await name.boundingBox())?.x).toBe(before?.x);
});
