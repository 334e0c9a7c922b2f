import { readFileSync } from 'node:fs';
import type { FileChooser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { emptyDesign, printDesign, readDesign } from '../../src/design/index.ts';
import { axeFaults } from './axe-faults.ts';
import { goTo, pickDemo, STEPS } from './editor-hands.ts';
import { openApp, openStand, type Stand, type WatchedPage } from './harness.ts';

let stand: Stand;
beforeAll(async () => {
  stand = await openStand();
});
afterAll(() => stand.close());

const opened: Page[] = [];
afterEach(async () => {
  await Promise.all(opened.splice(0).map((page) => page.context().close()));
});

/** Without the pickers of the system, whose dialogs no test can press. */
const prepared = async (page: Page): Promise<Page> => {
  opened.push(page);
  await page.addInitScript(() => {
    for (const name of ['showOpenFilePicker', 'showSaveFilePicker', 'showDirectoryPicker'])
      Reflect.deleteProperty(window, name);
  });
  return page;
};

/** A fresh visit; `bay` false is a machine that cannot draw in three dimensions, on which the sheets must work all the same. */
const freshEditor = async ({ bay = false }: { readonly bay?: boolean } = {}): Promise<WatchedPage> => {
  const watched = await stand.freshPage({ width: 1280, height: 800 });
  await prepared(watched.page);
  if (!bay)
    await watched.page.addInitScript(() => {
      HTMLCanvasElement.prototype.getContext = () => null;
    });
  await openApp(watched.page, stand.address);
  return watched;
};

const kept = (page: Page): Promise<void> => page.getByText(/^saved (just now|\d+ s ago)$/).waitFor();

/** The cut list as a person reads it: mark to the line's text. */
const cutList = async (page: Page): Promise<ReadonlyMap<string, string>> => {
  await goTo(page, 'Shop');
  const table = page.getByRole('table', { name: 'Cut list' });
  await table.waitFor();
  const lines = await table
    .locator('tr:has(button)')
    .evaluateAll((rows) =>
      rows.map((row) => [...row.querySelectorAll('th, td')].map((cell) => (cell.textContent ?? '').trim())),
    );
  return new Map(lines.map(([mark = '', ...cells]) => [mark, cells.join(' | ')]));
};

const typeWidth = async (page: Page, width: string): Promise<void> => {
  await goTo(page, 'Cabinet');
  const field = page.getByRole('textbox', { name: 'Width', exact: true });
  await field.fill(width);
  await field.press('Enter');
};

describe('a change of one size', () => {
  test('reaches the cut list, can be undone, and is there again after a reload', async () => {
    const { page, complaints } = await freshEditor({ bay: true });
    await pickDemo(page);
    const before = await cutList(page);
    expect(before.size).toBeGreaterThan(5);

    await typeWidth(page, '23 1/4');
    const after = await cutList(page);
    const changed = [...after].filter(([mark, line]) => before.get(mark) !== line);
    expect(changed.length).toBeGreaterThan(0);

    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await cutList(page)).toEqual(before);
    await page.keyboard.press('Control+Shift+Z');
    expect(await cutList(page)).toEqual(after);

    await kept(page);
    await page.reload();
    await page.getByRole('banner').waitFor();
    expect(await cutList(page)).toEqual(after);
    expect(complaints).toEqual([]);
  });

  test('that cannot be read is refused with a sentence, and Escape puts the old one back', async () => {
    const { page } = await freshEditor();
    await pickDemo(page);
    await typeWidth(page, 'about two feet');
    await page.getByRole('alert').getByText('Write a length').waitFor();
    const field = page.getByRole('textbox', { name: 'Width', exact: true });
    await field.press('Escape');
    expect(await field.inputValue()).not.toContain('about');
    expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
  });
});

