import { ROUNDING_KG } from '../base/index.ts';
import type { HouseRules } from '../catalog/index.ts';
import type { Vehicle } from '../design/index.ts';

export const VEHICLE_FACTS = [
  'axles-below-gross',
  'axle-above-gross',
  'slip-without-weight',
  'slip-above-gross',
  'slip-above-front-axle',
  'slip-above-rear-axle',
  'slip-sides-disagree',
  'slip-one-side-only',
  'track-above-wheelbase',
  'fuel-unknown',
  'occupants-unknown',
] as const;
export type VehicleFactCode = (typeof VEHICLE_FACTS)[number];

/** A rating or a weight that is missing or that contradicts another one. */
export interface VehicleFact {
  readonly code: VehicleFactCode;
  /** Path into the design. */
  readonly at: string;
  readonly value: number;
  readonly limit: number;
  readonly unit: 'kg' | 'mm' | 'count';
  /** Contradictions are stops, what is merely unknown a note. */
  readonly severity: 'stop' | 'caution' | 'note';
}

type Found = readonly (VehicleFact | null)[];

const over = (
  code: VehicleFactCode,
  at: string,
  value: number | null,
  limit: number | null,
  severity: VehicleFact['severity'] = 'stop',
): VehicleFact | null =>
  value !== null && limit !== null && value > limit + ROUNDING_KG
    ? { code, at, value, limit, unit: 'kg', severity }
    : null;

const ratingFacts = ({ ratings }: Vehicle): Found => {
  const { grossKg, frontAxleKg, rearAxleKg } = ratings;
  const both = frontAxleKg !== null && rearAxleKg !== null ? frontAxleKg + rearAxleKg : null;
  return [
    // Axles that together carry less than the vehicle may weigh: one of the three figures was misread from the label.
    over('axles-below-gross', 'vehicle.ratings.grossKg', grossKg, both),
    over('axle-above-gross', 'vehicle.ratings.frontAxleKg', frontAxleKg, grossKg),
    over('axle-above-gross', 'vehicle.ratings.rearAxleKg', rearAxleKg, grossKg),
  ];
};

const slipFacts = ({ slip, ratings }: Vehicle, rules: HouseRules): Found => {
  if (!slip) return [];
  const { frontKg, rearKg, leftKg, rightKg } = slip;
  const whole = frontKg + rearKg;
  const agree = rules.value('slip-sides-agree');
  const at = 'vehicle.slip';
  const empty = frontKg <= 0 || rearKg <= 0;
  const oneSide = (leftKg === null) !== (rightKg === null);
  return [
    empty
      ? { code: 'slip-without-weight', at, value: Math.min(frontKg, rearKg), limit: 0, unit: 'kg', severity: 'stop' }
      : null,
    over('slip-above-gross', at, whole, ratings.grossKg),
    over('slip-above-front-axle', `${at}.frontKg`, frontKg, ratings.frontAxleKg),
    over('slip-above-rear-axle', `${at}.rearKg`, rearKg, ratings.rearAxleKg),
    leftKg !== null && rightKg !== null
      ? over('slip-sides-disagree', at, Math.abs(leftKg + rightKg - whole), agree)
      : null,
    oneSide ? { code: 'slip-one-side-only', at, value: 1, limit: 2, unit: 'count', severity: 'caution' } : null,
  ];
};

const sizeFacts = ({ wheelbaseMm, trackMm }: Vehicle): Found => [
  wheelbaseMm !== null && trackMm !== null && trackMm >= wheelbaseMm
    ? {
        code: 'track-above-wheelbase',
        at: 'vehicle.trackMm',
        value: trackMm,
        limit: wheelbaseMm,
        unit: 'mm',
        severity: 'stop',
      }
    : null,
];

const unknownFacts = ({ fuel, slip, seats }: Vehicle): Found => [
  slip && !fuel
    ? { code: 'fuel-unknown', at: 'vehicle.fuel', value: 0, limit: 1, unit: 'count', severity: 'note' }
    : null,
  seats.length === 0
    ? { code: 'occupants-unknown', at: 'vehicle.seats', value: 0, limit: 1, unit: 'count', severity: 'note' }
    : null,
];

/**
 * Ratings, weigh slip, fuel and seats held against each other. Ratings that nobody has read are the business of the
 * checks that need them (`figures-missing`); here stands what cannot be true together, and what a slip leaves open.
 */
export const vehicleFacts = (vehicle: Vehicle, rules: HouseRules): readonly VehicleFact[] =>
  [...ratingFacts(vehicle), ...slipFacts(vehicle, rules), ...sizeFacts(vehicle), ...unknownFacts(vehicle)].filter(
    (fact) => fact !== null,
  );
