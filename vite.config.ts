import { readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { build, defineConfig, type Plugin } from 'vite';
import { reviewBuild } from './vite.review.config.ts';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** The page of the review copy, built from its own sources. */
const builtReviewPage = async (): Promise<string> => {
  const made = await build({
    ...reviewBuild,
    configFile: false,
    logLevel: 'error',
    build: { ...reviewBuild.build, write: false },
  });
  const files = (Array.isArray(made) ? made : [made]).flatMap((each) => ('output' in each ? each.output : []));
  const page = files.find(({ fileName }) => fileName === 'index.html');
  if (page?.type !== 'asset') throw new Error('the page of the review copy was not built');
  return String(page.source);
};

/** Lays that page beside the editor, which fills it when a copy is saved. */
const withReviewPage = (): Plugin => ({
  name: 'review-page',
  async generateBundle() {
    this.emitFile({ type: 'asset', fileName: 'review-copy.html', source: await builtReviewPage() });
  },
  configureServer: (server) => {
    server.middlewares.use('/review-copy.html', (_, answer, next) => {
      builtReviewPage().then((page) => {
        answer.setHeader('Content-Type', 'text/html');
        answer.end(page);
      }, next);
    });
  },
});

const ASSETS = here('./assets/');

/**
 * The catalog and the house rules are data: the page fetches them as files, so that no engine compiles them as script.
 * The worker keeps them inside: while a module of it waited for a file, messages sent to it would be lost.
 */
const withDataAsFiles = (): Plugin => ({
  name: 'data-as-files',
  apply: 'build',
  enforce: 'pre',
  async load(id) {
    if (!id.startsWith(ASSETS) || !id.endsWith('.json')) return null;
    const source = JSON.stringify(JSON.parse(await readFile(id, 'utf8')));
    const file = this.emitFile({ type: 'asset', name: basename(id), source });
    return {
      code: `export default await (await fetch(import.meta.ROLLUP_FILE_URL_${file})).json();`,
      moduleType: 'js',
    };
  },
  // Asked for with the page: the modules wait for them one after another.
  transformIndexHtml: {
    order: 'post',
    handler: (_, { bundle }) => {
      const files = Object.values(bundle ?? {});
      const entry = files.find((file) => file.type === 'chunk' && file.isEntry);
      const named = entry?.type === 'chunk' ? entry.code : '';
      return files
        .filter(
          ({ type, fileName }) => type === 'asset' && fileName.endsWith('.json') && named.includes(basename(fileName)),
        )
        .map(({ fileName }) => ({
          tag: 'link',
          injectTo: 'head' as const,
          attrs: { rel: 'preload', as: 'fetch', crossorigin: '', href: `./${fileName}` },
        }));
    },
  },
});

// The editor. Relative addresses, so that the built folder works wherever it is put.
export default defineConfig({
  root: here('./src/views/editor'),
  base: './',
  publicDir: false,
  // One build of the PDF writer everywhere, so that terminal and window write the same bytes.
  resolve: { alias: { pdfkit: here('./node_modules/pdfkit/js/pdfkit.browser.mjs') } },
  cacheDir: here('./node_modules/.vite'),
  plugins: [react(), withDataAsFiles(), withReviewPage()],
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
