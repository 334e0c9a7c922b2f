import type { Vehicle } from '../../design/index.ts';

/**
 * Sizes typical of a vehicle class: the middle of the ranges in public figures and trade notes. A first sketch only,
 * never to be cut from. Lengths mm.
 */
export interface ClassSizes {
  readonly betweenWheelhouses: number;
  readonly widthAtBelt: number;
  readonly widthAtRoof: number;
  readonly depth: number;
  readonly height: number;
  readonly wheelhouse: { readonly length: number; readonly inward: number; readonly height: number };
  readonly openingAtSill: number;
  readonly openingAtMiddle: number;
  readonly openingHeight: number;
  readonly floorAboveGround: number;
  /** Of the rear closure that opens upward; for doors hinged at the side the height of their upper hinge. */
  readonly hingeAboveGround: number;
  readonly opensDeg: number;
}

export const CLASS_SIZES: Readonly<Record<Vehicle['class'], ClassSizes>> = {
  'large-utility': {
    betweenWheelhouses: 1265,
    widthAtBelt: 1550,
    widthAtRoof: 1150,
    depth: 1600,
    height: 950,
    wheelhouse: { length: 850, inward: 175, height: 255 },
    openingAtSill: 1210,
    openingAtMiddle: 1250,
    openingHeight: 900,
    floorAboveGround: 810,
    hingeAboveGround: 1825,
    opensDeg: 87,
  },
  'mid-utility': {
    betweenWheelhouses: 1165,
    widthAtBelt: 1499,
    widthAtRoof: 1050,
    depth: 1265,
    height: 833,
    wheelhouse: { length: 750, inward: 160, height: 240 },
    openingAtSill: 1075,
    openingAtMiddle: 1115,
    openingHeight: 785,
    floorAboveGround: 745,
    hingeAboveGround: 1660,
    opensDeg: 82,
  },
  'pickup-cap': {
    betweenWheelhouses: 1290,
    widthAtBelt: 1675,
    widthAtRoof: 1125,
    depth: 1650,
    height: 1025,
    wheelhouse: { length: 875, inward: 195, height: 250 },
    openingAtSill: 1515,
    openingAtMiddle: 1125,
    openingHeight: 940,
    floorAboveGround: 895,
    hingeAboveGround: 1825,
    opensDeg: 77,
  },
  van: {
    betweenWheelhouses: 1380,
    widthAtBelt: 1805,
    widthAtRoof: 1425,
    depth: 3200,
    height: 1755,
    wheelhouse: { length: 900, inward: 205, height: 300 },
    openingAtSill: 1555,
    openingAtMiddle: 1555,
    openingHeight: 1600,
    floorAboveGround: 635,
    hingeAboveGround: 2100,
    opensDeg: 180,
  },
};

/** Depths of the three sections that every plan takes, and heights of their points as shares of the height. */
export interface SketchLevel {
  readonly name: 'floor' | 'belt' | 'shoulder' | 'roof';
  readonly share: number;
}
export const LEVELS: readonly SketchLevel[] = [
  { name: 'floor', share: 0 },
  { name: 'belt', share: 0.45 },
  { name: 'shoulder', share: 0.75 },
  { name: 'roof', share: 1 },
];

/** Half width at a level: the floor reaches out under the belt, the shoulder stands midway between belt and roof. */
export const halfWidthAt = (sizes: ClassSizes, level: SketchLevel['name']): number => {
  const floor = Math.min(sizes.widthAtBelt / 2, sizes.betweenWheelhouses / 2 + sizes.wheelhouse.inward);
  const [belt, roof] = [sizes.widthAtBelt / 2, sizes.widthAtRoof / 2];
  return { floor, belt, shoulder: (belt + roof) / 2, roof }[level];
};

export const STATION_NAMES = ['rear', 'middle', 'front'] as const;
export type StationName = (typeof STATION_NAMES)[number];

/** Distance that the foremost section keeps from the seat-back, so that it is set up at a round depth. */
const AHEAD_OF_SEAT = 65;
const ROUND_DEPTH = 50;

export const stationDepth = (sizes: ClassSizes, station: StationName): number => {
  const front = Math.floor((sizes.depth - AHEAD_OF_SEAT) / ROUND_DEPTH) * ROUND_DEPTH;
  return { rear: 0, middle: Math.round(front / 2 / ROUND_DEPTH) * ROUND_DEPTH, front }[station];
};
