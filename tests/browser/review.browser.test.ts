import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, type BrowserContext, chromium, type Locator, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { askQuestion, type Design, printDesign, readDesign } from '../../src/design/index.ts';
import { mergeReply, placedRemarks, readReply, releaseRevision, revisionStamp } from '../../src/revision/index.ts';
import { run } from '../../src/views/cli/program.ts';
import { BUILDS, freshen, TOP } from '../../src/views/ground.mjs';
import { HOSTILE, hostileDesign } from '../laws/hostile.ts';
import { NEEDS } from '../needs.mjs';
import { pdfText } from '../shop/paper/poppler.ts';
import { findGear, namelessParts, openInOrder, smallTargets, tappedCard } from './copy-hands.ts';
import { PATIENCE_MS } from './harness.ts';

// The copy as a chief has it: a file, a tablet, fingers, and no network.
/** A target that a finger in a glove finds (px). */
const FINGER_PX = 44;
const folder = mkdtempSync(join(tmpdir(), 'hatchwright-copy-'));
let browser: Browser;

const demo = (): Design => {
  const read = readDesign(readFileSync(join(TOP, 'assets/designs/harrow-fell.json'), 'utf8'));
  if (!read.ok) throw new Error('the demo does not read');
  return read.value;
};

const copyOf = async (design: Design, name: string, options: readonly string[] = []): Promise<string> => {
  const [from, to] = [join(folder, `${name}.json`), join(folder, `${name}.html`)];
  writeFileSync(from, printDesign(design));
  let said = '';
  const code = await run(['copy', from, '--to', to, ...options], {
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
  context.setDefaultTimeout(PATIENCE_MS);
  const page = await context.newPage();
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
});
afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true, force: true });
});

