import { readFileSync } from 'node:fs';
import type { Download, Page } from '@playwright/test';
import { bench, openChapter, panel } from './hands/drawing.ts';
import { handOf } from './hands/hand.ts';
import { expect, FLAT, openEmpty, openFlat, openText, test } from './hands/kickset.ts';
import { answer, held } from './hands/model.ts';

type Envelope = { version: number; minor: number; plan: Record<string, Record<string, Record<string, unknown>>> };

/** The demo flat, changed. */
function flatWith(change: (file: Envelope) => void): string {
  const file = JSON.parse(FLAT) as Envelope;
  change(file);
  return JSON.stringify(file);
}

async function openJobs(page: Page) {
  await page.getByRole('button', { name: /All jobs$/ }).click();
  const jobs = page.getByRole('dialog', { name: 'Jobs' });
  await expect(jobs).toBeVisible();
  return jobs;
}

async function saved(page: Page, press: () => Promise<void>): Promise<{ name: string; text: string }> {
  const coming: Promise<Download> = page.waitForEvent('download');
  await press();
  const download = await coming;
  return { name: download.suggestedFilename(), text: readFileSync(await download.path(), 'utf8') };
}

test('saved to a file and opened from it, the plan is the same', async ({ page, browser }) => {
  await openFlat(page);
  const jobs = await openJobs(page);
  const file = await saved(page, () => jobs.getByRole('button', { name: 'Save to file' }).click());
  expect(file.name).toBe('first-floor-flat.plan.json');
  const { plan } = await held(page);
  expect((JSON.parse(file.text) as { plan: unknown }).plan).toEqual(plan);
  expect(plan).toEqual((JSON.parse(FLAT) as { plan: unknown }).plan);

  // On another device.
  const elsewhere = await (await browser.newContext({ serviceWorkers: 'block' })).newPage();
  await openEmpty(elsewhere);
  await openText(elsewhere, file.text);
  await expect.poll(async () => (await held(elsewhere)).plan.id).toBe(plan.id);
  expect((await held(elsewhere)).plan).toEqual(plan);
  await elsewhere.context().close();
});

test('a file of a newer version is open to look at only', async ({ page }) => {
  await openEmpty(page);
  await openText(
    page,
    flatWith((file) => {
      file.version += 1;
    }),
  );
  const sentence = /this Kickset knows version 1\..*open to look at only/;
  await expect(page.getByRole('alert').filter({ hasText: sentence })).toBeVisible();
  await answer(page);
  const before = await held(page);
  expect(before.readOnly).toMatch(sentence);
  expect(Object.keys(before.plan.runs).length).toBeGreaterThan(5);
  await page.keyboard.press('s');
  await page.keyboard.press('Control+z');
  expect((await held(page)).plan).toEqual(before.plan);
  await page.reload();
  await expect(page.getByRole('heading', { name: 'An empty page answers too.' })).toBeVisible();
});

test('a newer minor keeps what it added and stays editable', async ({ page }) => {
  await openEmpty(page);
  const text = flatWith((file) => {
    file.minor += 1;
    for (const run of Object.values(file.plan.runs ?? {})) run.mood = 'calm';
  });
  await openText(page, text);
  await expect(page.getByRole('alert').filter({ hasText: 'Saved by a newer Kickset.' })).toBeVisible();
  await answer(page);
  expect((await held(page)).readOnly).toBeNull();
  const jobs = await openJobs(page);
  const file = await saved(page, () => jobs.getByRole('button', { name: 'Save to file' }).click());
  const kept = (JSON.parse(file.text) as Envelope).plan.runs ?? {};
  expect(Object.values(kept).every((run) => run.mood === 'calm')).toBe(true);
});

