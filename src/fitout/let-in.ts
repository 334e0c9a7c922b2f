import { type Box, boxMiddle, ROUNDING_MM, type Vec3 } from '../base/index.ts';
import type { Hardware, LetIn } from '../catalog/index.ts';
import { ACROSS, common, DEEP, UP, withAxis, withSpan } from './axes.ts';
import type { Board, CutoutWish, HoleWish } from './board.ts';
import type { CarcassContext } from './context.ts';
import { fastenersOf, hardwareOf, onFront, type PieceWish, pieceOf } from './hardware.ts';
import { type FittingParts, NO_PARTS, together } from './solved.ts';
import { PIECES } from './standard-pieces.ts';

/** A latch, a lock or a pull on the front of something. */
export interface FrontPiece extends Pick<PieceWish, 'id' | 'origin' | 'item' | 'mover'> {
  /** The point of the outer face that its middle comes to, in carcass coordinates. */
  readonly at: Vec3;
  /** The panel that it sits in, then what stands right behind it; empty where it sits in none. */
  readonly boards: readonly Board[];
}

/** True for what is let into its panel; anything else that is worked by hand stands out of the face. */
export const isLetIn = (record: Hardware | null): boolean => (record?.letIn?.cutout ?? null) !== null;

/** Across × up of what is cut: in the panel itself, and for the case in what stands behind it. */
const cutSize = (letIn: LetIn, size: Vec3, behind: boolean): readonly [number, number] | null => {
  const { cutout } = letIn;
  if (cutout === null) return null;
  if ('sizeMm' in cutout) return cutout.sizeMm;
  return behind ? [size[0], size[1]] : [cutout.boreMm, cutout.boreMm];
};

/** Across × up between the outer edges of the bolts of a piece, about its middle. */
const boltSpan = ({ screws }: LetIn): readonly [number, number] => {
  const bolts = screws.filter(({ through }) => through);
  const span = (axis: 0 | 1): number =>
    bolts.reduce((most, { atMm, diameterMm }) => Math.max(most, 2 * Math.abs(atMm[axis]) + diameterMm), 0);
  return [span(0), span(1)];
};

/**
 * Across × up of what a piece asks of a panel that lies `thickness` behind its face: a cut-out for its case, or wood
 * round its bolts; nothing where it ends before.
 */
export const needBehind = (
  context: CarcassContext,
  item: string | null,
  thickness: number,
): readonly [number, number] => {
  const { letIn, sizeMm } = (item === null ? null : context.catalog.hardware.get(item)) ?? {};
  if (!letIn || !sizeMm) return [0, 0];
  if (letIn.cutout === null) return boltSpan(letIn);
  if (sizeMm[2] <= thickness + ROUNDING_MM) return [0, 0];
  return cutSize(letIn, sizeMm, true) ?? [0, 0];
};

const about = (middle: Vec3, [across, up]: readonly [number, number], board: Board): Box =>
  withSpan(
    withSpan(board.box, ACROSS, middle[ACROSS] - across / 2, middle[ACROSS] + across / 2),
    UP,
    middle[UP] - up / 2,
    middle[UP] + up / 2,
  );

/** The cut-outs for a piece: its own in the panel that it sits in, and room for its case as far back as that reaches. */
const cutoutsFor = (
  { origin, boards }: FrontPiece,
  record: Hardware,
  body: Box,
  context: CarcassContext,
): readonly CutoutWish[] => {
  const { letIn, sizeMm } = record;
  if (!letIn || !sizeMm) return [];
  return boards.flatMap((board, i): readonly CutoutWish[] => {
    const size = cutSize(letIn, sizeMm, i > 0);
    if (size === null || !common(body, board.box)) return [];
    const bore = i === 0 && letIn.cutout !== null && 'boreMm' in letIn.cutout;
    const corner = letIn.cutout !== null && 'sizeMm' in letIn.cutout ? letIn.cutout.cornerMm : null;
    return [
      {
        board: board.id,
        origin,
        box: about(boxMiddle(body), size, board),
        shape: bore ? 'circle' : 'rectangle',
        cornerRadius: corner ?? context.rule('router-diameter') / 2,
        why: record.id,
      },
    ];
  });
};

const holesFor = (
  { boards }: FrontPiece,
  record: Hardware,
  body: Box,
  context: CarcassContext,
): readonly HoleWish[] => {
  const { letIn } = record;
  if (!letIn) return [];
  // A bolt goes through the panel and what lies flat behind it, a screw into the panel alone.
  return boards.flatMap((board, i) => {
    const middle = withAxis(boxMiddle(body), DEEP, board.box.min[DEEP]);
    const blind = Math.min(context.rule('pilot-depth'), board.material.thicknessMm / 2);
    return letIn.screws
      .filter(({ through }) => through || i === 0)
      .map(({ atMm: [across, up], diameterMm, through }) => ({
        board: board.id,
        at: [middle[0] + across, middle[1], middle[2] + up] as const,
        diameter: diameterMm,
        depth: through ? null : blind,
        why: `${record.id} ${through ? 'bolt' : 'screw'}`,
      }));
  });
};

/**
 * A piece on a front with what is cut for it. What is let in reaches inward from the outer face, its rim taken to lie
 * in it; a pull that is only bolted on stands out of it. Bolts come with their piece, wood screws are counted.
 */
export const frontPiece = (context: CarcassContext, piece: FrontPiece, loose: 'inward' | 'outward'): FittingParts => {
  const { id, origin, item, mover, at } = piece;
  const { record } = hardwareOf(context, item, origin);
  const size = record?.sizeMm ?? null;
  if (!record || !size) return pieceOf(context, { id, origin, item, quantity: 1, at, mover });
  const body = onFront(size, at, isLetIn(record) ? 'inward' : loose);
  const screws = piece.boards.length > 0 ? (record.letIn?.screws.filter(({ through }) => !through).length ?? 0) : 0;
  return together([
    pieceOf(context, { id, origin, item, quantity: 1, at: body, mover }),
    {
      ...NO_PARTS,
      cutouts: cutoutsFor(piece, record, body, context),
      holes: holesFor(piece, record, body, context),
    },
    fastenersOf(context, { id: `${id}-screws`, origin, item: PIECES.hinge, quantity: screws, mover }),
  ]);
};
