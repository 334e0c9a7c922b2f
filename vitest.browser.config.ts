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
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
