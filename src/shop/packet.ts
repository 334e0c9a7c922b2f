import { type Inspection, workOutOrder } from '../inspection/index.ts';
import { type CutAgain, revisionStamp } from '../revision/index.ts';
import { CAUTIONS, nameOfPart, sayStamp } from '../says/index.ts';
import { cutListCsv } from './cut-list-csv.ts';
import { balanceView } from './drawing/balance-view.ts';
import type { Drawing } from './drawing/drawing.ts';
import { drawingToSvg } from './drawing/svg.ts';
import { createDrawings, type Drawings, type DrawingsInput } from './drawings.ts';
import { layerTableCsv, partDxf } from './dxf/index.ts';
import { hardwareCsv, hardwareList } from './hardware-list.ts';
import { inspectionSheet } from './inspection-sheet.ts';
import { cutSequenceCsv, layoutDrawings } from './layout-files.ts';
import { massesCsv, massTable } from './masses.ts';
import type { PdfWriter } from './paper/index.ts';
import { releaseLines } from './release.ts';
import { sheetJobs } from './sheet-jobs.ts';
import { layoutSheets, type SheetLayouts, STANDARD_BUDGET } from './sheet-layouts.ts';
import { titleLine, titleWords } from './title-words.ts';

/** One file of the packet. Text is UTF-8; bytes are for formats that are not text. */
export type PacketFile = {
  /** Relative, with `/`, made of letters, digits, `-`, `.` alone. */
  readonly path: string;
  readonly kind: 'list' | 'part-drawing' | 'router' | 'book' | 'view' | 'layout' | 'sheet' | 'contents';
  readonly about: string;
} & ({ readonly text: string } | { readonly bytes: Uint8Array });

export interface PacketInput extends DrawingsInput {
  readonly inspection: Inspection;
  /** Layouts that were improved on screen; without them the packet lays the sheets out with the standard budget. */
  readonly layouts?: SheetLayouts;
  /** What has changed since sheets were cut from a released letter. */
  readonly cutAgain?: CutAgain | null;
  /** With it, all drawings come as three books to print as well. */
  readonly toPdf?: PdfWriter;
}

export interface Packet {
  readonly files: readonly PacketFile[];
  readonly layouts: SheetLayouts;
}

/** What a manifest says of itself, so that a reader knows what it has. */
export const PACKET_FORMAT = 'hatchwright-packet';
export const PACKET_VERSION = 1;

const sheetFiles = (
  name: string,
  sheets: readonly Drawing[],
  folder: string,
  kind: PacketFile['kind'],
  between = '-',
): readonly PacketFile[] =>
  sheets.map((drawing, i) => ({
    path: `${folder}/${name}${i === 0 ? '' : `${between}${i + 1}`}.svg`,
    kind,
    about: sheets.length > 1 ? `${drawing.title}, sheet ${i + 1} of ${sheets.length}` : drawing.title,
    text: drawingToSvg(drawing),
  }));

const drawingFiles = (drawings: Drawings): readonly PacketFile[] => [
  ...drawings.views.flatMap((name) => sheetFiles(name, drawings.draw(name) ?? [], 'views', 'view')),
  ...drawings.parts.flatMap((mark) => sheetFiles(mark, drawings.draw(mark) ?? [], 'drawings', 'part-drawing')),
];

/** Views, sheets and parts as one file each to print at actual size; nothing where there is no page. */
const bookFiles = (drawings: Drawings, layouts: SheetLayouts, input: PacketInput): readonly PacketFile[] => {
  const { toPdf } = input;
  if (toPdf === undefined) return [];
  const drawn = (names: readonly string[]): readonly Drawing[] => names.flatMap((name) => drawings.draw(name) ?? []);
  const subject = titleLine(input.design);
  const books = [
    { path: 'views.pdf', about: 'all views to print', pages: drawn(drawings.views) },
    {
      path: 'layouts.pdf',
      about: 'all sheets with their cuts to print',
      pages: drawnLayouts(layouts, input).flatMap((each) => each.drawings),
    },
    { path: 'drawings.pdf', about: 'all part drawings to print', pages: drawn(drawings.parts) },
  ];
  return books.flatMap(({ path, about, pages }): readonly PacketFile[] =>
    pages.length === 0 ? [] : [{ path, kind: 'book', about, bytes: toPdf(pages, { title: about, subject }) }],
  );
};

