import { boxAround, boxCorners, placed, type Vec3 } from '../../../../../base/index.ts';
import type { FitOut } from '../../../../../fitout/index.ts';

/** The corner of a solved carcass with the least coordinates in the vehicle, or null when it was not solved. */
export const lowCorner = (fitOut: FitOut, id: string): Vec3 | null => {
  const carcass = fitOut.carcasses.find((one) => one.id === id);
  if (!carcass) return null;
  const corners = boxCorners({ min: [0, 0, 0], max: carcass.size });
  return boxAround(corners.map((corner) => placed(carcass.pose, corner))).min;
};
