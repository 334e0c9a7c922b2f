import type { Vec3 } from '../../base/index.ts';
import type { Opening } from '../../design/index.ts';
import type { CarcassContext, Counting } from '../context.ts';
import type { FittingParts, Room } from '../solved.ts';

/** What one kind of fitting knows of being built. */
export interface FittingSolver<F> {
  /** Least room: across × deep × up. A fitting given exactly this room can be built in it. */
  leastRoom(
    fitting: F,
    where: { readonly opening: Opening; readonly counting: Counting },
    context: CarcassContext,
  ): Vec3;
  /**
   * Everything of the fitting in its room, in carcass coordinates. The room is never smaller than the least; where
   * it was (`room.fits` is false) nothing may be joined to the walls.
   */
  solve(fitting: F, room: Room, context: CarcassContext): FittingParts;
}