/** Every part as it goes to a router, a laser or a shear. */
const routerFiles = ({ marks }: Drawings, { design }: PacketInput): readonly PacketFile[] =>
  marks.parts.map(({ mark, panel }) => ({
    path: `router/${mark}.dxf`,
    kind: 'router',
    about: `${mark} for router, laser or shear, in ${design.units === 'in' ? 'inches' : 'millimetres'}`,
    text: partDxf(panel, design.units, mark),
  }));

/** Where the weight stands, once enough of the vehicle is known to draw it. */
const balanceFiles = ({ design, fitout, inspection }: PacketInput): readonly PacketFile[] => {
  const { units, vehicle } = design;
  const nameCase = nameOfPart(design, fitout);
  const drawn = balanceView({ ...titleWords(design), units, vehicle, cases: inspection.cases, nameCase });
  return drawn ? sheetFiles('balance', [drawn], 'views', 'view') : [];
};

const drawnLayouts = (layouts: SheetLayouts, { design }: PacketInput): ReturnType<typeof layoutDrawings> =>
  layoutDrawings(layouts, {
    ...titleWords(design),
    units: design.units,
  });

const layoutFiles = (layouts: SheetLayouts, input: PacketInput): readonly PacketFile[] =>
  drawnLayouts(layouts, input).flatMap(({ name, drawings }) =>
    sheetFiles(name, drawings, 'layouts', 'layout', '-page-'),
  );

const manifest = (
  { design, inspection, fitout }: PacketInput,
  { rows }: Drawings,
  files: readonly PacketFile[],
): PacketFile => ({
  path: 'manifest.json',
  kind: 'contents',
  about: 'what each file is',
  text: `${JSON.stringify(
    {
      format: PACKET_FORMAT,
      version: PACKET_VERSION,
      design: design.title,
      ...(design.revisions.length === 0 ? {} : { revision: sayStamp(revisionStamp(design)) }),
      customer: design.customer,
      units: design.units,
      held: releaseLines(design, inspection, nameOfPart(design, fitout)),
      parts: rows.reduce((sum, { quantity }) => sum + quantity, 0),
      marks: rows.length,
      files: files.map(({ path, kind, about }) => ({ path, kind, about })),
      cautions: CAUTIONS.map(({ long }) => long),
    },
    null,
    2,
  )}\n`,
});

/**
 * Everything that leaves for the saw, as files: lists, one drawing a part, views, the inspection sheet, and a manifest
 * that says what each is. The same design gives the same bytes.
 */
export const createPacket = (input: PacketInput): Packet => {
  const { design, fitout, catalog, rules, inspection } = input;
  const drawings = createDrawings(input);
  const { marks, rows } = drawings;
  const names = nameOfPart(design, fitout);
  const layouts = input.layouts ?? layoutSheets(sheetJobs(rows, catalog, rules), STANDARD_BUDGET);
  const list = (path: string, about: string, text: string): PacketFile => ({ path, kind: 'list', about, text });
  const files: readonly PacketFile[] = [
    list('cut-list.csv', 'every part to cut, by material', cutListCsv(rows, design.units)),
    list(
      'hardware.csv',
      'what to fetch and buy',
      hardwareCsv(hardwareList({ fitout, catalog, rules, names, units: design.units }), design.units),
    ),
    list('cut-sequence.csv', 'every cut of every sheet, in order', cutSequenceCsv(layouts, design.units)),
    list('router-layers.csv', 'what each layer of the router files is for', layerTableCsv(marks)),
    list('masses.csv', 'every mass with its place, and sums', massesCsv(massTable(fitout, marks, names))),
    {
      path: 'inspection.txt',
      kind: 'sheet',
      about: 'inspection sheet: every finding, opening order, loads, cautions',
      text: inspectionSheet({
        order: workOutOrder(input),
        design,
        fitout,
        inspection,
        marks,
        cutAgain: input.cutAgain ?? null,
      }),
    },
    ...balanceFiles(input),
    ...layoutFiles(layouts, input),
    ...drawingFiles(drawings),
    ...routerFiles(drawings, input),
    ...bookFiles(drawings, layouts, input),
  ];
  return { files: [...files, manifest(input, drawings, files)], layouts };
};
