import type { CutDirection } from '../layout.ts';

/** One way a type of piece lies in a strip, on the raster. */
export interface Lie {
  readonly type: number;
  readonly turned: boolean;
  readonly along: number;
  readonly across: number;
}

/** A strip of a pattern: as wide as its widest piece. */
export interface Strip {
  readonly lies: readonly Lie[];
}

/** A two-stage pattern: strips beside each other, pieces one after the other in each. */
export interface Pattern {
  readonly kind: number;
  readonly first: CutDirection;
  readonly strips: readonly Strip[];
  readonly value: number;
}

/** Room of a sheet in the frame of its strips, on the raster. */
export interface Frame {
  readonly kind: number;
  readonly first: CutDirection;
  readonly along: number;
  readonly across: number;
  /** Ways to lie that fit, narrow first. */
  readonly lies: readonly Lie[];
}

/** Unbounded knapsack, one item after the other: `best[c]` is the most that fits into c, `choice[c]` the last item. */
const addItem = (best: Float64Array, choice: Int32Array, item: number, size: number, worth: number): void => {
  for (let c = size; c < best.length; c++) {
    const value = (best[c - size] as number) + worth;
    if (value > (best[c] as number)) {
      best[c] = value;
      choice[c] = item;
    }
  }
};

const chosen = (choice: Int32Array, sizes: readonly number[], capacity: number): readonly number[] => {
  const items: number[] = [];
  for (let c = capacity; c > 0; ) {
    const item = choice[c] as number;
    if (item < 0) {
      c--;
      continue;
    }
    items.push(item);
    c -= sizes[item] as number;
  }
  return items;
};

const fillStrip = (frame: Frame, worth: Float64Array, widest: number): readonly Lie[] => {
  const best = new Float64Array(frame.along + 1);
  const choice = new Int32Array(frame.along + 1).fill(-1);
  frame.lies.forEach((lie, i) => {
    const value = worth[lie.type] as number;
    if (lie.across <= widest && value > 0) addItem(best, choice, i, lie.along, value);
  });
  const sizes = frame.lies.map(({ along }) => along);
  return chosen(choice, sizes, frame.along).map((i) => frame.lies[i] as Lie);
};

/**
 * The two-stage pattern of the most worth for one kind of sheet and one direction of its first cuts: a knapsack along
 * the strip for every width (each adds its items to the one before), then one across the sheet. Items below `choice`
 * of a capacity carry over from smaller capacities through the zero start values.
 */
export const bestPattern = (frame: Frame, worth: Float64Array): Pattern => {
  const { along, across, lies } = frame;
  const strip = new Float64Array(along + 1);
  const stripChoice = new Int32Array(along + 1);
  const widths: number[] = [];
  const values: number[] = [];
  lies.forEach((lie, i) => {
    const value = worth[lie.type] as number;
    if (value > 0) addItem(strip, stripChoice, i, lie.along, value);
    if (lies[i + 1]?.across === lie.across) return;
    const full = strip[along] as number;
    if (full > (values.at(-1) ?? 0)) {
      widths.push(lie.across);
      values.push(full);
    }
  });
  const sheet = new Float64Array(across + 1);
  const choice = new Int32Array(across + 1).fill(-1);
  widths.forEach((width, i) => {
    addItem(sheet, choice, i, width, values[i] as number);
  });
  const strips = chosen(choice, widths, across).map((i) => ({ lies: fillStrip(frame, worth, widths[i] as number) }));
  return { kind: frame.kind, first: frame.first, strips, value: sheet[across] as number };
};
