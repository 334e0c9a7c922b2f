import { type Box, ROUNDING_MM } from '../base/index.ts';
import { beyondPlane } from '../bodies/index.ts';
import type { Wheelhouse } from '../design/index.ts';
import {
  ACROSS,
  AXES,
  type Axis,
  BACKWARD,
  common,
  DEEP,
  type Direction,
  LEFT,
  RIGHT,
  TO_FACE,
  UP,
  UPWARD,
  withSpan,
} from './axes.ts';
import type { Board } from './board.ts';
import type { ChamferCut } from './chamfers.ts';
import { furthest } from './clear-room.ts';
import type { CarcassContext } from './context.ts';
import { fastenersOf, screwsAlong } from './hardware.ts';
import { notchBoard } from './notch-board.ts';
import type { FitProblem } from './parts.ts';
import { badJoint, mmWords } from './problem.ts';
import { type AssemblyBoards, type FittingParts, NO_PARTS, together } from './solved.ts';
import { PIECES } from './standard-pieces.ts';

/** One wheelhouse that a carcass stands over, in carcass coordinates. */
export interface WheelCut {
  readonly wheelhouse: Wheelhouse;
  /** What is taken out of the shell: clear room from the outside in. */
  readonly clear: Box;
  /** The clear room and the boards that line it: nothing else inside the carcass lies here. */
  readonly taken: Box;
  /** True at an end that runs out through the face, the back or a side, where no board closes it. */
  readonly open: { readonly low: boolean; readonly high: boolean };
}

/** The way into the carcass from the side that a wheelhouse lies at, and the axis that it runs along. */
const INTO: { readonly [S in Wheelhouse['side']]: Direction } = { left: RIGHT, right: LEFT, back: TO_FACE };
const runOf = (side: Wheelhouse['side']): Axis => (side === 'back' ? ACROSS : DEEP);

const reaching = (box: Box, { axis, sign }: Direction, outside: Box, mm: number): Box =>
  sign > 0
    ? withSpan(box, axis, outside.min[axis], outside.min[axis] + mm)
    : withSpan(box, axis, outside.max[axis] - mm, outside.max[axis]);

const cutOf = (wheelhouse: Wheelhouse, outside: Box, inside: Box, t: number): WheelCut => {
  const { side, fromMm, lengthMm, inMm, upMm } = wheelhouse;
  const [into, run] = [INTO[side], runOf(side)];
  const to = fromMm + lengthMm;
  // An end with no room for a board before it runs out.
  const low = fromMm < inside.min[run] + t;
  const high = to > inside.max[run] - t;
  const span = [low ? outside.min[run] : fromMm, high ? outside.max[run] : to] as const;
  const clear = withSpan(withSpan(reaching(outside, into, outside, inMm), run, ...span), UP, 0, upMm);
  const lined = withSpan(reaching(clear, into, outside, inMm + t), UP, 0, upMm + t);
  const taken = withSpan(lined, run, low ? span[0] : span[0] - t, high ? span[1] : span[1] + t);
  return { wheelhouse, clear, taken, open: { low, high } };
};

/** What keeps a wheelhouse from being cut: it must pass the panel at its side and leave room for a panel beyond. */
const refusal = (
  wheelhouse: Wheelhouse,
  outside: Box,
  inside: Box,
  t: number,
): readonly [string, number, number] | null => {
  const { side, fromMm, inMm, upMm } = wheelhouse;
  const [into, run] = [INTO[side], runOf(side)];
  const { axis } = into;
  const least = into.sign > 0 ? inside.min[axis] - outside.min[axis] : outside.max[axis] - inside.max[axis];
  const most = outside.max[axis] - outside.min[axis] - least - 2 * t;
  const [lowest, highest] = [inside.min[UP], inside.max[UP] - t];
  const length = outside.max[run] - outside.min[run];
  if (inMm <= least) return [`wheelhouse reaches ${mmWords(inMm)} in, no further than the panel`, least, inMm];
  if (inMm > most) return [`wheelhouse reaches ${mmWords(inMm)} in, nothing of the carcass is left`, most, inMm];
  if (upMm <= lowest) return [`wheelhouse is ${mmWords(upMm)} high, no higher than the bottom`, lowest, upMm];
  if (upMm > highest) return [`wheelhouse is ${mmWords(upMm)} high, nothing of the carcass is left`, highest, upMm];
  if (fromMm >= length) return [`wheelhouse begins ${mmWords(fromMm)} along, beyond the carcass`, length, fromMm];
  return null;
};

export interface WheelCuts {
  readonly cuts: readonly WheelCut[];
  readonly problems: readonly FitProblem[];
}

