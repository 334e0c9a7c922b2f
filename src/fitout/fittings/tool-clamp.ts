import type { FittingByKind } from '../../design/index.ts';
import type { CarcassContext } from '../context.ts';
import { clampPiece, type Holder, holderRoom, solveHolder } from './holder.ts';
import type { FittingSolver } from './solver.ts';

type ToolClamp = FittingByKind['tool-clamp'];

const holderOf = ({ clamp, clamps, lies, headCover }: ToolClamp, context: CarcassContext): Holder => ({
  lying: lies,
  pieces: [
    ...Array.from({ length: clamps }, (_, i) => clampPiece(context, `clamp-${i + 1}`, clamp)),
    ...(headCover === null ? [] : [clampPiece(context, 'head-cover', headCover)]),
  ],
  // What a tool clamp goes round is a shaft, and gear says only how large the whole tool is.
  grip: null,
});

/**
 * Clamps shared out along the shaft of one long tool, and a pocket over its edge at the far end. The tool lies against
 * them; its shaft is for the shop to compare with the clamps.
 */
export const toolClampSolver: FittingSolver<ToolClamp> = {
  leastRoom: (fitting, { opening, counting }, context) =>
    holderRoom(holderOf(fitting, context), opening, counting, context),
  solve: (fitting, room, context) => solveHolder(holderOf(fitting, context), room, context),
};
