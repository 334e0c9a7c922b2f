import type { Vec2, Vec3 } from '../../base/index.ts';
import type { FigureLabel, FigureLine, PlanReading } from './plan.ts';

export interface Segment {
  readonly from: Vec2;
  readonly to: Vec2;
}

/** A reading as lines; a dimension may stand beside its marks, with extensions out to it. */
export interface DrawnLines {
  readonly path: readonly Segment[];
  readonly extensions: readonly Segment[];
  /** What it may not run along and is drawn beside instead: anything, the outline, or nothing. */
  readonly keepsOff: 'all' | 'outline' | 'nothing';
}

export type DrawnReading = DrawnLines & { readonly step: number };

const plus = ([a, b]: Vec2, [c, d]: Vec2, k = 1): Vec2 => [a + c * k, b + d * k];
const lengthOf = ({ from, to }: Segment): number => Math.hypot(to[0] - from[0], to[1] - from[1]);
const along = ({ from, to }: Segment, share: number): Vec2 => plus(from, [to[0] - from[0], to[1] - from[1]], share);

const ARC_PIECES = 10;
const ARC_SHARE = 0.45;

/** An angle as an arc about its hub, the short way round. */
const arcPath = (hub: Vec2, from: Vec2, to: Vec2): readonly Segment[] => {
  const radius = ARC_SHARE * Math.min(lengthOf({ from: hub, to: from }), lengthOf({ from: hub, to }));
  const start = Math.atan2(from[1] - hub[1], from[0] - hub[0]);
  const turn = Math.atan2(to[1] - hub[1], to[0] - hub[0]) - start;
  const short = Math.atan2(Math.sin(turn), Math.cos(turn));
  const point = (i: number): Vec2 => {
    const angle = start + (short * i) / ARC_PIECES;
    return [hub[0] + radius * Math.cos(angle), hub[1] + radius * Math.sin(angle)];
  };
  return Array.from({ length: ARC_PIECES }, (_, i) => ({ from: point(i), to: point(i + 1) }));
};

/** The reading as it is taken: a width, height, depth or offset along its own axis, beside the mark that it ends at. */
export const drawReading = (
  { kind, from, to, at }: PlanReading,
  place: (mark: string) => Vec3,
  view: (at: Vec3) => Vec2,
): DrawnLines => {
  const a = place(from);
  const end = to === null ? a : place(to);
  if (kind === 'angle' && at !== null)
    return { path: arcPath(view(place(at)), view(a), view(end)), extensions: [], keepsOff: 'nothing' };
  const start: Vec3 =
    kind === 'offset'
      ? [end[0], 0, end[2]]
      : kind === 'height'
        ? [end[0], end[1], a[2]]
        : kind === 'along'
          ? [a[0], end[1], end[2]]
          : a;
  return {
    path: [{ from: view(start), to: view(end) }],
    extensions: [],
    keepsOff: kind === 'distance' ? 'outline' : 'all',
  };
};

/** Steps by which a line is moved aside, in letters, and how many are tried to each side. */
const ASIDE = 1.9;
const MOST_ASIDE = 5;
/** Parallel lines this near to each other, in letters, run together. */
const TOGETHER = 1.2;

const runsTogether = (a: Segment, b: Segment, letter: number): boolean => {
  const length = lengthOf(a);
  if (length === 0 || lengthOf(b) === 0) return false;
  const dir: Vec2 = [(a.to[0] - a.from[0]) / length, (a.to[1] - a.from[1]) / length];
  const on = (p: Vec2): readonly [number, number] => {
    const [u, v] = [p[0] - a.from[0], p[1] - a.from[1]];
    return [u * dir[0] + v * dir[1], u * -dir[1] + v * dir[0]];
  };
  const [p, q] = [on(b.from), on(b.to)];
  if (Math.max(Math.abs(p[1]), Math.abs(q[1])) >= TOGETHER * letter) return false;
  return Math.min(length, Math.max(p[0], q[0])) - Math.max(0, Math.min(p[0], q[0])) > letter / 2;
};

/** The reading moved aside, by as little as it takes, so that it runs along nothing that is drawn already. */
export const settled = (
  drawn: DrawnLines,
  outline: readonly Segment[],
  others: readonly Segment[],
  letter: number,
): DrawnLines => {
  const [line] = drawn.path;
  if (drawn.keepsOff === 'nothing' || !line || lengthOf(line) < letter) return drawn;
  const taken = drawn.keepsOff === 'all' ? [...outline, ...others] : outline;
  const length = lengthOf(line);
  const out: Vec2 = [(line.from[1] - line.to[1]) / length, (line.to[0] - line.from[0]) / length];
  const steps = Array.from({ length: 2 * MOST_ASIDE + 1 }, (_, i) => (i % 2 === 0 ? -i / 2 : (i + 1) / 2));
  const moved = steps.map((k): Segment => {
    const by = k * ASIDE * letter;
    return { from: plus(line.from, out, by), to: plus(line.to, out, by) };
  });
  const free = moved.find((each) => taken.every((other) => !runsTogether(each, other, letter))) ?? line;
  const extensions =
    free === moved[0] ? [] : [line.from, line.to].map((from, i) => ({ from, to: i === 0 ? free.from : free.to }));
  return { ...drawn, path: [free], extensions };
};

