import { createReadStream, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, resolve, sep } from 'node:path';

/** @type {Readonly<Record<string, string>>} */
const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.webp': 'image/webp',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.woff': 'font/woff',
  '.ttf': 'font/ttf',
  '.wasm': 'application/wasm',
  '.pdf': 'application/pdf',
  '.webmanifest': 'application/manifest+json',
};

/** @param {string} path */
export const typeOf = (path) => TYPES[extname(path).toLowerCase()] ?? 'application/octet-stream';

/**
 * The file a request path stands for, or null when it is malformed, leaves the folder or asks for a hidden file.
 * @param {string} root absolute path of the folder
 * @param {string} requested the path as it came over the wire, perhaps with a query
 * @returns {string | null}
 */
export const fileFor = (root, requested) => {
  let path;
  try {
    path = decodeURIComponent(requested.replace(/[?#].*$/s, ''));
  } catch {
    return null;
  }
  if (!path.startsWith('/') || path.includes('\0') || path.includes('\\')) return null;
  if (path.split('/').some((name) => name.startsWith('.'))) return null;
  const top = resolve(root);
  const file = resolve(top, `.${path}`);
  if (file !== top && !file.startsWith(top + sep)) return null;
  return path.endsWith('/') ? join(file, 'index.html') : file;
};

/**
 * @param {string} root
 * @param {import('node:http').IncomingMessage} request
 * @param {import('node:http').ServerResponse} response
 */
const answer = (root, request, response) => {
  /** @type {(status: number, text: string) => void} */
  const refuse = (status, text) => {
    response.writeHead(status, { 'Content-Type': 'text/plain; charset=utf-8' }).end(`${text}\n`);
  };
  if (request.method !== 'GET' && request.method !== 'HEAD') return refuse(405, 'Only reading is possible here.');
  const file = fileFor(root, request.url ?? '/');
  const stat = file ? statSync(file, { throwIfNoEntry: false }) : undefined;
  if (!file || !stat?.isFile()) return refuse(404, 'There is nothing at this address.');
  response.writeHead(200, {
    'Content-Type': typeOf(file),
    'Content-Length': stat.size,
    'Cache-Control': 'no-cache',
    'X-Content-Type-Options': 'nosniff',
  });
  if (request.method === 'HEAD') return response.end();
  createReadStream(file)
    .on('error', () => response.destroy())
    .pipe(response);
};

/** The only address listened on: this machine, nobody else on the network. */
const HOST = '127.0.0.1';

/**
 * @param {import('node:http').Server} server
 * @param {number} port
 * @returns {Promise<number | null>} the port, or null when it is taken or not allowed
 */
const listenOn = (server, port) =>
  new Promise((settle, fail) => {
    /** @param {NodeJS.ErrnoException} error */
    const onError = (error) => (error.code === 'EADDRINUSE' || error.code === 'EACCES' ? settle(null) : fail(error));
    server.once('error', onError);
    server.listen(port, HOST, () => {
      server.off('error', onError);
      const address = server.address();
      settle(typeof address === 'object' && address ? address.port : port);
    });
  });

/**
 * Serves a folder to this machine only, on the first free of the ports; port 0 means any free one.
 * @param {{ root: string, ports: readonly number[] }} what
 * @returns {Promise<{ port: number, address: string, close: () => Promise<void> } | null>} null when every port is taken
 */
export const serveFolder = async ({ root, ports }) => {
  const server = createServer((request, response) => answer(root, request, response));
  for (const wanted of ports) {
    const port = await listenOn(server, wanted);
    if (port === null) continue;
    const close = () =>
      new Promise((/** @type {(value: void) => void} */ done) => {
        server.close(() => done());
        server.closeAllConnections();
      });
    return { port, address: `http://${HOST}:${port}/`, close };
  }
  return null;
};
