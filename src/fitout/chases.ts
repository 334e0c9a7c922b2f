import { type Box, boxMiddle } from '../base/index.ts';
import type { Chase } from '../design/index.ts';
import { ACROSS, type Axis, DEEP, UP, withSpan } from './axes.ts';
import type { Board } from './board.ts';
import type { CarcassContext } from './context.ts';
import { pieceOf } from './hardware.ts';
import { badJoint } from './problem.ts';
import { type FittingParts, NO_PARTS, together } from './solved.ts';

const MM_PER_METRE = 1000;

/** The panel that a chase goes through and the axes that it is measured on. */
const THROUGH: {
  readonly [P in Chase['panel']]: { readonly role: string; readonly along: Axis; readonly across: Axis };
} = {
  left: { role: 'side-left', along: DEEP, across: UP },
  right: { role: 'side-right', along: DEEP, across: UP },
  top: { role: 'top', along: ACROSS, across: DEEP },
  bottom: { role: 'bottom', along: ACROSS, across: DEEP },
  back: { role: 'back', along: ACROSS, across: UP },
};

const chaseBox = (chase: Chase, board: Board): Box => {
  const { along, across } = THROUGH[chase.panel];
  const [long, wide] = chase.sizeMm;
  const box = withSpan(board.box, along, chase.alongMm - long / 2, chase.alongMm + long / 2);
  return withSpan(box, across, chase.acrossMm - wide / 2, chase.acrossMm + wide / 2);
};

/** Length of the edge of the opening (m): straight parts and the four quarter rounds. */
const edgeMetres = ({ sizeMm, cornerRadiusMm }: Chase): number => {
  const round = Math.min(cornerRadiusMm, sizeMm[0] / 2, sizeMm[1] / 2);
  return (2 * (sizeMm[0] + sizeMm[1]) - (8 - 2 * Math.PI) * round) / MM_PER_METRE;
};

const chaseParts = (chase: Chase, boards: readonly Board[], context: CarcassContext): FittingParts => {
  const origin = context.carcass.id;
  const board = boards.find(({ role }) => role === THROUGH[chase.panel].role);
  if (!board)
    return { ...NO_PARTS, problems: [badJoint(origin, [`wiring chase meets no panel at its ${chase.panel}`])] };
  const box = chaseBox(chase, board);
  const why = chase.name === '' ? 'wiring chase' : chase.name;
  const cornerRadius = Math.min(chase.cornerRadiusMm, chase.sizeMm[0] / 2, chase.sizeMm[1] / 2);
  return together([
    { cutouts: [{ board: board.id, origin, box, shape: 'rectangle', cornerRadius, why }] },
    chase.edgeTrim === null
      ? NO_PARTS
      : pieceOf(context, {
          id: `${chase.id}/trim`,
          origin,
          item: chase.edgeTrim,
          quantity: edgeMetres(chase),
          at: boxMiddle(box),
          mover: null,
        }),
  ]);
};

/** Openings for wiring through the panels of a carcass, with the trim round their edges. */
export const chasesOf = (context: CarcassContext, boards: readonly Board[]): FittingParts =>
  together(context.carcass.chases.map((chase) => chaseParts(chase, boards, context)));
