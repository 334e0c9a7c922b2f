import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';

const AXE = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

/** What axe finds on the page as it stands, a line each. */
export const axeFaults = async (page: Page): Promise<readonly string[]> => {
  await page.addScriptTag({ path: AXE });
  const results = await page.evaluate(async () => {
    const { axe } = window as unknown as {
      axe: { run: (context: Document, options: object) => Promise<AxeResults> };
    };
    return axe.run(document, {
      runOnly: { type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] },
    });
  });
  return results.violations.flatMap(({ id, nodes }) =>
    nodes.map((node) => `${id}: ${node.target.join(' ')}: ${node.html.slice(0, 120)}`),
  );
};
