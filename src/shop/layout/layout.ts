import type { CutDirection, CutKind } from './cut-words.ts';

/**
 * The finished layout, all in mm. Plain data: a worker, a file or a drawing can stand behind it. Rectangles are what
 * lies on the saw: the kerf between them is not drawn, it is the gap between neighbours.
 */
export interface Layout {
  readonly cut: CutKind;
  readonly sheets: readonly LaidSheet[];
  /** Equal sheets, to be cut together as a stack: the numbers of the sheets (from 0) in each group. */
  readonly repeats: readonly (readonly number[])[];
  readonly unplaced: readonly Unplaced[];
  /** Things that did not stop the layout but must be said. */
  readonly notes: readonly LayoutNote[];
  readonly price: number;
  /** Value of the offcuts kept. */
  readonly keptValue: number;
  /** Area of the parts over area of the sheets used; 0 when there is no sheet. */
  readonly usedShare: number;
  readonly proof: Proof;
}

export interface Rectangle {
  readonly x: number;
  readonly y: number;
  /** Along x. */
  readonly length: number;
  /** Along y. */
  readonly width: number;
}

/** A part as it lies: length along x, width along y; turned when its own length lies along y. */
export interface PlacedPart extends Rectangle {
  readonly mark: string;
  readonly turned: boolean;
}

export interface LaidSheet {
  readonly stock: string;
  readonly material: string;
  readonly offcut: boolean;
  readonly length: number;
  readonly width: number;
  readonly price: number;
  /** What remains after trimming; parts lie inside. */
  readonly usable: Rectangle;
  readonly parts: readonly PlacedPart[];
  /** How it comes apart; null for a free layout. */
  readonly tree: CutPiece | null;
  /** Rests worth keeping, largest first. */
  readonly offcuts: readonly Rectangle[];
  readonly cuts: readonly Cut[];
}

/** A rectangle on the saw and what it becomes. */
export type CutPiece =
  | ({ readonly kind: 'part'; readonly mark: string; readonly turned: boolean } & Rectangle)
  | ({ readonly kind: 'rest'; readonly keep: boolean } & Rectangle)
  | ({
      readonly kind: 'divided';
      /** rip: cuts run along x, pieces follow each other along y; crosscut: the other way round. */
      readonly by: CutDirection;
      readonly pieces: readonly CutPiece[];
    } & Rectangle);

export type { CutDirection } from './cut-words.ts';

/** One cut through the whole of the piece it divides. */
export interface Cut {
  /** Round of cuts, from 1; a trim to size counts as the round after the piece. 0: trimming the sheet's own edges. */
  readonly stage: number;
  readonly by: CutDirection;
  /** The edge of the piece that is cut off, from which the blade takes `kerf` onwards. */
  readonly at: number;
  /** Start and end of the cut along its own direction. */
  readonly from: number;
  readonly to: number;
}

export type UnplacedReason =
  | 'no-stock-of-material'
  | 'larger-than-every-sheet'
  | 'fits-only-turned'
  | 'breaks-saw-limits'
  | 'stock-used-up'
  | 'bad-size'
  | 'too-many-parts';

export interface Unplaced {
  readonly mark: string;
  readonly count: number;
  readonly reason: UnplacedReason;
  readonly length: number;
  readonly width: number;
  readonly material: string;
  /** The most there is, for reasons of size: the largest usable sheet; else null. */
  readonly largest: { readonly length: number; readonly width: number } | null;
}

export interface LayoutNote {
  readonly code: 'matched-group-split' | 'stock-left-out' | 'setting-replaced';
  /** The group, the sheet or the setting. */
  readonly about: string;
}

/** How good the layout can be called. */
export interface Proof {
  /** No layout of these parts has fewer sheets. */
  readonly lowerBoundSheets: number;
  /** No layout of these parts costs less. */
  readonly lowerBoundPrice: number;
  /** From what the bound comes. */
  readonly by: BoundKind;
  /** 'optimal': nothing cheaper exists; 'optimal-2-stage': nothing cheaper exists in two stages; else 'within'. */
  readonly verdict: 'optimal' | 'optimal-2-stage' | 'within';
  /** Sheets above the bound. */
  readonly sheetsAbove: number;
}

export type BoundKind = 'area' | 'dual-feasible' | 'strip-patterns';
