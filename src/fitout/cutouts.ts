import { type Box, ROUNDING_MM, type Vec3 } from '../base/index.ts';
import { beyondPlane, type HalfSpace } from '../bodies/index.ts';
import { type Board, boardSize, type CutoutWish, inPanel } from './board.ts';
import { clipsInPanel } from './clip-board.ts';
import type { CutoutOutline, FitProblem, PanelCut } from './parts.ts';
import type { FaceRect } from './pieces-around.ts';
import { cutoutArea } from './plate-panel.ts';
import { badJoint } from './problem.ts';
import type { Through } from './recesses.ts';

/** What is cut right through one board. */
export interface BoardCutouts {
  readonly cuts: readonly PanelCut[];
  readonly through: readonly Through[];
  readonly problems: readonly FitProblem[];
}

/** Most boards. */
export const UNCUT: BoardCutouts = { cuts: [], through: [], problems: [] };

const outlineOf = ({ shape, cornerRadius }: CutoutWish, { from, to }: FaceRect): CutoutOutline =>
  shape === 'circle'
    ? { shape, at: [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2], diameter: to[0] - from[0] }
    : { shape, from, to, cornerRadius };

const overlap = (a: FaceRect, b: FaceRect): boolean =>
  ([0, 1] as const).every(
    (axis) => Math.min(a.to[axis], b.to[axis]) - Math.max(a.from[axis], b.from[axis]) > ROUNDING_MM,
  );

const rectOf = ({ min, max }: Box): FaceRect => ({ from: [min[0], min[1]], to: [max[0], max[1]] });

/** True where the rectangle keeps inside both faces of the board, and clear of the planes that cut it. */
const within = (
  { from, to }: FaceRect,
  [length, width, thickness]: readonly [number, number, number],
  clips: readonly HalfSpace[],
): boolean => {
  const corners = [from[0], to[0]].flatMap((x) =>
    [from[1], to[1]].flatMap((y) => [0, thickness].map((z): Vec3 => [x, y, z])),
  );
  return (
    from[0] > ROUNDING_MM &&
    from[1] > ROUNDING_MM &&
    to[0] < length - ROUNDING_MM &&
    to[1] < width - ROUNDING_MM &&
    clips.every((half) => corners.every((corner) => beyondPlane(half, corner) < -ROUNDING_MM))
  );
};

export type RoundHole = Extract<PanelCut, { readonly kind: 'hole' }>;

/** True where a round hole breaks into the rectangle, or lies in it. */
const meetsHole = ({ from, to }: FaceRect, { at, diameter }: RoundHole): boolean => {
  const off = ([0, 1] as const).map((axis) => Math.max(from[axis] - at[axis], at[axis] - to[axis], 0));
  return Math.hypot(off[0] ?? 0, off[1] ?? 0) < diameter / 2 - ROUNDING_MM;
};

/**
 * The cut-outs wished for in a board, in panel coordinates. One that does not keep inside the board is not cut; one
 * that meets what is housed there, a hole, or another cut-out, is cut and said.
 */
export const cutoutsIn = (
  board: Board,
  wishes: readonly CutoutWish[],
  taken: readonly FaceRect[],
  holes: readonly RoundHole[],
): BoardCutouts => {
  const size = boardSize(board);
  const clips = clipsInPanel(board);
  const asked = wishes.map((wish) => ({ wish, rect: rectOf(inPanel(board, wish.box)) }));
  const made = asked.filter(({ rect }) => within(rect, size, clips));
  const told = (wish: CutoutWish, words: string): FitProblem =>
    badJoint(wish.origin, [`${wish.why} ${words} ${board.name}`]);
  return {
    cuts: made.map(({ wish, rect }) => ({ kind: 'cutout', outline: outlineOf(wish, rect), why: wish.why })),
    through: made.map(({ wish, rect }) => ({
      ...rect,
      leftAreaMm2: (rect.to[0] - rect.from[0]) * (rect.to[1] - rect.from[1]) - cutoutArea(outlineOf(wish, rect)),
    })),
    problems: [
      ...asked.filter(({ rect }) => !within(rect, size, clips)).map(({ wish }) => told(wish, 'does not keep inside')),
      ...made
        .filter(
          ({ wish, rect }) =>
            taken.some((other) => overlap(rect, other)) ||
            holes.some((hole) => meetsHole(rect, hole)) ||
            made.some((other) => other.wish !== wish && overlap(rect, other.rect)),
        )
        .map(({ wish }) => told(wish, 'meets what is cut or housed in')),
    ],
  };
};
