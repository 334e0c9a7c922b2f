import { mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { BUILDS, TOP } from '../../src/views/ground.mjs';
import { serveFolder } from '../../src/views/serve/server.mjs';
import { NEEDS } from '../needs.mjs';

/** Drawing in software is asked for by name, so that every machine draws alike; nothing calls out to the network. */
const FLAGS: readonly string[] = [
  '--no-sandbox',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
  '--disable-quic',
];

/** Console lines of libraries that say nothing about the program. Each needs its reason. */
const EXPECTED_NOISE: readonly RegExp[] = [
  // @react-three/fiber 9.7 still makes the clock that three calls deprecated.
  /THREE\.Clock.*deprecated/,
];

/**
 * How long a page may take for one thing it was asked for (ms). Drawing in software on a busy machine takes its time;
 * what is tested is that it happens, not how fast.
 */
export const PATIENCE_MS = 90_000;

export interface Stand {
  /** Where the built editor is served. */
  readonly address: string;
  readonly browser: Browser;
  /** A page with storage of its own, as a person's first visit. */
  readonly freshPage: (options?: PageOptions) => Promise<WatchedPage>;
  /** A second page in the storage of another: the same person's second tab. */
  readonly pageBeside: (page: Page) => Promise<WatchedPage>;
  readonly close: () => Promise<void>;
}

export interface PageOptions {
  readonly width?: number;
  readonly height?: number;
  readonly touch?: boolean;
}

export interface WatchedPage {
  readonly page: Page;
  /** Errors, warnings and failed requests so far, without the expected noise. */
  readonly complaints: readonly string[];
}

const watched = (page: Page): WatchedPage => {
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(`error: ${error.message}`));
  page.on('requestfailed', (request) => {
    const why = request.failure()?.errorText ?? 'no reason given';
    // The page itself ends a download by leaving or by ending the worker that asked for it; what cannot be had fails otherwise.
    if (why !== 'net::ERR_ABORTED') complaints.push(`request failed, ${why}: ${request.url()}`);
  });
  page.on('response', (response) => {
    if (response.status() >= 400) complaints.push(`${response.status()}: ${response.url()}`);
  });
  page.on('console', (message) => {
    if (!['error', 'warning'].includes(message.type())) return;
    const text = message.text();
    if (!EXPECTED_NOISE.some((noise) => noise.test(text))) complaints.push(`${message.type()}: ${text}`);
  });
  return { page, complaints };
};

const newContext = async (
  browser: Browser,
  { width = 1280, height = 800, touch = false }: PageOptions,
): Promise<BrowserContext> => {
  const context = await browser.newContext({
    viewport: { width, height },
    hasTouch: touch,
    acceptDownloads: true,
    locale: 'en-US',
  });
  context.setDefaultTimeout(PATIENCE_MS);
  return context;
};

/** Serves the built editor on a free port and starts Chromium with storage of its own. Throws where either is missing. */
export const openStand = async (): Promise<Stand> => {
  const program = NEEDS.chromium.find();
  if (program === null) throw new Error(NEEDS.chromium.advice);
  const served = await serveFolder({ root: join(TOP, dirname(BUILDS.editor.main)), ports: [0] });
  if (!served) throw new Error('openStand: no free port');
  const browser = await chromium.launch({ executablePath: program, args: [...FLAGS] });
  const watchedIn = async (context: BrowserContext): Promise<WatchedPage> => watched(await context.newPage());
  return {
    address: served.address,
    browser,
    freshPage: async (options = {}) => watchedIn(await newContext(browser, options)),
    pageBeside: (page) => watchedIn(page.context()),
    close: async () => {
      await browser.close();
      await served.close();
    },
  };
};

/** Opens the editor on the page and waits until it has drawn something into its root. */
export const openApp = async (page: Page, address: string): Promise<void> => {
  await page.goto(address, { waitUntil: 'load' });
  await page.waitForFunction(() => (document.getElementById('root')?.childElementCount ?? 0) > 0);
};

/** Keeps a picture of the page under tests/browser/shots, which is not part of the repository; gives its path. */
export const shot = async (page: Page, name: string): Promise<string> => {
  const path = join(TOP, 'tests/browser/shots', `${name}.png`);
  mkdirSync(dirname(path), { recursive: true });
  await page.screenshot({ path });
  return path;
};
