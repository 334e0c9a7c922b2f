import { add, boxAround, type LengthUnits, ROUNDING_MM, ROUNDING_RAD, type Vec2 } from '../../base/index.ts';
import { type ConvexShape, shapeAt } from '../../bodies/index.ts';
import type { Design } from '../../design/index.ts';
import type { CargoSpace } from '../../envelope/index.ts';
import type { FitOut } from '../../fitout/index.ts';
import { type CarriedCarcass, type CarryPose, carryPoseOf } from '../../inspection/index.ts';
import { type CarryStep, sayCarryGap, sayHeld, sayLegGap, sayLength, sayTurned } from '../../says/index.ts';
import { clipped } from '../drawing/clip-strokes.ts';
import type { Shape, Stroke } from '../drawing/drawing.ts';
import { placeWords, type Wanted } from '../drawing/place-words.ts';
import { circle, line, onSheet, patch, placedStroke, rectangle, ring, TEXT_MM, text } from '../drawing/shapes.ts';
import type { Area } from '../drawing/sheet.ts';
import { textWidth } from '../drawing/text-width.ts';
import { type PaperPiece, wrapWords } from '../paper/index.ts';
import { CARRY_SIGHTS, type CarrySight, outlineSeen, vehicleGround } from './carry-ground.ts';

/** What the steps of one carcass are drawn from. */
export interface CarryScene {
  readonly own: CarriedCarcass;
  readonly design: Design;
  readonly space: CargoSpace;
  readonly fitout: FitOut;
  /** Carcasses that stand in the vehicle already. */
  readonly inPlace: readonly string[];
  readonly names: (id: string) => string;
}

const VIEW_MM = { mostHigh: 90, gap: 3 } as const;
const LEFT_SHARE = 0.64;
const AROUND_MM = 70;
const ARROW = { least: 8, head: 2, halfHead: 0.7 } as const;
const MARK_MM = 1.1;
/** What is less off the middle of the vehicle is in it. */
const ASIDE_MM = 5;
const TICK_MM = 4;
/** Radius of the arrow of a turn, of the height of its picture. */
const TURN_SHARE = 0.2;
const LINE_MM = TEXT_MM.value * 1.7;

const partsOf = (fitout: FitOut, carcass: string) =>
  fitout.bodies.filter((body) => body.carcass === carcass && body.kind !== 'gear' && body.kind !== 'plug-room');

const hullOf = (shapes: readonly ConvexShape[]): ConvexShape => ({
  vertices: shapes.flatMap(({ vertices }) => vertices),
  faces: [],
  radius: 0,
});

/** The extent of what a picture shows, mm of the vehicle: all that is carried through, and the cargo space round it. */
const extentOf = ({ own, space, fitout }: CarryScene, poses: readonly CarryPose[]) => {
  const hull = hullOf(partsOf(fitout, own.carcass).map(({ shape }) => shape));
  const stands = poses.flatMap((pose) => shapeAt(hull, carryPoseOf(pose, own.middle)).vertices);
  const { min, max } = boxAround([...stands, space.bounds.min, space.bounds.max]);
  const low = Math.min(min[2], -AROUND_MM) - AROUND_MM;
  return {
    min: [min[0] - AROUND_MM, min[1] - AROUND_MM, low] as const,
    max: [max[0] + AROUND_MM, max[1] + AROUND_MM, max[2] + AROUND_MM] as const,
  };
};

/** A straight arrow on paper; one that would be too short to see is drawn at its least length about the same middle. */
const arrow = (from: Vec2, to: Vec2): readonly Stroke[] => {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const long = Math.hypot(dx, dy);
  if (long <= ROUNDING_MM) return [];
  const [ux, uy] = [dx / long, dy / long];
  const grow = Math.max(0, ARROW.least - long) / 2;
  const tail: Vec2 = [from[0] - ux * grow, from[1] - uy * grow];
  const tip: Vec2 = [to[0] + ux * grow, to[1] + uy * grow];
  const neck: Vec2 = [tip[0] - ux * ARROW.head, tip[1] - uy * ARROW.head];
  return [
    line('outline', tail, neck),
    patch('text', [
      [
        tip,
        [neck[0] - uy * ARROW.halfHead, neck[1] + ux * ARROW.halfHead],
        [neck[0] + uy * ARROW.halfHead, neck[1] - ux * ARROW.halfHead],
      ],
    ]),
  ];
};

/** A turn as seen by a sight, anticlockwise positive on paper: about y and x the picture looks along the axis. */
const turnSeen = ({ turn }: CarrySight, from: CarryPose, to: CarryPose): number => {
  const by = to[turn] - from[turn];
  return turn === 'yawRad' ? by : -by;
};

