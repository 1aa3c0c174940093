import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';
import { findBrowser } from './find-browser.mjs';

const top = dirname(dirname(fileURLToPath(import.meta.url)));
const port = Number(process.env.E2E_PORT ?? 4179);
/** A page that is served already, built with KICKSET_TEST=1; else one is built and served for this run. */
const served = process.env.E2E_ADDRESS;
const address = served ?? `http://127.0.0.1:${port}`;

const inWorker = process.env.TEST_WORKER_INDEX !== undefined;
const found = await findBrowser();
if (!inWorker) console.log(`Browser: ${found.version}, from ${found.from} (${found.executablePath})`);

const inherited = Object.entries(process.env).filter((entry): entry is [string, string] => entry[1] !== undefined);

export default defineConfig({
  testDir: '.',
  testMatch: '**/*.spec.ts',
  // Times are only worth reading on a machine that does nothing else, so they are taken when asked for.
  testIgnore: '**/perf/**',
  outputDir: '../test-results',
  reporter: 'list',
  workers: 2,
  retries: 0,
  forbidOnly: true,
  timeout: 45_000,
  expect: { timeout: 5_000 },
  use: {
    baseURL: address,
    locale: 'en-GB',
    timezoneId: 'Europe/London',
    hasTouch: true,
    actionTimeout: 5_000,
    // Workers and pages under test keep the policy that users get.
    bypassCSP: false,
    serviceWorkers: 'block',
    screenshot: 'only-on-failure',
    launchOptions: {
      executablePath: found.executablePath,
      args: [...found.args],
      env: { ...Object.fromEntries(inherited), ...found.env },
    },
  },
  projects: [
    {
      name: 'tablet',
      use: { viewport: { width: 1180, height: 820 } },
      testIgnore: ['**/perf/**', '**/*.phone.spec.ts'],
    },
    // Counts of draws, widths of letters and what a tool does with a pointer do not differ with the size of the page.
    {
      name: 'phone',
      use: { viewport: { width: 390, height: 844 } },
      testIgnore: [
        '**/perf/**',
        '**/*.tablet.spec.ts',
        '**/counts.spec.ts',
        '**/editing.spec.ts',
        '**/font-widths.spec.ts',
      ],
    },
  ],
  ...(served === undefined
    ? {
        webServer: {
          command: `npx vite build --logLevel warn && npx vite preview --host 127.0.0.1 --port ${port} --strictPort`,
          cwd: top,
          env: { KICKSET_TEST: '1' },
          url: address,
          reuseExistingServer: false,
          timeout: 120_000,
        },
      }
    : {}),
});
