/** What one air bend of a sheet takes. */
export interface Bend {
  /** Length of the neutral line round the bend. */
  readonly allowanceMm: number;
  /** From the end of the flat part to where the two outside faces would meet. */
  readonly outsideSetbackMm: number;
  /** What the flat is shorter than the sum of the outside lengths. */
  readonly deductionMm: number;
}

/**
 * Allowance θ (R + K t), outside set-back (R + t) tan θ/2, deduction twice the set-back less the allowance. `angleRad`
 * is the angle turned through. Source: the usual formulas of air bending; K from the record of the sheet.
 */
export const bendOf = (
  thicknessMm: number,
  { insideRadiusMm, kFactor }: { readonly insideRadiusMm: number; readonly kFactor: number },
  angleRad: number,
): Bend => {
  const allowanceMm = angleRad * (insideRadiusMm + kFactor * thicknessMm);
  const outsideSetbackMm = (insideRadiusMm + thicknessMm) * Math.tan(angleRad / 2);
  return { allowanceMm, outsideSetbackMm, deductionMm: 2 * outsideSetbackMm - allowanceMm };
};

/** Length of the flat of a strip with these outside lengths and one equal bend between neighbours. */
export const flatLength = (outsideMm: readonly number[], { deductionMm }: Bend): number =>
  outsideMm.reduce((sum, mm) => sum + mm, 0) - Math.max(0, outsideMm.length - 1) * deductionMm;