/** Half of the room that a label takes, with air around it. */
const halfRoom = (text: string, letter: number): Vec2 => [(text.length * 0.64 + 0.5) * letter * 0.5, letter * 0.8];

interface Room {
  readonly at: Vec2;
  readonly half: Vec2;
}

const meets = (a: Room, b: Room): boolean =>
  Math.abs(a.at[0] - b.at[0]) < a.half[0] + b.half[0] && Math.abs(a.at[1] - b.at[1]) < a.half[1] + b.half[1];

/** The shares of a segment that lie within a room, or null (Liang and Barsky). */
const sharesIn = ({ from, to }: Segment, { at, half }: Room): readonly [number, number] | null => {
  let [enter, leave] = [0, 1];
  for (const axis of [0, 1] as const) {
    const [p, d] = [from[axis] - at[axis], to[axis] - from[axis]];
    if (d === 0) {
      if (Math.abs(p) >= half[axis]) return null;
      continue;
    }
    const [s, t] = [(-half[axis] - p) / d, (half[axis] - p) / d];
    enter = Math.max(enter, Math.min(s, t));
    leave = Math.min(leave, Math.max(s, t));
  }
  return enter < leave ? [enter, leave] : null;
};

/** The parts of a segment outside of all rooms. */
const outside = (segment: Segment, rooms: readonly Room[]): readonly Segment[] =>
  rooms.reduce<readonly Segment[]>(
    (pieces, room) =>
      pieces.flatMap((piece) => {
        const shares = sharesIn(piece, room);
        if (!shares) return [piece];
        const [enter, leave] = shares;
        return [
          ...(enter > 0 ? [{ from: piece.from, to: along(piece, enter) }] : []),
          ...(leave < 1 ? [{ from: along(piece, leave), to: piece.to }] : []),
        ];
      }),
    [segment],
  );

/** Shares of a line at which its number may stand, the best first: off the middle, where diagonals cross. */
const SPOTS = [0.62, 0.38, 0.72, 0.28, 0.5, 0.8, 0.2, 0.56, 0.44, 0.67, 0.33, 0.76, 0.24, 0.88, 0.12] as const;
/** Around a reading that shows as a point: how far off its number may stand, in letters. */
const AROUND: readonly Vec2[] = [
  [0, 1.6],
  [0, -1.6],
  [1.8, 0],
  [-1.8, 0],
  [1.6, 1.5],
  [-1.6, 1.5],
  [1.6, -1.5],
  [-1.6, -1.5],
  [0, 3.2],
  [0, -3.2],
  [-3.6, 1.6],
  [3.6, 1.6],
  [-3.6, -1.6],
  [3.6, -1.6],
  [-3.6, 0],
  [3.6, 0],
  [-3.6, 3.2],
  [3.6, 3.2],
];
/** Shorter than this, in letters, a line has no room for a number on it. */
const SHORT = 4;

const spotsOf = ({ path }: DrawnReading, letter: number): readonly Vec2[] => {
  const whole = path.reduce((sum, each) => sum + lengthOf(each), 0);
  const [first] = path;
  if (!first) return [];
  const beside = AROUND.map((by) => plus(along(first, 0.5), by, letter));
  if (whole < SHORT * letter) return beside;
  const on = SPOTS.flatMap((share) => {
    const spot = path.length === 1 ? first : path[Math.floor(share * path.length)];
    return spot ? [along(spot, path.length === 1 ? share : 0.5)] : [];
  });
  return [...on, ...beside];
};

const ON_LABEL = 100;
const ON_OUTLINE = 3;

/**
 * Numbers on their lines where they cover least, the shortest line first, since it has the least choice; lines then
 * stop short of every number.
 */
export const placeLabels = (
  drawn: readonly DrawnReading[],
  words: readonly FigureLabel[],
  outline: readonly Segment[],
  letter: number,
): { readonly lines: readonly FigureLine[]; readonly labels: readonly FigureLabel[] } => {
  const rooms: Room[] = words.map(({ at, text }) => ({ at, half: halfRoom(text, letter) }));
  const labels: FigureLabel[] = [];
  const size = (one: DrawnReading): number => one.path.reduce((sum, each) => sum + lengthOf(each), 0);
  for (const one of drawn.toSorted((a, b) => size(a) - size(b) || a.step - b.step)) {
    const text = String(one.step);
    const cost = (room: Room): number =>
      ON_LABEL * rooms.filter((other) => meets(room, other)).length +
      ON_OUTLINE * outline.filter((each) => sharesIn(each, room) !== null).length +
      drawn.filter((other) => other !== one && other.path.some((each) => sharesIn(each, room) !== null)).length;
    const [best] = spotsOf(one, letter)
      .map((at): Room => ({ at, half: halfRoom(text, letter) }))
      .map((room) => ({ room, cost: cost(room) }))
      .toSorted((a, b) => a.cost - b.cost);
    if (!best) continue;
    rooms.push(best.room);
    labels.push({ at: best.room.at, text, step: one.step });
  }
  const lines = drawn.flatMap(({ path, extensions, step }) => [
    ...extensions
      .flatMap((each) => outside(each, rooms))
      .map((each): FigureLine => ({ ...each, role: 'extension', step })),
    ...path.flatMap((each) => outside(each, rooms)).map((each): FigureLine => ({ ...each, role: 'reading', step })),
  ]);
  return { lines, labels: labels.toSorted((a, b) => (a.step ?? 0) - (b.step ?? 0)) };
};
