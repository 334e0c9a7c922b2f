import type { FittingByKind } from '../../design/index.ts';
import type { CarcassContext } from '../context.ts';
import { clampPiece, type Holder, holderRoom, solveHolder } from './holder.ts';
import type { FittingSolver } from './solver.ts';

type CylinderClamp = FittingByKind['cylinder-clamp'];

const holderOf = ({ clamp, clamps, lies }: CylinderClamp, context: CarcassContext): Holder => ({
  lying: lies,
  pieces: Array.from({ length: clamps }, (_, i) => clampPiece(context, `clamp-${i + 1}`, clamp)),
  grip: clamp,
});

/**
 * Band clamps shared out along one cylinder, each a saddle behind it with a band round it. The cylinder lies against
 * the saddles; one thinner or thicker than the clamps go round is said.
 */
export const cylinderClampSolver: FittingSolver<CylinderClamp> = {
  leastRoom: (fitting, { opening, counting }, context) =>
    holderRoom(holderOf(fitting, context), opening, counting, context),
  solve: (fitting, room, context) => solveHolder(holderOf(fitting, context), room, context),
};
