import { gzipSync } from 'node:zlib';
import { expect, test } from './hands/kickset.ts';

// Script that has to arrive before the canvas can be drawn on, packed as a server packs it. The engine's own thread is
// fetched beside it, and no line waits for it; what is asked for after the first line was painted is not counted.
const MOST_KB = 350;

test('the script before the first line can be drawn stays small', async ({ page }) => {
  const scripts = new Map<string, Promise<Buffer>>();
  page.on('response', (response) => {
    const ofEngine = response.url().includes('.worker-');
    if (response.request().resourceType() === 'script' && !ofEngine) scripts.set(response.url(), response.body());
  });
  await page.goto('/');
  await expect(page.locator('canvas').first()).toBeVisible();
  await page.waitForFunction(() => performance.getEntriesByName('first line').length > 0);
  const before = await page.evaluate(() => {
    const line = performance.getEntriesByName('first line')[0]?.startTime ?? Number.POSITIVE_INFINITY;
    return performance.getEntriesByType('resource').flatMap((e) => (e.startTime < line ? [e.name] : []));
  });
  const counted = [...scripts].filter(([url]) => before.includes(url));
  const sizes = await Promise.all(counted.map(async ([, body]) => gzipSync(await body).length));
  const kb = sizes.reduce((sum, size) => sum + size, 0) / 1024;
  expect(counted.length).toBeGreaterThan(0);
  expect(kb).toBeLessThanOrEqual(MOST_KB);
});
