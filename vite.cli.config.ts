import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

// The command, as one file for Node: a single file starts fast and is never half replaced by a newer build.
export default defineConfig({
  root: here('.'),
  publicDir: false,
  // One build of the PDF writer everywhere, so that terminal and window write the same bytes.
  resolve: { alias: { pdfkit: here('./node_modules/pdfkit/js/pdfkit.browser.mjs') } },
  build: {
    ssr: here('./src/views/cli/main.ts'),
    outDir: here('./dist/cli'),
    emptyOutDir: true,
    target: 'node20',
    minify: false,
    rolldownOptions: { output: { entryFileNames: 'hatchwright.mjs', codeSplitting: false } },
  },
  // Bundled, these would look for their binaries and font files beside the bundle: they stay packages.
  ssr: { noExternal: true, external: ['manifold-3d', 'highs', 'dejavu-fonts-ttf'] },
});