/** An arc with its head about the middle of what turns. */
const turnArrow = (at: Vec2, by: number, radius: number): readonly Stroke[] => {
  if (Math.abs(by) <= ROUNDING_RAD) return [];
  const half = Math.max(Math.abs(by), 0.5) / 2;
  const ends = [-half, half] as const;
  const tipAngle = by > 0 ? ends[1] : ends[0];
  const tip: Vec2 = [at[0] + radius * Math.cos(tipAngle), at[1] + radius * Math.sin(tipAngle)];
  const [ux, uy] = by > 0 ? [-Math.sin(tipAngle), Math.cos(tipAngle)] : [Math.sin(tipAngle), -Math.cos(tipAngle)];
  return [
    { kind: 'arc', layer: 'outline', at, radius, fromRad: ends[0], toRad: ends[1] },
    patch('text', [
      [
        [tip[0] + ux * ARROW.head, tip[1] + uy * ARROW.head],
        [tip[0] - uy * ARROW.halfHead, tip[1] + ux * ARROW.halfHead],
        [tip[0] + uy * ARROW.halfHead, tip[1] - ux * ARROW.halfHead],
      ],
    ]),
  ];
};

/** How far it goes in this sight, with the way of its arrow: `1198 mm`; empty where it stands still. */
const movedWords = (sight: CarrySight, { from, to }: CarryStep, units: LengthUnits): string => {
  const by = to.shift.map((value, axis) => (axis === sight.along ? 0 : value - (from.shift[axis] ?? 0)));
  const far = Math.hypot(...by);
  return far <= ROUNDING_MM ? '' : sayLength(far, units);
};

interface Framed {
  readonly sight: CarrySight;
  readonly area: Area;
  /** Of paper to vehicle, and where the point [0, 0] of what the sight shows lies on paper. */
  readonly scale: number;
  readonly at: Vec2;
}

const middleOf = (points: readonly Vec2[]): Vec2 => [
  points.reduce((sum, [x]) => sum + x, 0) / Math.max(1, points.length),
  points.reduce((sum, [, y]) => sum + y, 0) / Math.max(1, points.length),
];

/** One sight of one step: what stands still, where it was (broken lines), where it comes (heavy), arrow, least gap. */
const sightShapes = (scene: CarryScene, step: CarryStep, { sight, area, scale, at }: Framed): readonly Shape[] => {
  const { own, design, space, fitout, inPlace, names } = scene;
  const onPaper = onSheet(scale, at);
  const parts = partsOf(fitout, own.carcass);
  const hull = hullOf(parts.map(({ shape }) => shape));
  const seen = (shape: ConvexShape, pose: CarryPose): readonly Vec2[] =>
    outlineSeen(shapeAt(shape, carryPoseOf(pose, own.middle)), sight).map(onPaper);
  const middleAt = (pose: CarryPose): Vec2 => onPaper(sight.on(add(own.middle, pose.shift)));
  const ground = vehicleGround(design, space, own.middle, sight);
  const others = inPlace.map((id) => {
    const outline = outlineSeen(hullOf(partsOf(fitout, id).map(({ shape }) => shape)), sight).map(onPaper);
    return { words: names(id), outline, at: middleOf(outline) };
  });
  const comes = seen(hull, step.to);
  const inside = parts
    .filter(({ kind, mover }) => kind === 'panel' && mover === null)
    .map(({ shape }) => ring('rule', seen(shape, step.to)));
  const drawn: readonly Stroke[] = [
    ...ground.strokes.map((stroke) => placedStroke(stroke, scale, at)),
    ...others.map(({ outline }) => ring('rule', outline)),
    ring('behind', seen(hull, step.from)),
    ring('outline', comes),
  ];
  const [from, to] = [middleAt(step.from), middleAt(step.to)];
  const straight = arrow(from, to);
  const gap = step.leg?.at ?? null;
  const gapAt = gap && middleOf(gap.map((point) => onPaper(sight.on(point))));
  const label = (words: string, point: Vec2, strong = false): readonly Wanted[] =>
    words === '' ? [] : [{ words, at: point, strong }];
  const wanted = [
    ...(gapAt && step.leg ? label(sayCarryGap(step.leg, design.units), gapAt, true) : []),
    ...label(movedWords(sight, step, design.units), middleOf([from, to]), true),
    ...label(sayTurned(step.to, sight.turn), [middleOf(comes)[0], Math.min(...comes.map(([, y]) => y))], true),
    ...ground.names.flatMap(({ words, at: point }) => label(words, onPaper(point))),
    ...others.flatMap(({ words, at: point }) => label(words, point)),
  ].filter(({ at: [x, y] }) => x >= area.from[0] && x <= area.to[0] && y >= area.from[1] && y <= area.to[1]);
  const titled: Area = {
    from: [area.from[0], area.to[1] - TEXT_MM.caption - 2],
    to: [area.from[0] + textWidth(sight.title, TEXT_MM.caption) + 2, area.to[1]],
  };
  return [
    ...clipped([...inside, ...drawn], area),
    ...straight,
    ...turnArrow(to, turnSeen(sight, step.from, step.to), (area.to[1] - area.from[1]) * TURN_SHARE),
    ...(gapAt ? [circle('outline', gapAt, MARK_MM)] : []),
    ...placeWords(wanted, [...drawn, ...straight], area, TEXT_MM.note, [titled]),
    rectangle('rule', area.from, area.to),
    text([titled.from[0] + 1, titled.from[1] + 1], sight.title, { height: TEXT_MM.caption }),
  ];
};

