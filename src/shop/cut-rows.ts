import type { LengthUnits } from '../base/index.ts';
import { sizeText } from './drawing/paper-words.ts';
import type { SequenceLine, SequenceResult, SheetSequence } from './layout/index.ts';

/** One line of the work at the saw, in words: for a table on paper, on screen, in a terminal. */
export interface CutRow {
  readonly number: number;
  /** `trim`, `rip`, `crosscut B`: the cut, and the piece where it is not the whole sheet. */
  readonly cut: string;
  /** `fence 597` or `stop 640`: clear distance to the blade, net of the kerf. */
  readonly setTo: string;
  readonly gives: string;
  readonly repeats: number;
  /** Marks of the parts that come off in this line. */
  readonly marks: readonly string[];
}

const sizePair = ({ length, width }: { readonly length: number; readonly width: number }, units: LengthUnits): string =>
  `${sizeText(length, units)} × ${sizeText(width, units)}`;

/** Mark of a part on one sheet of the stack. */
const markOn = (result: Extract<SequenceResult, { kind: 'part' }>, sheet: number): string =>
  result.marks[sheet] ?? result.marks[0] ?? '';

/** Like things together: `B2 × 3, B4`. */
const counted = (words: readonly string[]): readonly string[] => {
  const counts = new Map<string, number>();
  for (const word of words) counts.set(word, (counts.get(word) ?? 0) + 1);
  return [...counts].map(([word, count]) => (count === 1 ? word : `${word} × ${count}`));
};

const givesText = (line: SequenceLine, sheet: number, units: LengthUnits): string => {
  const results = line.results.filter(({ kind }) => kind !== 'waste');
  const words = counted(
    results.map((result) => {
      if (result.kind === 'part') return markOn(result, sheet);
      if (result.kind === 'strip') return `strip ${result.name}`;
      return `keep offcut ${sizePair(result, units)}`;
    }),
  );
  if (line.stage === 0) return 'factory edge off';
  return words.length === 0 ? 'to the bin' : words.join(', ');
};

/** The lines of a sequence for one sheet of its stack (from 0): equal sheets may hold other marks. */
export const cutRows = (sequence: SheetSequence, sheet: number, units: LengthUnits): readonly CutRow[] =>
  sequence.lines.map((line) => ({
    number: line.number,
    cut: line.stage === 0 ? `trim, ${line.by}` : line.from === 'sheet' ? line.by : `${line.by} ${line.from}`,
    setTo: `${line.by === 'rip' ? 'fence' : 'stop'} ${sizeText(line.setting, units)}`,
    gives: givesText(line, sheet, units),
    repeats: line.repeats,
    marks: line.results.flatMap((result) => (result.kind === 'part' ? [markOn(result, sheet)] : [])),
  }));

/** The sequence of one sheet of a board, with its place in the stack; null for a sheet that is not cut apart. */
export const sequenceOf = (
  sequences: readonly SheetSequence[],
  sheet: number,
): { readonly sequence: SheetSequence; readonly place: number } | null => {
  const sequence = sequences.find(({ sheets }) => sheets.includes(sheet));
  return sequence === undefined ? null : { sequence, place: sequence.sheets.indexOf(sheet) };
};
