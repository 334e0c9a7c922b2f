import { after, HOME, type Pose, scale, shift, turnAbout } from '../base/index.ts';
import type { Mover } from '../fitout/index.ts';

/** What is needed of a mover to place what it carries. */
export type Moving = Pick<Mover, 'id' | 'motion' | 'carriedBy'>;

/** The displacement of a motion at a share of its travel, its carrier stowed. Vehicle axes. */
export const motionPose = (motion: Mover['motion'], share: number): Pose =>
  motion.kind === 'slide'
    ? shift(scale(motion.direction, motion.travel * share))
    : turnAbout(motion.point, motion.axis, motion.travelRad * share);

/**
 * Where each mover stands: for a body of it, world = pose · stowed. A mover that is carried goes with its carrier
 * first; movers that carry each other in a circle, which no solved cabinet has but a hurt file may ask for, stand
 * still.
 */
export const moverPoses = (
  movers: readonly Moving[],
  shares: Readonly<Record<string, number>>,
): ReadonlyMap<string, Pose> => {
  const byId = new Map(movers.map((mover) => [mover.id, mover]));
  const poses = new Map<string, Pose>();
  const poseOf = (mover: Moving, above: readonly string[]): Pose => {
    const known = poses.get(mover.id);
    if (known) return known;
    const carrier = mover.carriedBy === null ? undefined : byId.get(mover.carriedBy);
    const inCircle = carrier !== undefined && above.includes(carrier.id);
    const carried = carrier && !inCircle ? poseOf(carrier, [...above, mover.id]) : HOME;
    const pose = inCircle ? HOME : after(carried, motionPose(mover.motion, shares[mover.id] ?? 0));
    poses.set(mover.id, pose);
    return pose;
  };
  for (const mover of movers) poseOf(mover, [mover.id]);
  return poses;
};
