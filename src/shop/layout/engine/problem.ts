/**
 * The job as the engine sees it: whole numbers of a thousandth of a millimetre, kerf added to every part and to the
 * usable sheet, trims taken off. Packing these boxes edge to edge is then the same as sawing the real parts.
 */
export interface Problem {
  readonly pieces: readonly Piece[];
  readonly sheets: readonly SheetKind[];
  /** Rounds of parallel cuts, trims not counted; UNLIMITED_STAGES where the machine does not care. */
  readonly stages: number;
  readonly limits: SawLimits | null;
}

/** One piece to place: a part, or several matched parts that leave the sheet as one strip. */
export interface Piece {
  readonly length: number;
  readonly width: number;
  readonly area: number;
  /** May lie as given, its length along the sheet. */
  readonly straight: boolean;
  /** May lie turned by a quarter. */
  readonly turned: boolean;
  /** Pieces of one type are interchangeable. */
  readonly type: number;
  /** True for matched parts: the piece is cut across its length (as given) once more. */
  readonly matched: boolean;
}

export interface SheetKind {
  readonly length: number;
  readonly width: number;
  readonly area: number;
  readonly price: number;
  /** How many there are; Infinity where more can be bought. */
  readonly count: number;
  /** In hand and free: whatever it takes is put on it before another sheet is used. */
  readonly first: boolean;
}

/** Limits of the saw, in the same units, kerf included as in the pieces. */
export interface SawLimits {
  /** Of the two sides of a rip, at least one is at most this wide: it lies between blade and fence. */
  readonly rip: number;
  /** No cut is longer than this. */
  readonly cut: number;
  /** No strip of the first round is narrower than this. */
  readonly strip: number;
  /** Direction of the first round, or null for either. */
  readonly first: 'rip' | 'crosscut' | null;
}

export const UNLIMITED_STAGES = 1000;
export const NO_LIMITS: SawLimits = {
  rip: Number.POSITIVE_INFINITY,
  cut: Number.POSITIVE_INFINITY,
  strip: 0,
  first: null,
};
