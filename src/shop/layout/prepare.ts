import { groupBy, ROUNDING_MM } from '../../base/index.ts';
import { type Piece, type Problem, type SheetKind, UNLIMITED_STAGES } from './engine/problem.ts';
import { kerfOf, type LayoutJob, type LayoutPart, type StockSheet } from './job.ts';
import type { LayoutNote, Unplaced, UnplacedReason } from './layout.ts';
import { trimOf } from './trim.ts';
import { unitsDown, unitsUp } from './units.ts';

/** Parts and sheets of one material, ready for the engine, and the way back. */
export interface Prepared {
  readonly material: string;
  readonly problem: Problem;
  /** The parts of each piece of the problem: one, or a matched run in order. */
  readonly partsOf: readonly (readonly LayoutPart[])[];
  /** The stock of each kind of sheet of the problem. */
  readonly stock: readonly StockSheet[];
  readonly unplaced: readonly Unplaced[];
  readonly notes: readonly LayoutNote[];
}

/** More pieces than this in one material are not laid out at once. */
export const MOST_PIECES = 20_000;

const isLength = (value: number): boolean => Number.isFinite(value) && value > ROUNDING_MM;

/** Room that a sheet has for pieces that carry their kerf. */
const sheetKind = (job: LayoutJob, stock: StockSheet): SheetKind => {
  const trim = trimOf(job, stock);
  const kerf = unitsUp(kerfOf(job));
  const length = unitsDown(stock.length - trim.left - trim.right) + kerf;
  const width = unitsDown(stock.width - trim.bottom - trim.top) + kerf;
  const count = stock.quantity === null ? Number.POSITIVE_INFINITY : Math.max(0, Math.floor(stock.quantity));
  const first = stock.offcut === true && stock.price === 0;
  return { length, width, area: length * width, price: stock.price, count, first };
};

const isUsable = (job: LayoutJob, stock: StockSheet): boolean => {
  if (!isLength(stock.length) || !isLength(stock.width) || !Number.isFinite(stock.price) || stock.price < 0)
    return false;
  const kind = sheetKind(job, stock);
  const kerf = unitsUp(kerfOf(job));
  return kind.length > kerf && kind.width > kerf && (stock.quantity === null || stock.quantity > 0);
};

const pieceOf = (job: LayoutJob, run: readonly LayoutPart[], type: number): Piece => {
  const kerf = unitsUp(kerfOf(job));
  const length = run.reduce((sum, part) => sum + unitsUp(part.length) + kerf, 0);
  const width = Math.max(...run.map((part) => unitsUp(part.width))) + kerf;
  const grain = run[0]?.grain ?? 'any';
  // Lying turned, a run comes apart by rips, and of two neighbours one has to fit between blade and fence.
  const tooWide = run.filter((part) => part.length > (job.ripLimit ?? Number.POSITIVE_INFINITY)).length > 1;
  // Turning a square part changes nothing, and every second look at it would be wasted.
  const square = grain === 'any' && length === width && run.length === 1;
  return {
    length,
    width,
    area: length * width,
    straight: grain !== 'width',
    turned: grain !== 'length' && !square && !tooWide,
    type,
    matched: run.length > 1,
  };
};

const liesIn = (along: number, across: number, sheet: SheetKind): boolean =>
  along <= sheet.length && across <= sheet.width;

const fits = (piece: Piece, sheet: SheetKind): boolean =>
  (piece.straight && liesIn(piece.length, piece.width, sheet)) ||
  (piece.turned && liesIn(piece.width, piece.length, sheet));

const reasonOf = (piece: Piece, sheets: readonly SheetKind[]): UnplacedReason | null => {
  if (sheets.some((sheet) => fits(piece, sheet))) return null;
  const anyWay = { ...piece, straight: true, turned: true };
  return sheets.some((sheet) => fits(anyWay, sheet)) ? 'fits-only-turned' : 'larger-than-every-sheet';
};

