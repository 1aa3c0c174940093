import { gzipSync } from 'node:zlib';
import { expect, test } from './hands/kickset.ts';

// Script that has to arrive before the canvas can be drawn on, packed as a server packs it. The engine's own thread is
// fetched beside it, and no line waits for it.
const MOST_KB = 350;

test('the script before the first line can be drawn stays small', async ({ page }) => {
  const scripts = new Map<string, Promise<Buffer>>();
  page.on('response', (response) => {
    const ofEngine = response.url().includes('.worker-');
    if (response.request().resourceType() === 'script' && !ofEngine) scripts.set(response.url(), response.body());
  });
  await page.goto('/');
  await expect(page.locator('canvas').first()).toBeVisible();
  const sizes = await Promise.all([...scripts.values()].map(async (body) => gzipSync(await body).length));
  const kb = sizes.reduce((sum, size) => sum + size, 0) / 1024;
  expect(scripts.size).toBeGreaterThan(0);
  expect(kb).toBeLessThanOrEqual(MOST_KB);
});
