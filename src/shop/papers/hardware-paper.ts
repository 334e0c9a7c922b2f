import { formatMass, groupBy, type LengthUnits } from '../../base/index.ts';
import type { Drawing } from '../drawing/drawing.ts';
import { sizeText, unitsText } from '../drawing/paper-words.ts';
import type { HardwareRow } from '../hardware-list.ts';
import { type PaperCell, type PaperColumn, type PaperPiece, paperPages } from '../paper/index.ts';
import { type PapersInput, paperHead } from './paper.ts';

const COLUMNS: readonly PaperColumn[] = [
  { title: 'fetch', share: 7, align: 'right' },
  { title: 'of it spare', share: 6, align: 'right' },
  { title: 'kind', share: 10 },
  { title: 'item', share: 28 },
  { title: 'length', share: 9, align: 'right' },
  { title: 'mass', share: 9, align: 'right' },
  { title: 'where it goes', share: 38 },
  { title: 'have', share: 5 },
];

const SHELVES: Readonly<Record<HardwareRow['from'], string>> = {
  device: 'Devices',
  hardware: 'Fittings and fixings',
  slide: 'Slides, in pairs',
};

const UNIT: Readonly<Record<HardwareRow['by'], string>> = { piece: '', pair: ' pairs', metre: ' m' };

/** `48`, `2 pairs`, `3.4 m` */
export const fetchText = ({ fetch, by }: Pick<HardwareRow, 'fetch' | 'by'>): string =>
  `${Number(fetch.toFixed(1))}${by === 'pair' && fetch === 1 ? ' pair' : UNIT[by]}`;

const rowCells = (row: HardwareRow, units: LengthUnits): readonly PaperCell[] => [
  fetchText(row),
  row.spares === 0 ? '' : String(row.spares),
  row.kind.replaceAll('-', ' '),
  row.note === '' ? row.name : `${row.name} (${row.note})`,
  row.lengthMm === null ? '' : sizeText(row.lengthMm, units),
  formatMass(row.massKg, units),
  row.where,
  { tick: true },
];

/** What to fetch and buy before the first cut, shelf by shelf, with lengths and spares. */
export const hardwarePaper = ({ design, hardware }: PapersInput): readonly Drawing[] => {
  const shelves = [...groupBy(hardware, ({ from }) => from)];
  const pieces = shelves.flatMap(([from, rows]): readonly PaperPiece[] => [
    { kind: 'heading', words: SHELVES[from] },
    { kind: 'table', columns: COLUMNS, rows: rows.map((row) => rowCells(row, design.units)) },
  ]);
  return paperPages(
    paperHead(
      design,
      'Hardware pick list',
      'Measure slides, latches and devices in the hand before cutting for them: the part overrules the catalog.',
    ),
    [
      {
        kind: 'words',
        words: `Lengths in ${unitsText(design.units)}. Buy before the first cut. Small fixings have spares in their number; masses are those of what is used.`,
      },
      ...(hardware.length === 0 ? [{ kind: 'words', words: 'No hardware.' } as const] : pieces),
    ],
  );
};
