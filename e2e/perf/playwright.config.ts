import { defineConfig } from '@playwright/test';
import base from '../playwright.config.ts';

const tablet = base.projects?.find((p) => p.name === 'tablet');

/** Times, taken when asked for: `npm run bench:view`. */
export default defineConfig({
  ...base,
  testDir: '.',
  testIgnore: [],
  outputDir: '../../test-results/perf',
  timeout: 180_000,
  projects: tablet ? [{ ...tablet, testIgnore: [] }] : [],
});
