import { defineConfig } from 'vitest/config';

// The time limit is for what hangs, not a measure of speed: a busy machine is several times slower than a quiet one.
export default defineConfig({
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/browser/**'],
    environment: 'node',
    testTimeout: 30_000,
    hookTimeout: 30_000,
  },
});
