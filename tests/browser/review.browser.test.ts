import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  askQuestion,
  changeDocument,
  changeGear,
  type Design,
  printDesign,
  readDesign,
} from '../../src/design/index.ts';
import { mergeReply, placedRemarks, readReply, releaseRevision, revisionStamp } from '../../src/revision/index.ts';
import { run } from '../../src/views/cli/program.ts';
import { BUILDS, freshen, TOP } from '../../src/views/ground.mjs';
import { NEEDS } from '../needs.mjs';

// The copy as a chief has it: a file, a tablet, fingers, and no network.
const WAIT_MS = 30_000;
const folder = mkdtempSync(join(tmpdir(), 'hatchwright-copy-'));
let browser: Browser;

const demo = (): Design => {
  const read = readDesign(readFileSync(join(TOP, 'assets/designs/harrow-fell.json'), 'utf8'));
  if (!read.ok) throw new Error('the demo does not read');
  return read.value;
};

const copyOf = async (design: Design, name: string): Promise<string> => {
  const [from, to] = [join(folder, `${name}.json`), join(folder, `${name}.html`)];
  writeFileSync(from, printDesign(design));
  let said = '';
  const code = await run(['copy', from, '--to', to], {
    out: () => undefined,
    complain: (text) => {
      said += text;
    },
  });
  if (code === 2) throw new Error(said);
  return to;
};

interface Tablet {
  readonly page: Page;
  readonly context: BrowserContext;
  readonly complaints: readonly string[];
  readonly asked: readonly string[];
}

