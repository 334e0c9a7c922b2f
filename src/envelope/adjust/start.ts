import { distance, type Vec3 } from '../../base/index.ts';
import { type Network, type NetworkMark, type NetworkReading, observe } from './network.ts';

/** True when every mark still stands at one point, so that its start says nothing about where it is. */
const withoutStarts = (marks: readonly NetworkMark[]): boolean => {
  const first = marks[0]?.start;
  return first !== undefined && marks.every((mark) => distance(mark.start, first) === 0);
};

/** A deterministic spread over the plane of the free axes, about as wide as the longest reading. */
const spread = (network: Network): ReadonlyMap<string, Vec3> => {
  const reach = network.readings.reduce(
    (most, reading) => (reading.kind === 'level' ? most : Math.max(most, Math.abs(reading.value))),
    1,
  );
  const count = network.marks.length;
  return new Map(
    network.marks.map((mark, i) => {
      const turn = (2 * Math.PI * i) / count;
      const out: Vec3 = [
        (reach / 2) * (1 - Math.cos(turn)),
        (reach / 2) * Math.sin(turn),
        (reach / 8) * Math.sin(3 * turn),
      ];
      const here = out.map((c, axis) => (mark.fixed[axis] ? (mark.start[axis] ?? 0) : c));
      return [mark.id, [here[0] ?? 0, here[1] ?? 0, here[2] ?? 0] as Vec3];
    }),
  );
};

/** Passes over all readings; each pulls its marks together, so errors spread no further than a bad reading's reach. */
const PASSES = 200;
/** Misfits beyond this many sigmas pull with a bounded force, so that one misreading cannot drag the rest. */
const BOUNDED_SIGMAS = 3;

/**
 * One relaxation step: the marks of a reading are moved along its gradient so that half of a small misfit goes away;
 * a large one counts only as BOUNDED_SIGMAS once the net has taken shape.
 */
const pull = (
  reading: NetworkReading,
  points: Map<string, [number, number, number]>,
  fixed: ReadonlyMap<string, readonly boolean[]>,
  bounded: boolean,
): void => {
  const from = points.get(reading.from);
  const to = reading.kind === 'offset' ? from : points.get(reading.to);
  if (!from || !to) return;
  const { value, byFrom, byTo } = observe(reading.kind, from, to);
  const misfit = reading.value - value;
  const limit = BOUNDED_SIGMAS * reading.sigma;
  const wanted = bounded ? Math.max(-limit, Math.min(limit, misfit)) : misfit;
  const moves = [
    { point: from, by: byFrom, held: fixed.get(reading.from) ?? [] },
    ...(reading.kind === 'offset' ? [] : [{ point: to, by: byTo, held: fixed.get(reading.to) ?? [] }]),
  ];
  const square = moves.reduce(
    (sum, { by, held }) => sum + by.reduce((s, c, axis) => s + (held[axis] ? 0 : c * c), 0),
    0,
  );
  if (square === 0) return;
  for (const { point, by, held } of moves)
    for (const axis of [0, 1, 2] as const) if (!held[axis]) point[axis] += (0.5 * wanted * by[axis]) / square;
};

/**
 * Where to begin: the marks' own starts where they have any, otherwise a spread relaxed by the readings. The bounded
 * passes at the end keep a gross misreading from bending the start.
 */
export const startPoints = (network: Network): ReadonlyMap<string, Vec3> => {
  const fixed = new Map(network.marks.map((mark) => [mark.id, mark.fixed]));
  const rough = withoutStarts(network.marks)
    ? spread(network)
    : new Map(network.marks.map((mark) => [mark.id, mark.start]));
  const points = new Map([...rough].map(([id, [x, y, z]]) => [id, [x, y, z] as [number, number, number]]));
  for (let pass = 0; pass < PASSES; pass++)
    for (const reading of network.readings) pull(reading, points, fixed, pass > PASSES / 2);
  return points;
};
