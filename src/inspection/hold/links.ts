/** Links between a carcass and the vehicle, in the order in which a load passes them. */
export const LINKS = [
  'panel-bearing',
  'panel-punching',
  'bracket',
  'bolt',
  'insert',
  'sheet-bearing',
  'sheet-punching',
  'plate',
  'bond',
  'below-bearing',
  'below-punching',
] as const;
export type LinkName = (typeof LINKS)[number];

/** Pull along the bolt and shear across it (N). */
export interface Pull {
  readonly tensionN: number;
  readonly shearN: number;
}

/** Load over capacity of one link. */
export interface LinkUse {
  readonly link: LinkName;
  readonly use: number;
}

const share = (loadN: number, capacityN: number): number => (loadN === 0 ? 0 : loadN / capacityN);

/**
 * A bolt under both: the larger of T / Ft and V / Fv + T / (1.4 Ft), EN 1993-1-8 as summarised. `divisor` is the 1.4.
 */
export const boltUse = (
  pull: Pull,
  bolt: { readonly tensionN: number; readonly shearN: number },
  divisor: number,
): number =>
  Math.max(
    share(pull.tensionN, bolt.tensionN),
    share(pull.shearN, bolt.shearN) + share(pull.tensionN, divisor * bolt.tensionN),
  );

/** Resistance of a bolt from its stress area: c fub As / γ, with 0.6 for shear and 0.9 for tension in class 8.8. */
export const boltResistance = (coefficient: number, ultimateMPa: number, areaMm2: number, partial: number): number =>
  (coefficient * ultimateMPa * areaMm2) / partial;

/** A threaded insert under both: (T / Tc)² + (V / Vc)², engineering judgement. */
export const insertUse = (pull: Pull, insert: { readonly tensionN: number; readonly shearN: number }): number =>
  share(pull.tensionN, insert.tensionN) ** 2 + share(pull.shearN, insert.shearN) ** 2;

/** Bearing of a bolt on sheet metal: k fu d t / γ, k being 2.5 at most. */
export const sheetBearing = (
  k: number,
  ultimateMPa: number,
  diameterMm: number,
  thickMm: number,
  partial: number,
): number => (k * ultimateMPa * diameterMm * thickMm) / partial;

/** Punching of sheet metal round a washer, plate or insert of diameter d: 0.6 π d t fu / γ. */
export const sheetPunching = (
  coefficient: number,
  ultimateMPa: number,
  diameterMm: number,
  thickMm: number,
  partial: number,
): number => (coefficient * Math.PI * diameterMm * thickMm * ultimateMPa) / partial;

/** Bearing of a bolt in plywood: c (1 − 0.01 d) ρ d t / γ, after Eurocode 5. */
export const plyBearing = (
  coefficient: number,
  densityKgM3: number,
  diameterMm: number,
  thickMm: number,
  partial: number,
): number => (coefficient * (1 - 0.01 * diameterMm) * densityKgM3 * diameterMm * thickMm) / partial;

/** Plywood sheared through round a washer: π d t fv / γ. */
export const plyPunching = (shearMPa: number, diameterMm: number, thickMm: number, partial: number): number =>
  (Math.PI * diameterMm * thickMm * shearMPa) / partial;

/**
 * A round plate held at its edge that gives way under a patch in its middle: 2 π m / (1 − 2 c / 3 R), m being the moment
 * that a strip can take for each millimetre: fy t² / 4 for steel, which yields, f t² / 6 for wood, which breaks.
 */
export const plateCollapse = (momentN: number, patchRadiusMm: number, radiusMm: number): number =>
  (2 * Math.PI * momentN) / (1 - (2 * Math.min(patchRadiusMm, radiusMm)) / (3 * radiusMm));
