import type { SolvedPiece } from './engine/solution.ts';
import type { LayoutPart } from './job.ts';
import type { CutDirection, CutPiece, Rectangle } from './layout.ts';
import { UNITS_PER_MM, unitsUp } from './units.ts';

/** What the writing of one sheet needs to know: where the usable sheet begins, the blade, and who is who. */
export interface Frame {
  readonly x: number;
  readonly y: number;
  readonly kerf: number;
  /** Widest strip between blade and fence. */
  readonly ripLimit: number;
  readonly stages: number;
  /** For a router: small pieces lie inside, where the vacuum holds best, large ones at both ends. */
  readonly smallInside: boolean;
  readonly partsOf: readonly (readonly LayoutPart[])[];
  readonly isKept: (rest: Rectangle) => boolean;
}

type Divided = Extract<SolvedPiece, { readonly kind: 'rip' | 'crosscut' }>;
type Whole = Extract<SolvedPiece, { readonly kind: 'part' }>;

const isDivided = (piece: SolvedPiece): piece is Divided => piece.kind === 'rip' || piece.kind === 'crosscut';

/** The real rectangle of a box that carries its kerf; x and y in units from the corner of the usable sheet. */
const rectangle = (frame: Frame, x: number, y: number, length: number, width: number): Rectangle => ({
  x: frame.x + x / UNITS_PER_MM,
  y: frame.y + y / UNITS_PER_MM,
  length: length / UNITS_PER_MM - frame.kerf,
  width: width / UNITS_PER_MM - frame.kerf,
});

/** A rest; none where the blade takes all of it. */
const rest = (frame: Frame, x: number, y: number, length: number, width: number): readonly CutPiece[] => {
  const place = rectangle(frame, x, y, length, width);
  if (place.length * UNITS_PER_MM < 1 || place.width * UNITS_PER_MM < 1) return [];
  return [{ kind: 'rest', keep: frame.isKept(place), ...place }];
};

const part = (frame: Frame, of: LayoutPart, turned: boolean, x: number, y: number): CutPiece => {
  const [length, width] = turned ? [of.width, of.length] : [of.length, of.width];
  const { x: left, y: bottom } = rectangle(frame, x, y, 0, 0);
  return { kind: 'part', mark: of.mark, turned, x: left, y: bottom, length, width };
};

const runOf = (frame: Frame, piece: SolvedPiece): readonly LayoutPart[] =>
  piece.kind === 'part' ? (frame.partsOf[piece.piece] ?? []) : [];

/** The direction of the cuts between the parts of a matched run: across its own length. */
const runDirection = (piece: Whole): CutDirection => (piece.turned ? 'rip' : 'crosscut');

/**
 * The parts of a matched run one after the other, each trimmed to its own width out of `room`.
 */
const openRun = (frame: Frame, piece: Whole, x: number, y: number, room: number): readonly CutPiece[] => {
  const kerf = unitsUp(frame.kerf);
  let at = 0;
  return runOf(frame, piece).map((of): CutPiece => {
    const along = unitsUp(of.length) + kerf;
    const across = unitsUp(of.width) + kerf;
    const [px, py] = piece.turned ? [x, y + at] : [x + at, y];
    at += along;
    const single = part(frame, of, piece.turned, px, py);
    if (across >= room) return single;
    const spare = piece.turned
      ? rest(frame, px + across, py, room - across, along)
      : rest(frame, px, py + across, along, room - across);
    const whole = piece.turned ? rectangle(frame, px, py, room, along) : rectangle(frame, px, py, along, room);
    return { kind: 'divided', by: piece.turned ? 'crosscut' : 'rip', pieces: [single, ...spare], ...whole };
  });
};

/**
 * The run inside a child that has to come apart in the same round as the child itself, for want of a later round; with
 * the room it lies in. Otherwise the run leaves as one strip and is cut up on its own.
 */
