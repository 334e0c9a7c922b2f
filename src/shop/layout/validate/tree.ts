import { kerfOf, type LayoutJob } from '../job.ts';
import type { CutPiece, Rectangle } from '../layout.ts';
import { UNITS_PER_MM } from '../units.ts';
import { type LayoutFault, type LayoutFaultCode, liesWithin, NEAR, rightOf, same, topOf } from './fault.ts';

type Divided = Extract<CutPiece, { readonly kind: 'divided' }>;
type Report = (code: LayoutFaultCode, about: string) => void;

const says = ({ x, y, length, width }: Rectangle): string => `${length} × ${width} at ${x}, ${y}`;

/** Neighbours leave room for the blade and no more; a part is trimmed only by a cut of its own. */
const checkRow = (piece: Divided, kerf: number, report: Report): void => {
  const rip = piece.by === 'rip';
  // Whole units may widen a gap by two of them.
  const grain = 2 / UNITS_PER_MM + NEAR;
  let at = rip ? piece.y : piece.x;
  piece.pieces.forEach((child, i) => {
    const start = rip ? child.y : child.x;
    if (i > 0 && start < at + kerf - NEAR) report('too-close', says(child));
    if (!same(start, i === 0 ? at : at + kerf, grain)) report('tree', `a gap before ${says(child)}`);
    const across = rip ? [child.length, piece.length] : [child.width, piece.width];
    if (!same(across[0] ?? 0, across[1] ?? 0, grain)) report('tree', `${says(child)} does not span ${says(piece)}`);
    if (!liesWithin(child, piece)) report('outside', `${says(child)} leaves ${says(piece)}`);
    at = rip ? topOf(child) : rightOf(child);
  });
  const end = rip ? topOf(piece) : rightOf(piece);
  // What is left past the last piece is eaten by the blade.
  if (end - at > kerf + grain) report('tree', `${end - at} mm of ${says(piece)} belong to nobody`);
};

const checkLimits = (piece: Divided, job: LayoutJob, first: boolean, report: Report): void => {
  const rip = piece.by === 'rip';
  const long = rip ? piece.length : piece.width;
  const ends = piece.pieces.at(-1);
  const end = ends === undefined ? 0 : rip ? topOf(piece) - topOf(ends) : rightOf(piece) - rightOf(ends);
  const cuts = piece.pieces.length > 1 || end > NEAR;
  if (cuts && long > (job.longestCut ?? Number.POSITIVE_INFINITY) + NEAR) report('longest-cut', `a cut of ${long} mm`);
  if (rip && job.ripLimit !== undefined) {
    const limit = job.ripLimit;
    if (piece.pieces.filter(({ width }) => width > limit + NEAR).length > 1) report('rip-limit', says(piece));
  }
  if (first && cuts && job.firstCut !== undefined && piece.by !== job.firstCut)
    report('first-cut', `begins with a ${piece.by}`);
  if (first && job.minStrip !== undefined && cuts) {
    const narrow = piece.pieces.find(
      (child) => child.kind !== 'rest' && (rip ? child.width : child.length) < (job.minStrip ?? 0) - NEAR,
    );
    if (narrow !== undefined) report('strip-too-narrow', says(narrow));
  }
};

/** A division of one part and its rest is the trim that no stage counts. */
const isTrim = (piece: Divided): boolean =>
  piece.pieces.filter(({ kind }) => kind !== 'rest').length === 1 && piece.pieces.some(({ kind }) => kind === 'part');

const roundsOf = (piece: CutPiece): number =>
  piece.kind !== 'divided' || isTrim(piece) ? 0 : 1 + Math.max(0, ...piece.pieces.map(roundsOf));

const walk = (piece: CutPiece, job: LayoutJob, first: boolean, report: Report): void => {
  if (piece.length < -NEAR || piece.width < -NEAR) report('tree', `negative size ${says(piece)}`);
  if (piece.kind !== 'divided') return;
  checkRow(piece, kerfOf(job), report);
  checkLimits(piece, job, first, report);
  for (const child of piece.pieces) walk(child, job, false, report);
};

/** Checks a cut tree from its own rectangles: pieces fill their parent, cuts cross it whole, limits and stages hold. */
export const checkTree = (tree: CutPiece, job: LayoutJob, sheet: number): readonly LayoutFault[] => {
  const faults: LayoutFault[] = [];
  const report: Report = (code, about) => faults.push({ code, sheet, about });
  walk(tree, job, true, report);
  const rounds = roundsOf(tree);
  if (job.stages !== 'any' && rounds > job.stages) report('too-many-stages', `${rounds} rounds of cuts`);
  return faults;
};
