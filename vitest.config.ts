import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

// The time limit is for what hangs, not a measure of speed: a busy machine is several times slower than a quiet one.
export default defineConfig({
  // One build of the PDF writer everywhere, so that terminal and window write the same bytes.
  resolve: {
    alias: { pdfkit: fileURLToPath(new URL('./node_modules/pdfkit/js/pdfkit.browser.mjs', import.meta.url)) },
  },
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/browser/**'],
    environment: 'node',
    testTimeout: 300_000,
    hookTimeout: 120_000,
  },
});
