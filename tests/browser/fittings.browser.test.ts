import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { FITTING_KINDS } from '../../src/design/index.ts';
import { KIND_WORDS } from '../../src/views/editor/fittings/kind-words.ts';
import { carcass, designOf, empty } from '../fitout/designs.ts';
import { dropFile } from './editor-hands.ts';
import { openApp, openStand, type Stand, shot, type WatchedPage } from './harness.ts';

let stand: Stand;
let watched: WatchedPage;
let page: Page;

beforeAll(async () => {
  stand = await openStand();
  watched = await stand.freshPage({ width: 1440, height: 900 });
  page = watched.page;
  await openApp(page, stand.address);
  const design = JSON.stringify(designOf([carcass(empty('opening-1'), { facing: 'rear' })], { title: 'One room' }));
  await dropFile(page, 'room.json', design);
  await page
    .getByRole('button', { name: /cabinet/i })
    .first()
    .click();
  await page
    .getByRole('button', { name: /^empty/ })
    .first()
    .waitFor();
});
afterAll(() => stand.close());

const choose = async (withArticle: string): Promise<void> => {
  await page
    .getByRole('button', { name: /^empty/ })
    .first()
    .click({ button: 'right' });
  await page.getByRole('menuitem', { name: `Fit ${withArticle}`, exact: true }).click();
};

const takeBack = async (): Promise<void> => {
  await page.keyboard.press('Escape');
  await page.keyboard.press('Control+z');
  await page
    .getByRole('button', { name: /^empty/ })
    .first()
    .waitFor();
};

describe('every kind of fitting from the face map', () => {
  test.each(FITTING_KINDS)(
    '%s is fitted from the menu, shows its form, and is taken back in one step',
    async (kind) => {
      await choose(KIND_WORDS[kind].withArticle);
      const form = page.locator('[class*="fields"]').filter({ has: page.locator('select, input, button') });
      await expect.poll(() => form.count()).toBeGreaterThan(1);
      expect(watched.complaints).toEqual([]);
      await takeBack();
    },
  );

  test('a board takes the stops that are typed, and opens to the last of them in the bay', async () => {
    await choose(KIND_WORDS.board.withArticle);
    const stops = page.getByRole('textbox', { name: /Stops at/ });
    await stops.fill('80, 130');
    await stops.press('Enter');
    await expect.poll(() => stops.inputValue()).toBe('80, 130');
    const handle = page.getByRole('slider', { name: /board, opens/ });
    await handle.press('Enter');
    await expect.poll(() => handle.getAttribute('aria-valuenow')).toBe('100');
    await shot(page, 'board-form');
    expect(watched.complaints).toEqual([]);
  });
});
