import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { axeFaults } from './axe-faults.ts';
import { goTo } from './editor-hands.ts';
import { openApp, openStand, type Stand, type WatchedPage } from './harness.ts';

let stand: Stand;
beforeAll(async () => {
  stand = await openStand();
});
afterAll(() => stand.close());

const openLayouts = async (): Promise<WatchedPage> => {
  const watched = await stand.freshPage({ width: 1440, height: 900 });
  const { page } = watched;
  await openApp(page, stand.address);
  await page.getByText('Face map').waitFor();
  await goTo(page, 'Shop');
  await page.getByRole('button', { name: 'sheet layouts', exact: true }).click();
  await stockOf(page).waitFor();
  return watched;
};
const stockOf = (page: Page) => page.getByRole('region', { name: 'Stock in hand' });
const rowsOf = (page: Page) => stockOf(page).locator('tbody tr');

/** As a spreadsheet saves it. */
const choose = (page: Page, name: string, text: string): Promise<void> =>
  page.getByLabel('List of stock').setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });

const HEAD = 'name,length,width,qty,price,material,thickness,offcut\n';

describe('the stock in hand of the shop step', () => {
  it('is filled in by keyboard, used by the layouts, removed, and undone step by step', async () => {
    const { page, complaints } = await openLayouts();
    await stockOf(page).getByRole('button', { name: 'Add an offcut' }).press('Enter');
    // The pen is in the name of the new row.
    await page.waitForFunction(() => document.activeElement?.closest('[data-stock-name]') !== null);
    await page.keyboard.type('Rack 3');
    await page.keyboard.press('Enter');
    const field = (name: string) => stockOf(page).getByRole('textbox', { name });
    await field('Length of Rack 3, along the grain').fill('1800 mm');
    await field('Length of Rack 3, along the grain').press('Enter');
    // The sheets are laid out anew; the pen stays where it is.
    await page.waitForTimeout(1500);
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.getAttribute('id'))).toBe(
      await field('Width of Rack 3').getAttribute('id'),
    );
    await field('Width of Rack 3').fill('900 mm');
    await field('Width of Rack 3').press('Enter');
    await page.getByRole('button', { name: /offcut Rack 3$/ }).waitFor();
    await expect.poll(() => rowsOf(page).getByText('1 used').count()).toBe(1);
    expect(await page.getByText(/1 offcut in hand/).count()).toBeGreaterThan(0);
    // Bad input is answered in its place and changes nothing.
    await field('Width of Rack 3').fill('wide');
    await field('Width of Rack 3').press('Enter');
    expect(await stockOf(page).getByRole('alert').textContent()).toContain('Write a length');
    await page.keyboard.press('Escape');
    await field('How many of Rack 3 there are').fill('0');
    await field('How many of Rack 3 there are').press('Enter');
    await expect.poll(() => page.getByRole('button', { name: /offcut Rack 3$/ }).count()).toBe(0);
    await page.getByRole('button', { name: 'Remove Rack 3' }).click();
    await expect.poll(() => rowsOf(page).count()).toBe(0);
    for (let i = 0; i < 2; i++) await page.getByRole('button', { name: /^Undo/ }).click();
    await page.getByRole('button', { name: /offcut Rack 3$/ }).waitFor();
    expect(complaints).toEqual([]);
    await page.close();
  });

  it('says what is missing when a sheet is used up', async () => {
    const { page, complaints } = await openLayouts();
    await stockOf(page).getByRole('button', { name: 'Add a sheet size' }).click();
    const count = stockOf(page).getByRole('textbox', { name: 'How many of Sheet 1 there are' });
    await count.fill('0');
    await count.press('Enter');
    await page
      .getByText(/the sheets in stock are used up/)
      .first()
      .waitFor();
    expect(complaints).toEqual([]);
    await page.close();
  });

  it('is read from a list, and says in sentences where a list is wrong', async () => {
    const { page, complaints } = await openLayouts();
    await choose(page, 'bad.csv', `${HEAD}A,long,300,1,,birch-ply-18,,yes\nB,800,300,1,free,oak,,yes\n`);
    const refused = page.getByRole('dialog', { name: 'This list cannot be read' });
    await refused.waitFor();
    expect(await refused.getByRole('listitem').allTextContents()).toEqual([
      "row 2, length: expected a length above zero, as 600, 600 mm or 23 5/8 in, found 'long'.",
      expect.stringMatching(/^row 3, material: expected a material of the catalog .* found 'oak'\.$/),
      "row 3, price: expected a price of zero or more, found 'free'.",
    ]);
    await refused.getByRole('button', { name: 'Close' }).last().click();
    expect(await rowsOf(page).count()).toBe(0);
    await choose(page, 'rack.csv', `${HEAD}A,900,500,2,,birch-ply-18,,yes\nB,8 ft,4 ft,,95,Birch plywood,12,\n`);
    await expect.poll(() => rowsOf(page).count()).toBe(2);
    await choose(page, 'rack.csv', `${HEAD}C,700,400,1,,birch-ply-18,,yes\n`);
    await page.getByRole('dialog', { name: 'Read a list of stock' }).getByRole('button', { name: 'Add to it' }).click();
    await expect.poll(() => rowsOf(page).count()).toBe(3);
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      expect(await axeFaults(page)).toEqual([]);
    }
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save what is left…' }).click();
    const saved = readFileSync(await (await download).path(), 'utf8');
    expect(saved).toContain('name,length,width,qty,price,material,thickness,offcut');
    await choose(page, 'left.csv', saved);
    await page
      .getByRole('dialog', { name: 'Read a list of stock' })
      .getByRole('button', { name: 'Put in place of it' })
      .click();
    await expect.poll(() => rowsOf(page).count()).toBe(saved.trimEnd().split('\r\n').length - 1);
    expect(complaints).toEqual([]);
    await page.close();
  });
});
