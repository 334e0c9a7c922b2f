import type { CargoSpace } from '../../../../envelope/index.ts';
import type { FitOut, Mover } from '../../../../fitout/index.ts';

type PlacedClosure = CargoSpace['closures'][number];

const closureMover = (closure: PlacedClosure): Mover => ({
  id: closure.id,
  origin: closure.id,
  name: closure.name,
  motion: { kind: 'turn', point: closure.point, axis: closure.axis, travelRad: closure.opensRad },
  carriedBy: closure.carriedBy,
  rests: [
    { name: 'closed', share: 0 },
    { name: 'open', share: 1 },
  ],
});

/** Everything that slides or turns: the closures of the vehicle first, then the movers of the cabinet. */
export const allMovers = (fitOut: FitOut, space: CargoSpace | null): readonly Mover[] => [
  ...(space?.closures ?? []).map(closureMover),
  ...fitOut.movers,
];

/** Closures that the bay shows open until someone moves them: whoever looks in has opened the way in. */
const openAtFirst = (closure: PlacedClosure): boolean => closure.carriedBy === null && closure.kind !== 'side-door';

/** The shares as shown: those that someone set, and the way in open. */
export const shownShares = (
  shares: Readonly<Record<string, number>>,
  space: CargoSpace | null,
): Readonly<Record<string, number>> => {
  const open = (space?.closures ?? []).filter(openAtFirst).map((closure) => [closure.id, 1] as const);
  return { ...Object.fromEntries(open), ...shares };
};

/** The rest that a click takes a mover to: out when it stands stowed, stowed when it stands out at all. */
export const toggledShare = (share: number): number => (share > 0 ? 0 : 1);
