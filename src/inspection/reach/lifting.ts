/** How well hands hold an item. */
export type Coupling = 'good' | 'fair' | 'poor';

/** One lift as the revised equation takes it: centimetres, degrees, and the factor for how often. */
export interface LiftTask {
  readonly horizontalCm: number;
  readonly verticalCm: number;
  readonly travelCm: number;
  readonly asymmetryDeg: number;
  readonly frequencyFactor: number;
  readonly coupling: Coupling;
}

const LEAST_CM = 25;
const MOST_HORIZONTAL_CM = 63;
const MOST_CM = 175;
const KNUCKLE_CM = 75;
const MOST_TWIST_DEG = 135;
const LOAD_KG = 23;

const couplingFactor = (coupling: Coupling, verticalCm: number): number => {
  if (coupling === 'good') return 1;
  if (coupling === 'poor') return 0.9;
  return verticalCm < KNUCKLE_CM ? 0.95 : 1;
};

/**
 * Recommended weight limit (kg) of one lift by the revised NIOSH equation (94-110): 23 · HM · VM · DM · AM · FM · CM. Zero
 * where the lift lies outside the equation. Not for one hand, kneeling, slippery or hot work.
 */
export const liftLimitKg = (task: LiftTask): number => {
  const { horizontalCm, verticalCm, travelCm, asymmetryDeg, frequencyFactor, coupling } = task;
  const outside =
    horizontalCm > MOST_HORIZONTAL_CM ||
    verticalCm < 0 ||
    verticalCm > MOST_CM ||
    travelCm > MOST_CM ||
    asymmetryDeg > MOST_TWIST_DEG;
  if (outside) return 0;
  const horizontal = LEAST_CM / Math.max(LEAST_CM, horizontalCm);
  const vertical = 1 - 0.003 * Math.abs(verticalCm - KNUCKLE_CM);
  const travel = 0.82 + 4.5 / Math.max(LEAST_CM, travelCm);
  const twist = 1 - 0.0032 * asymmetryDeg;
  return (
    LOAD_KG *
    horizontal *
    vertical *
    Math.min(1, travel) *
    twist *
    frequencyFactor *
    couplingFactor(coupling, verticalCm)
  );
};

/** Load over limit; null where the lift is not allowed at all. */
export const liftIndex = (loadKg: number, limitKg: number): number | null => (limitKg > 0 ? loadKg / limitKg : null);
