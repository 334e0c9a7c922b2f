import type { Vec3 } from '../../base/index.ts';

/** A mass with how well it and its place are known, one standard deviation each; independent of all others. */
export interface SpreadItem {
  readonly kg: number;
  readonly sigmaKg: number;
  readonly at: Vec3;
  readonly sigmaMm: Vec3;
}

export interface Centre {
  readonly kg: number;
  readonly at: Vec3;
  readonly sigmaKg: number;
  /** One standard deviation of the centre on each axis. */
  readonly sigmaMm: Vec3;
}

const onAxes = (value: (axis: 0 | 1 | 2) => number): Vec3 => [value(0), value(1), value(2)];

/**
 * Centre of several masses and how well it is known, to first order: a mass m at x moves the centre x̄ of M in all by
 * (x − x̄) / M for each kilogram and by m / M for each millimetre, so
 * σ² = Σ ((x − x̄) σ_m / M)² + Σ (m σ_x / M)². Throws RangeError on masses that are nothing together.
 */
export const centreOf = (items: readonly SpreadItem[]): Centre => {
  const kg = items.reduce((sum, item) => sum + item.kg, 0);
  if (!(kg > 0)) throw new RangeError(`centreOf: ${items.length} items of ${kg} kg have no centre`);
  const at = onAxes((axis) => items.reduce((sum, item) => sum + item.kg * item.at[axis], 0) / kg);
  const variance = (axis: 0 | 1 | 2): number =>
    items.reduce(
      (sum, item) =>
        sum + (((item.at[axis] - at[axis]) * item.sigmaKg) / kg) ** 2 + ((item.kg * item.sigmaMm[axis]) / kg) ** 2,
      0,
    );
  return {
    kg,
    at,
    sigmaKg: Math.sqrt(items.reduce((sum, item) => sum + item.sigmaKg ** 2, 0)),
    sigmaMm: onAxes((axis) => Math.sqrt(variance(axis))),
  };
};

/**
 * The same when the vehicle as received is two axle weights, known each by itself, at one height and one offset to the
 * left that are known once for both.
 */
export const centreWithVehicle = (
  axles: readonly [front: SpreadItem, rear: SpreadItem],
  common: Vec3,
  items: readonly SpreadItem[],
): Centre => {
  const centre = centreOf([...axles, ...items]);
  const share = (axles[0].kg + axles[1].kg) / centre.kg;
  return {
    ...centre,
    sigmaMm: onAxes((axis) => Math.hypot(centre.sigmaMm[axis], share * common[axis])),
  };
};

/** Standard deviation of the stability factor (T / 2 − |ȳ|) / h from those of ȳ and h. */
export const stabilitySigma = (ssf: number, heightMm: number, leftSigmaMm: number, heightSigmaMm: number): number =>
  Math.hypot(leftSigmaMm / heightMm, (ssf * heightSigmaMm) / heightMm);
