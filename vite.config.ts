import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

// The editor. Relative addresses, so that the built folder works wherever it is put.
export default defineConfig({
  root: here('./src/views/editor'),
  base: './',
  publicDir: false,
  // One build of the PDF writer everywhere, so that terminal and window write the same bytes.
  resolve: { alias: { pdfkit: here('./node_modules/pdfkit/js/pdfkit.browser.mjs') } },
  cacheDir: here('./node_modules/.vite'),
  plugins: [react()],
  worker: { format: 'es' },
  // Its loader looks for the .wasm file beside itself, which the development server's bundling would part it from.
  optimizeDeps: { exclude: ['manifold-3d'] },
  server: { host: '127.0.0.1', fs: { allow: [here('.')] } },
  build: {
    outDir: here('./dist/editor'),
    emptyOutDir: true,
    target: 'es2023',
    chunkSizeWarningLimit: 2000,
  },
});
