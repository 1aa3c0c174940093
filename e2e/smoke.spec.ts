import { expect, test } from './hands/kickset.ts';

test('the app opens, says nothing on the console and asks nobody else for anything', async ({ page, baseURL }) => {
  const foreign: string[] = [];
  page.on('request', (request) => {
    if (!request.url().startsWith(`${baseURL}/`) && !/^(data|blob):/.test(request.url())) foreign.push(request.url());
  });

  const answer = await page.goto('/');
  expect(answer?.headers()['content-security-policy']).toContain("default-src 'none'");
  await expect(page).toHaveTitle(/Kickset/);
  await expect(page.locator('#root > *').first()).toBeVisible();
  await page.waitForLoadState('networkidle');

  expect(foreign).toEqual([]);
});
