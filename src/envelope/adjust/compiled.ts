import type { Network, NetworkReading } from './network.ts';
import { NO_MARK, OBSERVERS, type Observation, type Observer } from './observe.ts';

export interface CompiledReading {
  readonly observe: Observer;
  readonly kind: NetworkReading['kind'];
  readonly from: number;
  readonly to: number;
  readonly at: number;
  readonly value: number;
  readonly sigma: number;
}

/** A network with its marks numbered, for the loops: three coordinates a mark in one array. */
export interface Compiled {
  readonly network: Network;
  readonly markIndex: ReadonlyMap<string, number>;
  /** Which unknown each coordinate is, three a mark; −1 where it is fixed. */
  readonly slots: Int32Array;
  readonly unknowns: number;
  readonly readings: readonly CompiledReading[];
}

/** Throws on a reading that names a mark the network lacks, or whose sigma is not positive: both are checked before. */
export const compile = (network: Network): Compiled => {
  const markIndex = new Map(network.marks.map((mark, i) => [mark.id, i]));
  const slots = new Int32Array(3 * network.marks.length).fill(-1);
  let unknowns = 0;
  network.marks.forEach((mark, m) => {
    for (const axis of [0, 1, 2] as const) if (!mark.fixed[axis]) slots[3 * m + axis] = unknowns++;
  });
  const indexOf = (id: string): number => {
    const index = markIndex.get(id);
    if (index === undefined) throw new RangeError(`adjust: no mark has the id ${id}`);
    return index;
  };
  const readings = network.readings.map((reading): CompiledReading => {
    const { kind, value, sigma, from } = reading;
    if (!(sigma > 0)) throw new RangeError(`adjust: the sigma ${sigma} of reading ${reading.id} is not positive`);
    return {
      observe: OBSERVERS[kind],
      kind,
      from: indexOf(from),
      to: reading.kind === 'offset' ? NO_MARK : indexOf(reading.to),
      at: reading.kind === 'angle' ? indexOf(reading.at) : NO_MARK,
      value,
      sigma,
    };
  });
  return { network, markIndex, slots, unknowns, readings };
};

/**
 * The unknowns that an observation depends on, into `rowSlots` and `rowBy` (nine places each); gives how many. A mark
 * that a reading names twice is counted twice, which adds up as it should.
 */
export const rowOf = (
  { slots }: Compiled,
  reading: CompiledReading,
  { by }: Observation,
  rowSlots: Int32Array,
  rowBy: Float64Array,
): number => {
  let size = 0;
  for (let end = 0; end < 3; end++) {
    const mark = end === 0 ? reading.from : end === 1 ? reading.to : reading.at;
    if (mark < 0) continue;
    for (let axis = 0; axis < 3; axis++) {
      const slot = slots[3 * mark + axis] ?? -1;
      const part = by[3 * end + axis] ?? 0;
      if (slot < 0 || part === 0) continue;
      rowSlots[size] = slot;
      rowBy[size] = part;
      size++;
    }
  }
  return size;
};
