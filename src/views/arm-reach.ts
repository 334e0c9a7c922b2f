import { distance, type Vec3 } from '../base/index.ts';
import type { FitOut } from '../fitout/index.ts';

/** The sphere that the middle of a screen on an arm can be brought to: round the line that the arm swings about. */
export interface ArmReach {
  readonly centre: Vec3;
  readonly radiusMm: number;
}

/** How far the screen in an opening reaches, at its own height; null where no screen hangs on an arm. */
export const armReach = (fitOut: FitOut, opening: string): ArmReach | null => {
  const swing = fitOut.movers.find(({ origin, id }) => origin === opening && id.endsWith('/arm-swing'));
  const turn = fitOut.movers.find(({ carriedBy }) => carriedBy !== null && carriedBy === swing?.id);
  const screen = fitOut.devices.find(({ origin }) => origin === opening);
  if (swing?.motion.kind !== 'turn' || turn?.motion.kind !== 'turn') return null;
  const [x, y, z] = swing.motion.point;
  const up = screen?.at[2] ?? z;
  const [toX, toY] = turn.motion.point;
  return { centre: [x, y, up], radiusMm: distance([toX, toY, up], [x, y, up]) };
};
