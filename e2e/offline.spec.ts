import type { BrowserContext, Page } from '@playwright/test';
import { bench, openChapter, panel, pullSheet, tapPlan } from './hands/drawing.ts';
import { handOf } from './hands/hand.ts';
import { expect, openEmpty, openFlat, test } from './hands/kickset.ts';
import { answer, held, stepsKept } from './hands/model.ts';

test.use({ serviceWorkers: 'allow' });
test.describe.configure({ timeout: 120_000 });

/** Requests that leave the machine. */
function leaving(context: BrowserContext): string[] {
  const found: string[] = [];
  context.on('request', (request) => {
    if (!/^(http:\/\/127\.0\.0\.1|data:|blob:)/.test(request.url())) found.push(request.url());
  });
  return found;
}

async function controlled(page: Page): Promise<void> {
  await page.evaluate(() => navigator.serviceWorker.ready.then((r) => r.active?.state));
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
}

test('without a signal the tool opens, draws, answers, keeps and prints', async ({ page, context }) => {
  const foreign = leaving(context);
  await openEmpty(page);
  await controlled(page);

  await context.setOffline(true);
  await page.reload();
  await openFlat(page);
  const report = await answer(page);
  expect(report.counts.stop).toBeGreaterThanOrEqual(1);
  await expect(page.getByRole('button', { name: new RegExp(`^Findings: ${report.counts.stop} stop`) })).toBeVisible();

  const hand = await handOf(page, 'touch');
  await bench(page, 'Run').tap();
  await tapPlan(page, hand, [1000, 1000], [3000, 1000]);
  await expect.poll(() => stepsKept(page)).toBeGreaterThanOrEqual(1);
  const drawn = await held(page);
  await page.reload();
  await answer(page);
  expect((await held(page)).plan).toEqual(drawn.plan);

  await page.keyboard.press('Control+p');
  const print = page.getByRole('dialog', { name: 'Print' });
  await expect(print.locator('.print-sheet > svg').first()).toBeVisible();
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    print.getByRole('button', { name: 'Save as PDF' }).click(),
  ]);
  expect(file.suggestedFilename()).toBe('first-floor-flat.pdf');
  await page.keyboard.press('Escape');
  await page.keyboard.press('?');
  await expect(page.getByRole('dialog', { name: 'Help' })).toBeVisible();
  expect(foreign).toEqual([]);
});

declare global {
  interface Window {
    violations?: string[];
  }
}

test('a tour of every screen asks no other host and breaks no line of the policy', async ({ page, context }) => {
  const foreign = leaving(context);
  await context.addInitScript(() => {
    window.violations = [];
    document.addEventListener('securitypolicyviolation', (e) => {
      window.violations?.push(`${e.violatedDirective}: ${e.blockedURI} ${e.sourceFile}`);
    });
  });
  const hand = await handOf(page, 'mouse');
  await openEmpty(page);
  const policy = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content');
  expect(policy).toContain("default-src 'none'");
  expect(policy).not.toMatch(/unsafe|\*|https?:/);

  await page.getByRole('button', { name: 'Say a run' }).click();
  await page.getByRole('region', { name: 'Run by words' }).getByRole('button', { name: 'Gas', exact: true }).click();
  await page.goto('./');
  await openFlat(page);
  const { sections } = await answer(page);
  for (const title of [...sections.map((s) => s.title), 'Findings', 'List', 'Runs', 'Things']) {
    await openChapter(page, hand, title);
  }
  await openChapter(page, hand, 'Findings');
  await panel(page).getByRole('button').filter({ hasText: 'Cold to the boiler 22 meets' }).click();
  await pullSheet(page, hand, 'low');
  await page.evaluate(() => window.__kickset?.editor?.foldUp({ wall: 'BN', side: 'right' }));
  await expect(page.locator('[data-pane="face"]')).toBeVisible();
  for (const name of ['Jobs', 'Help', 'Print', 'My things']) {
    await hand.press(bench(page, 'More'));
    const more = page.getByRole('dialog', { name: 'More' });
    await hand.press(more.getByRole('button', { name, exact: true }));
    await expect(page.getByRole('dialog', { name })).toBeVisible();
    if (name === 'Print') {
      await expect(page.locator('.print-sheet > svg').first()).toBeVisible();
      await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save as PDF' }).click()]);
      await page.pdf({ preferCSSPageSize: true });
    }
    await page.keyboard.press('Escape');
    await expect(page.getByRole('dialog', { name })).toBeHidden();
  }
  expect(await page.evaluate(() => window.violations)).toEqual([]);
  expect(foreign).toEqual([]);
});

test('what a device needs to install it is there, with our own mark', async ({ page }) => {
  await openEmpty(page);
  const href = await page.locator('link[rel="manifest"]').getAttribute('href');
  const manifest = await page.evaluate(async (at) => (await fetch(at)).json(), href ?? '');
  expect(manifest).toMatchObject({ name: 'Kickset', display: 'standalone', start_url: './', scope: './' });
  const icons = manifest.icons as { src: string; sizes: string; purpose: string }[];
  expect(icons.map((i) => i.purpose)).toContain('maskable');
  const wide = await page.evaluate(
    (list) =>
      Promise.all(
        list.map(async ({ src }) => {
          const image = new Image();
          image.src = src;
          await image.decode();
          return image.naturalWidth;
        }),
      ),
    icons,
  );
  icons.forEach((icon, i) => {
    if (icon.sizes !== 'any') expect(`${wide[i]}x${wide[i]}`).toBe(icon.sizes);
  });
});
