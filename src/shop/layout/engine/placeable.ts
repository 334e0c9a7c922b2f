import { CutForest } from './cut-forest.ts';
import { findPlace, Place } from './place.ts';
import type { Piece, Problem } from './problem.ts';
import { SearchRandom } from './search-random.ts';

/** For each piece: whether an empty sheet of some kind takes it within the saw's limits and stages. */
export const placeable = (problem: Problem): readonly boolean[] => {
  const byType = new Map<number, boolean>();
  const answer = (piece: Piece): boolean => {
    const known = byType.get(piece.type);
    if (known !== undefined) return known;
    const can = problem.sheets.some((_, kind) => {
      const forest = new CutForest({ ...problem, pieces: [piece] });
      const place = new Place();
      forest.begin();
      forest.open(kind);
      findPlace(forest, 0, 0, new SearchRandom(0), place);
      return place.rest !== null;
    });
    byType.set(piece.type, can);
    return can;
  };
  return problem.pieces.map(answer);
};
