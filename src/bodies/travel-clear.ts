import { type Box, boxesMeet, boxGap, boxUnion, ROUNDING_RAD, scale, type Vec3 } from '../base/index.ts';
import { fillsBox } from './filled-box.ts';
import { distanceWithin } from './gap.ts';
import {
  carriedPose,
  checkedMotion,
  type Held,
  type Motion,
  motionAt,
  motionPose,
  motionSpan,
  travelBox,
} from './motion.ts';
import { firstBlock } from './search.ts';
import { boxShape, type ConvexShape, shapeAt, shapeBox } from './shapes.ts';
import { sweptShape } from './swept.ts';
import { type Track, trackOf } from './track.ts';
import { TRAVEL_TOLERANCE_MM } from './travel.ts';

/** Places looked at before anything is proven, as shares of a turn: what meets at all mostly meets at one of them. */
const FIRST_LOOKS = [1, 1 / 2, 0, 3 / 4, 1 / 4];

const alongAxis = (along: Vec3): boolean => along.filter((share) => Math.abs(share) <= ROUNDING_RAD).length === 2;

/** All that a shape passes through on a straight way, as one body: a box where it is a box that goes along an axis. */
const sweptOn = (motion: Extract<Motion, { kind: 'slide' }>, shape: ConvexShape): ConvexShape => {
  const start = shapeAt(shape, motionPose(motion, motion.fromMm));
  const by = scale(motion.along, motion.toMm - motion.fromMm);
  const box = shapeBox(start);
  if (!alongAxis(motion.along) || !fillsBox(start, box)) return sweptShape(start, by);
  const end: Box = {
    min: [box.min[0] + by[0], box.min[1] + by[1], box.min[2] + by[2]],
    max: [box.max[0] + by[0], box.max[1] + by[1], box.max[2] + by[2]],
  };
  return boxShape(boxUnion(box, end));
};

const turnIsClear = (
  turn: Motion,
  shapes: readonly ConvexShape[],
  obstacles: readonly ConvexShape[],
  required: number,
): boolean => {
  const boxes: readonly Box[] = obstacles.map(shapeBox);
  const tracks = shapes.flatMap((moving) => {
    const way = travelBox(turn, moving);
    return obstacles.flatMap((standing, i): readonly Track[] => {
      const apart = boxGap(way, boxes[i] ?? way);
      return apart > 0 && apart >= required ? [] : [trackOf(turn, moving, standing)];
    });
  });
  const [from, to] = motionSpan(turn);
  const length = Math.abs(to - from);
  const bar = required - TRAVEL_TOLERANCE_MM / 2;
  for (const share of FIRST_LOOKS)
    for (const track of tracks) if (track.gapAt(length * share).distance < bar) return false;
  return tracks.every((track) => firstBlock(track, length, required, TRAVEL_TOLERANCE_MM) === null);
};

/**
 * Whether the travel keeps the required gap all the way, without where and what: many times faster than
 * certifiedTravel. A slide is judged by all that it passes through, which is exact; a turn by certified search. What
 * falls less than half the tolerance short is let pass. Throws as certifiedTravel does.
 */
export const travelIsClear = (
  motion: Motion,
  shapes: readonly ConvexShape[],
  obstacles: readonly ConvexShape[],
  required: number,
  carriers: readonly Held[] = [],
): boolean => {
  const carried = carriedPose(carriers.map(({ motion: outer, at }) => ({ motion: checkedMotion(outer), at })));
  const travel = motionAt(checkedMotion(motion), carried);
  const moving = carriers.length === 0 ? shapes : shapes.map((shape) => shapeAt(shape, carried));
  if (travel.kind === 'turn') return turnIsClear(travel, moving, obstacles, required);
  const bar = required - TRAVEL_TOLERANCE_MM / 2;
  const boxes = required > 0 ? null : obstacles.map(shapeBox);
  return moving.every((shape) => {
    const swept = sweptOn(travel, shape);
    const way = shapeBox(swept);
    return obstacles.every((obstacle, i) => {
      const box = boxes?.[i];
      return (box && !boxesMeet(way, box)) || distanceWithin(swept, obstacle, bar) >= bar;
    });
  });
};
