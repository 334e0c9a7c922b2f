import type { LengthUnits, Vec2 } from '../../base/index.ts';
import type { Shape } from '../drawing/drawing.ts';

/** A column of a table that runs over pages. */
export interface PaperColumn {
  readonly title: string;
  /** Of the width of the page. */
  readonly share: number;
  readonly align?: 'left' | 'right';
  /** A rule down its left side, as of a field to write in. */
  readonly ruled?: boolean;
}

/** A cell: words, or an empty square to tick. */
export type PaperCell = string | { readonly tick: true };

/** What a paper is made of, one below the other. */
export type PaperPiece =
  | { readonly kind: 'heading'; readonly words: string }
  | { readonly kind: 'words'; readonly words: string; readonly strong?: boolean; readonly indent?: number }
  | {
      readonly kind: 'table';
      readonly columns: readonly PaperColumn[];
      readonly rows: readonly (readonly PaperCell[])[];
      /** Room for handwriting: rows of at least this height, mm. */
      readonly rowMm?: number;
    }
  /** A line to write on behind each caption, `across` of them side by side. */
  | { readonly kind: 'blanks'; readonly captions: readonly string[]; readonly across: number }
  | {
      readonly kind: 'picture';
      readonly height: number;
      /** Drawn below and to the right of a corner, in the width of the page. */
      readonly shapes: (topLeft: Vec2, width: number) => readonly Shape[];
    }
  | { readonly kind: 'page-break' };

/** What stands at the head and foot of every page. */
export interface PaperHead {
  /** What paper it is: `Cut list`. */
  readonly title: string;
  readonly designTitle: string;
  readonly customer: string;
  readonly revision: string;
  readonly units: LengthUnits;
  /** One sentence at the foot: what the reader must not take it for. */
  readonly caution: string;
  /** Wide tables lie across. */
  readonly lies?: 'upright' | 'across';
}
