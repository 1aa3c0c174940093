import type { Page } from '@playwright/test';
import { expectNoViolations, tooSmall } from './hands/a11y.ts';
import { bench, openChapter, panel, pullSheet } from './hands/drawing.ts';
import { type Hand, handOf } from './hands/hand.ts';
import { expect, isPhone, openEmpty, openFlat, test } from './hands/kickset.ts';
import { answer, held } from './hands/model.ts';

const key = (page: Page, name: string) => panel(page).getByRole('button', { name, exact: true });
const box = (page: Page, name: string) => panel(page).getByRole('textbox', { name, exact: true });

async function openRecords(page: Page, hand: Hand) {
  await answer(page);
  await openChapter(page, hand, 'Tests and records');
  if (isPhone(page)) await pullSheet(page, hand, 'full');
}

async function openUnsafe(page: Page, hand: Hand) {
  await openChapter(page, hand, 'Job and basis');
  const row = panel(page).getByRole('button', { name: /^Unsafe situations/ });
  if ((await row.getAttribute('aria-expanded')) !== 'true') await hand.press(row);
  if (isPhone(page)) await pullSheet(page, hand, 'full');
}

test('a tightness record: expected beside each blank, edition by its day, kept after a reload', async ({ page }) => {
  await openFlat(page);
  const hand = await handOf(page, 'touch');
  await openRecords(page, hand);
  await hand.press(panel(page).getByRole('button', { name: /^Gas tightness ?not written ?Whole installation/ }));
  await panel(page).getByLabel('Tested on').fill('2026-10-05');
  await expect(panel(page).getByText(/^Expected: 20 mbar/)).toBeVisible();
  await expect(panel(page).getByRole('radio', { name: 'Edition 4' })).toBeChecked();
  await panel(page).getByLabel('Tested on').fill('2026-08-05');
  await expect(panel(page).getByText(/^Either may be worked to on that day/)).toBeVisible();
  await hand.press(panel(page).locator('label', { hasText: 'Edition 3' }));
  await expect(panel(page).getByText(/^Expected: 20 to 21 mbar/)).toBeVisible();
  await box(page, 'Test pressure, mbar').fill('twenty');
  await hand.press(key(page, 'Keep'));
  await expect(panel(page).getByText(/"twenty" is no number/)).toBeVisible();
  await box(page, 'Test pressure, mbar').fill('20.5');
  await box(page, 'Drop, mbar').fill('0');
  await box(page, 'Result, in your own words').fill('steady, no smell');
  expect(await tooSmall(page, 44)).toEqual([]);
  await expectNoViolations(page, 'a test record', isPhone(page));
  await hand.press(key(page, 'Keep'));
  const line = panel(page).getByRole('button', { name: /^Gas tightness ?5 August 2026/ });
  await expect(line).toContainText('edition 3; test pressure 20.5 mbar; drop 0 mbar; steady, no smell');
  await page.reload();
  await openRecords(page, hand);
  await expect(line).toBeVisible();
  await hand.press(line);
  await hand.press(key(page, 'Delete'));
  await expect(line).toHaveCount(0);
  await pullSheetDown(page, hand);
  await hand.press(bench(page, 'Undo'));
  expect((await held(page)).plan.job.tests).toMatchObject([
    { kind: 'tightness', edition: '3', on: '2026-08-05', figures: { testMbar: 20.5, dropMbar: 0, letByMbar: null } },
  ]);
});

async function pullSheetDown(page: Page, hand: Hand) {
  if (isPhone(page)) await pullSheet(page, hand, 'low');
}

