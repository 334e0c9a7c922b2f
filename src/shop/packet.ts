import { printDesign } from '../design/index.ts';
import { revisionStamp } from '../revision/index.ts';
import { CAUTIONS, nameOfPart, sayStamp } from '../says/index.ts';
import { cutListCsv, cutListTable } from './cut-list-csv.ts';
import { balanceView } from './drawing/balance-view.ts';
import type { Drawing } from './drawing/drawing.ts';
import { drawingToSvg } from './drawing/svg.ts';
import { ASSEMBLY_ORDER, createDrawings, type Drawings } from './drawings.ts';
import { layerTableCsv, partDxf } from './dxf/index.ts';
import { hardwareCsv, hardwareTable } from './hardware-list.ts';
import { inspectionSheet } from './inspection-sheet.ts';
import { cutSequenceCsv, cutSequenceTable, layoutDrawings } from './layout-files.ts';
import { stockLeft, stockLeftCsv } from './lists/stock-left.ts';
import { massesCsv, massLines, massTable } from './masses.ts';
import { createGuard, type Guard, missingLines } from './missing.ts';
import type { PacketFile } from './packet-file.ts';
import type { PdfWriter } from './paper/index.ts';
import { booksOf, firstPage, type PapersInput, papersOf } from './papers/index.ts';
import { type Price, priceCsv, priceTable } from './price/index.ts';
import { heldDrawings, heldPages, heldWords, releaseLines } from './release.ts';
import type { SheetLayouts } from './sheet-layouts.ts';
import { type ShopWorkInput, shopWork } from './shop-work.ts';
import { titleLine, titleWords } from './title-words.ts';
import { workbook } from './workbook.ts';

export interface PacketInput extends ShopWorkInput {
  /** With it, papers and books to print come as well. */
  readonly toPdf?: PdfWriter;
  /** The drawings of this very input, where somebody has some of them already. */
  readonly drawings?: Drawings;
  /** Told what comes next before it is made, and waited for; what it throws ends the making. */
  readonly pace?: (next: string) => Promise<void>;
}

export interface Packet {
  readonly files: readonly PacketFile[];
  readonly layouts: SheetLayouts;
  readonly price: Price;
  /** What a reader would look for and not find, a sentence each. */
  readonly missing: readonly string[];
  readonly firstPage: readonly Drawing[];
}

const FIRST_PAGE = 'read this first: what is in the packet, and what is missing';

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

/** One printed file; none where there is nobody to write it or no page. */
const pdfFile = (
  path: string,
  kind: PacketFile['kind'],
  about: string,
  pages: readonly Drawing[],
  { design, toPdf }: Pick<PacketInput, 'design' | 'toPdf'>,
): readonly PacketFile[] =>
  toPdf === undefined || pages.length === 0
    ? []
    : [{ path, kind, about, bytes: toPdf(pages, { title: about, subject: titleLine(design) }) }];

/** Papers and books as files to print, one after another: whoever waits for them can be told, and can stop. */
const printedFiles = async (work: PapersInput, input: PacketInput, guard: Guard): Promise<readonly PacketFile[]> => {
  const files: PacketFile[] = [];
  const papers = [
    ...papersOf(work).map((paper) => ({ paper, kind: 'paper' as const })),
    ...booksOf(work).map((paper) => ({ paper, kind: 'book' as const })),
  ];
  for (const { paper, kind } of papers) {
    const path = `${paper.name}.pdf`;
    await input.pace?.(path);
    files.push(...guard.make(path, () => pdfFile(path, kind, paper.about, paper.pages(), input), []));
  }
  return files;
};

/** Every part as it goes to a router, a laser or a shear. */
const routerFiles = ({ drawings, design, inspection }: PapersInput, guard: Guard): readonly PacketFile[] =>
  drawings.marks.parts.flatMap(({ mark, panel }) =>
    guard.make(
      `The router file of ${mark}`,
      (): readonly PacketFile[] => [
        {
          path: `router/${mark}.dxf`,
          kind: 'router',
          about: `${mark} for router, laser or shear, in ${design.units === 'in' ? 'inches' : 'millimetres'}`,
          text: partDxf(panel, design.units, mark, heldWords(inspection)),
        },
      ],
      [],
    ),
  );

