import { groupBy, placed, ROUNDING_MM } from '../base/index.ts';
import { boxShape, clippedShape } from '../bodies/index.ts';
import type { NodeId } from '../design/index.ts';
import { common } from './axes.ts';
import {
  type Board,
  boardBands,
  boardPose,
  boardSize,
  type HoleWish,
  holeInPanel,
  inCarcass,
  inPanel,
} from './board.ts';
import { clippedOutline, clipsInPanel, keepsInside } from './clip-board.ts';
import type { CarcassContext } from './context.ts';
import { type BoardCutouts, cutoutsIn, type RoundHole, UNCUT } from './cutouts.ts';
import { servesBothHands } from './hand.ts';
import { sheetMassKg, sheetSigmaShare } from './masses.ts';
import { notchesInPanel } from './notch-board.ts';
import type { Body, FitProblem, MassItem, Panel, PartId } from './parts.ts';
import { type FaceRect, piecesAround } from './pieces-around.ts';
import { badJoint, mmWords } from './problem.ts';
import { type NetSolid, netSolid, recessesOf, type Through } from './recesses.ts';
import type { AssemblyBoards, FittingParts } from './solved.ts';

interface Made {
  readonly panel: Panel;
  readonly net: NetSolid;
  readonly cutouts: BoardCutouts;
  /** What is cut right out of it, inside or from an edge. */
  readonly through: readonly Through[];
  readonly inOnePiece: boolean;
}

/** What is wished for in one board. */
type BoardWishes = Pick<FittingParts, 'holes' | 'cutouts'>;

/** What is wished for in the boards of a carcass, by board. */
type Wishes = (board: PartId) => BoardWishes;

/** Sorts the wishes of a carcass by the board that they are for. */
export const wishesByBoard = ({ holes, cutouts }: BoardWishes): Wishes => {
  const holesOf = groupBy(holes, ({ board }) => board);
  const cutoutsOf = groupBy(cutouts, ({ board }) => board);
  return (board) => ({ holes: holesOf.get(board) ?? [], cutouts: cutoutsOf.get(board) ?? [] });
};

const PIECE = '/piece-';

/** The panel that a body is, or is a piece of; any other body's own id. */
export const wholePart = (body: PartId): PartId => {
  const at = body.lastIndexOf(PIECE);
  return at < 0 ? body : body.slice(0, at);
};

/** The body of a panel; one that is cut right through is several, around the rectangles that its cut-outs touch. */
const panelBodies = ({ panel, through }: Made, board: Board): readonly Body[] => {
  const { id, origin, carcass, name, mover, thickness } = panel;
  const common = { origin, carcass, kind: 'panel', name, mover } as const;
  const boxes =
    through.length === 0
      ? [board.box]
      : piecesAround(panel.length, panel.width, through).map(({ from, to }) =>
          inCarcass(board, { min: [...from, 0], max: [...to, thickness] }),
        );
  return boxes
    .flatMap((box) => clippedShape(boxShape(box), board.clips ?? []) ?? [])
    .map((shape, i) => ({ ...common, id: i === 0 ? id : `${id}${PIECE}${i + 1}`, shape }));
};

/** The holes wished for in a board, in panel coordinates; a hole outside the panel is left out. */
const holesIn = (board: Board, wishes: readonly HoleWish[]): readonly RoundHole[] => {
  const [length, width] = boardSize(board);
  return wishes.flatMap(({ at: point, diameter, depth, why }): readonly RoundHole[] => {
    const { at, face } = holeInPanel(board, point);
    const radius = diameter / 2;
    const fits = at[0] >= radius && at[0] <= length - radius && at[1] >= radius && at[1] <= width - radius;
    return fits && keepsInside(board, point, radius) ? [{ kind: 'hole', face, at, diameter, depth, why }] : [];
  });
};

