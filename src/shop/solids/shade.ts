import { inverse, type Pose, placed, turned, type Vec3 } from '../../base/index.ts';

/** Light that still reaches the back of a carcass, as a share of that at its face. */
const BACK_LIGHT = 0.52;
/** A face within this of the outside of its carcass is an outside face: sheets are never thinner than that. */
const OUTSIDE_MM = 0.5;

/**
 * How bright things inside a carcass are: less towards the back, as light comes in through the open face. Outside
 * faces and the front edges keep their full light. Cheaper than real shadows and the same from every side.
 */
export const carcassShade = (pose: Pose, size: Vec3): ((point: Vec3, normal: Vec3) => number) => {
  const back = inverse(pose);
  return (point, normal) => {
    const p = placed(back, point);
    const n = turned(back, normal);
    for (const axis of [0, 1, 2] as const) {
      if (p[axis] < OUTSIDE_MM && n[axis] < -0.5) return 1;
      if (p[axis] > size[axis] - OUTSIDE_MM && n[axis] > 0.5) return 1;
    }
    const deep = Math.min(1, Math.max(0, p[1] / size[1]));
    return 1 - (1 - BACK_LIGHT) * deep;
  };
};

/** Light inside a box that moves: faces that look up or inward get a little less than its front. */
export const boxShade = (_point: Vec3, normal: Vec3): number => (normal[2] > 0.5 ? 0.86 : 0.96);

export const fullLight = (): number => 1;
