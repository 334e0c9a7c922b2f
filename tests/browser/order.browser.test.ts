import type { Page, Route } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { goTo } from './editor-hands.ts';
import { openApp, openStand, type Stand } from './harness.ts';

let stand: Stand;
beforeAll(async () => {
  stand = await openStand();
});
afterAll(() => stand.close());

/** Holds back the part of the program that draws the order, so that the test and not the machine says when it begins. */
const holdDrawing = async (page: Page): Promise<{ readonly letGo: () => Promise<void> }> => {
  const held: Route[] = [];
  let free = false;
  await page.context().route(/order-worker/, (route) => {
    if (free) return route.continue();
    held.push(route);
    return undefined;
  });
  return {
    letGo: async () => {
      free = true;
      // What the page has given up meanwhile cannot go on.
      await Promise.all(held.splice(0).map((route) => route.continue().catch(() => undefined)));
    },
  };
};

/** Keeps every line that a status of the page says from now on, however short it stands there. */
const keepStatusLines = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const said: string[] = [];
    Object.assign(window, { statusLines: said });
    new MutationObserver(() => {
      for (const status of document.querySelectorAll('[role="status"]')) said.push(status.textContent ?? '');
    }).observe(document.body, { subtree: true, childList: true, characterData: true });
  });

/** What was said since it was last asked. */
const statusLines = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => (window as unknown as { readonly statusLines: string[] }).statusLines.splice(0));

describe('the order of assembly', () => {
  it('is drawn off the page: it says how far it is, can be stopped, and the page goes on answering', async () => {
    const { page, complaints } = await stand.freshPage();
    const drawing = await holdDrawing(page);
    await openApp(page, stand.address);
    await page.getByText('Face map').waitFor();
    await goTo(page, 'Shop');
    await page.getByRole('button', { name: 'drawings', exact: true }).click();
    const part = page.getByRole('region', { name: 'Drawings' });
    const choose = async (name: string): Promise<void> => {
      await part.getByRole('combobox', { name: 'Drawing' }).selectOption({ label: name });
    };
    await keepStatusLines(page);
    await choose('Assembly order');
    const status = part.getByRole('status').filter({ hasText: 'Working out the order of assembly' });
    await status.waitFor();
    await part.getByRole('button', { name: 'Stop' }).click();
    await part.getByText('The order of assembly is not drawn: you stopped it.').waitFor();
    await part.getByRole('button', { name: 'Draw it' }).click();
    await status.waitFor();
    // While it is drawn elsewhere the page takes what is typed.
    await page.keyboard.press('Control+k');
    await page.getByRole('dialog', { name: 'Find' }).waitFor();
    await page.keyboard.press('Escape');
    await drawing.letGo();
    const first = part.getByRole('img', { name: /assembly order/ }).first();
    await first.waitFor();
    expect(await statusLines(page)).toContainEqual(expect.stringMatching(/step \d+ of \d+/));
    // It is not drawn twice.
    await choose('Plan');
    await part.getByRole('img', { name: /plan/ }).waitFor();
    await choose('Assembly order');
    await first.waitFor();
    expect((await statusLines(page)).filter((line) => line.includes('order of assembly'))).toEqual([]);
    expect(complaints).toEqual([]);
    await page.close();
  });
});
