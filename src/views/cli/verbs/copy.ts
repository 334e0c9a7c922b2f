import { readFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { openStops } from '../../../inspection/index.ts';
import { createReviewData, fillReviewPage, SHOP_EXTRAS, type ShopExtra } from '../../../shop/index.ts';
import { BUILDS, freshen, TOP } from '../../ground.mjs';
import { badInput } from '../bad-input.ts';
import { openFlow } from '../open-flow.ts';
import type { Outcome } from '../outcome.ts';
import { readDesignFile } from '../read-design-file.ts';
import { writeFiles } from '../write-files.ts';

const isExtra = (word: string): word is ShopExtra => SHOP_EXTRAS.some((extra) => extra === word);

/** `cut-list,price`: what of the shop goes in; without the option nothing does, with it alone everything. */
const extrasOf = (said: string | boolean | undefined): readonly ShopExtra[] => {
  if (said === undefined || said === false) return [];
  if (said === true) return SHOP_EXTRAS;
  return said.split(',').map((part) => {
    const word = part.trim();
    if (isExtra(word)) return word;
    throw badInput(`--with-shop takes ${SHOP_EXTRAS.join(', ')}`, word);
  });
};

/** `copy DESIGN --to FILE.html`: one file for the reviewer, which opens without a network. */
export const copy = async (path: string, file: string, shop: string | boolean | undefined): Promise<Outcome> => {
  const withShop = extrasOf(shop);
  if (!/\.html?$/i.test(file)) throw badInput('--to takes a file that ends in .html', file);
  const design = readDesignFile(path);
  freshen(BUILDS.review, { toStandardError: true });
  const flow = await openFlow();
  const space = flow.space(design);
  const inspection = flow.inspection(design);
  const data = createReviewData({
    design,
    fitout: flow.fitOut(design),
    catalog: flow.catalog,
    rules: flow.rules(design),
    space: space.ok ? space.value : null,
    inspection,
    order: flow.openingOrder(design),
    withShop,
  });
  const content = fillReviewPage(readFileSync(join(TOP, BUILDS.review.main), 'utf8'), data);
  writeFiles(dirname(file), [{ path: basename(file), content }]);
  const stops = openStops(inspection).length;
  const bytes = new TextEncoder().encode(content).length;
  return {
    lines: [
      `${file}: review copy, ${data.stamp}, ${Math.round(bytes / 1000)} kB`,
      ...(stops > 0 ? [`${stops} stop${stops === 1 ? '' : 's'} not cleared: the copy says so`] : []),
    ],
    json: { files: [{ path: file, kind: 'copy', about: `review copy, ${data.stamp}` }], bytes, stops },
    exitCode: stops > 0 ? 1 : 0,
  };
};
