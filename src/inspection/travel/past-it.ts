import type { Box } from '../../base/index.ts';
import type { Motion } from '../../bodies/index.ts';
import type { FindingFacts } from '../finding.ts';

const AXES = ['x', 'y', 'z'] as const;
/** From this share on a slide runs along an axis, so that nothing is gained by moving that way. */
const ALONG = 0.5;

/**
 * How far a body would have to stand off along each axis to pass what it runs into on its way, and which way: over it,
 * under it, to either side. Only what sticks in from that side is passed by moving off it; the rest is left out.
 */
export const pastFacts = (motion: Motion, moving: Box | undefined, met: Box): FindingFacts => {
  if (!moving) return {};
  return Object.fromEntries(
    AXES.flatMap((axis, i): readonly (readonly [string, number])[] => {
      // The room that a turn takes on the axes it turns in is not that of the stowed body.
      const still =
        motion.kind === 'slide' ? Math.abs(motion.along[i] ?? 0) < ALONG : Math.abs(motion.axis[i] ?? 0) > ALONG;
      if (!still && i !== 2) return [];
      const [low, high] = [moving.min[i] ?? 0, moving.max[i] ?? 0];
      const [under, over] = [met.min[i] ?? 0, met.max[i] ?? 0];
      return [
        ...(over < high && over > low ? [[`past-${axis}-plus`, over - low] as const] : []),
        ...(under > low && under < high ? [[`past-${axis}-minus`, high - under] as const] : []),
      ];
    }),
  );
};
