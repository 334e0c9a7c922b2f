import { ROUNDING_MM } from '../../base/index.ts';
import type { Cut, CutPiece, LaidSheet, Rectangle } from './layout.ts';

/** The cut that frees this piece from what follows it inside its parent. */
const cutAfter = (parent: Rectangle, piece: Rectangle, by: Cut['by'], stage: number): Cut | null => {
  const rip = by === 'rip';
  const at = rip ? piece.y + piece.width : piece.x + piece.length;
  const end = rip ? parent.y + parent.width : parent.x + parent.length;
  if (at >= end - ROUNDING_MM) return null;
  const [from, to] = rip ? [parent.x, parent.x + parent.length] : [parent.y, parent.y + parent.width];
  return { stage, by, at, from, to };
};

const inside = (piece: CutPiece, stage: number): readonly Cut[] => {
  if (piece.kind !== 'divided') return [];
  const { by, pieces } = piece;
  const own = pieces.map((each) => cutAfter(piece, each, by, stage)).filter((cut) => cut !== null);
  return [...own, ...pieces.flatMap((each) => inside(each, stage + 1))];
};

/** The trims of the sheet's own edges; each cut takes off everything outside the usable sheet. */
const trims = (sheet: Pick<LaidSheet, 'length' | 'width' | 'usable'>): readonly Cut[] => {
  const { usable: u, length, width } = sheet;
  const cut = (by: Cut['by'], at: number, to: number): Cut => ({ stage: 0, by, at, from: 0, to });
  return [
    ...(u.y > ROUNDING_MM ? [cut('rip', u.y, length)] : []),
    ...(u.y + u.width < width - ROUNDING_MM ? [cut('rip', u.y + u.width, length)] : []),
    ...(u.x > ROUNDING_MM ? [cut('crosscut', u.x, width)] : []),
    ...(u.x + u.length < length - ROUNDING_MM ? [cut('crosscut', u.x + u.length, width)] : []),
  ];
};

/** Every cut of a sheet: its trims, then round by round in the order of the pieces. */
export const cutsOf = (sheet: Pick<LaidSheet, 'length' | 'width' | 'usable'>, tree: CutPiece): readonly Cut[] => [
  ...trims(sheet),
  ...[...inside(tree, 1)].sort((a, b) => a.stage - b.stage),
];
