import { boxAround, boxSize, inverse, type Polygon, ROUNDING_MM, turned, type Vec3 } from '../base/index.ts';
import { boxShape, clippedShape, type HalfSpace } from '../bodies/index.ts';
import { AXES } from './axes.ts';
import { type Board, boardPose, boardSize } from './board.ts';
import type { ChamferCut } from './chamfers.ts';
import { notchesInPanel } from './notch-board.ts';
import type { Bevel } from './parts.ts';
import { ringAround } from './ring-around.ts';

/**
 * A board cut by planes: its box is drawn in to the longest points of what is left. Null where nothing of its whole
 * thickness is left; the board itself where no plane meets it.
 */
export const clipBoard = (board: Board, halves: readonly HalfSpace[]): Board | null => {
  const whole = boxShape(board.box);
  const met = halves.filter((half) => clippedShape(whole, [half]) !== whole);
  if (met.length === 0) return board;
  const left = clippedShape(whole, met);
  if (!left) return null;
  const box = boxAround(left.vertices);
  const { axis } = board.face;
  if (boxSize(box)[axis] < boxSize(board.box)[axis] - ROUNDING_MM) return null;
  return { ...board, box, clips: [...(board.clips ?? []), ...met] };
};

/** The planes of all chamfers that cut a board: the mitre where it is a panel of the shell beside one, else the inner face. */
export const planesFor = (role: string, cuts: readonly ChamferCut[]): readonly HalfSpace[] =>
  cuts.map(({ inner, mitres }) => mitres.find((mitre) => mitre.role === role)?.half ?? inner);

/** A half space of carcass coordinates in panel coordinates. */
const inPanelCoordinates = (board: Board, { normal, offset }: HalfSpace): HalfSpace => {
  const pose = boardPose(board);
  const { at } = pose;
  const moved = offset - normal[0] * at[0] - normal[1] * at[1] - normal[2] * at[2];
  return { normal: turned(inverse(pose), normal), offset: moved };
};

/** Where a board is cut, in panel coordinates. */
export const clipsInPanel = (board: Board): readonly HalfSpace[] =>
  (board.clips ?? []).map((half) => inPanelCoordinates(board, half));

const square = ({ normal }: HalfSpace): boolean => Math.abs(normal[2]) <= ROUNDING_MM;

/**
 * What a plane makes of the edge of a panel that it runs along. A plane that only takes the arris off, and leaves the
 * panel its full size on the long face and some way below it, leaves a land there.
 */
const bevelOf = ({ normal, offset }: HalfSpace, [length, width, thickness]: Vec3): Bevel => {
  const [nx, ny, nz] = normal;
  const alongX = Math.abs(nx) > Math.abs(ny);
  const inPlane = alongX ? nx : ny;
  const edge = alongX ? (nx > 0 ? 'w2' : 'w1') : ny > 0 ? 'l2' : 'l1';
  const end = edge === 'w2' ? length : edge === 'l2' ? width : 0;
  const longFace = nz > 0 ? 'b' : 'a';
  const crossing = (offset - inPlane * end) / nz;
  const landMm = longFace === 'b' ? crossing : thickness - crossing;
  const sloped = landMm > ROUNDING_MM ? thickness - landMm : thickness;
  return {
    edge,
    tiltRad: Math.atan(Math.abs(nz / inPlane)),
    longFace,
    setMm: (sloped * Math.abs(nz)) / Math.abs(inPlane),
    ...(landMm > ROUNDING_MM ? { landMm } : {}),
  };
};

const cutRing = (ring: Polygon, { normal, offset }: HalfSpace): Polygon =>
  ring.flatMap((point, i) => {
    const next = ring[(i + 1) % ring.length] ?? point;
    const over = (p: readonly [number, number]): number => normal[0] * p[0] + normal[1] * p[1] - offset;
    const [here, there] = [over(point), over(next)];
    const kept = here <= ROUNDING_MM ? [point] : [];
    if (here <= ROUNDING_MM === there <= ROUNDING_MM) return kept;
    const share = here / (here - there);
    return [...kept, [point[0] + (next[0] - point[0]) * share, point[1] + (next[1] - point[1]) * share] as const];
  });

interface ClippedOutline {
  readonly outline: Polygon | null;
  readonly bevels: readonly Bevel[];
  readonly inOnePiece: boolean;
}

/** Most boards: a rectangle that nothing cuts. */
const WHOLE: ClippedOutline = { outline: null, bevels: [], inOnePiece: true };

/** The shape that planes and notches give a board: a ring with square edges, and bevelled edges. */
export const clippedOutline = (board: Board): ClippedOutline => {
  if (!board.clips && !board.notches) return WHOLE;
  const size = boardSize(board);
  const [length, width] = size;
  const halves = clipsInPanel(board);
  const straight = halves.filter(square);
  const notches = notchesInPanel(board);
  const ring = ringAround(length, width, notches);
  const plain = straight.length === 0 && (notches.length === 0 || ring === null);
  return {
    outline: plain ? null : straight.reduce(cutRing, ring ?? ringAround(length, width, []) ?? []),
    bevels: halves.filter((half) => !square(half)).map((half) => bevelOf(half, size)),
    inOnePiece: ring !== null,
  };
};

/** True where a round about a point of a board keeps clear of every plane and every notch that cuts it. */
export const keepsInside = (board: Board, at: Vec3, radius: number): boolean =>
  (board.clips ?? []).every(
    ({ normal, offset }) => AXES.reduce<number>((sum, axis) => sum + normal[axis] * at[axis], 0) <= offset - radius,
  ) &&
  (board.notches ?? []).every(({ min, max }) =>
    AXES.some((axis) => axis !== board.face.axis && (at[axis] + radius <= min[axis] || at[axis] - radius >= max[axis])),
  );
