import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { expectNoViolations, tooSmall } from './hands/a11y.ts';
import { bench, look, onPlan, openChapter, panel, pullSheet } from './hands/drawing.ts';
import { type Hand, handOf } from './hands/hand.ts';
import { expect, isPhone, openEmpty, openFlat, openText, test } from './hands/kickset.ts';
import { held } from './hands/model.ts';

async function openPart(page: Page, hand: Hand, part: string) {
  await openChapter(page, hand, 'Job and basis');
  const row = panel(page).getByRole('button', { name: new RegExp(`^${part}`) });
  if ((await row.getAttribute('aria-expanded')) !== 'true') await hand.press(row);
}

const key = (page: Page, name: string) => panel(page).getByRole('button', { name, exact: true });
const box = (page: Page, name: string) => panel(page).getByRole('textbox', { name, exact: true });

/** A picture as a camera would give it, drawn by the page itself. */
async function picture(page: Page, colour: string): Promise<Buffer> {
  const text = await page.evaluate((fill) => {
    const canvas = document.createElement('canvas');
    canvas.width = 320;
    canvas.height = 240;
    const paint = canvas.getContext('2d');
    if (paint) {
      paint.fillStyle = fill;
      paint.fillRect(0, 0, 320, 240);
    }
    return canvas.toDataURL('image/png');
  }, colour);
  return Buffer.from(text.split(',')[1] ?? '', 'base64');
}

async function choosePhoto(page: Page, hand: Hand, name: string, colour: string) {
  const buffer = await picture(page, colour);
  const coming = page.waitForEvent('filechooser');
  await hand.press(key(page, 'Choose one'));
  await (await coming).setFiles({ name, mimeType: 'image/png', buffer });
  await expect.poll(async () => Object.keys((await held(page)).plan.blobRefs).length).toBe(1);
}

async function savedFile(page: Page): Promise<string> {
  await page.getByRole('button', { name: /All jobs$/ }).click();
  const coming = page.waitForEvent('download');
  await page.getByRole('dialog', { name: 'Jobs' }).getByRole('button', { name: 'Save to file' }).click();
  const text = readFileSync(await (await coming).path(), 'utf8');
  await page.keyboard.press('Escape');
  return text;
}

test('who has a say, what must wait for a day, what was read: by touch', async ({ page }) => {
  await openEmpty(page);
  const hand = await handOf(page, 'touch');
  await openPart(page, hand, 'Permissions');
  await expect(panel(page).getByText(/^Nobody is to be asked yet/)).toBeVisible();
  await hand.press(key(page, 'Add a permission'));
  await hand.press(key(page, 'Keep'));
  await expect(panel(page).getByText('Leave for what: this is still wanted.')).toBeVisible();
  await box(page, 'Leave for what').fill('flue through the rear wall');
  await box(page, 'From whom').fill('the freeholder');
  await panel(page).getByLabel('Asked on').fill('2026-05-01');
  await hand.press(key(page, 'Keep'));
  await expect(panel(page).getByRole('button', { name: /^Permissions 1 asked/ })).toBeVisible();
  await hand.press(panel(page).getByRole('button', { name: /^flue through the rear wall/ }));
  await panel(page).getByLabel('Given on').fill('2026-04-01');
  await hand.press(key(page, 'Keep'));
  await expect(page.getByText('It was given before it was asked for: look at the two dates.').first()).toBeVisible();
  await panel(page).getByLabel('Given on').fill('2026-05-09');
  await hand.press(key(page, 'Keep'));
  await expect(panel(page).getByRole('button', { name: /^Permissions 1 given/ })).toBeVisible();

  await openPart(page, hand, 'Hold points');
  await hand.press(key(page, 'Before the pour'));
  await box(page, 'What must be decided or done').fill('condensate branch');
  await panel(page).getByLabel('On', { exact: true }).fill('2026-06-12');
  await hand.press(key(page, 'Keep'));
  await expect(panel(page).getByRole('button', { name: /^Hold points 12 June 2026, condensate branch/ })).toBeVisible();

  await openPart(page, hand, 'As found');
  await hand.press(key(page, 'Gas standing'));
  await expect(box(page, 'Value')).toBeFocused();
  await box(page, 'Value').fill('about twenty');
  // A look at another chapter does not lose what is typed.
  await openChapter(page, hand, 'Runs');
  await openPart(page, hand, 'As found');
  await expect(box(page, 'Value')).toHaveValue('about twenty');
  await hand.press(key(page, 'Keep'));
  await expect(panel(page).getByText('Value: "about twenty" is no number. Type it as 21 or 21.5.')).toBeVisible();
  await box(page, 'Value').fill('21.4');
  await hand.press(key(page, 'Keep'));
  await expect(panel(page).getByText('21.4 mbar')).toBeVisible();
  const { plan } = await held(page);
  expect(plan.job.permissions).toMatchObject([{ what: 'flue through the rear wall', given: '2026-05-09' }]);
  expect(plan.job.holdPoints).toMatchObject([{ before: 'the pour', on: '2026-06-12', done: false }]);
  expect(plan.job.readings).toMatchObject([{ what: 'Gas standing pressure', value: 21.4, unit: 'mbar' }]);

  await hand.press(bench(page, 'Undo'));
  expect((await held(page)).plan.job.readings).toBeUndefined();
  expect(await tooSmall(page, 44)).toEqual([]);
  await expectNoViolations(page, 'job card', isPhone(page));
});

