import { ROUNDING_MM } from '../../../base/index.ts';
import { kerfOf, type LayoutJob } from '../job.ts';
import type { CutDirection, CutPiece, LaidSheet, Layout, Rectangle } from '../layout.ts';

/** What the person at the saw does with one sheet, or with a stack of equal ones. Plain data; words are made elsewhere. */
export interface SheetSequence {
  /** Numbers of the sheets, from 0; more than one means: cut together or one after the other in the same way. */
  readonly sheets: readonly number[];
  readonly stock: string;
  readonly material: string;
  readonly lines: readonly SequenceLine[];
}

/** One fence or stop setting: same piece, same direction, same setting, as often as it repeats. */
export interface SequenceLine {
  /** From 1, in the order of work. */
  readonly number: number;
  /** 0 for trimming the sheet, then the round of cuts. */
  readonly stage: number;
  readonly by: CutDirection;
  /** Letter name of the piece that is cut: 'sheet', or the name that an earlier line gave to its result. */
  readonly from: string;
  /** Clear distance between fence and blade. */
  readonly setting: number;
  /** 'strip': what lies at the fence is the result; 'rest': the fence holds what remains. */
  readonly fence: 'strip' | 'rest';
  /** Length of the cut. */
  readonly cutLength: number;
  readonly repeats: number;
  readonly results: readonly SequenceResult[];
}

export type SequenceResult =
  | {
      readonly kind: 'part';
      /** The mark on each sheet of the stack, in the order of `sheets`: equal in size, not always in name. */
      readonly marks: readonly string[];
      readonly turned: boolean;
      readonly length: number;
      readonly width: number;
    }
  | { readonly kind: 'strip'; readonly name: string; readonly length: number; readonly width: number }
  | { readonly kind: 'keep' | 'waste'; readonly length: number; readonly width: number };

type Divided = Extract<CutPiece, { readonly kind: 'divided' }>;

interface Task {
  readonly name: string;
  readonly piece: Divided;
  readonly stage: number;
}

/** A, B … Z, AA, AB …: names for strips, as they come off. */
export const stripName = (index: number): string =>
  (index >= 26 ? stripName(Math.floor(index / 26) - 1) : '') + String.fromCharCode(65 + (index % 26));

const sizeOf = (piece: CutPiece, by: CutDirection): number => (by === 'rip' ? piece.width : piece.length);

const placeKey = ({ x, y }: Rectangle): string => `${x} ${y}`;

class Writer {
  readonly lines: SequenceLine[] = [];
  readonly tasks: Task[] = [];
  private strips = 0;
  private readonly ripLimit: number;
  private readonly kerf: number;
  private readonly stack: readonly ReadonlyMap<string, string>[];

  constructor(job: LayoutJob, stack: readonly LaidSheet[]) {
    this.stack = stack.map(({ parts }) => new Map(parts.map((part) => [placeKey(part), part.mark])));
    this.ripLimit = job.ripLimit ?? Number.POSITIVE_INFINITY;
    this.kerf = kerfOf(job);
  }

  private push(line: Omit<SequenceLine, 'number'>): void {
    this.lines.push({ number: this.lines.length + 1, ...line });
  }

  /** The four edges: the reference edge first, then down to the usable size. */
  trims({ usable, length, width }: LaidSheet): void {
    const trim = (by: CutDirection, setting: number, cutLength: number, left: number): void => {
      if (left <= ROUNDING_MM) return;
      const waste: SequenceResult =
        by === 'rip' ? { kind: 'waste', length, width: left } : { kind: 'waste', length: left, width };
      const line = { stage: 0, by, from: 'sheet', setting, cutLength, repeats: 1, results: [waste] };
      this.push({ ...line, fence: 'rest' });
    };
    trim('rip', width - usable.y, length, usable.y);
    trim('rip', usable.width, length, width - usable.y - usable.width);
    trim('crosscut', length - usable.x, width, usable.x);
    trim('crosscut', usable.length, width, length - usable.x - usable.length);
  }

  private resultOf(piece: CutPiece, stage: number): SequenceResult {
    const { length, width } = piece;
    if (piece.kind === 'part') {
      const marks = this.stack.map((sheet) => sheet.get(placeKey(piece)) ?? piece.mark);
      return { kind: 'part', marks, turned: piece.turned, length, width };
    }
    if (piece.kind === 'rest') return { kind: piece.keep ? 'keep' : 'waste', length, width };
    const name = stripName(this.strips++);
    this.tasks.push({ name, piece, stage: stage + 1 });
    return { kind: 'strip', name, length, width };
  }

  /** Cuts one piece up: its children come off one after the other, equal settings in one line. */
  divide({ name, piece, stage }: Task): void {
    const { by } = piece;
    const cutLength = by === 'rip' ? piece.length : piece.width;
    // What is wider than the fence allows stays on the saw until the others are off.
    const wide = piece.pieces.filter((each) => by === 'rip' && each.width > this.ripLimit + ROUNDING_MM);
    const pieces = [...piece.pieces.filter((each) => !wide.includes(each)), ...wide];
    const whole = sizeOf(piece, by);
    let left = whole;
    let at = 0;
    while (at < pieces.length) {
      const first = pieces[at] as CutPiece;
      const size = sizeOf(first, by);
      const isLast = at === pieces.length - 1;
      if (isLast && left - size <= ROUNDING_MM) {
        this.leave(this.resultOf(first, stage));
        return;
      }
      const results: SequenceResult[] = [];
      let repeats = 0;
      while (at < pieces.length && Math.abs(sizeOf(pieces[at] as CutPiece, by) - size) <= ROUNDING_MM) {
        // The last of them is there already when nothing would be cut off it.
        const free = left - size > ROUNDING_MM;
        results.push(this.resultOf(pieces[at] as CutPiece, stage));
        if (free) repeats++;
        left -= size + this.kerf;
        at++;
      }
      this.push({ stage, by, from: name, setting: size, fence: 'strip', cutLength, repeats, results });
    }
  }

  /** What remains after the last cut belongs to the line that made it. */
  private leave(result: SequenceResult): void {
    const last = this.lines.at(-1);
    if (last === undefined) return;
    this.lines[this.lines.length - 1] = { ...last, results: [...last.results, result] };
  }
}

const linesOf = (job: LayoutJob, stack: readonly LaidSheet[]): readonly SequenceLine[] => {
  const sheet = stack[0];
  if (sheet === undefined) return [];
  const writer = new Writer(job, stack);
  writer.trims(sheet);
  if (sheet.tree?.kind === 'divided') writer.tasks.push({ name: 'sheet', piece: sheet.tree, stage: 1 });
  // Round by round: strips wait in the order in which they came off.
  for (let at = 0; at < writer.tasks.length; at++) writer.divide(writer.tasks[at] as Task);
  return writer.lines;
};

/** The work at the saw for a whole layout: one sequence for each group of equal sheets, none for a free layout. */
export const cutSequences = (job: LayoutJob, layout: Layout): readonly SheetSequence[] =>
  layout.cut === 'router'
    ? []
    : layout.repeats.flatMap((sheets) => {
        const stack = sheets.map((at) => layout.sheets[at]).filter((sheet) => sheet !== undefined);
        const sheet = stack[0];
        if (sheet === undefined) return [];
        return [{ sheets, stock: sheet.stock, material: sheet.material, lines: linesOf(job, stack) }];
      });