/** What is drilled in the vehicle, for a plotter or a laser; as sheets too where nobody writes a book. */
const templateFiles = (
  { drawings, design }: PapersInput,
  { toPdf }: PacketInput,
  guard: Guard,
): readonly PacketFile[] => {
  const unit = design.units === 'in' ? 'inches' : 'millimetres';
  return drawings.papers.flatMap((name) => [
    ...guard.make(`The file of ${name}`, (): readonly PacketFile[] => {
      const text = drawings.templateFile(name);
      if (text === null) return [];
      return [
        {
          path: `template/${name}.dxf`,
          kind: 'router',
          about: `holes in ${name.startsWith('brace-') ? 'a brace' : 'the vehicle'}, in ${unit}: ${name}`,
          text,
        },
      ];
    }, []),
    ...(toPdf === undefined ? sheetFiles(name, drawings.draw(name) ?? [], 'template', 'view') : []),
  ]);
};

/** Where the weight stands, once enough of the vehicle is known to draw it. */
const balanceFiles = ({ design, fitout, inspection }: PapersInput): readonly PacketFile[] => {
  const { units, vehicle } = design;
  const nameCase = nameOfPart(design, fitout);
  const drawn = balanceView({ ...titleWords(design), units, vehicle, cases: inspection.cases, nameCase });
  return drawn ? sheetFiles('balance', [drawn], 'views', 'view') : [];
};

const layoutFiles = ({ layouts, design, inspection }: PapersInput): readonly PacketFile[] =>
  layoutDrawings(layouts, { ...titleWords(design), units: design.units }).flatMap(({ name, drawings }) =>
    sheetFiles(name, heldPages(drawings, inspection), 'layouts', 'layout', '-page-'),
  );

/** The lists as text, and the inspection sheet for a reader without paper. */
const listFiles = (work: PapersInput, guard: Guard): readonly PacketFile[] => {
  const { design, fitout, drawings, hardware, layouts, price, inspection, catalog } = work;
  const { units } = design;
  const names = nameOfPart(design, fitout);
  const left = stockLeft(design, layouts, catalog);
  const file = (path: string, kind: PacketFile['kind'], about: string, text: () => string): readonly PacketFile[] =>
    guard.make(path, () => [{ path, kind, about, text: text() }], []);
  return [
    ...file('cut-list.csv', 'list', 'every part to cut, by material', () => cutListCsv(drawings.rows, units)),
    ...file('hardware.csv', 'list', 'what to fetch and buy', () => hardwareCsv(hardware, units)),
    ...file('cut-sequence.csv', 'list', 'every cut of every sheet, in order', () => cutSequenceCsv(layouts, units)),
    ...(left.length === 0
      ? []
      : file('stock-left.csv', 'list', 'sheets and offcuts in hand once this is cut: for the next design', () =>
          stockLeftCsv(left, catalog),
        )),
    ...file('router-layers.csv', 'list', 'what each layer of the router files is for', () =>
      layerTableCsv(drawings.marks, heldWords(inspection) !== null),
    ),
    ...file('masses.csv', 'list', 'every mass with its place, and sums', () =>
      massesCsv(massTable(fitout, drawings.marks, names)),
    ),
    ...file('price.csv', 'list', 'every line of the price, and sums', () => priceCsv(price)),
    ...file('inspection.txt', 'sheet', 'inspection sheet: every finding, opening order, loads, cautions', () =>
      inspectionSheet({ ...work, marks: drawings.marks }),
    ),
  ];
};

