import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { printDesign } from '../../src/design/index.ts';
import { demoDesign } from '../golden/flow.ts';
import { hostileDesign } from '../laws/hostile.ts';
import { dropFile, goTo, STEPS } from './editor-hands.ts';
import { openApp, openStand, type Stand } from './harness.ts';

// A design whose every word would like to be more than a word, looked at in every step.
let stand: Stand;
beforeAll(async () => {
  stand = await openStand();
});
afterAll(async () => {
  await stand?.close();
});

describe('hostile words on screen', () => {
  it('are words in every step, and nothing of them runs', async () => {
    const { value: design } = hostileDesign(demoDesign('harrow-fell'));
    const { page, complaints } = await stand.freshPage({ width: 1440, height: 900 });
    const dialogs: string[] = [];
    page.on('dialog', (dialog) => {
      dialogs.push(dialog.message());
      void dialog.dismiss();
    });
    await page.addInitScript(() => {
      for (const name of ['showOpenFilePicker', 'showSaveFilePicker', 'showDirectoryPicker'])
        Reflect.deleteProperty(window, name);
    });
    await openApp(page, stand.address);
    // A hand on the page lets a browser ask for a file for five seconds only, too short on a busy machine: it is dropped.
    await page.getByText('Face map').waitFor();
    await dropFile(page, 'hostile.json', printDesign(design));
    await page.waitForFunction((title) => document.title.startsWith(title), design.title);
    const scripts = await page.locator('script').count();
    for (const step of STEPS) {
      await goTo(page, step);
      // Until the inspection has answered, and what follows from it is drawn.
      await page.waitForTimeout(1_500);
      expect(await page.title()).toBe(`${design.title} – Hatchwright`);
      expect(await page.locator('script').count()).toBe(scripts);
      expect(await page.locator('img[src="x"], #root iframe, #root script, #root b').count()).toBe(0);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(1440);
    }
    // The remarks of the reply stand in the Review step as they were written.
    const sheet = page.getByRole('region', { name: 'Review sheet' });
    expect(await sheet.textContent()).toContain('<script>document.title="run"</script>');
    expect(dialogs).toEqual([]);
    expect(complaints).toEqual([]);
  });
});
