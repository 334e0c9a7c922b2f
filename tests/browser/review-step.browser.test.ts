import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { printReply, type Reply, readReply } from '../../src/revision/index.ts';
import { findGear, namelessParts, openInOrder, remarkOn } from './copy-hands.ts';
import { goTo, pickDemo } from './editor-hands.ts';
import { openApp, openStand, type Stand } from './harness.ts';

// From the release of a letter to the chief's answer standing with its part.
const FIVE = ['Fire helmet', 'Hand lamp', 'Portable radio', 'Hazard guide books', 'Jump pack for first care'];
let stand: Stand;
const folder = mkdtempSync(join(tmpdir(), 'hatchwright-review-'));
beforeAll(async () => {
  stand = await openStand();
});
afterAll(async () => {
  await stand?.close();
  rmSync(folder, { recursive: true, force: true });
});

describe('the Review step', () => {
  it('releases a letter, saves the copy, brings the answer in and shows it with its part', async () => {
    const { page, complaints } = await stand.freshPage();
    // The sheets work on a machine that cannot draw in three dimensions, and the test is quicker there.
    await page.addInitScript(() => {
      HTMLCanvasElement.prototype.getContext = () => null;
      for (const name of ['showOpenFilePicker', 'showSaveFilePicker', 'showDirectoryPicker'])
        Reflect.deleteProperty(window, name);
    });
    await openApp(page, stand.address);
    await pickDemo(page, 'Quillmoor');
    await goTo(page, 'Review');
    const sheet = page.getByRole('region', { name: 'Review sheet' });
    await sheet.getByLabel('Your name').fill('R. Vane');
    await sheet.getByLabel('Why this revision').fill('for the chief');
    await sheet.getByRole('button', { name: 'Release the next revision' }).click();
    await sheet.getByText('Nothing has changed since A.').waitFor();

    const saving = page.waitForEvent('download');
    const saveCopy = sheet.getByRole('button', { name: 'Save the review copy' });
    await saveCopy.click();
    const copy = join(folder, 'copy.html');
    await (await saving).saveAs(copy);

    // The chief's side: from the file, without a network.
    const context = await stand.browser.newContext({
      viewport: { width: 1024, height: 768 },
      hasTouch: true,
      offline: true,
      acceptDownloads: true,
    });
    const tablet = await context.newPage();
    await tablet.goto(pathToFileURL(copy).href);
    for (const name of FIVE) {
      await findGear(tablet, name);
      expect(await openInOrder(tablet)).toBeGreaterThan(1);
      await remarkOn(tablet, `on the left, please: ${name}`);
    }
    await tablet.getByRole('button', { name: /^Reply/ }).tap();
    await tablet.getByLabel('Your name').fill('Chief Orr');
    await tablet.getByLabel('I approve revision A as shown here').check();
    const answering = tablet.waitForEvent('download');
    await tablet.getByRole('button', { name: 'Save the reply' }).tap();
    const reply = readReply(readFileSync(await (await answering).path(), 'utf8'));
    await context.close();
    if (!reply.ok) throw new Error(JSON.stringify(reply.error));

    // A second person, whose words would like to be more than words.
    const hostile: Reply = {
      ...reply.value,
      who: '<script>document.title="run"</script>',
      approved: false,
      remarks: reply.value.remarks.map((remark) => ({ ...remark, text: '</script><img src=x onerror=alert(1)>' })),
    };
    const files = [reply.value, hostile].map((each, i) => {
      const path = join(folder, `reply-${i}.json`);
      writeFileSync(path, printReply(each));
      return path;
    });
    await sheet.getByLabel('Reply files').setInputFiles(files);
    await sheet.getByText('10 of 10 open').waitFor();
    // Each remark stands with its part: a press on it chooses the part, which the list of gear shows as chosen.
    for (const name of FIVE) {
      await sheet.getByRole('button', { name: `${name}: on the left, please: ${name}` }).click();
      expect(await sheet.locator('li[data-selected="true"]').count()).toBe(2);
      await goTo(page, 'Gear');
      const row = page.locator('tr[data-selected="true"]');
      await row.getByRole('button', { name, exact: true }).waitFor();
      await goTo(page, 'Review');
    }
    const remark = sheet.getByRole('button', { name: /^Fire helmet: on the left, please/ });
    await remark.click();
    expect(await sheet.locator('li[data-selected="true"]').count()).toBe(2);
    // On the sheet, and on the paper that is printed from it.
    await sheet
      .getByText(/approved by Chief Orr/)
      .first()
      .waitFor();
    expect(await sheet.getByText(/approved by Chief Orr/).count()).toBe(2);
    expect(await sheet.getByText('</script><img src=x onerror=alert(1)>').count()).toBe(5);
    expect(await page.title()).not.toBe('run');

    const own = sheet.locator('li', { has: page.getByRole('button', { name: /^Fire helmet: on the left, please/ }) });
    await own.getByLabel('Not done because').fill('the radio stands there');
    await own.getByRole('button', { name: 'Not done', exact: true }).click();
    await own.getByText(/not done because the radio stands there \(R\. Vane/).waitFor();
    await sheet.getByText('9 of 10 open').waitFor();

    expect(await namelessParts(page)).toEqual([]);
    // Nothing of this changed the design: A is still what stands. A hurt reply is refused with words.
    await sheet.getByText('Nothing has changed since A.').waitFor();
    await sheet.getByLabel('or the text block of a message').fill('{"format":"else"}');
    await sheet.getByRole('button', { name: 'Bring the text in' }).click();
    await sheet
      .getByRole('alert')
      .getByText(/not a reply/)
      .waitFor();
    expect(complaints).toEqual([]);
  });
});