const workbookFiles = async (work: PapersInput): Promise<readonly PacketFile[]> => {
  const { design, fitout, drawings, hardware, layouts, price } = work;
  const { units } = design;
  const masses = massTable(fitout, drawings.marks, nameOfPart(design, fitout));
  const sheets = [
    { name: 'Cut list', table: cutListTable(drawings.rows, units) },
    { name: 'Hardware', table: hardwareTable(hardware, units) },
    { name: 'Cut sequence', table: cutSequenceTable(layouts, units) },
    { name: 'Price', table: priceTable(price) },
    { name: 'Masses', table: massLines(masses) },
  ];
  return [
    {
      path: 'lists.xlsx',
      kind: 'list',
      about: 'cut list, hardware, cut sequence, price and masses as one workbook',
      bytes: await workbook(sheets, titleLine(design)),
    },
  ];
};

/** More parts than this in one picture are black on paper, and their hidden lines take minutes. */
const MOST_IN_PICTURE = 2000;
const PICTURES = /^(exploded|assembly)-/;
/** The order of assembly draws what stands at every step: a picture for each part, with all those before it. */
export const MOST_IN_ORDER = 300;

/** Each drawing is made once. One that cannot be made is named and leaves its place empty. */
const guarded = (drawings: Drawings, { fitout }: PacketInput, guard: Guard): Drawings => {
  const made = new Map<string, readonly Drawing[] | null>();
  const draw = (name: string): readonly Drawing[] | null => {
    const most = name === ASSEMBLY_ORDER ? MOST_IN_ORDER : MOST_IN_PICTURE;
    if (PICTURES.test(name) && fitout.panels.length > most)
      throw new RangeError(`it would show more than ${most} parts at once`);
    return drawings.draw(name);
  };
  return {
    ...drawings,
    draw: (name) => {
      if (!made.has(name))
        made.set(
          name,
          guard.make(`The drawing ${name}`, () => draw(name), null),
        );
      return made.get(name) ?? null;
    },
  };
};

const manifest = (
  { design, inspection, fitout, drawings, layouts }: PapersInput,
  files: readonly PacketFile[],
  missing: readonly string[],
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
      missing,
      parts: drawings.rows.reduce((sum, { quantity }) => sum + quantity, 0),
      marks: drawings.rows.length,
      sheets: layouts.sheets,
      offcuts: layouts.offcuts,
      files: files.map(({ path, kind, about }) => ({ path, kind, about })),
      cautions: CAUTIONS.map(({ long }) => long),
    },
    null,
    2,
  )}\n`,
});

/**
 * Everything that leaves for the saw, as files: a first page that says what is there and what is missing, lists, papers,
 * one drawing a part, views, and a manifest. What cannot be made is named, and the rest still comes. The same design
 * gives the same bytes.
 */
export const createPacket = async (input: PacketInput): Promise<Packet> => {
  const guard = createGuard();
  const work = shopWork(
    input,
    guarded(heldDrawings(input.drawings ?? createDrawings(input), input.inspection), input, guard),
  );
  const { layouts, price } = work;
  await input.pace?.('lists');
  const books = await guard.makeLater('lists.xlsx', () => workbookFiles(work), []);
  await input.pace?.('drawings');
  const made: readonly PacketFile[] = [
    ...listFiles(work, guard),
    ...books,
    ...guard.make('The balance picture', () => balanceFiles(work), []),
    ...guard.make('The sheet layouts', () => layoutFiles(work), []),
    ...drawingFiles(work.drawings),
    ...routerFiles(work, guard),
    ...templateFiles(work, input, guard),
    ...(await printedFiles(work, input, guard)),
  ];
  const own: PacketFile = {
    path: 'design.json',
    kind: 'contents',
    about: 'the design itself, to open again',
    text: printDesign(input.design),
  };
  const missing = [...new Set([...missingLines(work), ...guard.missing])];
  const front = firstPage(work, made, missing);
  const first = pdfFile('first-page.pdf', 'first-page', FIRST_PAGE, front, input);
  const files = [...first, ...made, own];
  return { files: [...files, manifest(work, files, missing)], layouts, price, missing, firstPage: front };
};
