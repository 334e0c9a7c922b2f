import loadHighs from 'highs';
import { formatLengthUnit, type LengthUnits } from '../../../base/index.ts';
import {
  createImprover,
  cutRows,
  highsSolver,
  type LaidSheet,
  type Layout,
  type LayoutJob,
  type LinearSolver,
  proveTwoStage,
  recombine,
  type SheetSequence,
  stockName,
} from '../../../shop/index.ts';
import { textTable } from '../text-table.ts';

/** Between two looks at the clock. */
const TURNS = 20;
const MS = 1000;

let solver: Promise<LinearSolver> | null = null;
const theSolver = (): Promise<LinearSolver> => {
  solver ??= loadHighs().then(highsSolver);
  return solver;
};

/** Works until the time is up or nothing can get better; two stages are proved first, which also finds mixes of sheets. */
export const solved = async (
  job: LayoutJob,
  { seconds, seed }: { readonly seconds: number; readonly seed: number },
): Promise<{ readonly layout: Layout; readonly seconds: number }> => {
  const began = performance.now();
  const spent = (): number => (performance.now() - began) / MS;
  const improver = createImprover(job, seed);
  improver.step(TURNS);
  if (improver.done()) return { layout: improver.best(), seconds: spent() };
  const linear = await theSolver();
  if (job.stages === 2) proveTwoStage(improver, linear);
  while (!improver.done() && spent() < seconds) {
    improver.step(TURNS);
    recombine(improver, linear);
  }
  return { layout: improver.best(), seconds: spent() };
};

const COLUMNS = [
  { title: 'no.', align: 'right' },
  { title: 'cut', align: 'left' },
  { title: 'set to', align: 'left' },
  { title: 'gives', align: 'left' },
  { title: 'times', align: 'right' },
] as const;

const tableLines = (sequence: SheetSequence, place: number, units: LengthUnits): readonly string[] =>
  textTable(
    COLUMNS,
    cutRows(sequence, place, units).map((row) => [
      String(row.number),
      row.cut,
      row.setTo,
      row.gives,
      `× ${row.repeats}`,
    ]),
  );

const sizeOf = ({ length, width }: LaidSheet, units: LengthUnits): string =>
  `${formatLengthUnit(length, units)} × ${formatLengthUnit(width, units)}`;

/** Every sheet with its cuts, for people. */
export const sheetLines = (
  layout: Layout,
  sequences: readonly SheetSequence[],
  units: LengthUnits,
): readonly string[] =>
  layout.sheets.flatMap((sheet, at) => {
    const sequence = sequences.find(({ sheets }) => sheets.includes(at));
    const material = sheet.material === '' ? '' : `, ${sheet.material}`;
    return [
      `sheet ${at + 1} of ${layout.sheets.length}: ${stockName(sheet)}${material}, ${sizeOf(sheet, units)}, ${sheet.parts.length} parts`,
      ...(sequence === undefined ? [] : tableLines(sequence, sequence.sheets.indexOf(at), units)),
      '',
    ];
  });

/** The same for programs, in millimetres. */
export const sheetsJson = (layout: Layout, sequences: readonly SheetSequence[]): readonly unknown[] =>
  layout.sheets.map(({ stock, material, offcut, length, width, price, parts, offcuts }, at) => {
    const sequence = sequences.find(({ sheets }) => sheets.includes(at));
    const rows = sequence === undefined ? [] : cutRows(sequence, sequence.sheets.indexOf(at), 'mm');
    return {
      stock,
      material,
      offcut,
      length,
      width,
      price,
      parts: parts.map(({ mark, x, y, length: along, width: across, turned }) => ({
        mark,
        x,
        y,
        length: along,
        width: across,
        turned,
      })),
      offcuts,
      cuts: (sequence?.lines ?? []).map(({ number, stage, by, from, setting, cutLength, repeats }, i) => ({
        number,
        stage,
        by,
        from,
        setting,
        cutLength,
        repeats,
        gives: rows[i]?.gives ?? '',
      })),
    };
  });
