import type { Vec3 } from '../../../../base/index.ts';

/** A block in a room: across, deep, up from its near low left corner. */
export interface Block {
  readonly from: Vec3;
  readonly size: Vec3;
}

/** True when the blocks come nearer to each other than `gap` on every axis but up; standing on one another counts as clear. */
const tooClose = (a: Block, b: Block, gap: number): boolean =>
  ([0, 1, 2] as const).every((axis) => {
    const room = axis === 2 ? 0 : gap;
    return a.from[axis] < b.from[axis] + b.size[axis] + room && b.from[axis] < a.from[axis] + a.size[axis] + room;
  });

const sorted = (values: readonly number[]): readonly number[] => [...new Set(values)].toSorted((a, b) => a - b);

/**
 * The first place on the floor of a room where a block of `size` stands free: from the face to the back, in each row
 * from the left to the right, `gap` from walls and from what stands there. Null where there is none, or where the
 * block is too tall for the room.
 */
export const firstFreeSpot = (room: Vec3, standing: readonly Block[], size: Vec3, gap: number): Vec3 | null => {
  if (size[2] > room[2]) return null;
  const places = (axis: 0 | 1): readonly number[] =>
    sorted([gap, ...standing.map((block) => block.from[axis] + block.size[axis] + gap)]).filter(
      (at) => at + size[axis] + gap <= room[axis],
    );
  for (const deep of places(1))
    for (const across of places(0)) {
      const from: Vec3 = [across, deep, 0];
      if (!standing.some((other) => tooClose({ from, size }, other, gap))) return from;
    }
  return null;
};
