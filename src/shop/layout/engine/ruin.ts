import type { CutForest } from './cut-forest.ts';
import type { CutNode } from './cut-node.ts';
import type { SearchRandom } from './search-random.ts';
import type { SearchSettings } from './settings.ts';
import { rootOf } from './solution.ts';

/** Sheets that go at a time: where few large pieces share a sheet, only two together can change pieces for the better. */
const SHEETS_AT_ONCE = 2;
/** A piece that is out already is drawn in vain; so many draws in all. */
const MOST_DRAWS = 12;

const takeSheets = (forest: CutForest, random: SearchRandom): void => {
  let left = SHEETS_AT_ONCE;
  for (let draws = 0; left > 0 && draws < MOST_DRAWS; draws++) {
    const node = forest.places[random.below(forest.places.length)] as CutNode | null;
    if (node === null) continue;
    forest.clear(rootOf(node));
    left--;
  }
};

/**
 * Takes some pieces out. Mostly each removal picks a placed piece and, with a fixed chance a step, the rectangle around
 * it instead, up to the whole sheet; with chance `wholeSheets` two whole sheets go at once.
 */
export const ruin = (
  forest: CutForest,
  { removals: mean, climb }: Pick<SearchSettings, 'removals' | 'climb'>,
  wholeSheets: number,
  random: SearchRandom,
): void => {
  if (wholeSheets > 0 && random.next() < wholeSheets) {
    takeSheets(forest, random);
    return;
  }
  const pieces = forest.places.length;
  // Geometric lengths: mostly small repairs, now and then a large one.
  let removals = 1 + Math.floor(-Math.log(1 - random.next()) * mean);
  for (; removals > 0; removals--) {
    let node = forest.places[random.below(pieces)] as CutNode | null;
    if (node === null) continue;
    while (node.parent !== null && random.next() < climb) node = node.parent;
    forest.clear(node);
  }
};
