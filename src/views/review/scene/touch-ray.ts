import { after, HOME, inverse, type Pose, placed, turned, type Vec3 } from '../../../base/index.ts';
import type { ReviewData, TouchBox } from '../../../shop/index.ts';

export interface Ray {
  readonly from: Vec3;
  readonly way: Vec3;
}

/** Where along the ray it enters the box, or null where it passes by. A ray that begins inside enters at 0. */
const entry = ({ from, way }: Ray, low: Vec3, size: Vec3): number | null => {
  let [near, far] = [0, Number.POSITIVE_INFINITY];
  for (const axis of [0, 1, 2] as const) {
    const [min, max] = [low[axis], low[axis] + size[axis]];
    if (way[axis] === 0) {
      if (from[axis] < min || from[axis] > max) return null;
      continue;
    }
    const [a, b] = [(min - from[axis]) / way[axis], (max - from[axis]) / way[axis]];
    near = Math.max(near, Math.min(a, b));
    far = Math.min(far, Math.max(a, b));
  }
  return near <= far ? near : null;
};

/** Where a box stands now. */
export const standing = (box: TouchBox, poses: ReadonlyMap<string, Pose>): Pose =>
  after(box.mover === null ? HOME : (poses.get(box.mover) ?? HOME), box.pose);

/** True when nothing of the cabinet has to be opened before the gear can be seen. */
const uncovered = (data: ReviewData, id: string, shares: Readonly<Record<string, number>>): boolean => {
  const closures = new Set(data.scene.movers.filter(({ closure }) => closure).map((mover) => mover.id));
  const own = data.gear.find((gear) => gear.id === id)?.shares ?? {};
  return Object.entries(own).every(
    ([mover, share]) => closures.has(mover) || share === 0 || (shares[mover] ?? 0) > share / 2,
  );
};

/** What a finger meets: the nearest gear that is uncovered, or else the nearest opening. */
export const touched = (
  data: ReviewData,
  ray: Ray,
  shares: Readonly<Record<string, number>>,
  poses: ReadonlyMap<string, Pose>,
): string | null => {
  const hits = data.scene.touch.flatMap((box) => {
    const back = inverse(standing(box, poses));
    const at = entry({ from: placed(back, ray.from), way: turned(back, ray.way) }, box.from, box.size);
    return at === null ? [] : [{ box, at }];
  });
  hits.sort((a, b) => a.at - b.at);
  const gear = hits.find(({ box }) => box.kind === 'gear' && uncovered(data, box.id, shares));
  return (gear ?? hits[0])?.box.id ?? null;
};
