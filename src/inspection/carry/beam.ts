/** A board of a shelf: sizes in mm, stiffness in MPa. */
export interface Board {
  readonly spanMm: number;
  readonly depthMm: number;
  readonly thicknessMm: number;
  readonly youngMPa: number;
}

/** Sag (mm) of a shelf on two ends under a load spread evenly, short-term: 5 F L³ / (384 E I), I = b t³ / 12. */
export const shelfSag = ({ spanMm, depthMm, thicknessMm, youngMPa }: Board, loadN: number): number =>
  (5 * loadN * spanMm ** 3) / (384 * youngMPa * ((depthMm * thicknessMm ** 3) / 12));

/** Bending stress (MPa) in the middle of the same shelf: F L / (8 Z), Z = b t² / 6. */
export const shelfStress = ({ spanMm, depthMm, thicknessMm }: Board, loadN: number): number =>
  (loadN * spanMm) / 8 / ((depthMm * thicknessMm ** 2) / 6);

/** α of a plate held on four edges, by long side over short side (Roark, as tabled). */
const PLATE: readonly (readonly [ratio: number, alpha: number])[] = [
  [1, 0.0443],
  [1.2, 0.0616],
  [1.5, 0.0843],
  [2, 0.111],
  [5, 0.142],
];

const alphaAt = (ratio: number): number => {
  const above = PLATE.findIndex(([at]) => at >= ratio);
  const [high, low] = [PLATE[above], PLATE[above - 1]];
  if (!high) return PLATE.at(-1)?.[1] ?? 0;
  if (!low) return high[1];
  return low[1] + ((high[1] - low[1]) * (ratio - low[0])) / (high[0] - low[0]);
};

/** Sag (mm) of a plate held on four edges under a load spread evenly, short-term: α q b⁴ / (E t³), b the short side. */
export const plateSag = ({ spanMm, depthMm, thicknessMm, youngMPa }: Board, loadN: number): number => {
  const [short, long] = [Math.min(spanMm, depthMm), Math.max(spanMm, depthMm)];
  const pressure = loadN / (spanMm * depthMm);
  return (alphaAt(long / short) * pressure * short ** 4) / (youngMPa * thicknessMm ** 3);
};