test('a gas rate from a timed meter is told in m3/h and in kW', async ({ page }) => {
  await openFlat(page);
  const hand = await handOf(page, 'touch');
  await openRecords(page, hand);
  await hand.press(key(page, 'Gas rate'));
  await hand.press(key(page, 'Time the meter'));
  await expect(panel(page).getByRole('button', { name: /^Stop at [1-9]|^Stop at 0\.[5-9]/ })).toBeVisible();
  await hand.press(panel(page).getByRole('button', { name: /^Stop at/ }));
  await expect(box(page, 'Time taken, s')).not.toHaveValue('');
  await box(page, 'Time taken, s').fill('36');
  await box(page, 'Passed, imperial meter, ft3').fill('1');
  await expect(panel(page).getByText('That is 2.83 m3/h.')).toBeVisible();
  await hand.press(key(page, 'Keep'));
  await expect(
    panel(page)
      .getByRole('button', { name: /^Gas rate/ })
      .first(),
  ).toContainText('2.83 m3/h');
  await answer(page);
  await hand.press(panel(page).getByRole('button', { name: /^What to expect/ }));
  await expect(panel(page).getByText('found 2.83 m3/h, 30.4 kW gross, 27.4 net')).toBeVisible();
  await expectNoViolations(page, 'what to expect', isPhone(page));
});

test('an unsafe situation in own words, signed by a finger and by keyboard', async ({ page }) => {
  await openEmpty(page);
  const hand = await handOf(page, 'touch');
  await openUnsafe(page, hand);
  await expect(panel(page).getByText(/^None is told/)).toBeVisible();
  await hand.press(key(page, 'Add a situation'));
  await hand.press(key(page, 'Keep'));
  await expect(panel(page).getByText('What was found: this is still wanted.')).toBeVisible();
  await expect(box(page, 'Classification, in your own words')).toHaveValue('');
  await box(page, 'What was found').fill('open end on the old gas pipe');
  await box(page, 'Classification, in your own words').fill('as I class it');
  await hand.press(key(page, 'Keep'));
  await hand.press(key(page, 'Sign it'));
  await hand.press(key(page, 'Keep the signature'));
  await expect(panel(page).getByText('Write in the box, or type the name.')).toBeVisible();
  const pad = panel(page).getByRole('img', { name: /^Box to sign in/ });
  await pad.scrollIntoViewIfNeeded();
  const at = await pad.boundingBox();
  if (!at) throw new Error('no box');
  const place = (x: number, y: number) => ({ x: at.x + at.width * x, y: at.y + at.height * y });
  await hand.drag([place(0.1, 0.5), place(0.3, 0.2), place(0.5, 0.7)]);
  await hand.press(key(page, 'Clear'));
  await expect(pad).toHaveAccessibleName('Box to sign in, empty');
  await hand.drag([place(0.1, 0.5), place(0.3, 0.2), place(0.5, 0.7)]);
  await hand.drag([place(0.6, 0.3), place(0.9, 0.6)]);
  await expect(pad).toHaveAccessibleName('Box to sign in, written in');
  expect(await tooSmall(page, 44)).toEqual([]);
  await expectNoViolations(page, 'a box to sign in', isPhone(page));
  await hand.press(key(page, 'Keep the signature'));
  await hand.press(key(page, 'Sign it'));
  await box(page, 'Name in letters').fill('the tenant');
  await key(page, 'Keep the signature').focus();
  await page.keyboard.press('Enter');
  await expect(panel(page).getByText(/^the tenant, \d/)).toBeVisible();
  const [line] = (await held(page)).plan.job.unsafe ?? [];
  expect(line).toMatchObject({
    classification: 'as I class it',
    signed: [{ name: '' }, { name: 'the tenant', strokes: [] }],
  });
  expect(line?.signed[0]?.strokes).toHaveLength(2);
  for (const stroke of line?.signed[0]?.strokes ?? []) expect(stroke.length).toBeGreaterThan(5);
  await hand.press(key(page, 'Change the words'));
  await box(page, 'Where').fill('kitchen');
  await hand.press(key(page, 'Keep'));
  await expect(page.getByText(/^It is signed as it stands/).first()).toBeVisible();
  await hand.press(key(page, 'Leave it'));
  await page.reload();
  await openUnsafe(page, hand);
  const row = panel(page).getByRole('button', { name: /^open end on the old gas pipe/ });
  await expect(row).toContainText('signed: a signature, the tenant');
  await hand.press(row);
  await hand.press(key(page, 'Delete'));
  await expect(row).toHaveCount(0);
});
