import { type ListColumn, type ListTable, listTable, tableCsv } from '../list-columns.ts';
import { toCent } from '../rounding.ts';
import type { Price } from './price.ts';
import type { PriceLine } from './price-line.ts';

type Line = Omit<PriceLine, 'group' | 'each' | 'count'> & {
  readonly group: string;
  readonly count: number | null;
  readonly each: number | null;
};

const toHundredth = (value: number | null): number | null => (value === null ? null : toCent(value));

const COLUMNS: readonly ListColumn<Line>[] = [
  { title: 'group', cell: ({ group }) => group },
  { title: 'what', cell: ({ what }) => what },
  { title: 'count', cell: ({ count }) => toHundredth(count) },
  { title: 'unit', cell: ({ unit }) => unit },
  { title: 'hours each', cell: ({ hoursEach }) => toHundredth(hoursEach) },
  { title: 'hours', cell: ({ hours }) => toHundredth(hours) },
  { title: 'price each', cell: ({ each }) => toHundredth(each) },
  { title: 'amount', cell: ({ amount }) => amount },
  { title: 'from', cell: ({ from }) => from },
];

/** The lines, then the sum of each group, then the total: told apart by the first column. */
const rowsOf = ({ lines, groups, total }: Price): readonly Line[] => {
  const sum = (group: string, what: string, hours: number | null, amount: number): Line => ({
    group,
    what,
    count: null,
    unit: '',
    hoursEach: null,
    hours,
    each: null,
    amount,
    from: '',
  });
  return [
    ...lines,
    ...groups.map(({ group, hours, amount }) => sum('sum of group', group, hours, amount)),
    sum('total', 'total', null, total),
  ];
};

export const priceTable = (price: Price): ListTable => listTable(COLUMNS, rowsOf(price));

/** The price as a file for a spreadsheet. */
export const priceCsv = (price: Price): string => tableCsv(priceTable(price));
