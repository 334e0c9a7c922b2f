import { formatInches, type LengthUnits } from '../base/index.ts';
import { type CsvCell, csvText } from './csv.ts';
import type { CutListRow } from './cut-list.ts';
import { operationsText } from './operations.ts';
import { SHOP_FRACTION, toKilogram, toTenth } from './rounding.ts';

interface Column {
  readonly title: string;
  readonly cell: (row: CutListRow) => CsvCell;
}

/** A length column in millimetres, and beside it in inches where the design is in inches. */
const lengths = (title: string, of: (row: CutListRow) => number, units: LengthUnits): readonly Column[] => [
  { title: `${title} mm`, cell: (row) => toTenth(of(row)) },
  ...(units === 'in'
    ? [{ title: `${title} in`, cell: (row: CutListRow) => formatInches(of(row), SHOP_FRACTION) }]
    : []),
];

const columns = (units: LengthUnits): readonly Column[] => [
  { title: 'mark', cell: (row) => row.mark },
  { title: 'qty', cell: (row) => row.quantity },
  { title: 'part', cell: (row) => row.name },
  { title: 'where', cell: (row) => row.where },
  { title: 'material', cell: (row) => row.materialName },
  ...lengths('thickness', (row) => row.thickness, units),
  ...lengths('finished length', (row) => row.finishedLength, units),
  ...lengths('finished width', (row) => row.finishedWidth, units),
  ...lengths('cut length', (row) => row.cutLength, units),
  ...lengths('cut width', (row) => row.cutWidth, units),
  { title: 'grain', cell: (row) => row.grain },
  { title: 'band L1', cell: (row) => row.bands.l1 },
  { title: 'band L2', cell: (row) => row.bands.l2 },
  { title: 'band W1', cell: (row) => row.bands.w1 },
  { title: 'band W2', cell: (row) => row.bands.w2 },
  { title: 'hand', cell: (row) => row.hand },
  { title: 'operations', cell: (row) => operationsText(row.operations) },
  { title: 'drawing', cell: (row) => row.drawing },
  { title: 'mass each kg', cell: (row) => toKilogram(row.massEachKg) },
  { title: 'mass total kg', cell: (row) => toKilogram(row.massTotalKg) },
  { title: 'note', cell: (row) => row.note },
];

/**
 * The cut list as a file for a spreadsheet. Millimetres to a tenth; for a design in inches each length also to the
 * nearest 1/32 in. The header depends on the units alone.
 */
export const cutListCsv = (rows: readonly CutListRow[], units: LengthUnits): string => {
  const all = columns(units);
  return csvText(
    all.map(({ title }) => title),
    rows.map((row) => all.map(({ cell }) => cell(row))),
  );
};
