/** A mass aboard, placed from the middle of the rear axle: forward and to the left positive. */
export interface LoadItem {
  readonly kg: number;
  readonly forwardOfRearAxleMm: number;
  readonly leftMm: number;
}

/** The scale slip of the vehicle as received; left and right are null when the scale gives axles only. */
export interface ReceivedLoads {
  readonly frontKg: number;
  readonly rearKg: number;
  readonly leftKg: number | null;
  readonly rightKg: number | null;
}

export interface AxleLoads {
  readonly frontKg: number;
  readonly rearKg: number;
  readonly totalKg: number;
  readonly cgForwardOfRearAxleMm: number;
  /** To the left of the middle; the vehicle as received counts as centred when left and right were not weighed. */
  readonly cgLeftMm: number;
  /** Share of the whole weight on the left wheels, or null without a track. */
  readonly leftShare: number | null;
}

/** How far the centre of gravity as received stands to the left of the middle; 0 where left and right were not weighed. */
export const receivedLeftMm = (received: ReceivedLoads, trackMm: number | null): number => {
  const { leftKg, rightKg } = received;
  if (leftKg === null || rightKg === null || trackMm === null || leftKg + rightKg === 0) return 0;
  return ((leftKg - rightKg) / (leftKg + rightKg)) * (trackMm / 2);
};

/**
 * Static loads of the two axles with masses added, by moments about the rear axle: a mass m standing x forward of the
 * rear axle puts m x / L on the front axle and m (1 − x / L) on the rear one; behind the rear axle x is negative and
 * the front axle is unloaded. Across the vehicle the left wheels carry ½ + ȳ / T of the whole, T being the mean track.
 * Throws RangeError on a wheelbase that is not a length.
 */
export const axleLoads = (load: {
  readonly wheelbaseMm: number;
  readonly trackMm: number | null;
  readonly asReceived: ReceivedLoads;
  readonly items: readonly LoadItem[];
}): AxleLoads => {
  const { wheelbaseMm, trackMm, asReceived, items } = load;
  if (!(wheelbaseMm > 0)) throw new RangeError(`axleLoads: wheelbase ${wheelbaseMm} mm is not a length`);
  const receivedKg = asReceived.frontKg + asReceived.rearKg;
  let totalKg = receivedKg;
  let forward = asReceived.frontKg * wheelbaseMm;
  let left = receivedKg * receivedLeftMm(asReceived, trackMm);
  for (const item of items) {
    totalKg += item.kg;
    forward += item.kg * item.forwardOfRearAxleMm;
    left += item.kg * item.leftMm;
  }
  const frontKg = forward / wheelbaseMm;
  const cgLeftMm = totalKg > 0 ? left / totalKg : 0;
  return {
    frontKg,
    rearKg: totalKg - frontKg,
    totalKg,
    cgForwardOfRearAxleMm: totalKg > 0 ? forward / totalKg : 0,
    cgLeftMm,
    leftShare: trackMm === null ? null : 0.5 + cgLeftMm / trackMm,
  };
};
