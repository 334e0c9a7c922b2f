import { length, ROUNDING_MM, scale, subtract, type Vec3 } from '../../base/index.ts';
import type { Design } from '../../design/index.ts';
import type { Finding } from '../finding.ts';
import { roundedUp, wantedMm } from './candidate.ts';

export const VEHICLE_AXES = ['x', 'y', 'z'] as const;
export type VehicleAxis = (typeof VEHICLE_AXES)[number];

/** A shift along one axis of the vehicle, signed. */
export interface Shift {
  readonly axis: VehicleAxis;
  readonly mm: number;
  /** The same for shifts the same way; of these the first that works is enough. */
  readonly group: string;
  /** Length of the longest shift that way, by which ways are ranked. */
  readonly rank: number;
}

/** Directions nearly square to an axis make long shifts for a short gain: only axes that carry half of the most count. */
const WORTH_SHARE = 0.5;

const EVERY_WAY: readonly Vec3[] = [
  [1, 0, 0],
  [-1, 0, 0],
  [0, 1, 0],
  [0, -1, 0],
  [0, 0, 1],
];

/**
 * The way that takes the first named part of a gap finding off the second: its nearest points run towards it while
 * they stand apart, and back out of it where they overlap. Touching bodies do not say, so every way but down is tried.
 */
const waysOff = (finding: Finding): readonly Vec3[] => {
  if (!finding.at) return [];
  const [from, to] = finding.at;
  const along = subtract(to, from);
  const size = length(along);
  if (size <= ROUNDING_MM) return EVERY_WAY;
  return [scale(along, (finding.value < 0 ? 1 : -1) / size)];
};

/**
 * Shifts along the axes that gain the room the finding wants, each rounded up to a step of the reader's units; those the
 * same way stand together, the one that leaves nothing to say first.
 */
export const shiftsOff = (finding: Finding, units: Design['units']): readonly Shift[] => {
  const shifts = new Map<string, Shift>();
  for (const way of waysOff(finding)) {
    const most = Math.max(...way.map(Math.abs));
    VEHICLE_AXES.forEach((axis, i) => {
      const share = way[i] ?? 0;
      if (Math.abs(share) < WORTH_SHARE * most) return;
      const lengths = wantedMm(finding).map((mm) => roundedUp(mm / Math.abs(share), units));
      const group = `${axis} ${Math.sign(share)}`;
      for (const long of lengths)
        if (long > 0)
          shifts.set(`${axis} ${share * long}`, {
            axis,
            mm: Math.sign(share) * long,
            group,
            rank: Math.max(...lengths),
          });
    });
  }
  return [...shifts.values()];
};

/** The same shifts the other way: what the second part of a pair would do. */
export const reversed = (shifts: readonly Shift[]): readonly Shift[] =>
  shifts.map((shift) => ({ ...shift, mm: -shift.mm, group: `back ${shift.group}` }));
