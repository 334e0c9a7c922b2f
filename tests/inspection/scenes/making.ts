import type { FitOut } from '../../../src/fitout/index.ts';
import { catalog, inspectScene, node, panel } from '../fixture.ts';

/** One part of a material of which one stock sheet is to be had. */
export const partScene = (
  length: number,
  width: number,
  grain: 'length' | 'any' = 'length',
  { lengthMm = 2440, widthMm = 1220, material = 'birch-ply-18' } = {},
) => {
  const record = catalog.materials.get(material);
  if (!record) throw new Error(`the catalog has no ${material}`);
  return inspectScene({
    survey: null,
    from: {
      ...catalog,
      materials: new Map([[material, { ...record, sheets: [{ name: 'sheet', lengthMm, widthMm, price: 1 }] }]]),
    },
    fitout: { panels: [panel('part', length, width, { grain, material })] },
  });
};

type Problem = FitOut['problems'][number];

export const TOO_SMALL: Problem = {
  code: 'too-small',
  at: node('opening-3'),
  axis: 'across',
  needMm: 320,
  haveMm: 280,
  because: ['slide 45 kg', 'box'],
};
export const UNKNOWN: Problem = {
  code: 'unknown-material',
  at: node('carcass-1'),
  axis: null,
  needMm: null,
  haveMm: null,
  because: ['oak-18'],
};

/** A fit-out of which nothing is left but what is wrong with it. */
export const problemScene = (problems: readonly Problem[]) => inspectScene({ survey: null, fitout: { problems } });