/** The wheelhouses that a carcass can be cut for; the others are problems and leave it whole. */
export const wheelCuts = (
  { carcass, material }: CarcassContext,
  outside: Box,
  inside: Box,
  chamfers: readonly ChamferCut[] = [],
): WheelCuts => {
  const t = material.thicknessMm;
  const problems: FitProblem[] = [];
  const cuts: WheelCut[] = [];
  for (const wheelhouse of carcass.wheelhouses) {
    const why = refusal(wheelhouse, outside, inside, t);
    const cut = cutOf(wheelhouse, outside, inside, t);
    if (why) problems.push(badJoint(carcass.id, [why[0]], why[1], why[2]));
    else if (cuts.some(({ taken }) => common(taken, cut.taken) !== null))
      problems.push(badJoint(carcass.id, [`two wheelhouses at the ${wheelhouse.side} meet`]));
    else if (chamfers.some(({ inner }) => beyondPlane(inner, furthest(cut.taken, inner.normal)) > ROUNDING_MM))
      problems.push(badJoint(carcass.id, [`the wheelhouse at the ${wheelhouse.side} meets a cut-off corner`]));
    else cuts.push(cut);
  }
  return { cuts, problems };
};

/** Which way a board looks that closes an end: away from the wheel. */
const ENDS: { readonly [A in 0 | 1]: readonly [low: Direction, high: Direction] } = {
  0: [LEFT, RIGHT],
  1: [TO_FACE, BACKWARD],
};

const liningOf = (
  { wheelhouse, clear, taken, open }: WheelCut,
  inside: Box,
  context: CarcassContext,
): readonly Board[] => {
  const { carcass, material } = context;
  const { id, side } = wheelhouse;
  const [into, run] = [INTO[side], runOf(side)];
  const { axis, sign } = into;
  const along: Direction = run === ACROSS ? RIGHT : BACKWARD;
  const owner = carcass.name === '' ? carcass.id : carcass.name;
  const board = (role: string, box: Box, rest: Pick<Board, 'along' | 'face'>): Board => ({
    id: `${id}/${role}`,
    origin: carcass.id,
    role: `wheelhouse-${role}`,
    name: `${owner} wheelhouse ${role.replace('-', ' ')}`,
    material,
    box,
    seat: 'dado',
    side: side === 'back' ? null : side,
    band: null,
    ...rest,
  });
  // From the panel at the side to the inner face of the wheelhouse, and on to the inner face of its lining.
  const wall = (sign > 0 ? inside.min : inside.max)[axis];
  const face = (sign > 0 ? clear.max : clear.min)[axis];
  const lined = (sign > 0 ? taken.max : taken.min)[axis];
  const between = (box: Box, from: number, to: number): Box =>
    withSpan(box, axis, Math.min(from, to), Math.max(from, to));
  const length = withSpan(
    taken,
    run,
    Math.max(taken.min[run], inside.min[run]),
    Math.min(taken.max[run], inside.max[run]),
  );
  const upright = withSpan(length, UP, inside.min[UP], clear.max[UP]);
  const end = (from: number, to: number): Box => withSpan(between(upright, wall, face), run, from, to);
  const [low, high] = ENDS[run === ACROSS ? 0 : 1];
  const inward: Direction = axis === ACROSS ? RIGHT : BACKWARD;
  return [
    board('top', between(withSpan(length, UP, clear.max[UP], taken.max[UP]), wall, lined), { along, face: UPWARD }),
    board('side', between(upright, face, lined), { along, face: into }),
    ...(open.low ? [] : [board('near-end', end(taken.min[run], clear.min[run]), { along: inward, face: low })]),
    ...(open.high ? [] : [board('far-end', end(clear.max[run], taken.max[run]), { along: inward, face: high })]),
  ];
};

/** The boards that line each wheelhouse inside the carcass, butted and screwed to each other and to the shell. */
export const wheelLinings = (
  cuts: readonly WheelCut[],
  inside: Box,
  context: CarcassContext,
): { readonly assemblies: readonly AssemblyBoards[]; readonly parts: FittingParts } => {
  const lined = cuts.map((cut) => ({ cut, boards: liningOf(cut, inside, context) }));
  return {
    assemblies: lined.map(({ cut, boards }) => ({ assembly: `${cut.wheelhouse.id}/lining`, mover: null, boards })),
    parts:
      lined.length === 0
        ? NO_PARTS
        : together(
            lined.map(({ cut: { wheelhouse, clear }, boards }) => {
              const run = runOf(wheelhouse.side);
              const [long, up] = [clear.max[run] - clear.min[run], clear.max[UP]];
              // Two lines of screws along the top, one along the foot of the side, one up each end.
              const quantity = 3 * screwsAlong(context, long) + (boards.length - 2) * screwsAlong(context, up);
              return fastenersOf(context, {
                id: `${wheelhouse.id}/screws`,
                origin: context.carcass.id,
                item: PIECES.joint,
                quantity,
                mover: null,
              });
            }),
          ),
  };
};

/** Anchors whose place is cut away for a wheelhouse. */
export const anchorsInWheels = (
  { carcass }: CarcassContext,
  anchors: FittingParts['anchors'],
  cuts: readonly WheelCut[],
): readonly FitProblem[] =>
  anchors
    .filter(({ at }) =>
      cuts.some(({ clear }) => AXES.every((axis) => at[axis] >= clear.min[axis] && at[axis] <= clear.max[axis])),
    )
    .map(({ id }) => badJoint(carcass.id, [`${id} stands where a wheelhouse is cut out`]));

/** A board of the shell, or of what it stands on, cut for each wheelhouse. */
export const notchedFor = (cuts: readonly WheelCut[], board: Board): Board =>
  cuts.reduce((left, { clear }) => notchBoard(left, clear) ?? left, board);
