import type { Vec2, Vec3 } from '../base/index.ts';
import { markId, OPENING_LEVELS, type Side } from './plan/plan-marks.ts';

/**
 * The clear opening as the readings of the plan's opening marks make it, [to the left, up], up the right
 * side and down the left; null while one of the marks is not held.
 */
export const openingFromMarks = (points: ReadonlyMap<string, Vec3>): readonly Vec2[] | null => {
  const chain = (side: Side): readonly Vec2[] =>
    OPENING_LEVELS.flatMap((level): readonly Vec2[] => {
      const at = points.get(markId('opening', level, side));
      return at ? [[at[1], at[2]]] : [];
    });
  const [left, right] = [chain('left'), chain('right')];
  return left.length < OPENING_LEVELS.length || right.length < OPENING_LEVELS.length
    ? null
    : [...right, ...left.toReversed()];
};
