import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { createServer } from 'node:net';
import { networkInterfaces, tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { TOP } from '../../../src/views/ground.mjs';
import { fileFor, serveFolder, typeOf } from '../../../src/views/serve/server.mjs';

type Served = NonNullable<Awaited<ReturnType<typeof serveFolder>>>;

const top = mkdtempSync(join(tmpdir(), 'hatchwright-serve-'));
const root = join(top, 'site');
let served: Served;

const serve = async (ports: readonly number[]): Promise<Served> => {
  const server = await serveFolder({ root, ports });
  if (!server) throw new Error('no port');
  return server;
};

beforeAll(async () => {
  mkdirSync(join(root, 'assets'), { recursive: true });
  writeFileSync(join(root, 'index.html'), '<p>here</p>');
  writeFileSync(join(root, 'assets/engine.wasm'), 'wasm');
  writeFileSync(join(root, 'assets/with space.json'), '{}');
  writeFileSync(join(root, '.stamp'), 'hidden');
  writeFileSync(join(top, 'secret.txt'), 'secret');
  mkdirSync(join(top, 'site-beside'));
  writeFileSync(join(top, 'site-beside/secret.txt'), 'secret');
  served = await serve([0]);
});

afterAll(async () => {
  await served.close();
  rmSync(top, { recursive: true });
});

/** A request as it stands on the wire: fetch would tidy the path. */
const ask = (path: string, method = 'GET'): Promise<{ status: number; type: string; text: string }> =>
  new Promise((settle, fail) => {
    const asked = request({ host: '127.0.0.1', port: served.port, path, method }, (response) => {
      let text = '';
      response.on('data', (data: Buffer) => {
        text += data.toString();
      });
      const type = response.headers['content-type'] ?? '';
      response.on('end', () => settle({ status: response.statusCode ?? 0, type, text }));
    });
    asked.on('error', fail);
    asked.end();
  });

describe('what is served', () => {
  test.each([
    ['/', 200, 'text/html; charset=utf-8', '<p>here</p>'],
    ['/?from=x', 200, 'text/html; charset=utf-8', '<p>here</p>'],
    ['/index.html', 200, 'text/html; charset=utf-8', '<p>here</p>'],
    ['/assets/engine.wasm', 200, 'application/wasm', 'wasm'],
    ['/assets/with%20space.json', 200, 'application/json; charset=utf-8', '{}'],
  ])('%s', async (path, status, type, text) => {
    expect(await ask(path)).toEqual({ status, type, text });
  });

  test.each([
    '/absent',
    '/assets',
    '/assets/',
    '/.stamp',
    '/../secret.txt',
    '/assets/../../secret.txt',
    '/%2e%2e/secret.txt',
    '/..%2fsecret.txt',
    '/..%5csecret.txt',
    '/../site-beside/secret.txt',
    '//secret.txt',
    '/%00',
    '/%',
  ])('not %s', async (path) => {
    const { status, text } = await ask(path);
    expect(status).toBe(404);
    expect(text).not.toContain('secret');
  });

  test('only reading', async () => {
    expect((await ask('/', 'POST')).status).toBe(405);
    expect(await ask('/', 'HEAD')).toEqual({ status: 200, type: 'text/html; charset=utf-8', text: '' });
  });

  test.each([
    ['a.js', 'text/javascript; charset=utf-8'],
    ['a.woff2', 'font/woff2'],
    ['a.WASM', 'application/wasm'],
    ['a.unknown', 'application/octet-stream'],
  ])('the type of %s', (path, type) => {
    expect(typeOf(path)).toBe(type);
  });

  test('a path never leaves the folder', () => {
    expect(fileFor(root, '/a/../b')).toBeNull();
    expect(fileFor(root, 'no-slash')).toBeNull();
    expect(fileFor(root, '/a/b.js')).toBe(join(root, 'a/b.js'));
  });
});

describe('where it is served', () => {
  test('the next port when the first is taken, none when all are', async () => {
    const second = await serve([served.port, 0]);
    expect(second.port).not.toBe(served.port);
    expect(await serveFolder({ root, ports: [served.port] })).toBeNull();
    await second.close();
  });

  test('this machine only', async () => {
    const outside = Object.values(networkInterfaces())
      .flat()
      .find((one) => one && !one.internal && one.family === 'IPv4')?.address;
    // Another program may take the same port on an outside address exactly when the server does not listen there.
    const host = outside ?? '127.0.0.2';
    const taken = await new Promise<boolean>((settle) => {
      const other = createServer()
        .once('error', () => settle(true))
        .listen(served.port, host, () => other.close(() => settle(false)));
    });
    expect(taken).toBe(false);
  });
});

describe('npm start', () => {
  const start = (args: readonly string[], env: NodeJS.ProcessEnv = {}): Promise<{ code: number | null; err: string }> =>
    new Promise((settle) => {
      const child = spawn(process.execPath, [join(TOP, 'src/views/serve/start.mjs'), ...args], {
        env: { ...process.env, ...env },
      });
      let err = '';
      child.stderr.on('data', (data: Buffer) => {
        err += data.toString();
      });
      child.on('close', (code) => settle({ code, err }));
    });

  test('refuses what is no port, in words', async () => {
    const expected = { code: 1, err: '"door" is not a port: a whole number from 0 to 65535 is expected.\n' };
    expect(await start(['--port', 'door'])).toEqual(expected);
    expect(await start([], { PORT: 'door' })).toEqual(expected);
    expect((await start(['--port=70000'])).err).toContain('"70000" is not a port');
  });

  test('refuses an unknown option and shows what there is', async () => {
    const { code, err } = await start(['--opne']);
    expect(code).toBe(1);
    expect(err).toContain('--opne');
    expect(err).toContain('--no-open');
  });
});
