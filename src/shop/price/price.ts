import { groupBy } from '../../base/index.ts';
import type { HardwareRow } from '../hardware-list.ts';
import { toCent } from '../rounding.ts';
import type { BoardLayout } from '../sheet-layouts.ts';
import { offcutsText, stockName } from '../stock-words.ts';
import { PRICE_GROUPS, type PriceGroup, type PriceLine } from './price-line.ts';
import { ruleFigure, type WorkInput, workLines } from './work-lines.ts';

/** What would change the total, and by how much. */
export interface PriceMover {
  readonly id: string;
  /** `Shop hour, 10 % up` */
  readonly what: string;
  readonly delta: number;
}

export interface Price {
  readonly lines: readonly PriceLine[];
  readonly groups: readonly { readonly group: PriceGroup; readonly hours: number | null; readonly amount: number }[];
  readonly total: number;
  /** One standard deviation, from the house rule `price-uncertainty-share`. */
  readonly sigma: number;
  readonly validDays: number;
  /** The most first. */
  readonly movers: readonly PriceMover[];
  /** What the total does not hold, a sentence each. */
  readonly missing: readonly string[];
  /** Offcuts in hand that are used, in one sentence; empty where there are none. */
  readonly inHand: string;
}

export interface PriceInput extends WorkInput {
  readonly hardware: readonly HardwareRow[];
}

const CENTS = 100;
/** Rounded amounts added as whole cents, so that no sum is off by the noise of binary fractions. */
const added = (lines: readonly { readonly amount: number }[]): number =>
  lines.reduce((sum, { amount }) => sum + Math.round(amount * CENTS), 0) / CENTS;

const sheetLines = ({ board, layout }: BoardLayout): readonly PriceLine[] => {
  const listed = layout.sheets.map((sheet, i) => ({ sheet, number: i + 1 }));
  return [...groupBy(listed, ({ sheet }) => `${sheet.offcut} ${sheet.stock} ${sheet.price}`).values()].flatMap(
    (same) => {
      const [first] = same;
      if (first === undefined) return [];
      const { offcut, price } = first.sheet;
      return [
        {
          group: 'sheets' as const,
          what: `${board.materialName}, ${stockName(first.sheet)}`,
          count: same.length,
          unit: offcut ? 'offcut' : 'sheet',
          hoursEach: null,
          hours: null,
          each: price,
          amount: toCent(price * same.length),
          from: `sheet layouts, sheet ${same.map(({ number }) => number).join(', ')} of this board${offcut ? '; in hand' : ''}`,
        },
      ];
    },
  );
};

const UNITS: Readonly<Record<HardwareRow['by'], string>> = { piece: 'piece', pair: 'pair', metre: 'm' };

const hardwareLine = (row: HardwareRow): PriceLine => ({
  group: 'hardware',
  what: row.lengthMm === null ? row.name : `${row.name}, ${row.lengthMm} mm`,
  count: row.fetch,
  unit: UNITS[row.by],
  hoursEach: null,
  hours: null,
  each: row.fetch > 0 ? row.price / row.fetch : 0,
  amount: toCent(row.price),
  from: `pick list${row.spares > 0 ? `, ${row.spares} spare` : ''}; catalog ${row.item}`,
});

const markUpLine = (bought: number, share: number): PriceLine => ({
  group: 'mark-up',
  what: `Mark-up, ${Number((share * 100).toFixed(1))} % of what is bought`,
  count: 1,
  unit: 'job',
  hoursEach: null,
  hours: null,
  each: toCent(bought * share),
  amount: toCent(bought * share),
  from: `${bought.toFixed(2)} of sheets and hardware; house rule markup-share`,
});

const TENTH = 0.1;

