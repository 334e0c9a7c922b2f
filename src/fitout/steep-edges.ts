import { ROUNDING_MM } from '../base/index.ts';
import type { NodeId } from '../design/index.ts';
import type { CarcassContext } from './context.ts';
import type { Bevel, FitProblem } from './parts.ts';
import { badJoint } from './problem.ts';

const DEGREES = 180 / Math.PI;

/** The steepest edge of a board where the saw cannot tilt so far. */
export const steepEdges = (
  context: Pick<CarcassContext, 'rule'>,
  board: { readonly origin: NodeId; readonly name: string },
  bevels: readonly Bevel[],
): readonly FitProblem[] => {
  const most = context.rule('bevel-tilt-max');
  const steep = Math.max(0, ...bevels.map(({ tiltRad }) => tiltRad * DEGREES));
  if (steep <= most + ROUNDING_MM) return [];
  return [badJoint(board.origin, [`${board.name} would need the saw tilted by ${Math.round(steep)}°`], most, steep)];
};
