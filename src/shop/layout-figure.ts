import type { CutDirection, CutPiece, LaidSheet, Rectangle, SheetSequence } from './layout/index.ts';

export type { LaidSheet, Rectangle } from './layout/index.ts';

/** A strip of the first round of cuts, by the letter that the sequence of cuts calls it. */
export interface LetteredStrip {
  readonly name: string;
  readonly by: CutDirection;
  readonly piece: Rectangle;
}

/** Where the strips lie that come off a whole sheet and are cut on. Equal strips come off in the order in which they lie. */
export const sheetStrips = ({ tree }: LaidSheet, sequence: SheetSequence): readonly LetteredStrip[] => {
  if (tree?.kind !== 'divided') return [];
  const left: CutPiece[] = tree.pieces.filter(({ kind }) => kind === 'divided');
  return sequence.lines
    .filter(({ stage, from }) => stage === 1 && from === 'sheet')
    .flatMap(({ results }) => results)
    .flatMap((result): readonly LetteredStrip[] => {
      if (result.kind !== 'strip') return [];
      const at = left.findIndex(({ length, width }) => length === result.length && width === result.width);
      const [piece] = at < 0 ? [] : left.splice(at, 1);
      return piece === undefined ? [] : [{ name: result.name, by: tree.by, piece }];
    });
};
