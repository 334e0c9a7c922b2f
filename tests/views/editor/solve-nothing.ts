import type { FitOut } from '../../../src/fitout/index.ts';

/** A fit-out of nothing, for tests that are not about the cabinet. */
export const NO_FIT_OUT: FitOut = {
  carcasses: [],
  openings: [],
  panels: [],
  bodies: [],
  movers: [],
  masses: [],
  hardware: [],
  devices: [],
  rooms: [],
  gear: [],
  anchors: [],
  braces: [],
  problems: [],
};

export const solveNothing = (): FitOut => NO_FIT_OUT;