test('a broken file says what, where and why, gives what could be read, and spares the job here', async ({ page }) => {
  await openFlat(page);
  const mine = await held(page);
  const jobs = await openJobs(page);
  const coming = page.waitForEvent('filechooser');
  await jobs.getByRole('button', { name: 'Open a file' }).click();
  const text = flatWith((file) => {
    const run = file.plan.runs?.['B-g2'];
    if (run) run.service = 7;
  });
  await (await coming).setFiles({ name: 'broken.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  const trouble = page.getByRole('alert').filter({ hasText: /One thing in this job cannot be read: run B-g2/ });
  await expect(trouble).toBeVisible();
  await expect(trouble).toContainText('field service');
  await expect(trouble).toContainText('What could be read is offered as a copy, without: run B-g2: left out');
  await expect(trouble).toContainText('The file itself is left as it is.');

  const copy = await held(page);
  expect(copy.plan.id).not.toBe(mine.plan.id);
  expect(copy.plan.runs['B-g2']).toBeUndefined();
  expect(Object.keys(copy.plan.walls)).toEqual(Object.keys(mine.plan.walls));
  await trouble.getByRole('button', { name: 'Close' }).click();
  await expect(trouble).toBeHidden();

  const both = (await openJobs(page)).getByRole('button', { name: /^First-floor flat/ });
  await expect(both).toHaveCount(2);
  await both.and(page.locator('[aria-current="false"]')).click();
  await expect.poll(async () => (await held(page)).plan.id).toBe(mine.plan.id);
  expect((await held(page)).plan).toEqual(mine.plan);
});

test('a file that is no job says so and changes nothing', async ({ page }) => {
  await openEmpty(page);
  const before = await held(page);
  await openText(page, '{"rooms": 3}', 'else.json');
  await expect(page.getByRole('alert').filter({ hasText: 'This file is not a Kickset job.' })).toBeVisible();
  await openText(page, 'hello', 'else.txt');
  await expect(page.getByRole('alert').filter({ hasText: /cannot be read as a job|not a Kickset job/ })).toBeVisible();
  expect(await held(page)).toEqual(before);
  await expect(bench(page, 'Undo')).toHaveAccessibleName('Undo: nothing');
});

test('the list as a sheet, as text on the clipboard, and the drawing as a picture', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await openFlat(page);
  const report = await answer(page);
  const tubes = report.lines.filter((l) => l.family === 'tube');
  expect(tubes.length).toBeGreaterThan(2);
  await openChapter(page, await handOf(page, 'mouse'), 'List');
  const csv = await saved(page, () => panel(page).getByRole('button', { name: 'Save as CSV' }).click());
  expect(csv.name).toBe('first-floor-flat-list.csv');
  const rows = csv.text.trim().split('\r\n');
  expect(rows.length).toBe(report.lines.length + 1);
  for (const tube of tubes) expect(csv.text).toContain(tube.name);

  await panel(page).getByRole('button', { name: 'Copy as text' }).click();
  await expect(panel(page).getByText('Copied.')).toBeVisible();
  const copied = await page.evaluate(() => navigator.clipboard.readText());
  expect(copied).toContain('First-floor flat');
  for (const tube of tubes) expect(copied).toContain(tube.name);

  const jobs = await openJobs(page);
  const svg = await saved(page, () => jobs.getByRole('button', { name: 'Drawing as SVG' }).click());
  expect(svg.name).toBe('first-floor-flat.svg');
  // On a page of its own: what the picture may do is not what the app may do.
  const blank = await context.newPage();
  const drawn = await blank.evaluate((text) => {
    const parsed = new DOMParser().parseFromString(text, 'image/svg+xml');
    return {
      wrong: parsed.querySelector('parsererror')?.textContent ?? null,
      root: parsed.documentElement.localName,
      words: parsed.documentElement.textContent,
    };
  }, svg.text);
  expect([drawn.wrong, drawn.root]).toEqual([null, 'svg']);
  for (const word of ['Kitchen', 'Lounge', 'G 28', 'S1']) expect(drawn.words).toContain(word);
});