/** Runs of matched parts, cut into as few runs as the longest sheet needs; single parts are runs of one. */
const runsOf = (
  job: LayoutJob,
  parts: readonly LayoutPart[],
  sheets: readonly SheetKind[],
): { readonly runs: readonly (readonly LayoutPart[])[]; readonly notes: readonly LayoutNote[] } => {
  const runs: (readonly LayoutPart[])[] = [];
  const notes: LayoutNote[] = [];
  const singles = parts.filter(({ group }) => group === undefined || group === '');
  for (const part of singles) for (let i = 0; i < part.quantity; i++) runs.push([part]);
  const matched = parts.filter(({ group }) => group !== undefined && group !== '');
  for (const [group, members] of groupBy(matched, (part) => `${part.group} ${part.grain}`)) {
    const before = runs.length;
    let run: LayoutPart[] = [];
    for (const part of members.flatMap((each) => Array.from({ length: each.quantity }, () => each))) {
      if (run.length > 0 && reasonOf(pieceOf(job, [...run, part], 0), sheets) !== null) {
        runs.push(run);
        run = [];
      }
      run.push(part);
    }
    if (run.length > 0) runs.push(run);
    const name = members[0]?.group ?? group;
    if (runs.length - before > 1) notes.push({ code: 'matched-group-split', about: name });
  }
  return { runs, notes };
};

const largestOf = (stock: readonly StockSheet[], job: LayoutJob): Unplaced['largest'] => {
  const byArea = [...stock].sort((a, b) => b.length * b.width - a.length * a.width)[0];
  if (byArea === undefined) return null;
  const trim = trimOf(job, byArea);
  return { length: byArea.length - trim.left - trim.right, width: byArea.width - trim.bottom - trim.top };
};

/** Identical runs share a type. */
const typeKey = (run: readonly LayoutPart[]): string =>
  run.map(({ length, width, grain }) => `${length} ${width} ${grain}`).join('|');

/**
 * Sorts one material into what can be laid out and what cannot, each with its reason, and turns the former into whole
 * numbers with kerf and trim taken care of.
 */
export const prepare = (
  job: LayoutJob,
  material: string,
  parts: readonly LayoutPart[],
  stock: readonly StockSheet[],
): Prepared => {
  const unplaced: Unplaced[] = [];
  const usable = stock.filter((sheet) => isUsable(job, sheet));
  const left = stock.filter((sheet) => !usable.includes(sheet));
  // A row that is used up is no fault: parts that it would have served say so themselves.
  const odd = left.filter(({ quantity }) => quantity !== 0);
  const notes: LayoutNote[] = odd.map(({ name }) => ({ code: 'stock-left-out', about: name }));
  const largest = largestOf(usable, job);
  const leave = (part: LayoutPart, count: number, reason: UnplacedReason): void => {
    const { mark, length, width } = part;
    unplaced.push({
      mark,
      count,
      reason,
      length,
      width,
      material,
      largest: reason === 'stock-used-up' ? null : largest,
    });
  };
  const sheets = usable.map((sheet) => sheetKind(job, sheet));
  const sound: LayoutPart[] = [];
  let room = MOST_PIECES;
  for (const part of parts) {
    const { quantity } = part;
    const whole = Number.isInteger(quantity) && quantity > 0;
    const reason =
      !isLength(part.length) || !isLength(part.width) || !whole
        ? 'bad-size'
        : stock.length === 0
          ? 'no-stock-of-material'
          : sheets.length === 0
            ? 'stock-used-up'
            : reasonOf(pieceOf(job, [part], 0), sheets);
    if (reason !== null) {
      leave(part, whole ? quantity : 1, reason);
      continue;
    }
    const taken = Math.min(quantity, room);
    if (taken < quantity) leave(part, quantity - taken, 'too-many-parts');
    if (taken > 0) sound.push(taken === quantity ? part : { ...part, quantity: taken });
    room -= taken;
  }
  const { runs, notes: more } = runsOf(job, sound, sheets);
  const types = new Map<string, number>();
  const pieces = runs.map((run) => {
    const key = typeKey(run);
    const type = types.get(key) ?? types.size;
    types.set(key, type);
    return pieceOf(job, run, type);
  });
  return {
    material,
    problem: { pieces, sheets, stages: job.stages === 'any' ? UNLIMITED_STAGES : job.stages, limits: limitsOf(job) },
    partsOf: runs,
    stock: usable,
    unplaced,
    notes: [...notes, ...more],
  };
};

const limitsOf = (job: LayoutJob): Problem['limits'] => {
  const { ripLimit, longestCut, minStrip, firstCut } = job;
  if ([ripLimit, longestCut, minStrip, firstCut].every((limit) => limit === undefined)) return null;
  const kerf = unitsUp(kerfOf(job));
  const most = (mm: number | undefined): number => (mm === undefined ? Number.POSITIVE_INFINITY : unitsDown(mm) + kerf);
  return {
    rip: most(ripLimit),
    cut: most(longestCut),
    strip: minStrip === undefined ? 0 : unitsUp(minStrip) + kerf,
    first: firstCut ?? null,
  };
};