const openCopy = async (file: string): Promise<Tablet> => {
  const context = await browser.newContext({
    viewport: { width: 1024, height: 768 },
    hasTouch: true,
    offline: true,
    acceptDownloads: true,
    reducedMotion: 'reduce',
  });
  const page = await context.newPage();
  page.setDefaultTimeout(8_000);
  const complaints: string[] = [];
  const asked: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) complaints.push(message.text());
  });
  page.on('dialog', (dialog) => {
    complaints.push(`dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  page.on('request', (request) => {
    if (!/^(?:file|data|blob):/.test(request.url())) asked.push(request.url());
  });
  await page.goto(pathToFileURL(file).href);
  await page.getByRole('searchbox', { name: 'Find gear' }).waitFor();
  return { page, context, complaints, asked };
};

beforeAll(async () => {
  freshen(BUILDS.review);
  const program = NEEDS.chromium.find();
  if (program === null) throw new Error(NEEDS.chromium.advice);
  browser = await chromium.launch({
    executablePath: program,
    args: ['--no-sandbox', '--use-angle=swiftshader', '--enable-unsafe-swiftshader'],
  });
}, WAIT_MS);
afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true, force: true });
});

describe('a review copy on a tablet, from a file, without a network', () => {
  it(
    'shows where gear is and what to open, takes remarks, and its reply lands on the parts',
    async () => {
      const asking = askQuestion(demo(), { text: 'Is the tray at the right height?', about: null });
      const design = releaseRevision(asking.design, { who: 'R. Vane', why: 'for the chief', on: '2031-04-02' });
      const file = await copyOf(design, 'chief');
      expect(statSync(file).size).toBeLessThan(4_000_000);
      const { page, context, complaints, asked } = await openCopy(file);

      const card = page.getByRole('region', { name: 'What you tapped' });
      const five = ['Thermal camera', 'Burn kit', 'Defibrillator', 'Binoculars', 'Pry bar 24 in'];
      for (const name of five) {
        await page.getByRole('searchbox').fill(name);
        await page.locator('.gear').last().getByRole('button', { name }).first().tap();
        await card.getByRole('heading', { name }).waitFor();
        expect(await card.locator('.way').textContent()).toMatch(/^Open hatch.*take .*\. \d motions?$/s);
        // In order: after the first step nothing else has been opened.
        await card.getByRole('button', { name: 'open hatch' }).tap();
        expect(await card.locator('.steps [data-done="true"]').count()).toBe(1);
      }

      // Pry bar: a note and a swap with something found by name.
      await card.getByLabel('Say something about it').fill('Has to stand upright');
      await card.getByRole('button', { name: 'Add the note' }).tap();
      await card.getByRole('button', { name: 'Swap with…' }).tap();
      await page.getByRole('searchbox').fill('thermal');
      await page.locator('.gear').last().getByRole('button', { name: 'Thermal camera' }).tap();
      const tabs = page.getByRole('navigation');
      await tabs.getByRole('button', { name: /^Questions/ }).tap();
      await page.getByLabel('Is the tray at the right height?').fill('Yes');
      await tabs.getByRole('button', { name: /^Reply 2/ }).tap();
      await page.getByLabel('Your name').fill('Chief Orr');
      await page.getByLabel('I approve revision A as shown here').check();
      const saving = page.waitForEvent('download');
      await page.getByRole('button', { name: 'Save the reply' }).tap();
      const reply = readReply(readFileSync(await (await saving).path(), 'utf8'));
      // The text block says the same as the file.
      await page.getByRole('button', { name: 'As a text block' }).tap();
      const block = readReply(await page.getByLabel(/Copy all of this/).inputValue());
      expect(block).toEqual(reply);
      expect(complaints).toEqual([]);
      expect(asked).toEqual([]);
      await context.close();

      if (!reply.ok) throw new Error(JSON.stringify(reply.error));
      const merged = mergeReply(design, reply.value);
      const idOf = (name: string) => design.gear.find((gear) => gear.name === name)?.id;
      const placed = placedRemarks(merged, revisionStamp(merged).sha256);
      expect(placed.map(({ remark, node, olderLetter }) => [remark.kind, node, olderLetter])).toEqual([
        ['note', idOf('Pry bar 24 in'), null],
        ['swap', idOf('Pry bar 24 in'), null],
        ['answer', null, null],
      ]);
      expect(merged.approvals.map(({ letter, who }) => [letter, who])).toEqual([['A', 'Chief Orr']]);
    },
    WAIT_MS,
  );

  it(
    'answers for ten items of gear within three taps of opening the file',
    async () => {
      const design = demo();
      const { page, context, complaints } = await openCopy(await copyOf(design, 'ten'));
      const placed = design.gear.filter(({ place }) => place !== null).slice(0, 10);
      expect(placed).toHaveLength(10);
      for (const gear of placed) {
        await page.getByRole('searchbox').fill('');
        let taps = 0;
        const tap = async (act: () => Promise<void>): Promise<void> => {
          taps++;
          await act();
        };
        const search = page.getByRole('searchbox');
        await tap(() => search.tap());
        await page.keyboard.type(gear.name);
        await tap(() => page.locator('.gear').last().getByRole('button').first().tap());
        const card = page.getByRole('region', { name: 'What you tapped' });
        await card.getByRole('heading', { name: gear.name }).waitFor();
        expect(await card.locator('.way').textContent()).toMatch(/^Open \S+.*motions?$/s);
        expect(taps).toBeLessThanOrEqual(3);
      }
      expect(complaints).toEqual([]);
      await context.close();
    },
    WAIT_MS,
  );

  it(
    'chooses what a finger meets in the picture',
    async () => {
      const { page, context, complaints } = await openCopy(await copyOf(demo(), 'touch'));
      // The bottle of the big extinguisher stands at the left of the face, seen from the hatch.
      const box = await page.locator('canvas').boundingBox();
      if (!box) throw new Error('no picture');
      await page.touchscreen.tap(box.x + box.width * 0.15, box.y + box.height * 0.72);
      const heading = page.getByRole('region', { name: 'What you tapped' }).getByRole('heading');
      await heading.waitFor();
      expect(await heading.textContent()).toMatch(/extinguisher/i);
      expect(complaints).toEqual([]);
      await context.close();
    },
    WAIT_MS,
  );

  it(
    'shows hostile words as words',
    async () => {
      const names = [
        '<script>document.title="run"</script>',
        '</script><img src=x onerror="document.title=\'run\'">',
        `"'--> ${1} $&`,
        '\u202Egnirts desrever',
      ];
      const long = `<b>${'w'.repeat(10_000)}</b>`;
      const start = askQuestion(changeDocument(demo(), { title: names[1] ?? '', customer: names[0] ?? '' }), {
        text: `${names[0]} ?`,
        about: null,
      }).design;
      const design = names.reduce(
        (held, name, i) =>
          changeGear(held, held.gear[i]?.id ?? held.gear[0]?.id ?? ('' as never), { name, note: long, user: name }),
        start,
      );
      const { page, context, complaints, asked } = await openCopy(await copyOf(design, 'hostile'));
      const words = page.locator('.gear').last();
      for (const name of names) {
        expect(await words.getByText(name, { exact: true }).count()).toBe(1);
        await page.getByRole('searchbox').fill('');
        await words.getByText(name, { exact: true }).tap();
        expect(await page.locator('.facts').textContent()).toContain(long);
      }
      expect(await page.title()).toBe(`${names[1]} — review copy`);
      expect(await page.locator('header h1').textContent()).toBe(names[1]);
      expect(await page.locator('img, b, .panel script').count()).toBe(0);
      // Nothing may push the page out of its window.
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(1024);
      expect(complaints).toEqual([]);
      expect(asked).toEqual([]);
      await context.close();
    },
    WAIT_MS,
  );
});
