import { placed, ROUNDING_MM } from '../base/index.ts';
import { boxShape } from '../bodies/index.ts';
import type { NodeId } from '../design/index.ts';
import { type Board, boardBands, boardPose, boardSize, type HoleWish, holeInPanel } from './board.ts';
import type { CarcassContext } from './context.ts';
import { servesBothHands } from './hand.ts';
import { sheetMassKg, sheetSigmaShare } from './masses.ts';
import type { Body, FitProblem, MassItem, Panel, PanelCut, PartId } from './parts.ts';
import { badJoint, mmWords } from './problem.ts';
import { type NetSolid, netSolid, recessesOf } from './recesses.ts';
import type { AssemblyBoards, FittingParts } from './solved.ts';

export const panelBody = (panel: Panel, board: Board): Body => ({
  id: panel.id,
  origin: panel.origin,
  carcass: panel.carcass,
  kind: 'panel',
  name: panel.name,
  shape: boxShape(board.box),
  mover: panel.mover,
});

/** Holes wished for in a board, in panel coordinates; a hole outside the panel is left out. */
const holesIn = (board: Board, wishes: readonly HoleWish[]): readonly PanelCut[] => {
  const [length, width] = boardSize(board);
  return wishes.flatMap(({ board: id, at: point, diameter, depth, why }): readonly PanelCut[] => {
    if (id !== board.id) return [];
    const { at, face } = holeInPanel(board, point);
    const radius = diameter / 2;
    const fits = at[0] >= radius && at[0] <= length - radius && at[1] >= radius && at[1] <= width - radius;
    return fits ? [{ kind: 'hole', face, at, diameter, depth, why }] : [];
  });
};

interface Made {
  readonly panel: Panel;
  readonly net: NetSolid;
}

const madePanel = (
  boards: readonly Board[],
  index: number,
  board: Board,
  wishes: readonly HoleWish[],
  place: { readonly carcass: NodeId; readonly mover: PartId | null },
): Made => {
  const [length, width, thickness] = boardSize(board);
  const recesses = recessesOf(boards, index);
  const cuts = [...recesses, ...holesIn(board, wishes)];
  const bands = boardBands(board);
  const net = netSolid([length, width, thickness], recesses);
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
    outline: null,
    grain: board.material.grain,
    bands,
    hand: board.side !== null && !servesBothHands(cuts, bands, length, width) ? board.side : null,
    cuts,
    pose: boardPose(board),
    mover: place.mover,
    volumeMm3: net.volumeMm3,
    massKg: sheetMassKg(net.volumeMm3, board.material),
  };
  return { panel, net };
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
  wishes: readonly HoleWish[],
  context: CarcassContext,
): Pick<FittingParts, 'panels' | 'bodies' | 'masses' | 'problems'> => {
  const carcass = context.carcass.id;
  const web = context.rule('groove-web-min');
  const made = boards.map((board, i) => ({ board, made: madePanel(boards, i, board, wishes, { carcass, mover }) }));
  return {
    panels: made.map(({ made: { panel } }) => panel),
    bodies: made.map(({ board, made: { panel } }) => panelBody(panel, board)),
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
    problems: made.flatMap(({ board, made: each }) => thinWeb(board, each, web)),
  };
};
