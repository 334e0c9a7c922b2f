import type { Drawing } from '../drawing/drawing.ts';
import { type PaperCell, type PaperColumn, type PaperPiece, paperPages } from '../paper/index.ts';
import type { PriceLine } from '../price/index.ts';
import { type PapersInput, paperHead } from './paper.ts';

/** `1234.50` with a thin gap between thousands: `1 234.50`. */
export const moneyText = (amount: number): string => amount.toFixed(2).replace(/\B(?=(\d{3})+(?!\d))/g, ' ');

/** Two decimals at most, and none that say nothing. */
export const countText = (count: number): string => String(Number(count.toFixed(2)));

const LINES: readonly PaperColumn[] = [
  { title: 'what', share: 32 },
  { title: 'count', share: 12, align: 'right' },
  { title: 'hours', share: 8, align: 'right' },
  { title: 'each', share: 10, align: 'right' },
  { title: 'amount', share: 12, align: 'right' },
  { title: 'from', share: 40 },
];

const SUMS: readonly PaperColumn[] = [
  { title: 'sum', share: 40 },
  { title: 'hours', share: 12, align: 'right' },
  { title: 'amount', share: 16, align: 'right' },
  { title: '', share: 46 },
];

const MOVERS: readonly PaperColumn[] = [
  { title: 'what moves it', share: 60 },
  { title: 'the total then changes by', share: 24, align: 'right' },
  { title: '', share: 30 },
];

const lineCells = (line: PriceLine): readonly PaperCell[] => [
  line.what,
  `${countText(line.count)} ${line.unit}`,
  line.hours === null ? '' : countText(line.hours),
  moneyText(line.each),
  moneyText(line.amount),
  line.from,
];

/** The price with every line that it is made of, and what moves it. */
export const pricePaper = ({ design, price }: PapersInput): readonly Drawing[] => {
  const { lines, groups, total, sigma, validDays, movers, missing, inHand } = price;
  const tables = groups.flatMap(({ group, amount }): readonly PaperPiece[] => [
    { kind: 'heading', words: `${group}: ${moneyText(amount)}` },
    { kind: 'table', columns: LINES, rows: lines.filter((line) => line.group === group).map(lineCells) },
  ]);
  const sums: readonly (readonly PaperCell[])[] = [
    ...groups.map(({ group, hours, amount }) => [group, hours === null ? '' : countText(hours), moneyText(amount), '']),
    ['total', '', moneyText(total), ''],
  ];
  return paperPages(
    paperHead(
      design,
      'Price',
      'An estimate in the shop’s own currency, without taxes; the supplier’s quote overrules it.',
    ),
    [
      {
        kind: 'words',
        strong: true,
        words: `Total ${moneyText(total)}, known to ± ${moneyText(sigma)} (one standard deviation). It stands for ${countText(validDays)} days.`,
      },
      { kind: 'words', words: 'Not in it: taxes, freight, the vehicle, and the gear of the department.' },
      ...(inHand === '' ? [] : [{ kind: 'words', words: inHand } as const]),
      ...missing.map((words): PaperPiece => ({ kind: 'words', words, strong: true })),
      { kind: 'table', columns: SUMS, rows: sums },
      { kind: 'heading', words: 'What moves it' },
      { kind: 'table', columns: MOVERS, rows: movers.map(({ what, delta }) => [what, `+ ${moneyText(delta)}`, '']) },
      ...tables,
    ],
  );
};