const moversOf = (
  lines: readonly PriceLine[],
  { rules, layouts }: PriceInput,
  markUp: number,
): readonly PriceMover[] => {
  const of = (...groups: readonly PriceGroup[]): number => added(lines.filter(({ group }) => groups.includes(group)));
  const tenth = (id: string, what: string, amount: number): PriceMover => ({
    id,
    what: `${what}, 10 % up`,
    delta: toCent(TENTH * amount),
  });
  const dearest = layouts.boards
    .flatMap(({ board, layout }) => layout.sheets.flatMap(({ price, offcut }) => (offcut ? [] : [{ board, price }])))
    .reduce<{ readonly what: string; readonly price: number } | null>(
      (most, { board, price }) =>
        most !== null && most.price >= price ? most : { what: `One more sheet of ${board.materialName}`, price },
      null,
    );
  const handling = ruleFigure(rules, 'hours-sheet-handling') * ruleFigure(rules, 'rate-labour');
  return [
    tenth('rate-labour', 'Shop hour', of('shop hours')),
    tenth('rate-electrical', 'Electrical hour', of('electrical hours')),
    tenth('rate-design', 'Design hour', of('office hours')),
    tenth('hardware', 'Prices of hardware', of('hardware') * (1 + markUp)),
    tenth('sheets', 'Prices of sheets', of('sheets') * (1 + markUp)),
    { id: 'markup-share', what: 'Mark-up, one per cent point up', delta: toCent(of('sheets', 'hardware') / 100) },
    ...(dearest === null
      ? []
      : [{ id: 'one-sheet', what: dearest.what, delta: toCent(dearest.price * (1 + markUp) + handling) }]),
  ]
    .filter(({ delta }) => delta !== 0)
    .toSorted((a, b) => b.delta - a.delta);
};

const missingFrom = ({ hardware, layouts, rules }: PriceInput): readonly string[] => {
  const unknown = hardware.filter(({ kind }) => kind === '').map(({ name }) => name);
  const below = [...rules.all.values()].filter(
    ({ id, value }) => /^(rate|hours|markup)-/.test(id) && !(Number.isFinite(value) && value >= 0),
  );
  return [
    ...(unknown.length === 0 ? [] : [`Not in the catalog and without a price: ${unknown.join(', ')}.`]),
    ...(layouts.unplaced === 0
      ? []
      : [
          layouts.unplaced === 1
            ? '1 part lies on no sheet: its material is not in the price.'
            : `${layouts.unplaced} parts lie on no sheet: their material is not in the price.`,
        ]),
    ...below.map(({ about, id }) => `${about} (house rule ${id}) is below zero and was counted as nothing.`),
  ];
};

const inHandText = ({ boards, offcuts }: PriceInput['layouts']): string => {
  if (offcuts === 0) return '';
  const cost = added(
    boards
      .flatMap(({ layout }) => layout.sheets.flatMap((sheet) => (sheet.offcut ? [sheet] : [])))
      .map(({ price }) => ({ amount: price })),
  );
  const used = `${offcutsText(offcuts)} ${offcuts === 1 ? 'is' : 'are'} used`;
  return cost === 0
    ? `${used} and ${offcuts === 1 ? 'costs' : 'cost'} nothing.`
    : `${used}, at ${cost.toFixed(2)} as set in the list of stock.`;
};

/**
 * The price of the whole: sheets by their layouts, hardware by the pick list with its spares, hours of work by what
 * there is to do. Every line names where it comes from; the lines add up to the total to the cent.
 */
export const priceOf = (input: PriceInput): Price => {
  const { rules, layouts, hardware } = input;
  const bought = [...layouts.boards.flatMap(sheetLines), ...hardware.map(hardwareLine)];
  const share = ruleFigure(rules, 'markup-share');
  const lines = [...bought, ...(share === 0 ? [] : [markUpLine(added(bought), share)]), ...workLines(input)];
  const total = added(lines);
  return {
    lines,
    groups: PRICE_GROUPS.map((group) => {
      const own = lines.filter((line) => line.group === group);
      const worked = own.filter(({ hours }) => hours !== null);
      return {
        group,
        hours: worked.length === 0 ? null : worked.reduce((sum, { hours }) => sum + (hours ?? 0), 0),
        amount: added(own),
      };
    }).filter(({ group, amount }) => amount !== 0 || (group === 'sheets' && layouts.offcuts > 0)),
    total,
    sigma: toCent(total * ruleFigure(rules, 'price-uncertainty-share')),
    validDays: ruleFigure(rules, 'quote-validity-days'),
    movers: moversOf(lines, input, share),
    missing: missingFrom(input),
    inHand: inHandText(layouts),
  };
};