/** Where a board meets the others of its assembly, on its face: what is housed in it, and what it is housed in. */
const jointsOf = (boards: readonly Board[], board: Board): readonly FaceRect[] =>
  boards.flatMap((other): readonly FaceRect[] => {
    const shared = other === board ? null : common(board.box, other.box);
    if (!shared) return [];
    const { min, max } = inPanel(board, shared);
    return [{ from: [min[0], min[1]], to: [max[0], max[1]] }];
  });

const madePanel = (
  boards: readonly Board[],
  index: number,
  board: Board,
  wishes: BoardWishes,
  place: { readonly carcass: NodeId; readonly mover: PartId | null },
): Made => {
  const [length, width, thickness] = boardSize(board);
  const recesses = recessesOf(boards, index);
  const notches = notchesInPanel(board);
  const holes = holesIn(board, wishes.holes);
  const cutouts =
    wishes.cutouts.length === 0
      ? UNCUT
      : cutoutsIn(board, wishes.cutouts, [...jointsOf(boards, board), ...notches], holes);
  const through = [...cutouts.through, ...notches.map((notch) => ({ ...notch, leftAreaMm2: 0 }))];
  const cuts = [...recesses, ...holes, ...cutouts.cuts];
  const bands = boardBands(board);
  const net = netSolid([length, width, thickness], recesses, through, clipsInPanel(board));
  const { outline, bevels, inOnePiece } = clippedOutline(board);
  const plain = outline === null && bevels.length === 0;
  const panel: Panel = {
    id: board.id,
    origin: board.origin,
    carcass: place.carcass,
    role: board.role,
    name: board.name,
    material: board.material.id,
    thickness: board.material.thicknessMm,
    length,
    width,
    outline,
    grain: board.material.grain,
    bands,
    ...(bevels.length > 0 ? { bevels } : {}),
    hand: board.side !== null && !(plain && servesBothHands(cuts, bands, length, width)) ? board.side : null,
    cuts,
    pose: boardPose(board),
    mover: place.mover,
    volumeMm3: net.volumeMm3,
    massKg: sheetMassKg(net.volumeMm3, board.material),
  };
  return { panel, net, cutouts, through, inOnePiece };
};

/** Dados and grooves must leave the least web of the house rules; end rabbets are judged by their share elsewhere. */
const thinWeb = (board: Board, { panel, net }: Made, least: number): readonly FitProblem[] => {
  const housed = panel.cuts.some((cut) => cut.kind === 'dado' || cut.kind === 'groove');
  if (!housed || net.web >= least - ROUNDING_MM) return [];
  const because = [board.name, `${mmWords(net.web)} left of ${mmWords(panel.thickness)}`];
  return [badJoint(board.origin, because, least, net.web)];
};

/** The panels of one assembly, each recessed for what stands in it, with bodies and masses. */
export const panelsOf = (
  { boards, mover }: AssemblyBoards,
  wishes: Wishes,
  context: CarcassContext,
): Pick<FittingParts, 'panels' | 'bodies' | 'masses' | 'problems'> => {
  const carcass = context.carcass.id;
  const web = context.rule('groove-web-min');
  const made = boards.map((board, i) => ({
    board,
    made: madePanel(boards, i, board, wishes(board.id), { carcass, mover }),
  }));
  return {
    panels: made.map(({ made: { panel } }) => panel),
    bodies: made.flatMap(({ board, made: each }) => panelBodies(each, board)),
    masses: made.map(
      ({ board, made: { panel, net } }): MassItem => ({
        id: panel.id,
        origin: panel.origin,
        carcass,
        kind: 'panel',
        name: panel.name,
        massKg: panel.massKg,
        sigmaKg: panel.massKg * sheetSigmaShare(board.material, context),
        at: placed(panel.pose, net.centre),
        mover,
      }),
    ),
    problems: made.flatMap(({ board, made: each }) => [
      ...thinWeb(board, each, web),
      ...each.cutouts.problems,
      ...(each.inOnePiece ? [] : [badJoint(board.origin, [`${board.name} would be cut into pieces`])]),
    ]),
  };
};
