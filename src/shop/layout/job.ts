import type { CutDirection, CutKind } from './cut-words.ts';

/**
 * What is to be cut from what, for one material or several. Lengths in mm, areas in mm², prices in the shop's own
 * currency. x runs along the length of a sheet, y along its width.
 */
export interface LayoutJob {
  readonly parts: readonly LayoutPart[];
  readonly stock: readonly StockSheet[];
  readonly cut: CutKind;
  /** What the blade takes away; for a router the gap between parts; a shear takes nothing whatever stands here. */
  readonly kerf: number;
  /** What is taken off the edges of a bought sheet, the blade's own width included. */
  readonly trim: Trim;
  /** Rounds of parallel cuts after trimming; a last cut that only trims a part to size is free. */
  readonly stages: 2 | 3 | 'any';
  /** Widest strip that fits between blade and fence: of the two sides of a rip, one is at most this wide. */
  readonly ripLimit?: number;
  /** The first round of every sheet goes this way; absent: whichever is better. */
  readonly firstCut?: CutDirection;
  /** Longest cut of the machine or of the person at it; above all it decides which way the first cut goes. */
  readonly longestCut?: number;
  /** Narrowest strip that may be cut off a whole sheet. A narrower part is cut out of a strip of this width. */
  readonly minStrip?: number;
  /** Which rests are kept as offcuts; all others are waste. */
  readonly keep: KeepRule;
}

export type { CutKind } from './cut-words.ts';

/** 'length': the part's length lies along the sheet's length; 'width': along its width; 'any': it may be turned. */
export type LayoutGrain = 'length' | 'width' | 'any';

export interface LayoutPart {
  readonly mark: string;
  readonly length: number;
  readonly width: number;
  readonly quantity: number;
  readonly grain: LayoutGrain;
  /** Only sheets of the same material serve it; '' and absent are one material. */
  readonly material?: string;
  /** Parts of one group are matched: they leave the sheet as one strip, in the order given. */
  readonly group?: string;
}

export interface StockSheet {
  readonly name: string;
  readonly length: number;
  readonly width: number;
  /** How many there are; null: as many as needed. */
  readonly quantity: number | null;
  readonly price: number;
  readonly material?: string;
  /** An offcut in hand: used before bought sheets and not trimmed, its edges having been sawn before. */
  readonly offcut?: boolean;
  /** Overrules the trim of the job for this sheet. */
  readonly trim?: Trim;
}

/** Taken off each edge; left and right are the ends of the length, bottom (y = 0) and top those of the width. */
export interface Trim {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

export interface KeepRule {
  /** Shortest side of an offcut worth keeping. */
  readonly minSide: number;
  readonly minAreaMm2: number;
  /** Value of a kept offcut over the price of its area. */
  readonly valueShare: number;
}

export const NO_TRIM: Trim = { left: 0, right: 0, bottom: 0, top: 0 };

/** The same trim on all four edges. */
export const trimAll = (each: number): Trim => ({ left: each, right: each, bottom: each, top: each });

/** A rest that nobody keeps. */
export const KEEP_NOTHING: KeepRule = {
  minSide: Number.POSITIVE_INFINITY,
  minAreaMm2: Number.POSITIVE_INFINITY,
  valueShare: 0,
};

/** The material a record is of; absent and '' are the same. */
export const materialOf = (record: { readonly material?: string }): string => record.material ?? '';

/** Width of the cut that the job really has: a shear takes nothing away. */
export const kerfOf = (job: LayoutJob): number => (job.cut === 'shear' ? 0 : job.kerf);
