import { makeSheetsAlike } from './engine/same-sheets.ts';
import type { LayoutJob } from './job.ts';
import type { BoundKind, LaidSheet, Layout, LayoutNote, Proof, Unplaced } from './layout.ts';
import type { MaterialSearch } from './material-search.ts';
import { repeatsOf } from './repeats.ts';
import { writeSheet } from './write-sheet.ts';

const areaOf = ({ length, width }: { readonly length: number; readonly width: number }): number => length * width;
const sumOf = <T>(items: readonly T[], of: (item: T) => number): number =>
  items.reduce((sum, item) => sum + of(item), 0);

/** Sheets of equal stock stay together, offcuts in hand first, then the fullest. */
const inOrder = (sheets: readonly LaidSheet[]): readonly LaidSheet[] =>
  [...sheets].sort(
    (a, b) =>
      Number(b.offcut) - Number(a.offcut) || sumOf(b.parts, areaOf) / areaOf(b) - sumOf(a.parts, areaOf) / areaOf(a),
  );

const sheetsOf = (job: LayoutJob, { prepared, problem, numbers, best }: MaterialSearch): readonly LaidSheet[] => {
  const partsOf = numbers.map((number) => prepared.partsOf[number] ?? []);
  return inOrder(
    makeSheetsAlike(problem, best).sheets.map((sheet) => writeSheet(job, { ...prepared, partsOf }, sheet)),
  );
};

const unplacedOf = (search: MaterialSearch): readonly Unplaced[] => {
  const { prepared, numbers, barred, best } = search;
  const found = new Map<string, Unplaced>();
  const add =
    (reason: Unplaced['reason']) => (runs: readonly (readonly { mark: string; length: number; width: number }[])[]) => {
      for (const { mark, length, width } of runs.flat()) {
        const key = `${reason} ${mark} ${length} ${width}`;
        const count = (found.get(key)?.count ?? 0) + 1;
        found.set(key, { mark, count, reason, length, width, material: prepared.material, largest: null });
      }
    };
  add('breaks-saw-limits')(barred);
  add('stock-used-up')(best.leftOut.map((number) => prepared.partsOf[numbers[number] ?? -1] ?? []));
  return [...prepared.unplaced, ...found.values()];
};

const proofOf = (searches: readonly MaterialSearch[], sheets: number, price: number): Proof => {
  const boundSheets = sumOf(searches, ({ bound }) => bound.sheets);
  const boundPrice = sumOf(searches, ({ bound }) => bound.price);
  const any = searches.every(
    ({ best, bound }) => best.cost <= bound.price && (bound.price > 0 || best.sheets.length <= bound.sheets),
  );
  const staged = searches.every((search) => search.proven);
  const kinds: readonly BoundKind[] = searches.map(({ bound }) => bound.by);
  const verdict = any ? 'optimal' : staged ? 'optimal-2-stage' : 'within';
  return {
    lowerBoundSheets: Math.min(boundSheets, sheets),
    lowerBoundPrice: Math.min(boundPrice, price),
    by: verdict === 'optimal-2-stage' ? 'strip-patterns' : (kinds.find((kind) => kind === 'dual-feasible') ?? 'area'),
    verdict,
    sheetsAbove: Math.max(0, sheets - boundSheets),
  };
};

/** Puts the best layouts of all materials into one, in mm. */
export const writeLayout = (
  job: LayoutJob,
  searches: readonly MaterialSearch[],
  notes: readonly LayoutNote[],
): Layout => {
  const sheets = searches.flatMap((search) => sheetsOf(job, search));
  const price = sumOf(sheets, (sheet) => sheet.price);
  const area = sumOf(sheets, areaOf);
  const kept = sumOf(sheets, (sheet) => (sumOf(sheet.offcuts, areaOf) / areaOf(sheet)) * sheet.price);
  return {
    cut: job.cut,
    sheets,
    repeats: repeatsOf(sheets),
    unplaced: searches.flatMap(unplacedOf),
    notes: [...notes, ...searches.flatMap(({ prepared }) => prepared.notes)],
    price,
    keptValue: kept * job.keep.valueShare,
    usedShare:
      area === 0
        ? 0
        : sumOf(
            sheets.flatMap(({ parts }) => parts),
            areaOf,
          ) / area,
    proof: proofOf(searches, sheets.length, price),
  };
};
