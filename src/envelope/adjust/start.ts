import { distance, type Vec3 } from '../../base/index.ts';
import type { Compiled } from './compiled.ts';
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

/** Passes over all readings; each pulls its marks together, so errors spread no further than a bad reading's reach. */
const PASSES = 200;
/** The net has settled when the greatest pull of a pass is below this share of the finest reading's sigma. */
const SETTLED_PULL = 0.01;
/** Misfits beyond this many sigmas pull with a bounded force, so that one misreading cannot drag the rest. */
const BOUNDED_SIGMAS = 3;

/**
 * One relaxation step: the marks of a reading are moved along its gradient so that half of a small misfit goes away;
 * a large one counts only as BOUNDED_SIGMAS once the net has taken shape. Gives how far the marks were moved.
 */
const pull = (compiled: Compiled, i: number, points: Float64Array, bounded: boolean, seen: Observation): number => {
  const reading = compiled.readings[i];
  if (!reading) return 0;
  reading.observe(points, reading.from, reading.to, reading.at, seen);
  const misfit = reading.value - seen.value;
  const limit = BOUNDED_SIGMAS * reading.sigma;
  const wanted = bounded ? Math.max(-limit, Math.min(limit, misfit)) : misfit;
  let square = 0;
  for (let k = 0; k < 9; k++) {
    const mark = k < 3 ? reading.from : k < 6 ? reading.to : reading.at;
    const part = seen.by[k] ?? 0;
    if (mark >= 0 && part !== 0 && (compiled.slots[3 * mark + (k % 3)] ?? -1) >= 0) square += part * part;
  }
  if (square === 0) return 0;
  for (let k = 0; k < 9; k++) {
    const mark = k < 3 ? reading.from : k < 6 ? reading.to : reading.at;
    const part = seen.by[k] ?? 0;
    if (mark < 0 || part === 0 || (compiled.slots[3 * mark + (k % 3)] ?? -1) < 0) continue;
    const place = 3 * mark + (k % 3);
    points[place] = (points[place] ?? 0) + (0.5 * wanted * part) / square;
  }
  return Math.abs(wanted) / Math.sqrt(square);
};

/**
 * Where to begin, three coordinates a mark: the marks' own starts where they have any, otherwise a spread; then relaxed
 * by the readings. The bounded passes in the second half keep a gross misreading from bending the start.
 */
export const startPoints = (compiled: Compiled): Float64Array => {
  const { network } = compiled;
  const rough = withoutStarts(network.marks) ? spread(network) : network.marks.map((mark) => mark.start);
  const points = Float64Array.from(rough.flat());
  const finest = network.readings.reduce(
    (least, { kind, sigma }) => (isAngle(kind) ? least : Math.min(least, sigma)),
    Infinity,
  );
  const seen = newObservation();
  for (let pass = 0; pass < PASSES; pass++) {
    let most = 0;
    for (let i = 0; i < compiled.readings.length; i++)
      most = Math.max(most, pull(compiled, i, points, pass > PASSES / 2, seen));
    if (most < finest * SETTLED_PULL) break;
  }
  return points;
};