describe('a review copy on a tablet, from a file, without a network', () => {
  it('shows where gear is and what to open, takes remarks, and its reply lands on the parts', async () => {
    const asking = askQuestion(demo(), { text: 'Is the tray at the right height?', about: null });
    const design = releaseRevision(asking.design, { who: 'R. Vane', why: 'for the chief', on: '2031-04-02' });
    const file = await copyOf(design, 'chief');
    expect(statSync(file).size).toBeLessThan(4_000_000);
    const { page, context, complaints, asked } = await openCopy(file);

    const card = tappedCard(page);
    const five = ['Thermal camera', 'Burn kit', 'Defibrillator', 'Binoculars', 'Pry bar 24 in'];
    for (const name of five) {
      await findGear(page, name);
      const way = (await card.locator('.way').textContent()) ?? '';
      expect(way).toMatch(/^Open hatch.*take .*\. \d motions?$/s);
      // A step each for what the sentence names, one after the other.
      expect(await openInOrder(page)).toBe(way.split(', ').length);
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
  });

  it('answers for ten items of the large demo within three taps of opening the file', async () => {
    const design = demo();
    const file = await copyOf(design, 'ten');
    const { page, context, complaints } = await openCopy(file);
    const placed = design.gear.filter(({ place }) => place !== null);
    // From all over the list, those in drawers and behind others too.
    const ten = Array.from({ length: 10 }, (_, i) => placed[Math.floor((i * placed.length) / 10)]);
    for (const gear of ten) {
      if (!gear) throw new Error('the demo holds fewer than ten placed items');
      await page.goto(pathToFileURL(file).href);
      let taps = 0;
      const tap = async (what: Locator): Promise<void> => {
        taps++;
        await what.tap();
      };
      await tap(page.getByRole('searchbox'));
      await page.keyboard.type(gear.name);
      await tap(page.locator('.gear').last().getByRole('button').first());
      const card = tappedCard(page);
      await card.getByRole('heading', { name: gear.name }).waitFor();
      // Where it is, what is opened first, and how many motions it takes; the picture has opened up to it.
      expect(await card.locator('.way').textContent()).toMatch(/^Open \S+.*motions?$/s);
      expect(await card.getByRole('button', { name: /^Everything in / }).count()).toBe(1);
      expect(taps).toBeLessThanOrEqual(3);
    }
    expect(complaints).toEqual([]);
    await context.close();
  });

  it('names everything for a screen reader, is worked by keyboard alone, and has targets for a finger', async () => {
    const asking = askQuestion(demo(), { text: 'Is the tray at the right height?', about: null });
    const design = releaseRevision(asking.design, { who: 'R. Vane', why: 'for the chief', on: '2031-04-02' });
    const { page, context, complaints } = await openCopy(await copyOf(design, 'keys', ['--with-shop']));
    const fine = async (): Promise<void> => {
      expect(await namelessParts(page)).toEqual([]);
      expect(await smallTargets(page, FINGER_PX)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(1024);
    };
    await fine();
    // The keyboard: to the search, to the first find, to its steps, to a note and into the reply.
    const press = async (key: string, until: Locator): Promise<void> => {
      for (let i = 0; i < 60; i++) {
        if (await until.evaluate((part) => part === document.activeElement).catch(() => false)) return;
        await page.keyboard.press(key);
      }
      throw new Error(`${key} does not come to it`);
    };
    await press('Tab', page.getByRole('searchbox'));
    await page.keyboard.type('thermal');
    await press('Tab', page.locator('.gear').last().getByRole('button').first());
    await page.keyboard.press('Enter');
    await tappedCard(page).getByRole('heading', { name: 'Thermal camera' }).waitFor();
    await fine();
    await press('Shift+Tab', page.getByRole('button', { name: 'open hatch' }));
    await page.keyboard.press('Enter');
    expect(await tappedCard(page).locator('.steps [data-done="true"]').count()).toBe(1);
    await press('Tab', page.getByLabel('Say something about it'));
    await page.keyboard.type('on the left');
    await press('Tab', page.getByRole('button', { name: 'Add the note' }));
    await page.keyboard.press('Enter');
    const tab = (name: string): Locator =>
      page.getByRole('navigation').getByRole('button', { name: new RegExp(`^${name}`) });
    await press('Shift+Tab', tab('Order'));
    for (const name of ['Order', 'Weight', 'Questions', 'Cautions', 'Reply', 'Shop']) {
      await press('Tab', tab(name));
      await page.keyboard.press('Enter');
      expect(await tab(name).getAttribute('aria-pressed')).toBe('true');
      await fine();
      if (name === 'Reply') await page.getByText('Thermal camera: on the left').waitFor();
    }
    expect(complaints).toEqual([]);
    await context.close();
  });

  it('prints the gear map, a page a face', async () => {
    const { page, context } = await openCopy(await copyOf(demo(), 'print'));
    const pdf = await page.pdf({ preferCSSPageSize: true });
    const text = pdfText(pdf);
    // Pages end with a form feed; the demo has two faces and nothing else is printed.
    expect(text.split('\f').filter((each) => each.trim() !== '')).toHaveLength(2);
    for (const { name } of demo().gear) expect(text.replace(/\s+/g, ' ')).toContain(name);
    expect(text).not.toContain('Close up');
    await context.close();
  });

  it('chooses what a finger meets in the picture', async () => {
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
  });

  it('shows hostile words as words', async () => {
    const { value: design } = hostileDesign(demo());
    const { page, context, complaints, asked } = await openCopy(await copyOf(design, 'hostile', ['--with-shop']));
    const still = async (): Promise<void> => {
      expect(await page.title()).toBe(`${design.title} — review copy`);
      // Nothing but what the page was built from: no picture but pages to print, no script, no bold of theirs.
      expect(await page.locator('img:not([src^="data:image/svg"]), #root b, iframe, #root script').count()).toBe(0);
      expect(await page.locator('script').count()).toBe(2);
      // Nothing may push the page out of its window.
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(1024);
    };
    await still();
    expect(await page.locator('header h1').textContent()).toBe(design.title);
    const list = page.locator('.gear').last();
    for (const gear of design.gear) {
      await list.getByText(gear.name, { exact: true }).first().waitFor();
    }
    for (let i = 0; i < 5; i++) {
      await list.getByRole('button').nth(i).tap();
      const name = (await tappedCard(page).getByRole('heading').textContent()) ?? '';
      const facts = (await page.locator('.facts').textContent()) ?? '';
      const called = design.gear.filter((each) => each.name === name);
      expect(called.some(({ note, user }) => facts.includes(note) && facts.includes(user))).toBe(true);
      await still();
    }
    for (const tab of ['Order', 'Weight', 'Questions', 'Cautions', 'Shop', 'Reply']) {
      await page
        .getByRole('navigation')
        .getByRole('button', { name: new RegExp(`^${tab}`) })
        .tap();
      await still();
    }
    await page.getByLabel('Your name').fill(HOSTILE[0] ?? '');
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save the reply' }).tap();
    const reply = readReply(readFileSync(await (await saving).path(), 'utf8'));
    expect(reply.ok && reply.value.who).toBe(HOSTILE[0]);
    expect(complaints).toEqual([]);
    expect(asked).toEqual([]);
    await context.close();
  });
});
