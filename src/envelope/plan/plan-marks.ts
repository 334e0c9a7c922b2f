import type { Vec3 } from '../../base/index.ts';
import type { NodeId } from '../../design/index.ts';
import {
  type ClassSizes,
  halfWidthAt,
  LEVELS,
  type SketchLevel,
  STATION_NAMES,
  type StationName,
  stationDepth,
} from './class-sizes.ts';
import type { PlanMark, PlanStation } from './plan.ts';

export type Side = 'left' | 'right';
export const SIDES: readonly Side[] = ['left', 'right'];
export const signOf = (side: Side): 1 | -1 => (side === 'left' ? 1 : -1);

/** Ids of the plan's marks, all of one pattern. */
export const markId = (...words: readonly string[]): NodeId => ['mark', ...words].join('-') as NodeId;

type Fixed = PlanMark['fixed'];
const FREE: Fixed = [false, false, false];
/** A mark at a depth that was chosen and set out, not measured. */
const AT_DEPTH: Fixed = [true, false, false];
const ON_CENTRE: Fixed = [false, true, false];

const mark = (words: readonly string[], at: Vec3, fixed: Fixed): PlanMark => ({
  id: markId(...words),
  name: words.join(' '),
  at,
  fixed,
});

/**
 * The frame: the string along the centre line of the floor, from the middle of the sill. Its rear end is the origin,
 * its front end lies on the floor too and so sets x along the floor; the middle may sag.
 */
const CENTRE_FIXED: Readonly<Record<StationName, Fixed>> = {
  rear: [true, true, true],
  middle: [true, true, false],
  front: [true, true, true],
};

const centreMarks = (sizes: ClassSizes): readonly PlanMark[] =>
  STATION_NAMES.map((name) => mark([name, 'centre'], [stationDepth(sizes, name), 0, 0], CENTRE_FIXED[name]));

export const wallMark = (station: StationName, level: SketchLevel['name'], side: Side): NodeId =>
  markId(station, level, side);

const wallMarks = (sizes: ClassSizes, station: StationName): readonly PlanMark[] =>
  LEVELS.flatMap(({ name, share }) =>
    SIDES.map((side) =>
      mark(
        [station, name, side],
        [stationDepth(sizes, station), signOf(side) * halfWidthAt(sizes, name), share * sizes.height],
        AT_DEPTH,
      ),
    ),
  );

/** Rake of a seat-back in a vehicle of any class; it only places the sketch. */
const RAKE = 0.35;

const seatMarks = (sizes: ClassSizes): readonly PlanMark[] => {
  const half = sizes.betweenWheelhouses / 2;
  const belt = sizes.height * (LEVELS[1]?.share ?? 0);
  return [
    mark(['seat', 'floor', 'centre'], [sizes.depth, 0, 0], [false, true, true]),
    mark(['seat', 'floor', 'left'], [sizes.depth, half, 0], [false, false, true]),
    mark(['seat', 'floor', 'right'], [sizes.depth, -half, 0], [false, false, true]),
    mark(['seat', 'belt', 'centre'], [sizes.depth - RAKE * belt, 0, belt], ON_CENTRE),
  ];
};

export const OPENING_LEVELS = ['sill', 'middle', 'top'] as const;

const openingMarks = (sizes: ClassSizes): readonly PlanMark[] => {
  const halves = [sizes.openingAtSill / 2, sizes.openingAtMiddle / 2, sizes.widthAtRoof / 2];
  return OPENING_LEVELS.flatMap((level, i) =>
    SIDES.map((side) =>
      mark(
        ['opening', level, side],
        [0, signOf(side) * (halves[i] ?? 0), (sizes.openingHeight * i) / (OPENING_LEVELS.length - 1)],
        AT_DEPTH,
      ),
    ),
  );
};

/** Hinge, closed edge and open edge of something that turns about a line across the vehicle, on the centre line. */
const turningMarks = (name: string, hinge: Vec3, reach: number, opensRad: number): readonly PlanMark[] => [
  mark([name, 'hinge'], hinge, ON_CENTRE),
  mark([name, 'edge', 'closed'], [hinge[0], 0, hinge[2] - reach], ON_CENTRE),
  mark(
    [name, 'edge', 'open'],
    [hinge[0] - Math.abs(reach) * Math.sin(opensRad), 0, hinge[2] - reach * Math.cos(opensRad)],
    ON_CENTRE,
  ),
];

export const hatchMarks = (sizes: ClassSizes): readonly PlanMark[] =>
  turningMarks(
    'hatch',
    [20, 0, sizes.hingeAboveGround - sizes.floorAboveGround],
    sizes.hingeAboveGround - sizes.floorAboveGround,
    (sizes.opensDeg * Math.PI) / 180,
  );

/** Opening glass: from just under the hatch's hinge down to the middle of the opening. */
export const glassMarks = (sizes: ClassSizes): readonly PlanMark[] => {
  const z = sizes.hingeAboveGround - sizes.floorAboveGround;
  return turningMarks('glass', [10, 0, z - 40], z / 2, Math.PI / 2);
};

/** A tailgate hangs on the sill and folds down; its edge stands above the hinge when closed. */
export const gateMarks = (sizes: ClassSizes): readonly PlanMark[] =>
  turningMarks('gate', [-10, 0, -20], -sizes.openingHeight / 2, Math.PI / 2);

export const capDoorMarks = (sizes: ClassSizes): readonly PlanMark[] => {
  const z = sizes.hingeAboveGround - sizes.floorAboveGround;
  return turningMarks('cap-door', [20, 0, z], z - sizes.openingHeight / 2, (sizes.opensDeg * Math.PI) / 180);
};

const DOOR_HEIGHT_SHARE = 0.5;

/** Doors hinged at the side of the rear opening, marked at half height. */
export const barnMarks = (sizes: ClassSizes): readonly PlanMark[] =>
  SIDES.flatMap((side) => {
    const z = sizes.openingHeight * DOOR_HEIGHT_SHARE;
    return [
      mark(['door', side, 'hinge'], [-10, (signOf(side) * sizes.openingAtMiddle) / 2, z], FREE),
      mark(['door', side, 'edge'], [-10, signOf(side) * 10, z], FREE),
    ];
  });

/** A door in the vehicle's right side: front and rear post of its opening, at half height. */
export const sideDoorMarks = (sizes: ClassSizes): readonly PlanMark[] => {
  const [y, z] = [-sizes.widthAtBelt / 2, sizes.height * DOOR_HEIGHT_SHARE];
  return [
    mark(['side-door', 'hinge'], [sizes.depth, y, z], FREE),
    mark(['side-door', 'edge'], [sizes.depth / 2, y, z], FREE),
  ];
};

export const commonMarks = (sizes: ClassSizes): readonly PlanMark[] => [
  ...centreMarks(sizes),
  ...STATION_NAMES.flatMap((station) => wallMarks(sizes, station)),
  ...seatMarks(sizes),
  ...openingMarks(sizes),
];

export const planStations = (sizes: ClassSizes): readonly PlanStation[] =>
  STATION_NAMES.map((name) => ({
    name,
    xMm: stationDepth(sizes, name),
    left: LEVELS.map((level) => wallMark(name, level.name, 'left')),
    right: LEVELS.map((level) => wallMark(name, level.name, 'right')),
  }));
