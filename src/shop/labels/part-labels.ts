import { compareMarks } from '../../base/index.ts';
import type { Design } from '../../design/index.ts';
import type { FitOut, Panel } from '../../fitout/index.ts';
import { nameOfPart } from '../../says/index.ts';
import type { CutListRow } from '../cut-list.ts';
import type { Drawings } from '../drawings.ts';
import { placesOf, sharedName } from '../places.ts';
import type { SheetLayouts } from '../sheet-layouts.ts';
import { signOffOf } from '../sign-off.ts';

/** What one cut piece carries from the saw to its place. */
export interface PartLabel {
  readonly mark: string;
  /** Of how many pieces of this mark, the first being 1. */
  readonly piece: number;
  readonly pieces: number;
  readonly row: CutListRow;
  /** Of this piece, where several that are cut alike have names of their own. */
  readonly name: string;
  readonly panel: Panel;
  readonly where: string;
  /** The sheet of its board that it is cut from; null where it lies on none. */
  readonly sheet: { readonly number: number; readonly of: number } | null;
  readonly design: string;
  readonly revision: string;
  /** What the square code says: design, revision and mark, a line each. */
  readonly code: string;
}

/** A longer title would make a code too fine for a phone over a dusty part. */
const TITLE_IN_CODE = 60;

export interface PartLabelsInput {
  readonly design: Design;
  readonly fitout: FitOut;
  readonly drawings: Drawings;
  readonly layouts: SheetLayouts;
}

/** Every mark as often as it is cut, in the order in which parts come off the sheets; what lies on none comes last. */
const inCuttingOrder = ({ drawings, layouts }: PartLabelsInput) => {
  const left = new Map(drawings.marks.parts.map(({ mark, panels }) => [mark, panels.length]));
  const laid = layouts.boards.flatMap(({ layout }) =>
    layout.sheets.flatMap(({ parts }, i) =>
      parts
        .toSorted((a, b) => a.x - b.x || a.y - b.y || compareMarks(a.mark, b.mark))
        .map(({ mark }) => ({ mark, sheet: { number: i + 1, of: layout.sheets.length } })),
    ),
  );
  for (const { mark } of laid) left.set(mark, (left.get(mark) ?? 0) - 1);
  const unlaid = [...left].flatMap(([mark, count]) =>
    Array.from({ length: Math.max(0, count) }, () => ({ mark, sheet: null })),
  );
  return [...laid, ...unlaid];
};

/** One label for every piece that is cut, in the order of cutting. */
export const partLabels = (input: PartLabelsInput): readonly PartLabel[] => {
  const { design, fitout, drawings } = input;
  const partOf = new Map(drawings.marks.parts.map((part) => [part.mark, part]));
  const rowOf = new Map(drawings.rows.map((row) => [row.mark, row]));
  const places = placesOf(fitout, nameOfPart(design, fitout));
  const { state, hash } = signOffOf(design);
  const revision = `${state} ${hash.slice(0, 9)}`;
  const met = new Map<string, number>();
  return inCuttingOrder(input).flatMap(({ mark, sheet }): readonly PartLabel[] => {
    const [part, row] = [partOf.get(mark), rowOf.get(mark)];
    const before = met.get(mark) ?? 0;
    met.set(mark, before + 1);
    const panel = part?.panels[before];
    if (!part || !row || !panel) return [];
    return [
      {
        mark,
        piece: before + 1,
        pieces: part.panels.length,
        row,
        panel,
        name: sharedName([panel], places),
        where: places.of(panel),
        sheet,
        design: design.title,
        revision,
        code: [Array.from(design.title).slice(0, TITLE_IN_CODE).join(''), revision, mark].join('\n'),
      },
    ];
  });
};
