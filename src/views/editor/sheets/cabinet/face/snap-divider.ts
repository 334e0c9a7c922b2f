import { type LengthUnits, MM_PER_INCH } from '../../../../../base/index.ts';

/** A size of the first room at which a divider likes to rest, and what is said of it. */
export interface SnapTarget {
  readonly firstMm: number;
  readonly says: string;
}

export interface SnapInput {
  /** Where the pointer asks the first room's size to be. */
  readonly wantedMm: number;
  /** Both rooms together; what stands between them is not counted. */
  readonly totalMm: number;
  /** The least that each room may have. */
  readonly leastMm: number;
  readonly targets: readonly SnapTarget[];
  /** Within this of a target the divider goes there. */
  readonly reachMm: number;
  readonly gridMm: number;
}

export interface Snapped {
  readonly firstMm: number;
  readonly secondMm: number;
  /** What it rests on, or null for the grid. */
  readonly says: string | null;
}

/** Sixteenths of an inch, or whole millimetres. */
export const gridOf = (units: LengthUnits): number => (units === 'in' ? MM_PER_INCH / 16 : 1);

/**
 * Where a dragged divider comes to rest: on the nearest target in reach, else on the grid, always leaving both rooms
 * their least. Of two targets equally near the first named is taken.
 */
export const snapDivider = ({ wantedMm, totalMm, leastMm, targets, reachMm, gridMm }: SnapInput): Snapped => {
  const most = Math.max(leastMm, totalMm - leastMm);
  const within = (mm: number): number => Math.min(most, Math.max(leastMm, mm));
  let best: SnapTarget | null = null;
  for (const target of targets) {
    const off = Math.abs(target.firstMm - wantedMm);
    const allowed = target.firstMm >= leastMm && target.firstMm <= most && off <= reachMm;
    if (allowed && (best === null || off < Math.abs(best.firstMm - wantedMm))) best = target;
  }
  const firstMm = within(best ? best.firstMm : Math.round(wantedMm / gridMm) * gridMm);
  return { firstMm, secondMm: totalMm - firstMm, says: best?.says ?? null };
};