describe('the keyboard alone', () => {
  test('goes through steps, help, find and the splitter, and gets its place back', async () => {
    const { page, complaints } = await freshEditor();
    await pickDemo(page);
    await page.locator('body').click({ position: { x: 2, y: 2 } });
    for (const [i, step] of STEPS.entries()) {
      await page.keyboard.press(String(i + 1));
      await page.getByRole('region', { name: `${step} sheet` }).waitFor();
    }
    const help = page.getByRole('button', { name: 'Help', exact: true });
    await help.focus();
    await page.keyboard.press('?');
    await page.getByRole('dialog', { name: 'Help' }).waitFor();
    await page.keyboard.press('Escape');
    await page.getByRole('dialog', { name: 'Help' }).waitFor({ state: 'detached' });
    expect(await help.evaluate((element) => element === document.activeElement)).toBe(true);

    await page.keyboard.press('Control+k');
    await page.getByRole('dialog', { name: 'Find' }).waitFor();
    await page.keyboard.type('instrument');
    await page
      .getByRole('menuitem', { name: /instrument drawer/ })
      .first()
      .waitFor();
    await page.keyboard.press('Enter');
    await page.getByRole('dialog', { name: 'Find' }).waitFor({ state: 'detached' });
    await page.getByRole('region', { name: 'Cabinet sheet' }).waitFor();

    const bar = page.getByRole('separator', { name: /Width of the bay/ });
    await bar.focus();
    const wide = Number(await bar.getAttribute('aria-valuenow'));
    await page.keyboard.press('ArrowLeft');
    expect(Number(await bar.getAttribute('aria-valuenow'))).toBe(wide - 2);
    expect(complaints).toEqual([]);
  });

  test('shows where it is: every stop of the first lap has a visible outline or frame', async () => {
    const { page } = await freshEditor();
    await pickDemo(page);
    await goTo(page, 'Shop');
    await page.keyboard.press('Tab');
    const unseen: string[] = [];
    for (let i = 0; i < 40; i++) {
      await page.keyboard.press('Tab');
      const seen = await page.evaluate(() => {
        const stop = document.activeElement;
        if (!stop || stop === document.body) return null;
        const framed = (element: Element | null): boolean =>
          element !== null && getComputedStyle(element).outlineStyle !== 'none';
        const shown = framed(stop) || framed(stop.parentElement) || framed(stop.closest('label'));
        return shown ? null : `${stop.tagName} ${stop.textContent?.slice(0, 30)}`;
      });
      if (seen) unseen.push(seen);
    }
    expect(unseen).toEqual([]);
  });
});

