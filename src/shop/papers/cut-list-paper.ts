import { formatMass, type LengthUnits, MM_PER_INCH } from '../../base/index.ts';
import type { CutListRow } from '../cut-list.ts';
import type { Drawing } from '../drawing/drawing.ts';
import { sizeText, unitsText } from '../drawing/paper-words.ts';
import { operationsText } from '../operations.ts';
import { type PaperCell, type PaperColumn, type PaperPiece, paperPages } from '../paper/index.ts';
import { sheetsText } from '../stock-words.ts';
import { type PapersInput, paperHead } from './paper.ts';

const COLUMNS: readonly PaperColumn[] = [
  { title: 'mark', share: 5 },
  { title: 'qty', share: 4, align: 'right' },
  { title: 'part', share: 19 },
  { title: 'cut length × width', share: 17, align: 'right' },
  { title: 'finished length × width', share: 17, align: 'right' },
  { title: 'grain', share: 6 },
  { title: 'bands', share: 11 },
  { title: 'hand', share: 5 },
  { title: 'work', share: 19 },
  { title: 'each', share: 7, align: 'right' },
  { title: 'where it goes', share: 22 },
  { title: 'cut', share: 4 },
];

/** `L1 L2` where one band is on all of them, else `L1 band-1; W1 band-2`. */
export const bandsText = ({ bands }: Pick<CutListRow, 'bands'>): string => {
  const edges = (['l1', 'l2', 'w1', 'w2'] as const).flatMap((edge) => {
    const band = bands[edge];
    return band === null ? [] : [{ edge: edge.toUpperCase(), band }];
  });
  const kinds = [...new Set(edges.map(({ band }) => band))];
  return kinds
    .map((kind) => `${edges.flatMap(({ edge, band }) => (band === kind ? [edge] : [])).join(' ')} ${kind}`)
    .join('; ');
};

/** `↔ L`: along the length; nothing where the part may be turned. */
const grainText = ({ grain }: CutListRow): string => (grain === 'length' ? '↔ L' : 'any');

const pair = (length: number, width: number, units: LengthUnits): string =>
  `${sizeText(length, units)} × ${sizeText(width, units)}`;

const rowCells = (row: CutListRow, units: LengthUnits): readonly PaperCell[] => [
  row.mark,
  String(row.quantity),
  row.note === '' ? row.name : `${row.name} (${row.note})`,
  pair(row.cutLength, row.cutWidth, units),
  pair(row.finishedLength, row.finishedWidth, units),
  grainText(row),
  bandsText(row),
  row.hand ?? '',
  operationsText(row.operations),
  formatMass(row.massEachKg, units),
  row.where,
  { tick: true },
];

/** Square metres, or square feet where inches are used. */
const areaText = (mm2: number, units: LengthUnits): string =>
  units === 'in' ? `${(mm2 / (12 * MM_PER_INCH) ** 2).toFixed(1)} ft²` : `${(mm2 / 1e6).toFixed(2)} m²`;

const sumLine = (rows: readonly CutListRow[], units: LengthUnits): string => {
  const parts = rows.reduce((sum, { quantity }) => sum + quantity, 0);
  const area = rows.reduce((sum, row) => sum + row.quantity * row.cutLength * row.cutWidth, 0);
  const mass = rows.reduce((sum, { massTotalKg }) => sum + massTotalKg, 0);
  return `${parts} ${parts === 1 ? 'part' : 'parts'}, ${areaText(area, units)} to cut, ${formatMass(mass, units)}`;
};

/** Every part to cut, grouped for the saw, with a square to tick. */
export const cutListPaper = ({ design, drawings, layouts }: PapersInput): readonly Drawing[] => {
  const { rows } = drawings;
  const { units } = design;
  const boards = layouts.boards.map((laid) => {
    const { board } = laid;
    const own = rows.filter(({ material, thickness }) => material === board.material && thickness === board.thickness);
    return { board, own, laid };
  });
  const pieces = boards.flatMap(({ board, own, laid }): readonly PaperPiece[] => [
    {
      kind: 'heading',
      words: `${board.materialName}, measured ${sizeText(board.thickness, units)} ${units} thick`,
    },
    {
      kind: 'words',
      words: `${sumLine(own, units)}, from ${sheetsText(laid)}.`,
    },
    { kind: 'table', columns: COLUMNS, rows: own.map((row) => rowCells(row, units)) },
  ]);
  return paperPages(
    paperHead(
      design,
      'Cut list',
      'Measure the stock before cutting: thickness is as measured, not as named. The tape and the sheet in hand overrule this paper.',
      'across',
    ),
    [
      {
        kind: 'words',
        words: `Sizes in ${unitsText(units)}, length along the grain first. Cut sizes have the bands and what is milled off before banding taken off; the drawing of a part carries its mark. L1 and L2 are the long edges, W1 and W2 the ends, as on the drawing.`,
      },
      ...(rows.length === 0 ? [{ kind: 'words', words: 'Nothing to cut.' } as const] : pieces),
    ],
  );
};
