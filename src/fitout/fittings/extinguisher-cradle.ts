import type { FittingByKind } from '../../design/index.ts';
import type { CarcassContext } from '../context.ts';
import { type Holder, holderRoom, saddleOf, solveHolder } from './holder.ts';
import type { FittingSolver } from './solver.ts';

type ExtinguisherCradle = FittingByKind['extinguisher-cradle'];

/** A cradle's record is measured as it stands: length across, width out of the wall, height up. */
const holderOf = ({ cradle, mounting }: ExtinguisherCradle, context: CarcassContext): Holder => {
  const record = context.catalog.hardware.get(cradle);
  const [across, out, along] = record?.sizeMm ?? [0, 0, 0];
  const piece = { role: 'cradle', item: cradle, across, along, out, saddle: saddleOf(record, out) };
  return { lying: `upright-${mounting}`, pieces: [piece], grip: cradle };
};

/**
 * A cradle on the back or on a side that holds one extinguisher upright. What of it stands behind the extinguisher is
 * solid; its bands go round. The extinguisher stands on the floor of the opening against it and comes straight out.
 */
export const extinguisherCradleSolver: FittingSolver<ExtinguisherCradle> = {
  leastRoom: (fitting, { opening, counting }, context) =>
    holderRoom(holderOf(fitting, context), opening, counting, context),
  solve: (fitting, room, context) => solveHolder(holderOf(fitting, context), room, context),
};
