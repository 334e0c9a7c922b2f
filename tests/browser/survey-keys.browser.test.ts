import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { degrees, seededRandom, type Vec3 } from '../../src/base/index.ts';
import { type Reading, readsAngle } from '../../src/design/index.ts';
import { type NetworkReading, type PlanReading, predict, surveyPlan } from '../../src/envelope/index.ts';
import { surveySheet } from '../../src/shop/index.ts';
import { openPdfWriter } from '../../src/views/cli/open-pdf-writer.ts';
import { openApp, openStand, type Stand } from './harness.ts';

/** Some 170 readings, each adjusting the survey anew; on a busy machine each takes its second. */

let stand: Stand;
beforeAll(async () => {
  stand = await openStand();
});
afterAll(() => stand.close());

/** What the focus is on, as a screen reader would name it. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const at = document.activeElement;
    if (!(at instanceof HTMLElement)) return '';
    const labelled =
      at instanceof HTMLInputElement || at instanceof HTMLSelectElement ? at.labels?.[0]?.textContent : '';
    return (at.getAttribute('aria-label') ?? labelled ?? '').trim() || (at.textContent ?? '').trim();
  });

const MOST_TABS = 400;

/** Goes on with the Tab key until the focus is on what carries the name. */
const tabTo = async (page: Page, name: RegExp, key: 'Tab' | 'Shift+Tab' = 'Tab'): Promise<void> => {
  for (let i = 0; i < MOST_TABS; i++) {
    if (name.test(await focused(page))) return;
    await page.keyboard.press(key);
  }
  throw new Error(`${name} is not reached by the keyboard`);
};

const press = async (page: Page, name: RegExp): Promise<void> => {
  await page.keyboard.press('Tab');
  await tabTo(page, name);
  await page.keyboard.press('Space');
};

/** By way of the list of everything that can be gone to. */
const goBy = async (page: Page, words: string): Promise<void> => {
  await page.getByRole('button', { name: /^Find/ }).waitFor();
  await page.keyboard.press('Control+k');
  await page.getByRole('dialog').waitFor();
  // Keys that come before the field has the focus go nowhere.
  await page.waitForFunction(() => document.activeElement?.matches('dialog input'));
  await page.keyboard.type(words);
  // The list follows the typing; whoever looks at it presses Enter once the right entry is lit.
  await page.waitForFunction((wanted) => {
    const lit = document.getElementById(document.activeElement?.getAttribute('aria-activedescendant') ?? '');
    const shown = lit?.textContent?.toLowerCase() ?? '';
    return shown !== '' && wanted.split(' ').every((word) => shown.includes(word));
  }, words);
  await page.keyboard.press('Enter');
  await page.getByRole('dialog').waitFor({ state: 'detached' });
};

const VEHICLE = 'large-utility';
const KIND = 'lift-hatch';

/** A vehicle of the class with every free mark up to a hand's breadth from its start value, as text in the units typed. */
const typedReadings = (): readonly { readonly label: string; readonly text: string }[] => {
  const random = seededRandom(41);
  const plan = surveyPlan(KIND, VEHICLE);
  const off = (): number => 40 * (random() - 0.5);
  const points = new Map<string, Vec3>(
    plan.marks.map(({ id, at, fixed }) => [
      id,
      [at[0] + (fixed[0] ? 0 : off()), at[1] + (fixed[1] ? 0 : off()), at[2] + (fixed[2] ? 0 : off())],
    ]),
  );
  const asNetwork = ({ kind, from, to, at }: PlanReading): NetworkReading => {
    const id = 'one';
    if (kind === 'offset') return { kind, id, from, value: 0, sigma: 1 };
    if (kind === 'angle') return { kind, id, from, to: to ?? from, at: at ?? from, value: 0, sigma: 1 };
    return { kind, id, from, to: to ?? from, value: 0, sigma: 1 };
  };
  return plan.steps.flatMap(({ number, name, reading }) => {
    if (!reading) return [];
    const exact = predict(asNetwork(reading), points);
    const kind: Reading['kind'] = reading.kind;
    const text = readsAngle(kind) ? degrees(exact).toFixed(2) : `${exact.toFixed(1)} mm`;
    return [{ label: `${number}, ${name}`, text }];
  });
};

