import type { Piece, SheetKind } from '../engine/problem.ts';

/** Maps a size to its share of a capacity so that sizes which fit together never add up to more than one. */
type Share = (size: number) => number;

/** More parameters than this in one direction add time and, measured, no bound. */
const MOST_PARAMETERS = 28;
const MOST_MULTIPLES = 8;

/** Everything above capacity − e counts as full, everything below e as nothing (Martello and Toth). */
const ends =
  (capacity: number, e: number): Share =>
  (size) =>
    size > capacity - e ? 1 : size < e ? 0 : size / capacity;

/** Whole multiples of e, the upper half counted by what it leaves (Carlier, Clautiaux and Moukrim 2007). */
const wholes = (capacity: number, e: number): Share => {
  const most = Math.floor(capacity / e);
  return (size) =>
    2 * size > capacity
      ? (most - Math.floor((capacity - size) / e)) / most
      : 2 * size === capacity
        ? 1 / 2
        : Math.floor(size / e) / most;
};

/** Steps of 1/k (Fekete and Schepers 2001). */
const steps =
  (capacity: number, k: number): Share =>
  (size) => {
    const scaled = ((k + 1) * size) / capacity;
    return Number.isInteger(scaled) ? size / capacity : Math.floor(scaled) / k;
  };

/** At most this many values, spread evenly over the sorted list. */
const spread = (values: readonly number[], most: number): readonly number[] =>
  values.length <= most
    ? values
    : Array.from({ length: most }, (_, i) => values[Math.floor((i * (values.length - 1)) / (most - 1))] ?? 0);

const sharesFor = (capacity: number, sizes: readonly number[]): readonly Share[] => {
  const low = new Set<number>();
  for (const size of sizes) {
    if (2 * size <= capacity) low.add(size);
    else if (size < capacity) low.add(capacity - size);
  }
  const parameters = spread(
    [...low].filter((e) => e > 0).sort((a, b) => a - b),
    MOST_PARAMETERS,
  );
  return [
    (size) => size / capacity,
    ...parameters.map((e) => ends(capacity, e)),
    ...parameters.map((e) => wholes(capacity, e)),
    ...Array.from({ length: MOST_MULTIPLES }, (_, k) => steps(capacity, k + 1)),
  ];
};

interface Counted {
  readonly piece: Piece;
  readonly count: number;
}

const countTypes = (pieces: readonly Piece[]): readonly Counted[] => {
  const types = new Map<number, { piece: Piece; count: number }>();
  for (const piece of pieces) {
    const known = types.get(piece.type);
    if (known === undefined) types.set(piece.type, { piece, count: 1 });
    else known.count++;
  }
  return [...types.values()];
};

const table = (shares: readonly Share[], sizes: readonly number[]): readonly Float64Array[] =>
  shares.map((share) => Float64Array.from(sizes, share));

/**
 * Fewest sheets of one kind for these pieces, by pairs of dual feasible functions, one for each direction; the area
 * bound is the pair of the two plain shares. A piece that may be turned counts with the smaller of its two shares.
 * Valid for free layouts, so for sawn ones as well.
 */
export const dualFeasibleBound = (pieces: readonly Piece[], sheet: SheetKind): number => {
  const types = countTypes(pieces);
  const lengths = types.map(({ piece }) => piece.length);
  const widths = types.map(({ piece }) => piece.width);
  const turns = types.some(({ piece }) => piece.turned);
  const along = sharesFor(sheet.length, turns ? [...lengths, ...widths] : lengths);
  const across = sharesFor(sheet.width, turns ? [...lengths, ...widths] : widths);
  const [la, wa] = [table(along, lengths), table(along, widths)];
  const [lc, wc] = [table(across, lengths), table(across, widths)];
  const counts = Float64Array.from(types, ({ count }) => count);
  const lies = types.map(({ piece }) => (piece.straight ? 1 : 0) + (piece.turned ? 2 : 0));
  let most = 0;
  // Hot: every pair of functions over every type.
  for (let i = 0; i < along.length; i++) {
    const fl = la[i] as Float64Array;
    const fw = wa[i] as Float64Array;
    for (let j = 0; j < across.length; j++) {
      const gl = lc[j] as Float64Array;
      const gw = wc[j] as Float64Array;
      let sum = 0;
      for (let t = 0; t < counts.length; t++) {
        const straight = (fl[t] as number) * (gw[t] as number);
        const turned = (fw[t] as number) * (gl[t] as number);
        const way = lies[t] as number;
        sum += (counts[t] as number) * (way === 1 ? straight : way === 2 ? turned : Math.min(straight, turned));
      }
      if (sum > most) most = sum;
    }
  }
  return roundUp(most);
};

/** Sums of shares carry rounding; a bound just above a whole number by it is that number. */
const SHARE_ROUNDING = 2 ** -24;

/** The next whole number, rounding of the sum aside. */
export const roundUp = (sum: number): number => Math.ceil(sum - SHARE_ROUNDING);
