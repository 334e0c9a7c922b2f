// Takes the pictures of docs/fittings.md from the built editor: npm run build && npm run pictures [-- KIND …]
import { mkdirSync } from 'node:fs';
import type { Page } from 'playwright-core';
import type { FittingKind } from '../../src/design/index.ts';
import { openApp, openStand } from '../browser/harness.ts';
import { fartherOff, PICTURED, sceneOf } from './scenes.ts';

const FOLDER = new URL('../../docs/pictures/fittings/', import.meta.url);
const WINDOW = { width: 1024, height: 768 };
const PICTURE = { width: 440, height: 330 };
/** Until a picture in software stands still. */
const SETTLE_MS = 1500;
const FARTHER = 2;
const SIDEWAYS = 4;

/** What lies over the bay: rings, names, chips. */
const BARE = `
  [role="toolbar"], [role="slider"], [data-cut-away] { opacity: 0 !important; }
`;

const openDesign = async (page: Page, text: string): Promise<void> => {
  await page.evaluate((json) => {
    const data = new DataTransfer();
    data.items.add(new File([json], 'scene.json', { type: 'application/json' }));
    window.dispatchEvent(new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true }));
  }, text);
};

const bayOf = (page: Page) => page.locator('[role="application"]').first();

/** Stands a little to the side of the named viewpoint. */
const walk = async (page: Page): Promise<void> => {
  const bay = bayOf(page);
  await page.getByRole('toolbar', { name: 'Where you stand' }).getByRole('button').first().click();
  await page.waitForTimeout(SETTLE_MS);
  await bay.focus();
  for (let i = 0; i < SIDEWAYS; i++) await bay.press('ArrowLeft');
};

/** Opens whatever moves, a few steps further off so that it is all in the picture. */
const openAll = async (page: Page, farther: number): Promise<void> => {
  const handles = await page.locator('[role="slider"][aria-label$=", opens"]').all();
  for (const handle of handles) await handle.press('Enter').catch(() => undefined);
  const bay = bayOf(page);
  await bay.focus();
  for (let i = 0; i < FARTHER + farther && handles.length > 0; i++) await bay.press('-');
};

const take = async (page: Page, kind: FittingKind, atWork: boolean): Promise<void> => {
  await openDesign(page, JSON.stringify(sceneOf(kind, atWork)));
  await page.locator('[role="application"] canvas').waitFor();
  await page.waitForTimeout(SETTLE_MS);
  await walk(page);
  if (atWork) await openAll(page, fartherOff(kind));
  await page.waitForTimeout(SETTLE_MS);
  const box = await bayOf(page).boundingBox();
  if (!box) throw new Error('no bay');
  const clip = {
    x: box.x + (box.width - PICTURE.width) / 2,
    y: box.y + (box.height - PICTURE.height) / 2,
    ...PICTURE,
  };
  const path = new URL(`${kind}-${atWork ? 'work' : 'rest'}.png`, FOLDER).pathname;
  await page.screenshot({ path, clip });
};

const asked = process.argv.slice(2);
const stand = await openStand();
mkdirSync(FOLDER, { recursive: true });
const { page } = await stand.freshPage(WINDOW);
await openApp(page, stand.address);
await page.addStyleTag({ content: BARE });
for (const kind of PICTURED.filter((one) => asked.length === 0 || asked.includes(one)))
  for (const atWork of [false, true]) await take(page, kind, atWork);
await stand.close();
