import { afterAll, beforeAll, expect, test } from 'vitest';
import { openApp, openStand, type Stand } from './harness.ts';

let stand: Stand;

beforeAll(async () => {
  stand = await openStand();
});
afterAll(() => stand.close());

test('the built page opens, shows something, and has nothing to complain about', async () => {
  const { page, complaints } = await stand.freshPage();
  await openApp(page, stand.address);
  expect((await page.locator('#root').textContent())?.trim()).toBeTruthy();
  expect(complaints).toEqual([]);
});

test('a fault on the page is heard', async () => {
  const { page, complaints } = await stand.freshPage();
  await openApp(page, stand.address);
  await page.evaluate(() => console.error('planted'));
  await page.evaluate(() => fetch('./nothing-here.txt').then(() => undefined));
  expect(complaints.some((line) => line.includes('planted'))).toBe(true);
  expect(complaints.some((line) => line.startsWith('404'))).toBe(true);
});
