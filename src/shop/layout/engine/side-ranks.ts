import type { Piece } from './problem.ts';

/** Set above each of the two ranks of a rest; a subtraction takes it away where the rank is too small. */
export const ROOM_BITS = 0x80008000 | 0;
const BUCKETS = 512;
const NEVER = 0x7fff7fff;

/**
 * Tells in one subtraction whether a piece fits a rest. Only the sides of pieces matter: each length is replaced by its
 * rank among them, 15 bits each, so that `(rest - piece) & ROOM_BITS` keeps both bits where both sides are enough.
 */
export class SideRanks {
  private readonly sides: Float64Array;
  /** How many sides are shorter than the start of each of BUCKETS equal parts of the longest side. */
  private readonly starts: Int32Array;
  private readonly toBucket: number;
  /** For each piece, its code as given and turned; a code that fits nowhere where it may not lie so. */
  readonly straight: Int32Array;
  readonly turned: Int32Array;
  /** For pieces that may lie both ways: the code with the longer side first, to compare with that of the rest. */
  readonly either: Int32Array;

  constructor(pieces: readonly Piece[]) {
    const sides = new Set(pieces.flatMap(({ length, width }) => [length, width]));
    this.sides = Float64Array.from([...sides, Number.POSITIVE_INFINITY]).sort();
    const longest = Math.max(0, ...sides);
    this.toBucket = longest > 0 ? BUCKETS / longest : 0;
    this.starts = Int32Array.from({ length: BUCKETS + 1 }, (_, bucket) =>
      Math.max(
        0,
        this.sides.findIndex((side) => side * this.toBucket >= bucket),
      ),
    );
    this.straight = Int32Array.from(pieces, (piece) =>
      piece.straight ? (this.rank(piece.length) << 16) | this.rank(piece.width) : NEVER,
    );
    this.turned = Int32Array.from(pieces, (piece) =>
      piece.turned && piece.length !== piece.width ? (this.rank(piece.width) << 16) | this.rank(piece.length) : NEVER,
    );
    this.either = Int32Array.from(pieces, (piece) => {
      const [long, short] = [Math.max(piece.length, piece.width), Math.min(piece.length, piece.width)];
      return piece.straight && piece.turned ? (this.rank(long) << 16) | this.rank(short) : -1;
    });
  }

  /** How many of the sides are at most this long. */
  private rank(length: number): number {
    const { sides } = this;
    const bucket = length * this.toBucket;
    let rank = this.starts[bucket < BUCKETS ? bucket | 0 : BUCKETS] as number;
    while ((sides[rank] as number) <= length) rank++;
    return rank;
  }

  codeOfRest(length: number, width: number): number {
    return (this.rank(length) << 16) | this.rank(width) | ROOM_BITS;
  }

  /** The same with the longer side first. */
  sortedCode(code: number): number {
    const length = (code >>> 16) & 0x7fff;
    const width = code & 0x7fff;
    return length >= width ? code : (width << 16) | length | ROOM_BITS;
  }
}
