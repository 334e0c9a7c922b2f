import { defineConfig } from 'vitest/config';

// Real Chromium, one file after another: software drawing would starve a second page.
export default defineConfig({
  test: {
    include: ['tests/browser/**/*.browser.test.ts'],
    environment: 'node',
    fileParallelism: false,
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
