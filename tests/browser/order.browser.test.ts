import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { goTo } from './editor-hands.ts';
import { openApp, openStand, type Stand } from './harness.ts';

let stand: Stand;
beforeAll(async () => {
  stand = await openStand();
}, 60_000);
afterAll(() => stand.close());

describe('the order of assembly', () => {
  it('is drawn off the page: it says how far it is, can be stopped, and the page goes on answering', async () => {
    const { page, complaints } = await stand.freshPage();
    await openApp(page, stand.address);
    await page.getByText('Face map').waitFor();
    await goTo(page, 'Shop');
    await page.getByRole('button', { name: 'drawings', exact: true }).click();
    const part = page.getByRole('region', { name: 'Drawings' });
    const choose = async (name: string): Promise<void> => {
      await part.getByRole('combobox', { name: 'Drawing' }).selectOption({ label: name });
    };
    await choose('Assembly order');
    const status = part.getByRole('status').filter({ hasText: /order of assembly/ });
    await status.waitFor();
    await part.getByRole('button', { name: 'Stop' }).click();
    await part.getByText('The order of assembly is not drawn: you stopped it.').waitFor();
    await part.getByRole('button', { name: 'Draw it' }).click();
    await status.filter({ hasText: /step \d+ of \d+/ }).waitFor({ timeout: 60_000 });
    // While it is drawn elsewhere the page takes what is typed.
    await page.keyboard.press('Control+k');
    await page.getByRole('dialog', { name: 'Find' }).waitFor();
    await page.keyboard.press('Escape');
    await part
      .getByRole('img', { name: /assembly order/ })
      .first()
      .waitFor({ timeout: 60_000 });
    // It is not drawn twice.
    await choose('Plan');
    await part.getByRole('img', { name: /plan/ }).waitFor();
    await choose('Assembly order');
    await part
      .getByRole('img', { name: /assembly order/ })
      .first()
      .waitFor({ timeout: 2000 });
    expect(complaints).toEqual([]);
    await page.close();
  }, 180_000);
});
