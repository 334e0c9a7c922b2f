import type { Box } from '../../../base/index.ts';
import type { HalfSpace } from './pick/pick.ts';

/** Sides that can be opened, in the words of the chips. */
export const CUT_SIDES = ['left', 'right', 'top', 'rear', 'front'] as const;
export type CutSide = (typeof CUT_SIDES)[number];

/** How far a side is opened, 0 closed to 1 all of it. */
export interface CutAway {
  readonly side: CutSide;
  readonly share: number;
}

interface Cut {
  readonly axis: 0 | 1 | 2;
  readonly sign: 1 | -1;
}

/** Outward directions of the sides: x forward, y left, z up. */
const CUTS: Readonly<Record<CutSide, Cut>> = {
  left: { axis: 1, sign: 1 },
  right: { axis: 1, sign: -1 },
  top: { axis: 2, sign: 1 },
  rear: { axis: 0, sign: -1 },
  front: { axis: 0, sign: 1 },
};

/** Room beyond the cargo space that a cut begins in, so that a share of nothing cuts nothing. */
const BEYOND_MM = 40;

/** What is left of the scene when a side is opened; null when nothing is cut. */
export const keptOf = (cut: CutAway | null, room: Box): HalfSpace | null => {
  if (!cut || cut.share <= 0) return null;
  const { axis, sign } = CUTS[cut.side];
  const [low, high] = [room.min[axis] - BEYOND_MM, room.max[axis] + BEYOND_MM];
  const outer = sign > 0 ? high : -low;
  const normal: [number, number, number] = [0, 0, 0];
  normal[axis] = sign;
  return { normal, reach: outer - cut.share * (high - low) };
};
