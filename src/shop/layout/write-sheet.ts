import { cutsOf } from './cuts-of.ts';
import type { SolvedSheet } from './engine/solution.ts';
import { kerfOf, type LayoutJob, materialOf, type StockSheet } from './job.ts';
import type { CutPiece, LaidSheet, PlacedPart, Rectangle } from './layout.ts';
import { isKept, keptOffcuts } from './offcuts.ts';
import type { Prepared } from './prepare.ts';
import { trimOf } from './trim.ts';
import { type Frame, writePiece } from './write-piece.ts';

/** The sheet after trimming. */
export const usableOf = (job: LayoutJob, stock: StockSheet): Rectangle => {
  const trim = trimOf(job, stock);
  return {
    x: trim.left,
    y: trim.bottom,
    length: stock.length - trim.left - trim.right,
    width: stock.width - trim.bottom - trim.top,
  };
};

const partsIn = (piece: CutPiece): readonly PlacedPart[] => {
  if (piece.kind === 'divided') return piece.pieces.flatMap(partsIn);
  if (piece.kind === 'rest') return [];
  const { mark, x, y, length, width, turned } = piece;
  return [{ mark, x, y, length, width, turned }];
};

/** Writes one solved sheet in mm. */
export const writeSheet = (job: LayoutJob, prepared: Prepared, solved: SolvedSheet): LaidSheet => {
  const stock = prepared.stock[solved.kind];
  if (stock === undefined) throw new Error(`no stock numbered ${solved.kind}`);
  const usable = usableOf(job, stock);
  const frame: Frame = {
    x: usable.x,
    y: usable.y,
    kerf: kerfOf(job),
    ripLimit: job.ripLimit ?? Number.POSITIVE_INFINITY,
    smallInside: job.cut === 'router',
    stages: prepared.problem.stages,
    partsOf: prepared.partsOf,
    isKept: (rest) => isKept(job.keep, rest),
  };
  const tree = writePiece(frame, solved.tree, 0, 0, 0);
  const { name, length, width, price, offcut } = stock;
  // The tree stands in the usable sheet itself: rounding to whole units took less than a thousandth off it.
  const whole: CutPiece = tree.kind === 'divided' ? { ...tree, ...usable } : tree;
  return {
    stock: name,
    material: materialOf(stock),
    offcut: offcut === true,
    length,
    width,
    price,
    usable,
    parts: partsIn(whole),
    // A router is led around each part: how the rectangles came about is of no use to it.
    tree: job.cut === 'router' ? null : whole,
    offcuts: keptOffcuts(whole),
    cuts: job.cut === 'router' ? [] : cutsOf({ length, width, usable }, whole),
  };
};
