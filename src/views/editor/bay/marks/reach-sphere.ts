import type { Vec3 } from '../../../../base/index.ts';
import type { FitOut } from '../../../../fitout/index.ts';
import type { LineData } from '../../../../shop/index.ts';
import { armReach } from '../../../arm-reach.ts';
import type { LitLines } from './lit-lines.ts';

const STEPS = 48;

/** Points of a circle of radius 1 about each axis. */
const CIRCLES: readonly ((turn: number) => Vec3)[] = [
  (turn) => [Math.cos(turn), Math.sin(turn), 0],
  (turn) => [Math.cos(turn), 0, Math.sin(turn)],
  (turn) => [0, Math.cos(turn), Math.sin(turn)],
];

/** The sphere that the screen on an arm can be brought to, as three circles; nothing for any other opening. */
export const reachSphere = (fitOut: FitOut, opening: string): readonly LitLines[] => {
  const reach = armReach(fitOut, opening);
  if (!reach) return [];
  const { centre, radiusMm } = reach;
  const at = ([x, y, z]: Vec3): Vec3 => [centre[0] + radiusMm * x, centre[1] + radiusMm * y, centre[2] + radiusMm * z];
  const lines: LineData = CIRCLES.flatMap((point) =>
    Array.from({ length: STEPS }, (_, i) => [
      ...at(point((2 * Math.PI * i) / STEPS)),
      ...at(point((2 * Math.PI * (i + 1)) / STEPS)),
    ]).flat(),
  );
  return [{ mover: null, lines }];
};
