import type { Vec3 } from '../../base/index.ts';

/** A marked point of the vehicle. `start` is where it is thought to be; fixed coordinates stay there and define the frame. */
export interface NetworkMark {
  readonly id: string;
  readonly start: Vec3;
  readonly fixed: readonly [boolean, boolean, boolean];
}

/**
 * What was read. Lengths in mm, angles in rad, `sigma` in the same unit.
 * - distance: straight from mark to mark;
 * - along / across / height: the difference to − from on the x / y / z axis;
 * - offset: how far a mark lies to the left of the centre line;
 * - level: rise of the line from → to over its run in plan, as an angle.
 */
export type NetworkReading =
  | {
      readonly kind: 'distance' | 'along' | 'across' | 'height' | 'level';
      readonly id: string;
      readonly from: string;
      readonly to: string;
      readonly value: number;
      readonly sigma: number;
    }
  | {
      readonly kind: 'offset';
      readonly id: string;
      readonly from: string;
      readonly value: number;
      readonly sigma: number;
    };

export interface Network {
  readonly marks: readonly NetworkMark[];
  readonly readings: readonly NetworkReading[];
}

/** What a reading would be between the given points, and how it changes as each of them moves. */
export interface Observed {
  readonly value: number;
  readonly byFrom: Vec3;
  readonly byTo: Vec3;
}

const NOWHERE: Vec3 = [0, 0, 0];
const AXES = { along: 0, across: 1, height: 2 } as const;

const axisDifference = (from: Vec3, to: Vec3, axis: 0 | 1 | 2): Observed => {
  const direction: [number, number, number] = [0, 0, 0];
  direction[axis] = 1;
  return { value: to[axis] - from[axis], byFrom: [-direction[0], -direction[1], -direction[2]], byTo: direction };
};

const straight = (from: Vec3, to: Vec3): Observed => {
  const [x, y, z] = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
  const size = Math.hypot(x, y, z);
  if (size === 0) return { value: 0, byFrom: NOWHERE, byTo: NOWHERE };
  const by: Vec3 = [x / size, y / size, z / size];
  return { value: size, byFrom: [-by[0], -by[1], -by[2]], byTo: by };
};

/** Slope s = atan(dz / r) over the run r in plan: ∂s/∂dz = r / d², ∂s/∂r = −dz / d². */
const slope = (from: Vec3, to: Vec3): Observed => {
  const [x, y, z] = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
  const run = Math.hypot(x, y);
  const square = run * run + z * z;
  if (run === 0) return { value: Math.sign(z) * (Math.PI / 2), byFrom: NOWHERE, byTo: NOWHERE };
  const byRun = -z / square;
  const by: Vec3 = [(byRun * x) / run, (byRun * y) / run, run / square];
  return { value: Math.atan2(z, run), byFrom: [-by[0], -by[1], -by[2]], byTo: by };
};

/** The reading as it would be with its marks at the given points; `to` is ignored where the reading has one mark. */
export const observe = (kind: NetworkReading['kind'], from: Vec3, to: Vec3): Observed => {
  switch (kind) {
    case 'distance':
      return straight(from, to);
    case 'level':
      return slope(from, to);
    case 'offset':
      return { value: from[1], byFrom: [0, 1, 0], byTo: NOWHERE };
    case 'along':
    case 'across':
    case 'height':
      return axisDifference(from, to, AXES[kind]);
  }
};

/** The marks that a reading touches. */
export const marksOf = (reading: NetworkReading): readonly string[] =>
  reading.kind === 'offset' ? [reading.from] : [reading.from, reading.to];
