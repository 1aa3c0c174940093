import { bench, tapPlan } from './hands/drawing.ts';
import { handOf } from './hands/hand.ts';
import { expect, openEmpty, openFlat, test } from './hands/kickset.ts';
import { answer, held, stepsKept } from './hands/model.ts';

test.use({ serviceWorkers: 'allow' });

test('without a signal the tool opens, draws, answers and keeps', async ({ page, context }) => {
  const foreign: string[] = [];
  context.on('request', (request) => {
    if (!/^(http:\/\/127\.0\.0\.1|data:|blob:)/.test(request.url())) foreign.push(request.url());
  });
  await openEmpty(page);
  await page.evaluate(() => navigator.serviceWorker.ready.then((r) => r.active?.state));
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);

  await context.setOffline(true);
  await page.reload();
  await openFlat(page);
  const report = await answer(page);
  expect(report.counts.stop).toBe(1);
  await expect(page.getByRole('button', { name: /^Findings: 1 stop/ })).toBeVisible();

  const hand = await handOf(page, 'touch');
  await bench(page, 'Run').tap();
  await tapPlan(page, hand, [1000, 1000], [3000, 1000]);
  await expect.poll(() => stepsKept(page)).toBeGreaterThanOrEqual(1);
  const drawn = await held(page);
  await page.reload();
  await answer(page);
  expect((await held(page)).plan).toEqual(drawn.plan);
  await page.keyboard.press('?');
  await expect(page.getByRole('dialog', { name: 'Help' })).toBeVisible();
  expect(foreign).toEqual([]);
});
