import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { changeCarcass, changeGear, printDesign } from '../../src/design/index.ts';
import { demoDesign } from '../golden/flow.ts';
import { goTo, pickDemo } from './editor-hands.ts';
import { openApp, openStand, type Stand } from './harness.ts';

let stand: Stand;
const folder = mkdtempSync(join(tmpdir(), 'hatchwright-compare-'));
beforeAll(async () => {
  stand = await openStand();
});
afterAll(async () => {
  await stand?.close();
  rmSync(folder, { recursive: true, force: true });
});

/** How many dots of two pictures of one size differ by more than the noise of smoothed edges. */
const differingDots = (page: Page, label: string): Promise<number> =>
  page.evaluate(async (named) => {
    const images = Array.from(document.querySelectorAll<HTMLImageElement>(`img[alt^="${named}"]`));
    const dots = await Promise.all(
      images.map(async (image) => {
        await image.decode();
        const canvas = new OffscreenCanvas(image.naturalWidth, image.naturalHeight);
        const pen = canvas.getContext('2d');
        pen?.drawImage(image, 0, 0);
        return pen?.getImageData(0, 0, canvas.width, canvas.height).data ?? new Uint8ClampedArray();
      }),
    );
    const [before, after] = dots;
    let count = 0;
    for (let i = 0; before && after && i < before.length; i += 4)
      if (Math.abs((before[i] ?? 0) - (after[i] ?? 0)) > 40) count++;
    return count;
  }, label);

describe('comparing in the window', () => {
  it('tells two designs apart in words, by number, in the bay and on the face', async () => {
    // The file is the earlier one: its first carcass 20 mm narrower, one item 2 kg lighter.
    const now = demoDesign('quillmoor');
    const [carcass] = now.cabinet.carcasses;
    const gear = now.gear.find(({ place }) => place !== null);
    if (!carcass || !gear) throw new Error('the demo is too small');
    const earlier = changeGear(
      changeCarcass(now, carcass.id, { size: { ...carcass.size, width: carcass.size.width - 20 } }),
      gear.id,
      { massKg: gear.massKg + 2 },
    );
    const file = join(folder, 'earlier.json');
    writeFileSync(file, printDesign(earlier));

    const { page, complaints } = await stand.freshPage({ width: 1440, height: 900 });
    await openApp(page, stand.address);
    await pickDemo(page, 'Quillmoor');
    await goTo(page, 'Review');
    const part = page.getByRole('region', { name: 'What changed' });
    await part.getByText('Release a letter, or choose another file').waitFor();
    await part.getByLabel('or compare with another design file').setInputFiles(file);

    // In words: a line a change; a press chooses the part.
    await part.getByRole('button', { name: new RegExp(`^${gear.name}: changed, mass`, 'i') }).click();
    await part.getByRole('button', { name: /another size, width/ }).waitFor();

    // By number, in the units of the present design.
    const table = part.getByRole('table', { name: 'Figures before and after' });
    await table.waitFor();
    const cells = await table
      .getByRole('row', { name: /^Gear / })
      .getByRole('cell')
      .allTextContents();
    expect(cells.at(-1)).toBe('−2.0 kg');
    expect(await table.getByRole('row', { name: /^Front axle/ }).count()).toBeGreaterThan(0);
    await part.getByRole('button', { name: 'all figures' }).click();
    for (const figure of [/^Panels to cut/, /^Sheets/, /^Price/, /^Least margin, gap/])
      expect(await table.getByRole('row', { name: figure }).count()).toBe(1);

    // In pictures: two, from one place, and not the same.
    await part.getByRole('img', { name: /^The bay, Now/ }).waitFor();
    expect(await differingDots(page, 'The bay')).toBeGreaterThan(500);
    const faces = part.getByRole('img', { name: /^Face of/ });
    expect(await faces.count()).toBe(2);

    // The same design again: nothing to tell.
    writeFileSync(file, printDesign(now));
    await part.getByLabel('or compare with another design file').setInputFiles(file);
    await part.getByText('Nothing.').waitFor();

    writeFileSync(file, '{"format":"else"}');
    await part.getByLabel('or compare with another design file').setInputFiles(file);
    await part.getByRole('alert').waitFor();
    expect(complaints).toEqual([]);
  });
});
