import type { Vec3 } from './vectors.ts';

/** An axis-aligned box in whatever frame its owner states; `min` ≤ `max` on every axis. */
export interface Box {
  readonly min: Vec3;
  readonly max: Vec3;
}

export const boxAt = (min: Vec3, size: Vec3): Box => ({
  min,
  max: [min[0] + size[0], min[1] + size[1], min[2] + size[2]],
});

export const boxSize = (box: Box): Vec3 => [box.max[0] - box.min[0], box.max[1] - box.min[1], box.max[2] - box.min[2]];

export const boxMiddle = (box: Box): Vec3 => [
  (box.min[0] + box.max[0]) / 2,
  (box.min[1] + box.max[1]) / 2,
  (box.min[2] + box.max[2]) / 2,
];

export const boxVolume = (box: Box): number => {
  const [x, y, z] = boxSize(box);
  return x * y * z;
};

/** The smallest box around the points. Throws on an empty list. */
export const boxAround = (points: readonly Vec3[]): Box => {
  if (points.length === 0) throw new RangeError('boxAround: no points');
  const min: [number, number, number] = [Infinity, Infinity, Infinity];
  const max: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (const p of points)
    for (const axis of [0, 1, 2] as const) {
      min[axis] = Math.min(min[axis], p[axis]);
      max[axis] = Math.max(max[axis], p[axis]);
    }
  return { min, max };
};

export const boxUnion = (a: Box, b: Box): Box => boxAround([a.min, a.max, b.min, b.max]);

export const boxCorners = ({ min, max }: Box): readonly Vec3[] => [
  [min[0], min[1], min[2]],
  [max[0], min[1], min[2]],
  [max[0], max[1], min[2]],
  [min[0], max[1], min[2]],
  [min[0], min[1], max[2]],
  [max[0], min[1], max[2]],
  [max[0], max[1], max[2]],
  [min[0], max[1], max[2]],
];

/** The box grown by `margin` on every side; a negative margin shrinks it and may turn it inside out. */
export const boxGrown = (box: Box, margin: number): Box => ({
  min: [box.min[0] - margin, box.min[1] - margin, box.min[2] - margin],
  max: [box.max[0] + margin, box.max[1] + margin, box.max[2] + margin],
});

/** True when the boxes share a point; touching counts. */
export const boxesMeet = (a: Box, b: Box): boolean =>
  a.min[0] <= b.max[0] &&
  b.min[0] <= a.max[0] &&
  a.min[1] <= b.max[1] &&
  b.min[1] <= a.max[1] &&
  a.min[2] <= b.max[2] &&
  b.min[2] <= a.max[2];

/** Straight-line gap between two boxes; 0 when they meet. */
export const boxGap = (a: Box, b: Box): number => {
  let square = 0;
  for (const axis of [0, 1, 2] as const) {
    const apart = Math.max(a.min[axis] - b.max[axis], b.min[axis] - a.max[axis], 0);
    square += apart * apart;
  }
  return Math.sqrt(square);
};
