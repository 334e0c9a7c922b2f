import type { HouseRules } from '../catalog/index.ts';

/**
 * Figures of the fit-out that no check compares with, kept here until the house rules name them. A house rule of the
 * same id takes precedence. Lengths mm; shares without unit.
 */
const START_VALUES: ReadonlyMap<string, number> = new Map([
  // How far the face of a device stands out of its plate, bezel and knobs together.
  ['device-face-depth', 15],
  // Screw line of a plate behind its edge.
  ['plate-screw-edge', 8],
  // Hole for a plate screw M5.
  ['plate-screw-hole', 5.5],
  // Blind hole for a slide screw in a panel.
  ['pilot-depth', 10],
  // Least clear room inside a drawer or on a tray that is worth building, each way.
  ['least-inside', 40],
  // Single hinges: the first from each end of the edge, and how far apart at most.
  ['hinge-first', 80],
  ['hinge-apart', 700],
  // Pilot hole for a hinge screw.
  ['hinge-screw-hole', 3],
  // Stroke of a gas spring over its full length.
  ['gas-spring-stroke-share', 0.4],
  // Roll shutters: least height of the bottom rail and of a slat, core of the roll, play of a turn, air round the roll.
  ['shutter-rail', 60],
  ['shutter-slat', 45],
  ['shutter-core', 60],
  ['shutter-layer-spare', 2],
  ['shutter-air', 5],
  // Command boards: what lies on the working face keeps this far from the edges of the board.
  ['board-margin', 10],
  // A magnetic steel face: thickness, and mass per square metre (0.7 mm at 7850 kg/m3).
  ['magnetic-face-thickness', 0.7],
  ['magnetic-face-mass', 5.495],
  // Shortest carriage that a sliding board is carried by.
  ['board-carriage-min', 250],
  // Spread of the density of one sheet against the next, one standard deviation.
  ['density-sigma-share', 0.025],
  // Spread of a catalogue mass of hardware.
  ['hardware-mass-sigma-share', 0.05],
  // Spread of an allowance that stands for many small things: finish, cable, screws.
  ['allowance-sigma-share', 0.2],
]);

/** The value of a house rule, or the start value where the rules do not name it yet. Throws for an id nobody knows. */
export const ruleValue = (rules: HouseRules, id: string): number => {
  const start = START_VALUES.get(id);
  return start === undefined || rules.all.has(id) ? rules.value(id) : start;
};
