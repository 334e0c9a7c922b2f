/** A mass by its height above ground and its place to the left of the middle. */
export interface HeightItem {
  readonly kg: number;
  readonly heightMm: number;
  readonly leftMm: number;
}

export interface Stability {
  readonly cgHeightMm: number;
  readonly cgLeftMm: number;
  /** T / (2 h) of the vehicle as received and with everything aboard. */
  readonly before: number;
  readonly after: number;
  /** (T / 2 − |ȳ|) / h: the side that the load leans to. */
  readonly worstSide: number;
}

/**
 * Static stability factor: half the mean track over the height of the centre of gravity. It compares one loading with
 * another; it is not a chance of rolling over. Throws RangeError on a track or a base that has no size.
 */
export const staticStability = (load: {
  readonly trackMm: number;
  readonly base: HeightItem;
  readonly items: readonly HeightItem[];
}): Stability => {
  const { trackMm, base, items } = load;
  if (!(trackMm > 0)) throw new RangeError(`staticStability: track ${trackMm} mm is not a length`);
  if (!(base.kg > 0 && base.heightMm > 0))
    throw new RangeError(`staticStability: base of ${base.kg} kg at ${base.heightMm} mm has no weight or no height`);
  let kg = base.kg;
  let high = base.kg * base.heightMm;
  let left = base.kg * base.leftMm;
  for (const item of items) {
    kg += item.kg;
    high += item.kg * item.heightMm;
    left += item.kg * item.leftMm;
  }
  const cgHeightMm = high / kg;
  const cgLeftMm = left / kg;
  return {
    cgHeightMm,
    cgLeftMm,
    before: trackMm / (2 * base.heightMm),
    after: trackMm / (2 * cgHeightMm),
    worstSide: (trackMm / 2 - Math.abs(cgLeftMm)) / cgHeightMm,
  };
};