describe('files', () => {
  test('Ctrl S saves a file that reads back to the same design', async () => {
    const { page } = await freshEditor();
    await pickDemo(page);
    const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Control+s')]);
    expect(download.suggestedFilename()).toBe('harrow-fell-battalion-unit.hatchwright.json');
    const read = readDesign(readFileSync(await download.path(), 'utf8'));
    expect(read.ok && read.value.title).toBe('Harrow Fell battalion unit');
  });

  test('a bad file is told with its faults and places, and what was open stays open', async () => {
    const { page, complaints } = await freshEditor();
    // Asked for before there is much to do: a chooser that opens before the test listens is lost.
    const choosers: FileChooser[] = [];
    page.on('filechooser', (chooser) => choosers.push(chooser));
    await pickDemo(page);
    await kept(page);
    const bad = JSON.parse(printDesign(emptyDesign('broken', 'mm'))) as Record<string, unknown>;
    await page.keyboard.press('Control+o');
    await expect.poll(() => choosers.length).toBe(1);
    await choosers[0]?.setFiles({
      name: 'broken.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify({ ...bad, units: 'furlongs', gear: 'none' })),
    });
    const dialog = page.getByRole('dialog', { name: /broken\.json/ });
    await dialog.waitFor();
    expect(await dialog.getByRole('listitem').count()).toBe(2);
    expect(await dialog.textContent()).toContain('furlongs');
    await dialog.getByRole('button', { name: 'Go on' }).click();
    expect(await page.getByRole('textbox', { name: 'Title of the design' }).inputValue()).toBe(
      'Harrow Fell battalion unit',
    );
    expect(complaints).toEqual([]);
  });

  test('a design that is dropped on the window opens', async () => {
    const { page } = await freshEditor();
    const text = printDesign(emptyDesign('Dropped in', 'mm'));
    const data = await page.evaluateHandle((content) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([content], 'dropped.hatchwright.json', { type: 'application/json' }));
      return transfer;
    }, text);
    await page.dispatchEvent('body', 'drop', { dataTransfer: data });
    await page.getByText('Opened Dropped in').waitFor();
    expect(await page.title()).toBe('Dropped in – Hatchwright');
  });

  test('a second tab says that the design is open elsewhere, keeps nothing, and can take it over', async () => {
    const first = await freshEditor();
    await pickDemo(first.page);
    await kept(first.page);
    const second = await stand.pageBeside(first.page);
    await prepared(second.page);
    await openApp(second.page, stand.address);
    await second.page.getByText('This design is open in another tab.').waitFor();

    await first.page.getByRole('textbox', { name: 'Title of the design' }).fill('Named in the first tab');
    await first.page.keyboard.press('Enter');
    await second.page.getByRole('button', { name: 'Work here instead' }).click();
    await second.page.getByText('This design is open in another tab.').waitFor({ state: 'detached' });
    expect(await second.page.getByRole('textbox', { name: 'Title of the design' }).inputValue()).toBe(
      'Named in the first tab',
    );
    await first.page.getByText('This design is open in another tab.').waitFor();
    expect([first.complaints, second.complaints]).toEqual([[], []]);
  });
});

describe('the inspection', () => {
  test('runs beside the page, and an accepted finding stays listed with its name and reason', async () => {
    const { page, complaints } = await freshEditor();
    await pickDemo(page);
    await goTo(page, 'Inspect');
    const findings = page.getByRole('list', { name: 'Findings' });
    await findings.getByRole('button').first().waitFor();
    const open = await findings.getByRole('listitem').count();
    await findings.getByRole('button').first().click();
    await page.getByRole('button', { name: 'Accept with a reason…' }).click();
    const dialog = page.getByRole('dialog', { name: 'Accept with a reason' });
    const accept = dialog.getByRole('button', { name: 'Accept it' });
    expect(await accept.isDisabled()).toBe(true);
    await dialog.getByLabel('Your name').fill('M. Ashdown');
    await dialog.getByLabel('Why it may stand').fill('Agreed with the chief.');
    await accept.click();
    await page.getByText('Accepted by M. Ashdown').first().waitFor();
    await expect.poll(() => findings.getByRole('listitem').count()).toBe(open - 1);
    expect(complaints).toEqual([]);
  });
});

describe('everyone can use it', () => {
  for (const theme of ['light', 'dark'] as const)
    test(`no fault that axe knows on any step, ${theme}`, async () => {
      const { page, complaints } = await freshEditor({ bay: theme === 'light' });
      await page.emulateMedia({ colorScheme: theme, reducedMotion: 'reduce' });
      await pickDemo(page);
      const found: string[] = [];
      for (const step of STEPS) {
        await goTo(page, step);
        await page.waitForTimeout(300);
        found.push(...(await axeFaults(page)).map((fault) => `${step}: ${fault}`));
      }
      expect(found).toEqual([]);
      expect(complaints).toEqual([]);
    });

  test('no fault that axe knows in the dialogs', async () => {
    const { page } = await freshEditor();
    const found: string[] = [];
    for (const name of [/^Designs/, /^Find/, /^Help$/]) {
      await page.getByRole('banner').getByRole('button', { name }).click();
      await page.getByRole('dialog').waitFor();
      found.push(...(await axeFaults(page)).map((fault) => `${name}: ${fault}`));
      await page.keyboard.press('Escape');
      await page.getByRole('dialog').waitFor({ state: 'detached' });
    }
    expect(found).toEqual([]);
  });
});