test('a whole survey is typed with the keyboard alone', async () => {
  const { page, complaints } = await stand.freshPage({ width: 1280, height: 800 });
  // Without the bay: what is tested is the sheet, and software drawing would take most of the time.
  await page.addInitScript(() => {
    HTMLCanvasElement.prototype.getContext = () => null;
  });
  await openApp(page, stand.address);
  await goBy(page, 'new design');
  await goBy(page, 'survey readings');
  await press(page, /^Start from this class$/);
  await page.getByText('Start values, not for cutting.').waitFor();
  const rows = typedReadings();
  await tabTo(page, new RegExp(`^${rows[0]?.label}$`));
  for (const { label, text } of rows) {
    expect(await focused(page)).toBe(label);
    await page.keyboard.insertText(text);
    await page.keyboard.press('Enter');
  }
  await page.getByText(`${rows.length} of ${rows.length} readings taken`).waitFor();
  // A reading that cannot be read keeps the pen and says so; Escape brings the one that stood there back.
  await page.keyboard.press('Control+a');
  await page.keyboard.type('12 elbows');
  await page.keyboard.press('Enter');
  expect(await focused(page)).toBe(rows.at(-1)?.label);
  await page.keyboard.press('Escape');
  await goBy(page, 'survey obstacles');
  for (const _ of [1, 2]) await press(page, /^It is measured$/);
  await goBy(page, 'survey closures');
  await press(page, /^It is measured$/);
  await press(page, /^Take it from the readings of the opening$/);
  await goBy(page, 'survey zones');
  await press(page, /^Add an airbag curtain, left$/);
  await goBy(page, 'survey vehicle');
  for (const [name, text] of [
    [/^Gross vehicle rating$/, '7400'],
    [/^Front axle rating$/, '3600'],
    [/^Rear axle rating$/, '4200'],
  ] as const) {
    await tabTo(page, name);
    await page.keyboard.type(text);
    await page.keyboard.press('Tab');
  }
  await tabTo(page, /^Enter the slip$/);
  await page.keyboard.press('Space');
  await tabTo(page, /^Front axle$/, 'Shift+Tab');
  await page.keyboard.type('2900');
  await page.keyboard.press('Tab');
  await page.keyboard.type('2700');
  await page.keyboard.press('Enter');
  // Nothing is left of the class, and the readings agree.
  expect(await page.getByText('not for cutting').count()).toBe(0);
  await page.getByText(new RegExp(`${rows.length} readings, all agree`)).waitFor();
  expect(complaints).toEqual([]);
});

test('the blank sheet is saved from the window, the same bytes as from the terminal', async () => {
  const { page, complaints } = await stand.freshPage({ width: 1280, height: 800 });
  await openApp(page, stand.address);
  await goBy(page, 'new design');
  await goBy(page, 'survey readings');
  await page.getByLabel('Closure').selectOption('barn-door');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Letter as PDF' }).click(),
  ]);
  expect(download.suggestedFilename()).toBe('survey-sheet-barn-door-letter.pdf');
  const saved = new Uint8Array(readFileSync(await download.path()));
  const title = await page.locator('header').getByRole('textbox').first().inputValue();
  const pages = surveySheet({ plan: surveyPlan('barn-door', VEHICLE), units: 'in', designTitle: title });
  const wanted = openPdfWriter()(pages, { title: 'survey sheet, barn door', subject: title });
  expect(Buffer.compare(Buffer.from(saved), Buffer.from(wanted))).toBe(0);
  expect(complaints).toEqual([]);
});
