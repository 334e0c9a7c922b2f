import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

// The command for Node: one file for what every verb needs, and a file for each verb that brings much with it, so that
// `inspect` does not wait for the writers of paper. Parts are named by their content: none is taken for a newer one.
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
    rolldownOptions: { output: { entryFileNames: 'hatchwright.mjs', chunkFileNames: '[name]-[hash].mjs' } },
  },
  // Bundled, these would look for their binaries and font files beside the bundle: they stay packages.
  ssr: { noExternal: true, external: ['manifold-3d', 'highs', 'dejavu-fonts-ttf'] },
});
