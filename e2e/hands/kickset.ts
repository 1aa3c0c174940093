import { readFileSync } from 'node:fs';
import { test as base, expect, type Page } from '@playwright/test';
import { answer, held } from './model.ts';

export { expect };

const demo = (name: string): string =>
  readFileSync(new URL(`../../demo-plans/${name}.plan.json`, import.meta.url), 'utf8');
export const FLAT = demo('flat');
export const HOUSE = demo('two-storey');

/** Said by the test runner, not by the page: service workers are let in only where they are what is tested. */
const OWN = 'Service Worker registration blocked by Playwright';

/** Hears everything a page complains of. */
function listenTo(page: Page, complaints: string[]): void {
  page.on('console', (message) => {
    const said = message.text();
    if ((message.type() === 'error' || message.type() === 'warning') && said !== OWN) complaints.push(said);
  });
  page.on('pageerror', (error) => complaints.push(String(error)));
}

/** Every test fails where a page of it said an error or a warning on the console. */
export const test = base.extend<{ quiet: undefined }>({
  quiet: [
    async ({ context }, use) => {
      const complaints: string[] = [];
      context.on('page', (page) => listenTo(page, complaints));
      await use(undefined);
      expect(complaints, 'what the page complained of').toEqual([]);
    },
    { auto: true },
  ],
});

export const isPhone = (page: Page): boolean => (page.viewportSize()?.width ?? 0) < 700;

export async function openEmpty(page: Page): Promise<void> {
  await page.goto('./');
  await expect(page.getByRole('heading', { name: 'An empty page answers too.' })).toBeVisible();
  await answer(page);
}

/** Opens the text of a plan the way anybody does: from the device. */
export async function openText(page: Page, text: string, name = 'job.plan.json'): Promise<void> {
  const asked = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open a file' }).click();
  const chooser = await asked;
  await chooser.setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
}

/** The demo flat, answered. */
export async function openFlat(page: Page): Promise<void> {
  await openEmpty(page);
  await page.getByRole('button', { name: 'open the demo flat' }).click();
  await expect(page.getByRole('button', { name: /First-floor flat/ })).toBeVisible();
  await answer(page);
  await fitted(page);
}

/** The drawing has been brought into its pane: until then nothing lies where it will lie. */
async function fitted(page: Page): Promise<void> {
  await expect.poll(async () => (await held(page)).camera.centre).not.toEqual([0, 0]);
}
