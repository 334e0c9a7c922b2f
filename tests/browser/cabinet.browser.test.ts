import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { goTo, pickDemo } from './editor-hands.ts';
import { openApp, openStand, type Stand, type WatchedPage } from './harness.ts';

/** Drawing in software on a busy machine: a frame may take a second. */

let stand: Stand;
let watched: WatchedPage;
let page: Page;

const openDemo = async (): Promise<void> => {
  await openApp(page, stand.address);
  await pickDemo(page);
  await goTo(page, 'Cabinet');
  await room('instrument drawer').waitFor();
  await page.locator('[role="application"] canvas').waitFor();
};

const room = (name: string): Locator => page.locator('[data-face-board] button', { hasText: name }).first();
const handle = (name: string): Locator => page.getByRole('slider', { name: `${name}, opens` });
const figures = async (): Promise<readonly string[]> =>
  (await page.locator('[data-face-board] button[title^="Click and type"]').allTextContents()).map((text) =>
    text.trim(),
  );
const middleOf = async (locator: Locator): Promise<readonly [number, number]> => {
  const box = await locator.boundingBox();
  if (!box) throw new Error('it is not on the screen');
  return [box.x + box.width / 2, box.y + box.height / 2];
};
const share = async (name: string): Promise<number> => Number(await handle(name).getAttribute('aria-valuenow'));

beforeAll(async () => {
  stand = await openStand();
});
afterAll(() => stand.close());
beforeEach(async () => {
  watched = await stand.freshPage({ width: 1440, height: 900 });
  page = watched.page;
  await openDemo();
});

describe('the largest carcass', () => {
  test('is found for a spot, said with what stops it, and taken in one step', async () => {
    await page.getByRole('button', { name: 'Largest…' }).click();
    const part = page.getByRole('region', { name: 'Largest carcass' });
    // On the spot of the present carcasses nothing stands but what makes room.
    await part.getByRole('button', { name: 'Find the largest' }).click();
    await part.getByText(/Nothing stands there: too near to /).waitFor();
    await part.getByLabel('What is to fill it').selectOption({ index: 1 });
    await part.getByRole('button', { name: 'Find the largest' }).click();
    await part.getByText(/wide × .* high × .* deep$/).waitFor();
    await expect.poll(() => part.getByRole('row').count()).toBe(6);
    await part.getByRole('button', { name: /^Give .* this room$/ }).click();
    await part.waitFor({ state: 'detached' });
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
    expect(watched.complaints).toEqual([]);
  });
});

describe('the face map', () => {
  test('a divider is dragged in one undoable step', async () => {
    const before = await figures();
    const divider = page.getByRole('separator', { name: 'between row 2 and 3' });
    const [x, y] = await middleOf(divider);
    await page.mouse.move(x, y);
    await page.mouse.down();
    for (const by of [8, 16, 24, 31]) await page.mouse.move(x, y + by);
    await page.mouse.up();
    const dragged = await figures();
    expect(dragged).not.toEqual(before);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(figures).toEqual(before);
    expect(watched.complaints).toEqual([]);
  });

  test('Escape in the middle of a drag puts the divider back and leaves no step', async () => {
    const before = await figures();
    const [x, y] = await middleOf(page.getByRole('separator', { name: 'between row 2 and 3' }));
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x, y + 12);
    await page.mouse.move(x, y + 26);
    await page.keyboard.press('Escape');
    await page.mouse.up();
    expect(await figures()).toEqual(before);
    expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
  });

  test('a figure is typed over, in the units of the trade', async () => {
    await page.locator('[data-face-board] button[title^="Click and type"]', { hasText: '6 1/2' }).click();
    await page.getByRole('textbox', { name: 'Inside size' }).fill('5 3/4 + 1/4');
    await page.keyboard.press('Enter');
    // 5 3/4 + 1/4 = 6
    await expect.poll(figures).toContain('6');
    expect(await figures()).not.toContain('6 1/2');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(figures).toContain('6 1/2');
  });

  test('a divider is worked by the keyboard alone', async () => {
    const before = await figures();
    const divider = page.getByRole('separator', { name: 'between row 2 and 3' });
    await divider.focus();
    await page.keyboard.press('ArrowDown');
    await expect.poll(figures).not.toEqual(before);
    await page.keyboard.press('ArrowUp');
    await expect.poll(async () => (await figures()).join()).toContain('6 1/2');
    await page.keyboard.press('Enter');
    await page.getByRole('textbox', { name: 'Inside size' }).waitFor();
  });

  test('an opening is divided and fitted from its menu', async () => {
    await room('irons').click({ button: 'right' });
    await page.getByRole('menuitem', { name: 'Divide into two columns' }).click();
    const empty = page.getByRole('button', { name: /^empty/ });
    await empty.first().click({ button: 'right' });
    await page.getByRole('menuitem', { name: 'Fit a drawer' }).click();
    await page.locator('[data-face-board] button[aria-label^="drawer"]').waitFor();
    expect(watched.complaints).toEqual([]);
  });
});

describe('the bay and the sheet together', () => {
  test('a drawer is pulled open by its handle and pushed back by a click', async () => {
    await room('instrument drawer').click();
    const [x, y] = await middleOf(handle('instrument drawer'));
    expect(await share('instrument drawer')).toBe(0);
    await page.mouse.move(x, y);
    await page.mouse.down();
    for (const by of [10, 25, 40, 60]) await page.mouse.move(x - by / 4, y + by);
    await page.mouse.up();
    await expect.poll(() => share('instrument drawer')).toBeGreaterThan(10);
    await handle('instrument drawer').press('Enter');
    await expect.poll(() => share('instrument drawer')).toBe(0);
    expect(watched.complaints).toEqual([]);
  });

  test('what is clicked in the bay is selected on the face map, and the other way round', async () => {
    // Beside the ring, on the drawer's front.
    const [x, y] = await middleOf(handle('instrument drawer'));
    await page.mouse.click(x - 48, y);
    await expect.poll(() => room('instrument drawer').getAttribute('aria-pressed')).toBe('true');
    await room('small drawer').click();
    await expect.poll(() => handle('small drawer').getAttribute('data-lit')).toBe('true');
    expect(await handle('instrument drawer').getAttribute('data-lit')).toBe('false');
    await page.keyboard.press('Escape');
    await expect.poll(() => room('small drawer').getAttribute('aria-pressed')).toBe('false');
  });
});

test('gear without a place is dragged into a drawer and stands on its plan', async () => {
  await room('instrument drawer').click();
  const block = page.getByRole('button', { name: 'Thermal camera' });
  await block.focus();
  await page.keyboard.press('Delete');
  const chip = page.getByRole('button', { name: /^Thermal camera/ });
  await chip.waitFor();
  await room('small drawer').scrollIntoViewIfNeeded();
  const [fromX, fromY] = await middleOf(chip);
  const [toX, toY] = await middleOf(room('small drawer'));
  await page.mouse.move(fromX, fromY);
  await page.mouse.down();
  await page.mouse.move(fromX + 10, fromY - 20);
  await page.mouse.move(toX, toY);
  await page.mouse.up();
  await expect
    .poll(async () => (await page.getByRole('heading', { level: 2 }).allTextContents()).join())
    .toContain('Thermal camera');
  await expect.poll(() => room('small drawer').textContent()).toContain('6 gear');
});
