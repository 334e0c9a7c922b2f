import type { Vec3 } from '../../base/index.ts';
import { NO_MARK, newObservation, OBSERVERS } from './observe.ts';

/** A marked point of the vehicle. `start` is where it is thought to be; fixed coordinates stay there and define the frame. */
export interface NetworkMark {
  readonly id: string;
  readonly start: Vec3;
  readonly fixed: readonly [boolean, boolean, boolean];
}

interface Read {
  readonly id: string;
  readonly from: string;
  readonly value: number;
  readonly sigma: number;
}

/**
 * What was read. Lengths in mm, angles in rad, `sigma` in the same unit.
 * - distance: straight from mark to mark;
 * - along / across / height: the difference to − from on the x / y / z axis;
 * - offset: how far a mark lies to the left of the centre line;
 * - level: rise of the line from → to over its run in plan, as an angle;
 * - angle: at the mark `at`, between the lines to `from` and to `to`, 0 to π.
 */
export type NetworkReading =
  | (Read & { readonly kind: 'distance' | 'along' | 'across' | 'height' | 'level'; readonly to: string })
  | (Read & { readonly kind: 'offset' })
  | (Read & { readonly kind: 'angle'; readonly to: string; readonly at: string });

export interface Network {
  readonly marks: readonly NetworkMark[];
  readonly readings: readonly NetworkReading[];
}

/** The marks that a reading touches: from, then to, then the mark of the angle. */
export const marksOf = (reading: NetworkReading): readonly string[] => {
  if (reading.kind === 'offset') return [reading.from];
  return reading.kind === 'angle' ? [reading.from, reading.to, reading.at] : [reading.from, reading.to];
};

/** True for readings whose value is an angle. */
export const isAngle = (kind: NetworkReading['kind']): boolean => kind === 'level' || kind === 'angle';

/** What the reading would be with its marks at the given points. Throws on a mark without a point. */
export const predict = (reading: NetworkReading, points: ReadonlyMap<string, Vec3>): number => {
  const marks = marksOf(reading);
  const flat = Float64Array.from(
    marks.flatMap((id) => {
      const point = points.get(id);
      if (!point) throw new RangeError(`predict: the mark ${id} has no point`);
      return point;
    }),
  );
  const out = newObservation();
  OBSERVERS[reading.kind](flat, 0, marks.length > 1 ? 1 : NO_MARK, marks.length > 2 ? 2 : NO_MARK, out);
  return out.value;
};
