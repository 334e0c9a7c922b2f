import type { Vec2 } from '../../base/index.ts';

/** 0 °C in kelvin, and the temperature that gas springs are rated at. */
const ZERO_CELSIUS_K = 273.15;
const RATED_CELSIUS = 20;

/** What a lid asks of the gas springs that carry it. */
export interface SpringLoad {
  readonly massKg: number;
  /** From the hinge line to the centre of mass. */
  readonly centreMm: number;
  /** Lean of the line from hinge to centre of mass from level: nothing where gravity pulls hardest. */
  readonly leanRad: number;
  /** Lever of the spring's line about the hinge. */
  readonly armMm: number;
  readonly springs: number;
  /** Margin over balance: 1.1 to 1.2. */
  readonly factor: number;
  /** m/s². */
  readonly gravity: number;
}

/**
 * Force (N) that each spring must give to hold the lid: m g x cos θ · factor / (n r). Throws where there is no spring
 * or no lever.
 */
export const springForce = (load: SpringLoad): number => {
  const { massKg, centreMm, leanRad, armMm, springs, factor, gravity } = load;
  if (!(springs > 0 && armMm > 0)) throw new RangeError(`springForce: ${springs} springs on a lever of ${armMm} mm`);
  return (massKg * gravity * centreMm * Math.cos(leanRad) * factor) / (springs * armMm);
};

/** Lever (mm) of a spring between two points about a hinge at the origin: |a × b| / |a − b|; zero between equal points. */
export const springArm = (a: Vec2, b: Vec2): number => {
  const length = Math.hypot(a[0] - b[0], a[1] - b[1]);
  return length > 0 ? Math.abs(a[0] * b[1] - a[1] * b[0]) / length : 0;
};

/** Force (N) of a spring rated at 20 °C at another temperature: gas pressure follows the absolute temperature. */
export const forceAt = (ratedN: number, celsius: number): number =>
  (ratedN * (ZERO_CELSIUS_K + celsius)) / (ZERO_CELSIUS_K + RATED_CELSIUS);
