// What a person does in the editor's window, over and over.
import type { Page } from 'playwright-core';

export const STEPS = ['Survey', 'Gear', 'Cabinet', 'Inspect', 'Shop', 'Review'] as const;
export type Step = (typeof STEPS)[number];

/** Opens a demo by way of the list of designs; waits until the list has gone, for the first visit shows a demo already. */
export const pickDemo = async (page: Page, name = 'Harrow fell'): Promise<void> => {
  await page.getByRole('button', { name: 'Designs…' }).click();
  // Its line about the design belongs to the button's name.
  await page.getByRole('button', { name: new RegExp(`^${name}`) }).click();
  await page.getByRole('dialog', { name: 'Designs' }).waitFor({ state: 'detached' });
};

/** Goes to a step and waits for its sheet. */
export const goTo = async (page: Page, step: Step): Promise<void> => {
  await page
    .locator('nav')
    .getByRole('button', { name: new RegExp(step) })
    .click();
  await page.getByRole('region', { name: `${step} sheet` }).waitFor();
};

/** Drops a file on the window, as from the folder it lies in. */
export const dropFile = (page: Page, name: string, json: string): Promise<void> =>
  page.evaluate(
    ([fileName, text]) => {
      const data = new DataTransfer();
      data.items.add(new File([text], fileName, { type: 'application/json' }));
      window.dispatchEvent(new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true }));
    },
    [name, json] as const,
  );