/** What is done, how it is held after it, where it is nearest, and a square to tick. */
const stepWords = (step: CarryStep, number: number, [left, top]: Vec2, width: number, units: LengthUnits) => {
  const lines = [
    ...wrapWords(`${number}. ${step.words}.`, TEXT_MM.value, width).map((words) => ({ words, strong: true })),
    ...[sayHeld(step.to), sayLegGap(step.leg, units)].flatMap((words) =>
      wrapWords(words, TEXT_MM.value, width).map((each) => ({ words: each, strong: false })),
    ),
  ];
  const foot = top - lines.length * LINE_MM - TICK_MM - 1;
  return [
    ...lines.map(({ words, strong }, i) =>
      text([left, top - i * LINE_MM - TEXT_MM.value], words, { height: TEXT_MM.value, strong }),
    ),
    rectangle('seen', [left, foot], [left + TICK_MM, foot + TICK_MM]),
    text([left + TICK_MM + 1.5, foot + (TICK_MM - TEXT_MM.note) / 2], 'done', { height: TEXT_MM.note }),
  ];
};

/**
 * The steps of one carcass as pictures, one below the other: each from the side with the plan under it, from behind
 * beside it, all to one scale, and its words.
 */
export const carryPictures = (
  scene: CarryScene,
  steps: readonly CarryStep[],
  pageMm: number,
): readonly PaperPiece[] => {
  const { min, max } = extentOf(
    scene,
    steps.flatMap(({ from, to }) => [from, to]),
  );
  const [long, wide, high] = [max[0] - min[0], max[1] - min[1], max[2] - min[2]];
  const leftMm = pageMm * LEFT_SHARE;
  const rightMm = pageMm - leftMm - VIEW_MM.gap;
  const scale = Math.min(leftMm / long, rightMm / wide, (VIEW_MM.mostHigh - VIEW_MM.gap) / (high + wide));
  const height = (high + wide) * scale + VIEW_MM.gap;
  return steps.map((step, i) => ({
    kind: 'picture',
    height,
    shapes: ([left, top]) => {
      // The corner of each sight on paper, low and left; from behind, right is the right of the vehicle.
      const low: Readonly<Record<CarrySight['name'], Vec2>> = {
        side: [left, top - high * scale],
        above: [left, top - height],
        behind: [left + long * scale + VIEW_MM.gap, top - high * scale],
      };
      const least: Readonly<Record<CarrySight['name'], Vec2>> = {
        side: [min[0], min[2]],
        above: [min[0], min[1]],
        behind: [-max[1], min[2]],
      };
      const size: Readonly<Record<CarrySight['name'], Vec2>> = {
        side: [long, high],
        above: [long, wide],
        behind: [wide, high],
      };
      const sights = CARRY_SIGHTS.flatMap((sight) => {
        const from = low[sight.name];
        const [x, y] = least[sight.name];
        const [across, up] = size[sight.name];
        const area = { from, to: [from[0] + across * scale, from[1] + up * scale] as Vec2 };
        return sightShapes(scene, step, { sight, area, scale, at: [from[0] - x * scale, from[1] - y * scale] });
      });
      const words: Vec2 = [low.behind[0], low.behind[1] - VIEW_MM.gap];
      return [...sights, ...stepWords(step, i + 1, words, left + pageMm - words[0], scene.design.units)];
    },
  }));
};

/** How high it is held to begin with, in a sentence. */
export const startWords = ({ own, design, fitout }: CarryScene, start: CarryPose): string => {
  const hull = hullOf(partsOf(fitout, own.carcass).map(({ shape }) => shape));
  const underside = boxAround(shapeAt(hull, carryPoseOf(start, own.middle)).vertices).min[2];
  const floor = design.vehicle.floorAboveGroundMm;
  const ground = floor === null ? '' : `, ${sayLength(underside + floor, design.units)} above the ground`;
  const aside = own.middle[1] + start.shift[1];
  const where =
    Math.abs(aside) <= ASIDE_MM
      ? ''
      : `, its middle ${sayLength(Math.abs(aside), design.units)} to the ${aside > 0 ? 'left' : 'right'} of the middle of the vehicle`;
  return `Begin behind the vehicle${where}, its underside ${sayLength(underside, design.units)} above the floor of the vehicle${ground}. ${sayHeld(start)}`;
};
