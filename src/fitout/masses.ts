import { add, ORIGIN, scale, type Vec3 } from '../base/index.ts';
import type { Material } from '../catalog/index.ts';
import type { CarcassContext } from './context.ts';

const MM3_PER_M3 = 1e9;
const MM2_PER_M2 = 1e6;
/** Standard deviation of an even spread over its whole range: range / √12. */
const RANGE_OVER_SIGMA = Math.sqrt(12);

export const sheetMassKg = (volumeMm3: number, material: Material): number =>
  (volumeMm3 * material.densityKgM3) / MM3_PER_M3;

export const squareMetres = (areaMm2: number): number => areaMm2 / MM2_PER_M2;

/**
 * Relative standard deviation of the mass of a panel: the thickness spread evenly over its measured range, and the
 * density from sheet to sheet.
 */
export const sheetSigmaShare = (material: Material, context: Pick<CarcassContext, 'rule'>): number => {
  const [thin, thick] = material.thicknessRangeMm;
  return Math.hypot((thick - thin) / RANGE_OVER_SIGMA / material.thicknessMm, context.rule('density-sigma-share'));
};

/** The mean of the points weighted by mass, or the plain origin where there is no mass. */
export const centreOfMass = (items: readonly { readonly massKg: number; readonly at: Vec3 }[]): Vec3 => {
  const total = items.reduce((sum, { massKg }) => sum + massKg, 0);
  if (total <= 0) return items[0]?.at ?? ORIGIN;
  return scale(
    items.reduce<Vec3>((sum, { massKg, at }) => add(sum, scale(at, massKg)), ORIGIN),
    1 / total,
  );
};