test('a hazard is pinned by a tap and listed with what to do first', async ({ page }) => {
  await openFlat(page);
  const hand = await handOf(page, 'touch');
  await openPart(page, hand, 'Hazards');
  await hand.press(panel(page).getByRole('button', { name: /^Pin a hazard/ }));
  await pullSheet(page, hand, 'low');
  await look(page, 2500, 2000, 10);
  await hand.tap(await onPlan(page, 2500, 2000));
  await expect
    .poll(async () => Object.values((await held(page)).plan.points).filter((p) => p.kind === 'hazard').length)
    .toBe(1);
  await pullSheet(page, hand, 'full');
  await panel(page).getByLabel('What it is').selectOption({ label: 'asbestos' });
  await expect(panel(page).getByText(/^Do not drill, break or strip it/)).toBeVisible();
  await openPart(page, hand, 'Hazards');
  await expect(panel(page).getByRole('button', { name: /^Hazards asbestos/ })).toBeVisible();
  await expect(panel(page).getByRole('button', { name: /^asbestos not looked into/ })).toBeVisible();
});

test('a photo is chosen, named, pinned, opened from its mark, carried in the file and back', async ({
  page,
  browser,
}) => {
  await openFlat(page);
  const hand = await handOf(page, 'touch');
  await openPart(page, hand, 'Photos');
  await choosePhoto(page, hand, 'IMG_1234.png', '#336699');
  await pullSheet(page, hand, 'full');
  await box(page, 'What it shows').fill('old flue');
  await box(page, 'What it shows').press('Enter');
  await hand.press(key(page, 'Pin it: tap the plan'));
  await pullSheet(page, hand, 'low');
  await look(page, 2500, 2000, 10);
  await hand.tap(await onPlan(page, 2500, 2000));
  const photo = async () => Object.values((await held(page)).plan.blobRefs)[0];
  await expect.poll(async () => (await photo())?.pin != null).toBe(true);
  expect(await photo()).toMatchObject({ kind: 'photo', name: 'old flue', pixels: { width: 320, height: 240 } });
  expect((await photo())?.pin?.x).toBeCloseTo(2500, -2);

  await page.keyboard.press('Escape');
  await expect.poll(async () => (await held(page)).selection.length).toBe(0);
  await hand.tap(await onPlan(page, 2500, 2000));
  await expect.poll(async () => (await held(page)).selection[0]?.map).toBe('blobRefs');
  await pullSheet(page, hand, 'full');
  await expect(panel(page).getByRole('img', { name: 'old flue' })).toBeVisible();

  const text = await savedFile(page);
  const elsewhere = await (await browser.newContext({ serviceWorkers: 'block', hasTouch: true })).newPage();
  await openEmpty(elsewhere);
  await openText(elsewhere, text);
  await expect.poll(async () => Object.keys((await held(elsewhere)).plan.blobRefs).length).toBe(1);
  const there = await handOf(elsewhere, 'touch');
  await openPart(elsewhere, there, 'Photos');
  await expect(panel(elsewhere).getByText(/^1 picture, \d+ kB on this device\./)).toBeVisible();
  await there.press(panel(elsewhere).getByRole('button', { name: /^old flue/ }));
  await expect(panel(elsewhere).getByRole('img', { name: 'old flue' })).toBeVisible();
  await there.press(panel(elsewhere).getByRole('button', { name: 'Delete photo' }));
  expect((await held(elsewhere)).plan.blobRefs).toEqual({});
  await elsewhere.keyboard.press('Control+z');
  await expect.poll(async () => Object.keys((await held(elsewhere)).plan.blobRefs).length).toBe(1);
  await elsewhere.context().close();
});

test('a picture whose bytes are not here says so, and so does the file', async ({ page }) => {
  await openFlat(page);
  const hand = await handOf(page, 'touch');
  await openPart(page, hand, 'Photos');
  await choosePhoto(page, hand, 'cupboard under the stairs.png', '#993333');
  const file = JSON.parse(await savedFile(page)) as { blobs: Record<string, string>; plan: { id: string } };
  expect(Object.keys(file.blobs)).toHaveLength(1);
  const text = JSON.stringify({ ...file, blobs: {}, plan: { ...file.plan, id: 'another' } });

  const context = await page.context().browser()?.newContext({ serviceWorkers: 'block', hasTouch: true });
  if (!context) throw new Error('no browser');
  const elsewhere = await context.newPage();
  await openEmpty(elsewhere);
  await openText(elsewhere, text);
  await expect.poll(async () => Object.keys((await held(elsewhere)).plan.blobRefs).length).toBe(1);
  const there = await handOf(elsewhere, 'touch');
  await openPart(elsewhere, there, 'Photos');
  await there.press(panel(elsewhere).getByRole('button', { name: /cupboard under the stairs/ }));
  await expect(panel(elsewhere).getByText(/^The picture itself is not on this device/)).toBeVisible();
  await savedFile(elsewhere);
  await expect(
    elsewhere.getByText('1 picture of this job is not on this device, so the file has none of it.').first(),
  ).toBeVisible();
  await context.close();
});
