import { seededRandom } from '../../../src/base/index.ts';
import { KEEP_NOTHING, type LayoutJob, type LayoutPart, NO_TRIM, trimAll } from '../../../src/shop/layout/index.ts';

/** A plain job: one sheet size without end, no kerf, no trim. */
export const plainJob = (parts: readonly LayoutPart[], more: Partial<LayoutJob> = {}): LayoutJob => ({
  parts,
  stock: [{ name: 'board', length: 2440, width: 1220, quantity: null, price: 80 }],
  cut: 'saw',
  kerf: 0,
  trim: NO_TRIM,
  stages: 'any',
  keep: KEEP_NOTHING,
  ...more,
});

export const part = (
  mark: string,
  length: number,
  width: number,
  quantity = 1,
  more: Partial<LayoutPart> = {},
): LayoutPart => ({
  mark,
  length,
  width,
  quantity,
  grain: 'any',
  ...more,
});

/**
 * A cabinet job as a shop would send it: sides, shelves, fronts and drawer parts in runs of equal size, most of them
 * locked to the grain, sizes in whole millimetres; 150 parts of about 35 sizes.
 */
export const cabinetJob = (seed: number, more: Partial<LayoutJob> = {}): LayoutJob => {
  const random = seededRandom(seed);
  const between = (least: number, most: number): number => least + Math.floor(random() * (most - least + 1));
  const parts: LayoutPart[] = [];
  let count = 0;
  while (count < 150) {
    const quantity = Math.min(150 - count, between(1, 8));
    const [length, width] =
      random() < 0.4 ? [between(300, 1100), between(250, 600)] : [between(150, 700), between(80, 400)];
    const grain = random() < 0.6 ? 'length' : 'any';
    parts.push(part(`P${parts.length + 1}`, length, width, quantity, { grain }));
    count += quantity;
  }
  return plainJob(parts, {
    kerf: 3,
    trim: trimAll(10),
    keep: { minSide: 250, minAreaMm2: 150_000, valueShare: 0.5 },
    ...more,
  });
};
