import { readFileSync } from 'node:fs';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { pdfText } from '../shop/paper/poppler.ts';
import { openApp, openStand, type Stand, type WatchedPage } from './harness.ts';

let stand: Stand;
beforeAll(async () => {
  stand = await openStand();
});
afterAll(() => stand.close());

const openShop = async (): Promise<WatchedPage> => {
  const watched = await stand.freshPage();
  const { page } = watched;
  await openApp(page, stand.address);
  await page.getByText('Face map').waitFor();
  await page.locator('nav').getByRole('button', { name: /Shop/ }).click();
  await page.getByRole('table', { name: 'Cut list' }).waitFor();
  return watched;
};

const figure = (text: string | null): number => Number((text ?? '').replace(/[^0-9.]/g, ''));

describe('the shop step', () => {
  it('shows the price with what moves it, and a rate moves it', async () => {
    const { page, complaints } = await openShop();
    await page.getByRole('button', { name: 'price', exact: true }).click();
    const price = page.getByRole('region', { name: 'Price' });
    const total = price.locator('p strong').first();
    const before = figure(await total.textContent());
    const told = figure(
      await price.getByRole('listitem').filter({ hasText: 'Shop hour, 10 % up' }).locator('strong').textContent(),
    );
    const field = page.getByRole('textbox', { name: 'Shop hour' });
    const rate = figure(await field.inputValue());
    await field.fill(String(rate * 1.1));
    await field.press('Enter');
    await expect.poll(async () => figure(await total.textContent())).toBeGreaterThan(before);
    // Each line is rounded to its cent.
    expect(Math.abs(figure(await total.textContent()) - before - told)).toBeLessThan(0.2);
    const amounts = await price.locator('tbody tr:has(th[scope="row"]) td:last-child').allTextContents();
    const sum = amounts.slice(0, -1).reduce((all, text) => all + Math.round(figure(text) * 100), 0);
    expect(sum).toBe(Math.round(figure(await total.textContent()) * 100));
    expect(complaints).toEqual([]);
    await page.close();
  });

  it('shows every paper before saving, prints the one that is shown, and saves it', async () => {
    const { page, complaints } = await openShop();
    await page.getByRole('button', { name: 'papers', exact: true }).click();
    const list = page.getByRole('list', { name: 'Papers of the packet' });
    await page.getByRole('img', { name: /Packet for the shop, page 1/ }).waitFor();
    for (const name of [
      'Cut list',
      'Hardware',
      'Price',
      'Inspection sheet',
      'Installation check',
      'Weigh record',
      'Views',
    ]) {
      await list.getByRole('button', { name, exact: true }).click();
      await page.getByRole('img', { name: /page 1 of \d+/ }).waitFor();
    }
    await list.getByRole('button', { name: 'Labels', exact: true }).click();
    await page.getByRole('combobox', { name: 'Labels in hand' }).selectOption('letter-30');
    await page.getByRole('img', { name: /Labels.*page 1 of 2/ }).waitFor();
    // Nothing but the two sheets of labels: no head of the window, no buttons.
    const printed = await page.pdf({ preferCSSPageSize: true });
    expect(new TextDecoder('latin1').decode(printed).match(/\/Type \/Page\b/g)).toHaveLength(2);
    expect(pdfText(printed)).not.toContain('Hatchwright');
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save as PDF' }).click();
    const path = await (await download).path();
    expect(pdfText(readFileSync(path))).toContain('face a up');
    expect(complaints).toEqual([]);
    await page.close();
  });

  it('saves everything as one archive, says how far it is, and can be stopped', async () => {
    const { page, complaints } = await openShop();
    const save = page.getByRole('button', { name: 'All in one zip' });
    await expect.poll(() => save.isEnabled()).toBe(true);
    await save.click();
    await page.getByRole('button', { name: 'Stop', exact: true }).click();
    await expect.poll(() => save.isEnabled()).toBe(true);
    const download = page.waitForEvent('download');
    await save.click();
    const files = unzipSync(readFileSync(await (await download).path()));
    const manifest: unknown = JSON.parse(new TextDecoder().decode(files['manifest.json']));
    const listed = (manifest as { files: readonly { path: string }[] }).files.map(({ path }) => path);
    expect(Object.keys(files).sort()).toEqual([...listed, 'manifest.json'].sort());
    expect(listed[0]).toBe('first-page.pdf');
    expect(complaints).toEqual([]);
    await page.close();
  });

  it('gives every file by itself, and every folder as one', async () => {
    const { page } = await openShop();
    const one = page.getByRole('button', { name: 'One file…' });
    await expect.poll(() => one.isEnabled()).toBe(true);
    await one.click();
    const dialog = page.getByRole('dialog', { name: 'Files of the packet' });
    await dialog.waitFor();
    const download = page.waitForEvent('download');
    await dialog.getByRole('region', { name: 'router' }).getByRole('button', { name: 'This folder as a zip' }).click();
    const files = unzipSync(readFileSync(await (await download).path()));
    expect(Object.keys(files).length).toBeGreaterThan(10);
    expect(Object.keys(files).every((path) => /^router\/[A-Z]+\d+\.dxf$/.test(path))).toBe(true);
    await page.close();
  });
});
