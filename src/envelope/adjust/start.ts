import { distance, type Vec3 } from '../../base/index.ts';
import type { Compiled, CompiledReading } from './compiled.ts';
import { isAngle, type Network, type NetworkMark } from './network.ts';
import { newObservation, type Observation } from './observe.ts';

/** True when every mark still stands at one point, so that its start says nothing about where it is. */
const withoutStarts = (marks: readonly NetworkMark[]): boolean => {
  const first = marks[0]?.start;
  return first !== undefined && marks.every((mark) => distance(mark.start, first) === 0);
};

/** A deterministic spread over the free axes, about as wide as the longest reading. */
const spread = (network: Network): readonly Vec3[] => {
  const reach = network.readings.reduce(
    (most, reading) => (isAngle(reading.kind) ? most : Math.max(most, Math.abs(reading.value))),
    1,
  );
  const count = network.marks.length;
  return network.marks.map((mark, i): Vec3 => {
    const turn = (2 * Math.PI * i) / count;
    const out: Vec3 = [
      (reach / 2) * (1 - Math.cos(turn)),
      (reach / 2) * Math.sin(turn),
      (reach / 8) * Math.sin(3 * turn),
    ];
    const here = (axis: 0 | 1 | 2): number => (mark.fixed[axis] ? mark.start[axis] : out[axis]);
    return [here(0), here(1), here(2)];
  });
};

/**
 * Passes over all readings; each pulls its marks together, so errors spread no further than a bad reading's reach. Marks
 * that nobody has placed need many to unfold; those placed after a sketch need a few to lose its gross errors.
 */
const PASSES_UNPLACED = 200;
const PASSES_PLACED = 24;
/** Misfits beyond this many sigmas pull with a bounded force, so that one misreading cannot drag the rest. */
const BOUNDED_SIGMAS = 3;

/** The coordinates that a reading may move, as places among the points, and which derivative belongs to each. */
interface Reach {
  readonly places: Int32Array;
  readonly parts: Int32Array;
}

const reachOf = (compiled: Compiled, i: number): Reach => {
  const reading = compiled.readings[i];
  const marks = reading ? [reading.from, reading.to, reading.at] : [];
  const free = marks.flatMap((mark, end) =>
    [0, 1, 2].flatMap((axis) =>
      mark >= 0 && (compiled.slots[3 * mark + axis] ?? -1) >= 0 ? [[3 * mark + axis, 3 * end + axis] as const] : [],
    ),
  );
  return { places: Int32Array.from(free, ([place]) => place), parts: Int32Array.from(free, ([, part]) => part) };
};

/**
 * One relaxation step: the marks of a reading are moved along its gradient so that half of a small misfit goes away;
 * a large one counts only as BOUNDED_SIGMAS once the net has taken shape.
 */
const pull = (
  reading: CompiledReading,
  { places, parts }: Reach,
  points: Float64Array,
  bounded: boolean,
  seen: Observation,
): void => {
  reading.observe(points, reading.from, reading.to, reading.at, seen);
  const { by } = seen;
  const misfit = reading.value - seen.value;
  const limit = BOUNDED_SIGMAS * reading.sigma;
  const wanted = bounded ? Math.max(-limit, Math.min(limit, misfit)) : misfit;
  let square = 0;
  for (let k = 0; k < parts.length; k++) {
    const part = by[parts[k] ?? 0] ?? 0;
    square += part * part;
  }
  if (square === 0) return;
  const share = (0.5 * wanted) / square;
  for (let k = 0; k < parts.length; k++) {
    const place = places[k] ?? 0;
    points[place] = (points[place] ?? 0) + share * (by[parts[k] ?? 0] ?? 0);
  }
};

/**
 * Where to begin, three coordinates a mark: the marks' own starts where they have any, otherwise a spread; then relaxed
 * by the readings. The bounded passes in the second half keep a gross misreading from bending the start.
 */
export const startPoints = (compiled: Compiled): Float64Array => {
  const { network, readings } = compiled;
  const unplaced = withoutStarts(network.marks);
  const rough = unplaced ? spread(network) : network.marks.map((mark) => mark.start);
  const points = new Float64Array(3 * rough.length);
  rough.forEach((point, m) => {
    points.set(point, 3 * m);
  });
  const passes = unplaced ? PASSES_UNPLACED : PASSES_PLACED;
  const reach = readings.map((_, i) => reachOf(compiled, i));
  const seen = newObservation();
  for (let pass = 0; pass < passes; pass++)
    readings.forEach((reading, i) => {
      const own = reach[i];
      if (own) pull(reading, own, points, pass > passes / 2, seen);
    });
  return points;
};
