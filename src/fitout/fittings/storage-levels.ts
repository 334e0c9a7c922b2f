import { ROUNDING_MM } from '../../base/index.ts';
import type { Material } from '../../catalog/index.ts';
import type { FittingByKind } from '../../design/index.ts';
import { UP } from '../axes.ts';
import type { CarcassContext } from '../context.ts';
import { matThick } from '../mat.ts';
import type { FitProblem } from '../parts.ts';
import { mmWords, rulesFight } from '../problem.ts';
import type { Room } from '../solved.ts';

type OpenStorage = FittingByKind['open-storage'];

/** One room of a bay: what gear stands on and the underside above it, over the floor of the opening. */
export interface Level {
  readonly from: number;
  readonly to: number;
}

const byHeight = (list: readonly number[]): readonly number[] => list.toSorted((a, b) => a - b);

/** The hole of a row, counted from the floor, that brings the top of a shelf nearest to a height. */
export const holeBelow = (upMm: number, thickness: number, { rule }: Pick<CarcassContext, 'rule'>): number => {
  const pin = rule('shelf-pin-hole') / 2;
  return Math.max(1, Math.round((upMm - thickness - pin) / rule('shelf-pin-pitch')));
};

/** Upper faces of the shelves over the floor from the bottom up: as stated, or at the nearest hole. */
export const shelfTops = (fitting: OpenStorage, sheet: Material, context: CarcassContext): readonly number[] => {
  if (fitting.shelves === 'fixed') return byHeight(fitting.shelvesUpMm);
  const { rule } = context;
  const over = rule('shelf-pin-hole') / 2 + sheet.thicknessMm;
  return byHeight(
    fitting.shelvesUpMm.map((up) => holeBelow(up, sheet.thicknessMm, context) * rule('shelf-pin-pitch') + over),
  );
};

/** The rooms between the shelves from the bottom up; one that two shelves leave no height for has none. */
export const levelsOf = (
  fitting: OpenStorage,
  sheet: Material,
  context: CarcassContext,
  height: number,
): readonly Level[] => {
  const floors = [matThick(context, fitting.mat), ...shelfTops(fitting, sheet, context)];
  return floors.map((from, i) => {
    const above = floors[i + 1];
    return { from, to: Math.max(from, above === undefined ? height : above - sheet.thicknessMm) };
  });
};

export const isLevel = ({ from, to }: Level): boolean => to - from > ROUNDING_MM;

/** Shelves whose thickness does not fit between their neighbours. */
export const crowdedShelves = (
  fitting: OpenStorage,
  sheet: Material,
  context: CarcassContext,
  at: Room['opening']['id'],
): readonly FitProblem[] => {
  const tops = shelfTops(fitting, sheet, context);
  return levelsOf(fitting, sheet, context, Infinity).flatMap((level, i) => {
    const above = tops[i];
    if (above === undefined || isLevel(level)) return [];
    const have = above - level.from;
    return [
      rulesFight(at, UP, sheet.thicknessMm, have, [
        `shelf ${i + 1} at ${mmWords(above)}`,
        `${mmWords(have)} above what is below`,
      ]),
    ];
  });
};
