import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { carcass, designOf, empty } from '../fitout/designs.ts';
import { dropFile } from './editor-hands.ts';
import { openApp, openStand, type Stand, shot, type WatchedPage } from './harness.ts';

let stand: Stand;
let watched: WatchedPage;
let page: Page;

const bay = (id: string, y: number) =>
  carcass(empty(`opening-${id}`), {
    id,
    name: id,
    facing: 'rear',
    size: { width: 500, height: 500, depth: 600 },
    place: { x: { rule: 'at', mm: 100 }, y: { rule: 'at', mm: y }, z: { rule: 'at', mm: 0 } },
  });

beforeAll(async () => {
  stand = await openStand();
  watched = await stand.freshPage({ width: 1440, height: 900 });
  page = watched.page;
  await openApp(page, stand.address);
  const design = JSON.stringify(designOf([bay('carcass-1', 50), bay('carcass-2', -550)], { title: 'Two bays' }));
  await dropFile(page, 'bays.json', design);
  await page
    .getByRole('button', { name: /cabinet/i })
    .first()
    .click();
  await page.getByLabel('Corner joints').waitFor();
  // The rest of the sheet is made as it comes into view.
  await page.getByLabel('Corner joints').hover();
  const last = page.getByRole('button', { name: 'Add a speaker' });
  for (let tries = 0; tries < 40 && (await last.count()) === 0; tries++) {
    await page.mouse.wheel(0, 600);
    await page.waitForTimeout(250);
  }
  await last.waitFor();
});
afterAll(() => stand.close());

const ADDS = [
  ['Cut a corner off', /^Chamfer, top left/],
  ['Stand over a wheelhouse', /^Wheelhouse, left side/],
  ['Add a wiring chase', /^Wiring chase, back/],
  ['Brace it to another carcass', /^Brace to carcass-2/],
  ['Add a speaker', /^Hatch speaker/],
] as const;

describe('corners, holes, braces and mounts from the cabinet step', () => {
  test.each(ADDS)('%s adds one with its form open, taken back in one step', async (button, card) => {
    await page.getByRole('button', { name: button, exact: true }).click();
    const made = page.getByRole('button', { name: card, expanded: true });
    await made.waitFor();
    const fields = page.locator('li[data-selected="true"]').locator('input, select');
    expect(await fields.count()).toBeGreaterThan(2);
    expect(watched.complaints).toEqual([]);
    await shot(page, `structure-${button.replaceAll(' ', '-').toLowerCase()}`);
    await page.keyboard.press('Escape');
    await page.keyboard.press('Control+z');
    await expect.poll(() => made.count()).toBe(0);
  });

  test('a riser brings the field for its runners', async () => {
    await page.getByLabel('Stands on').selectOption('riser');
    await page.getByLabel('Runners').waitFor();
    expect(watched.complaints).toEqual([]);
  });
});
