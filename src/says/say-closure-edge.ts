import type { LengthUnits } from '../base/index.ts';
import type { ClosureEdge } from '../envelope/index.ts';
import { sayLength } from './amounts.ts';

/** Where the lowest edge of an open closure stands, and whether the tape agrees. */
export const sayClosureEdge = ({ tapedMm, madeMm, off }: ClosureEdge, units: LengthUnits): string => {
  const made = `Hinge, trim and angle put the lowest edge ${sayLength(madeMm, units)} above ground`;
  if (tapedMm === null) return `${made}.`;
  const apart = sayLength(Math.abs(tapedMm - madeMm), units);
  return off
    ? `${made}, ${apart} from what was taped: one of hinge line, inner trim and opening angle is wrong, or the floor's height above ground.`
    : `${made}, within ${apart} of what was taped.`;
};
