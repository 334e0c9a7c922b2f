import { distance, type Vec3 } from '../../../base/index.ts';
import type { FitOut } from '../../../fitout/index.ts';

/** How far from the line that its arm swings about the middle of a screen can be brought, at its height. */
export const tabletReach = (fitOut: FitOut, opening: string): number | null => {
  const swing = fitOut.movers.find(({ origin, id }) => origin === opening && id.endsWith('/arm-swing'));
  const turn = fitOut.movers.find(({ carriedBy }) => carriedBy !== null && carriedBy === swing?.id);
  if (swing?.motion.kind !== 'turn' || turn?.motion.kind !== 'turn') return null;
  const [x, y] = turn.motion.point;
  const at: Vec3 = [x, y, swing.motion.point[2]];
  return distance(at, swing.motion.point);
};
