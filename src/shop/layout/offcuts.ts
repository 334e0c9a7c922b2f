import type { KeepRule } from './job.ts';
import type { CutPiece, Rectangle } from './layout.ts';

const areaOf = ({ length, width }: Rectangle): number => length * width;

/** True for a rest that the shop keeps; a side or an area of exactly the least counts as kept. */
export const isKept = (rule: KeepRule, rest: Rectangle): boolean =>
  Math.min(rest.length, rest.width) >= rule.minSide && areaOf(rest) >= rule.minAreaMm2;

const restsOf = (piece: CutPiece): readonly CutPiece[] =>
  piece.kind === 'divided' ? piece.pieces.flatMap(restsOf) : piece.kind === 'rest' ? [piece] : [];

/** The rests of a cut tree that are kept, largest first. */
export const keptOffcuts = (tree: CutPiece): readonly Rectangle[] =>
  restsOf(tree)
    .filter((piece) => piece.kind === 'rest' && piece.keep)
    .map(({ x, y, length, width }) => ({ x, y, length, width }))
    .sort((a, b) => areaOf(b) - areaOf(a) || a.y - b.y || a.x - b.x);
