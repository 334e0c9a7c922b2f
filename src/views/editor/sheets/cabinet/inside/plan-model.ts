import { after, boxAround, inverse, type Pose, placed, type Vec3 } from '../../../../../base/index.ts';
import type { NodeId } from '../../../../../design/index.ts';
import type { FitOut } from '../../../../../fitout/index.ts';

type Room = FitOut['rooms'][number];

/** A rectangle of the plan: across from the left, deep from the face, millimetres. */
export interface PlanRect {
  readonly across: number;
  readonly deep: number;
  readonly width: number;
  readonly depth: number;
}

export interface PlanRoom {
  readonly opening: NodeId;
  readonly level: number;
  readonly rect: PlanRect;
  /** Across × deep × up. */
  readonly size: Vec3;
}

export interface PlanGear {
  readonly gear: NodeId;
  readonly opening: NodeId;
  readonly rect: PlanRect;
  /** Where it stands in its room, and how high it reaches. */
  readonly from: Vec3;
  readonly size: Vec3;
}

/** Rooms of one level seen from above, with the gear that stands in them. */
export interface Plan {
  readonly bounds: PlanRect;
  readonly rooms: readonly PlanRoom[];
  readonly gear: readonly PlanGear[];
}

const rectOf = (pose: Pose, from: Vec3, size: Vec3): PlanRect => {
  const max: Vec3 = [from[0] + size[0], from[1] + size[1], from[2] + size[2]];
  const box = boxAround([placed(pose, from), placed(pose, max)]);
  return { across: box.min[0], deep: box.min[1], width: box.max[0] - box.min[0], depth: box.max[1] - box.min[1] };
};

const around = (rects: readonly PlanRect[]): PlanRect => {
  const left = Math.min(...rects.map((rect) => rect.across));
  const front = Math.min(...rects.map((rect) => rect.deep));
  const right = Math.max(...rects.map((rect) => rect.across + rect.width));
  const back = Math.max(...rects.map((rect) => rect.deep + rect.depth));
  return { across: left, deep: front, width: right - left, depth: back - front };
};

/** The levels that a list of rooms has, from the bottom up. */
export const levelsOf = (rooms: readonly Room[]): readonly number[] =>
  [...new Set(rooms.map((room) => room.level))].toSorted((a, b) => a - b);

/**
 * The plan of the rooms on one level, in the coordinates of their carcass so that rooms beside each other lie beside
 * each other. Null when there is none, or when their carcass was not solved.
 */
export const planOf = (fitOut: FitOut, rooms: readonly Room[], level: number): Plan | null => {
  const shown = rooms.filter((room) => room.level === level);
  const carcass = fitOut.carcasses.find((one) => one.id === shown[0]?.carcass);
  if (!carcass || shown.length === 0) return null;
  const back = inverse(carcass.pose);
  const toCarcass = (room: Room): Pose => after(back, room.pose);
  const plans = shown.map((room) => ({ room, pose: toCarcass(room) }));
  const drawn = plans.map(({ room, pose }) => ({
    opening: room.opening,
    level: room.level,
    rect: rectOf(pose, [0, 0, 0], room.size),
    size: room.size,
  }));
  const gear = plans.flatMap(({ room, pose }) =>
    fitOut.gear
      .filter((item) => item.opening === room.opening && item.level === room.level)
      .map((item) => ({
        gear: item.gear,
        opening: item.opening,
        rect: rectOf(pose, item.from, item.size),
        from: item.from,
        size: item.size,
      })),
  );
  return { bounds: around(drawn.map((room) => room.rect)), rooms: drawn, gear };
};
