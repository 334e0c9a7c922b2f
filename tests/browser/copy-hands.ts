import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';

/** What was tapped in a copy, and what can be said of it. */
export const tappedCard = (page: Page): Locator => page.getByRole('region', { name: 'What you tapped' });

/** Finds an item of gear by its name, as a finger and a keyboard do. */
export const findGear = async (page: Page, name: string): Promise<void> => {
  await page.getByRole('searchbox').fill(name);
  await page.locator('.gear').last().getByRole('button', { name }).first().tap();
  await tappedCard(page).getByRole('heading', { name }).waitFor();
};

/** Opens what must be opened, one tap a motion: after each, as many are done as were tapped and no more. */
export const openInOrder = async (page: Page): Promise<number> => {
  const card = tappedCard(page);
  const steps = card.locator('.steps button');
  const count = await steps.count();
  for (let i = 0; i < count; i++) {
    await steps.nth(i).tap();
    expect(await card.locator('.steps [data-done="true"]').count()).toBe(i + 1);
  }
  return count;
};

/** Writes a note to what was tapped last. */
export const remarkOn = async (page: Page, words: string): Promise<void> => {
  await tappedCard(page).getByLabel('Say something about it').fill(words);
  await tappedCard(page).getByRole('button', { name: 'Add the note' }).tap();
};

interface AxNode {
  readonly ignored: boolean;
  readonly role?: { readonly value?: unknown };
  readonly name?: { readonly value?: unknown };
}

const NAMED: ReadonlySet<unknown> = new Set([
  'button',
  'checkbox',
  'combobox',
  'radio',
  'searchbox',
  'spinbutton',
  'textbox',
  'img',
  'image',
  'table',
  'link',
]);

/** Roles of everything on the page that a screen reader would announce without a name. */
export const namelessParts = async (page: Page): Promise<readonly string[]> => {
  const session = await page.context().newCDPSession(page);
  const { nodes } = (await session.send('Accessibility.getFullAXTree')) as { readonly nodes: readonly AxNode[] };
  await session.detach();
  return nodes
    .filter(
      ({ ignored, role, name }) =>
        !ignored && NAMED.has(role?.value) && (typeof name?.value !== 'string' || name.value.trim() === ''),
    )
    .map(({ role }) => String(role?.value));
};

/** What can be touched and is smaller than a finger in one of its directions; a box to tick counts with its line. */
export const smallTargets = (page: Page, leastPx: number): Promise<readonly string[]> =>
  page.evaluate((least) => {
    const parts = Array.from(document.querySelectorAll('button, a[href], input, textarea, select'));
    return parts.flatMap((part) => {
      const target = part.matches('[type="checkbox"]') ? (part.closest('label') ?? part) : part;
      const { width, height } = target.getBoundingClientRect();
      const shown = width > 0 && height > 0;
      return shown && (width < least || height < least)
        ? [`${part.tagName} ${target.textContent?.slice(0, 20)} ${Math.round(width)}×${Math.round(height)}`]
        : [];
    });
  }, leastPx);
