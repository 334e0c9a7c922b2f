import type { CutForest } from './cut-forest.ts';
import type { CutNode } from './cut-node.ts';
import type { SearchRandom } from './search-random.ts';
import type { SearchSettings } from './settings.ts';

/**
 * Takes some pieces out: each removal picks a placed piece and, with a fixed chance a step, the rectangle around it
 * instead, up to the whole sheet.
 */
export const ruin = (forest: CutForest, settings: SearchSettings, random: SearchRandom): void => {
  const pieces = forest.places.length;
  // Geometric lengths: mostly small repairs, now and then a large one.
  let removals = 1 + Math.floor(-Math.log(1 - random.next()) * settings.removals);
  for (; removals > 0; removals--) {
    let node = forest.places[random.below(pieces)] as CutNode | null;
    if (node === null) continue;
    while (node.parent !== null && random.next() < settings.climb) node = node.parent;
    forest.clear(node);
  }
};
