/** Voltage lost (V) in copper out and back: ρ I L / A, ρ in ohm mm² / m, L the whole loop in metres. */
export const wireDrop = (resistivity: number, amps: number, loopM: number, areaMm2: number): number =>
  (resistivity * amps * loopM) / areaMm2;

/** Blade fuses that are made, in amperes. */
export const FUSES_A = [2, 3, 5, 7.5, 10, 15, 20, 25, 30, 40] as const;

/** The smallest fuse at least `factor` times a current, and at most what the wire may carry; null where none is. */
export const fuseFor = (amps: number, factor: number, wireAmps: number): number | null =>
  FUSES_A.find((fuse) => fuse >= amps * factor && fuse <= wireAmps) ?? null;
