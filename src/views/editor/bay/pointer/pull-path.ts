import { after, HOME, type Pose, placed, type Vec3 } from '../../../../base/index.ts';
import type { Mover } from '../../../../fitout/index.ts';
import { motionPose } from '../../../motion-pose.ts';

/** Where a point of a mover stands at a share of its own travel, its carrier standing as it does now. */
export const pullPath = (
  mover: Pick<Mover, 'motion' | 'carriedBy'>,
  poses: ReadonlyMap<string, Pose>,
  point: Vec3,
): ((share: number) => Vec3) => {
  const carrier = (mover.carriedBy !== null && poses.get(mover.carriedBy)) || HOME;
  return (share) => placed(after(carrier, motionPose(mover.motion, share)), point);
};
