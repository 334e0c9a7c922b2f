import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

// Real Chromium, one file after another: software drawing would starve a second page.
export default defineConfig({
  // One build of the PDF writer everywhere, so that terminal and window write the same bytes.
  resolve: {
    alias: { pdfkit: fileURLToPath(new URL('./node_modules/pdfkit/js/pdfkit.browser.mjs', import.meta.url)) },
  },
  test: {
    include: ['tests/browser/**/*.browser.test.ts'],
    environment: 'node',
    fileParallelism: false,
    // A test waits for many things, each as long as PATIENCE_MS of tests/browser/harness.ts.
    testTimeout: 400_000,
    hookTimeout: 200_000,
    expect: { poll: { timeout: 90_000 } },
    // A machine that others work on can starve a browser for a minute: a test counts as failed when it fails twice.
    retry: 1,
  },
});
