import { expectNoViolations, tooSmall } from './hands/a11y.ts';
import { bench } from './hands/drawing.ts';
import { handOf } from './hands/hand.ts';
import { expect, openEmpty, openFlat, test } from './hands/kickset.ts';

const LEAST_PX = 44;

test('a sum is worked out on the empty page, with its working and its sources', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openEmpty(page);
  await hand.press(page.getByRole('button', { name: /^Sums without a drawing/ }));
  const sums = page.getByRole('dialog', { name: 'Sums' });
  await hand.press(sums.getByRole('button', { name: 'Where a joist may be cut, and how much' }));
  await expect(sums.getByText(/^Still wanted: cut, clear span/)).toBeVisible();
  await hand.press(sums.getByRole('radio', { name: 'hole', exact: true }));
  await sums.getByLabel('Clear span between bearings').fill('3000');
  await sums.getByLabel('Depth of the joist').fill('20');
  await expect(sums.getByText(/^Depth is at least 75 mm, not 20\.$/)).toBeVisible();
  await sums.getByLabel('Depth of the joist').fill('200');
  await expect(sums.locator('.sum-large')).toHaveText('50.0 mm');
  await expect(sums.getByText('750', { exact: false }).first()).toBeVisible();
  expect(await tooSmall(page, LEAST_PX)).toEqual([]);
  await expectNoViolations(page, 'a sum', true);
  // What was told waits there.
  await hand.press(sums.getByRole('button', { name: 'All sums' }));
  await expectNoViolations(page, 'all sums', false);
  await hand.press(sums.getByRole('button', { name: 'Where a joist may be cut, and how much' }));
  await expect(sums.locator('.sum-large')).toHaveText('50.0 mm');
});

test('every sum answers its own worked example from the keys', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openFlat(page);
  await hand.press(bench(page, 'More'));
  await hand.press(page.getByRole('button', { name: 'Sums', exact: true }));
  const sums = page.getByRole('dialog', { name: 'Sums' });
  await expect(sums.locator('[data-sum]').first()).toBeVisible();
  const ids = await sums.locator('[data-sum]').evaluateAll((keys) => keys.map((k) => k.getAttribute('data-sum')));
  expect(ids.length).toBeGreaterThan(15);
  for (const id of ids) {
    await sums.locator(`[data-sum="${id}"]`).click();
    await sums.getByRole('button', { name: 'A worked example' }).click();
    await expect(sums.locator('.sum-large'), `${id}`).toHaveText(/\d/);
    await sums.getByRole('button', { name: 'Empty it' }).click();
    await expect(sums.locator('.sum-large'), `${id}`).toBeHidden();
    await sums.getByRole('button', { name: 'All sums' }).click();
  }
});
