// Bundles the bench and runs it: run through a module loader, the hot loops would look up every constant by name.
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

/** @param {string} path */
const here = (path) => fileURLToPath(new URL(path, import.meta.url));

await build({
  configFile: false,
  logLevel: 'error',
  build: {
    ssr: here('./run.ts'),
    outDir: here('../../../dist/bench'),
    emptyOutDir: false,
    minify: false,
    target: 'node20',
    rolldownOptions: { output: { entryFileNames: 'cutting.mjs' } },
  },
  // The solver looks for its .wasm file beside itself.
  ssr: { noExternal: true, external: ['highs'] },
});
await import(here('../../../dist/bench/cutting.mjs'));
