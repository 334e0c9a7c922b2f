import { createHash } from 'node:crypto';
import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin, type UserConfig } from 'vite';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

const sourceHash = (text: string): string => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

/** A script in a page ends at the first closing tag, wherever that stands in it. */
const closed = (code: string): string => code.replaceAll(/<\/(script)/gi, '<\\/$1').replaceAll('<!--', '<\\!--');

/**
 * One file: script and style go into the page, and the page says by their hashes that nothing else may run, be loaded
 * or be sent. What is put into the page later is data, whatever it holds.
 */
const oneFile = (): Plugin => ({
  name: 'one-file',
  enforce: 'post',
  generateBundle(_, bundle) {
    const files = Object.values(bundle);
    const page = files.find((file) => file.fileName.endsWith('.html'));
    if (page?.type !== 'asset') throw new Error('one-file: no page was built');
    const chunks = files.flatMap((file) => (file.type === 'chunk' ? [file] : []));
    const styles = files.flatMap((file) => (file.type === 'asset' && file.fileName.endsWith('.css') ? [file] : []));
    if (chunks.length !== 1 || styles.length > 1 || files.length !== chunks.length + styles.length + 1)
      throw new Error(`one-file: not one script and one style but ${files.map(({ fileName }) => fileName).join(', ')}`);
    const code = closed(chunks[0]?.code ?? '');
    const style = String(styles[0]?.source ?? '');
    const policy = [
      "default-src 'none'",
      `script-src ${sourceHash(code)}`,
      `style-src ${sourceHash(style)}`,
      'img-src data: blob:',
      'font-src data:',
      "base-uri 'none'",
      "form-action 'none'",
    ].join('; ');
    page.source = String(page.source)
      .replace(/\s*<script type="module"[^>]*><\/script>/, '')
      .replace(/\s*<link rel="(?:stylesheet|modulepreload)"[^>]*>/g, '')
      .replace('<meta charset="utf-8" />', (charset) =>
        [charset, `<meta http-equiv="Content-Security-Policy" content="${policy}" />`].join('\n    '),
      )
      .replace('</head>', () => `<style>${style}</style>\n  </head>`)
      .replace('</body>', () => `<script type="module">${code}</script>\n  </body>`);
    for (const { fileName } of [...chunks, ...styles]) delete bundle[fileName];
  },
});

/** The page of the review copy, as one file that data is put into. */
export const reviewBuild: UserConfig = {
  root: here('./src/views/review'),
  base: './',
  publicDir: false,
  plugins: [react(), oneFile()],
  build: {
    outDir: here('./dist/review'),
    emptyOutDir: true,
    target: 'es2023',
    assetsInlineLimit: 1_000_000,
    cssCodeSplit: false,
    modulePreload: false,
    chunkSizeWarningLimit: 4000,
    rolldownOptions: { output: { codeSplitting: false } },
  },
};

export default defineConfig(reviewBuild);