const inlineRun = (
  frame: Frame,
  child: SolvedPiece,
  by: CutDirection,
  level: number,
): { run: Whole; room: number } | null => {
  const inner =
    isDivided(child) && child.pieces.length === 2 && child.pieces.some(({ kind }) => kind === 'rest')
      ? child.pieces.find(({ kind }) => kind === 'part')
      : child;
  if (inner === undefined || inner.kind !== 'part' || runOf(frame, inner).length < 2) return null;
  if (runDirection(inner) !== by || (inner === child ? level : level + 1) < frame.stages) return null;
  return { run: inner, room: by === 'rip' ? child.length : child.width };
};

const sizeAlong = (piece: SolvedPiece, by: CutDirection): number => (by === 'rip' ? piece.width : piece.length);

/** Wide strips first, equal ones together, the rest last: one fence setting after the other. */
const inSawOrder = (pieces: readonly SolvedPiece[], by: CutDirection): readonly SolvedPiece[] =>
  [...pieces].sort(
    (a, b) => Number(a.kind === 'rest') - Number(b.kind === 'rest') || sizeAlong(b, by) - sizeAlong(a, by),
  );

/** A rest too wide for the fence beside a strip too wide for it comes off in several strips. */
const fencedRest = (frame: Frame, x: number, y: number, of: SolvedPiece, wide: boolean): readonly CutPiece[] => {
  const most = Math.floor(frame.ripLimit * UNITS_PER_MM) + unitsUp(frame.kerf);
  if (!wide || of.width <= most) return rest(frame, x, y, of.length, of.width);
  return [
    ...rest(frame, x, y, of.length, most),
    ...fencedRest(frame, x, y + most, { ...of, width: of.width - most }, wide),
  ];
};

/** Largest, third largest … smallest … second largest, then the rest. */
const inRouterOrder = (pieces: readonly SolvedPiece[], by: CutDirection): readonly SolvedPiece[] => {
  const sorted = inSawOrder(pieces, by);
  const parts = sorted.filter(({ kind }) => kind !== 'rest');
  const odd = parts.filter((_, i) => i % 2 === 1);
  return [...parts.filter((_, i) => i % 2 === 0), ...odd.reverse(), ...sorted.filter(({ kind }) => kind === 'rest')];
};

const divide = (frame: Frame, piece: Divided, x: number, y: number, level: number): CutPiece => {
  const by = piece.kind;
  const most = Math.floor(frame.ripLimit * UNITS_PER_MM) + unitsUp(frame.kerf);
  const wide = by === 'rip' && piece.pieces.some((child) => child.kind !== 'rest' && child.width > most);
  let at = 0;
  const pieces = (frame.smallInside ? inRouterOrder : inSawOrder)(piece.pieces, by).flatMap(
    (child): readonly CutPiece[] => {
      const [cx, cy] = by === 'rip' ? [x, y + at] : [x + at, y];
      at += sizeAlong(child, by);
      if (child.kind === 'rest') return fencedRest(frame, cx, cy, child, wide);
      const inline = inlineRun(frame, child, by, level + 1);
      if (inline !== null) return openRun(frame, inline.run, cx, cy, inline.room);
      return [writePiece(frame, child, cx, cy, level + 1)];
    },
  );
  return { kind: 'divided', by, pieces, ...rectangle(frame, x, y, piece.length, piece.width) };
};

/** Turns one solved rectangle, in units, into real pieces in mm: kerf taken off, order of the saw, runs opened. */
export const writePiece = (frame: Frame, piece: SolvedPiece, x: number, y: number, level: number): CutPiece => {
  if (isDivided(piece)) return divide(frame, piece, x, y, level);
  if (piece.kind === 'rest') return { kind: 'rest', keep: false, ...rectangle(frame, x, y, piece.length, piece.width) };
  const run = runOf(frame, piece);
  const only = run[0];
  if (only === undefined) throw new Error(`piece ${piece.piece} has no part`);
  if (run.length === 1) return part(frame, only, piece.turned, x, y);
  const room = piece.turned ? piece.length : piece.width;
  const whole = rectangle(frame, x, y, piece.length, piece.width);
  return { kind: 'divided', by: runDirection(piece), pieces: openRun(frame, piece, x, y, room), ...whole };
};
