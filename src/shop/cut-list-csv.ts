import type { LengthUnits } from '../base/index.ts';
import type { CutListRow } from './cut-list.ts';
import { type ListColumn, type ListTable, lengthColumn, listTable, tableCsv } from './list-columns.ts';
import { operationsText } from './operations.ts';
import { toKilogram } from './rounding.ts';

const columns = (units: LengthUnits): readonly ListColumn<CutListRow>[] => [
  { title: 'mark', cell: (row) => row.mark },
  { title: 'qty', cell: (row) => row.quantity },
  { title: 'part', cell: (row) => row.name },
  { title: 'where', cell: (row) => row.where },
  { title: 'material', cell: (row) => row.materialName },
  ...lengthColumn<CutListRow>('thickness', (row) => row.thickness, units),
  ...lengthColumn<CutListRow>('finished length', (row) => row.finishedLength, units),
  ...lengthColumn<CutListRow>('finished width', (row) => row.finishedWidth, units),
  ...lengthColumn<CutListRow>('cut length', (row) => row.cutLength, units),
  ...lengthColumn<CutListRow>('cut width', (row) => row.cutWidth, units),
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
 * The cut list as a table. Millimetres to a tenth; for a design in inches each length also to the nearest 1/32 in. The
 * header depends on the units alone.
 */
export const cutListTable = (rows: readonly CutListRow[], units: LengthUnits): ListTable =>
  listTable(columns(units), rows);

/** The cut list as a file for a spreadsheet. */
export const cutListCsv = (rows: readonly CutListRow[], units: LengthUnits): string =>
  tableCsv(cutListTable(rows, units));
