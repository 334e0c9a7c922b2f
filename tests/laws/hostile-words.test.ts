import { parseCsv } from 'hucre/csv';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Design } from '../../src/design/index.ts';
import type { Flow } from '../../src/flow.ts';
import { cutAgain, placedRemarks, revisionStamp } from '../../src/revision/index.ts';
import { nameOfPart, sayRemark } from '../../src/says/index.ts';
import {
  createPacket,
  createReviewData,
  drawingsToPdf,
  fillReviewPage,
  type PacketFile,
  SHOP_EXTRAS,
} from '../../src/shop/index.ts';
import { DATA_MARK } from '../../src/shop/review-copy/index.ts';
import { demoDesign, wholeFlow } from '../golden/flow.ts';
import { byEzdxf, byParser } from '../shop/dxf/readers.ts';
import { faces, pdfText } from '../shop/paper/poppler.ts';
import { readCsvFile, readWorkbook } from '../shop/python-readers.ts';
import { HOSTILE, hostileDesign } from './hostile.ts';

const WAIT_MS = 120_000;
const { value: design, fields } = hostileDesign(demoDesign('harrow-fell'));
let flow: Flow;
let files: readonly PacketFile[] = [];

const packetOf = async (subject: Design): Promise<readonly PacketFile[]> => {
  const space = flow.space(subject);
  const made = await createPacket({
    design: subject,
    fitout: flow.fitOut(subject),
    inspection: flow.inspection(subject),
    catalog: flow.catalog,
    rules: flow.rules(subject),
    space: space.ok ? space.value : null,
    cutAgain: cutAgain(subject, flow.fitOut),
    toPdf: (pages, about) => drawingsToPdf(pages, about, faces),
  });
  return made.files;
};

beforeAll(async () => {
  flow = await wholeFlow();
  files = await packetOf(design);
}, WAIT_MS);

const textsOf = (ending: string): readonly (readonly [string, string])[] =>
  files.flatMap((file) => (file.path.endsWith(ending) && 'text' in file ? [[file.path, file.text] as const] : []));
const bytesOf = (ending: string): readonly (readonly [string, Uint8Array])[] =>
  files.flatMap((file) => (file.path.endsWith(ending) && 'bytes' in file ? [[file.path, file.bytes] as const] : []));

/** A start that a spreadsheet would compute, as it reads a cell. */
const FORMULA = /^\s*[=+\-@|＝＋－＠]/u;
const isFigure = (cell: string): boolean => /^-?\d+(\.\d+)?$/.test(cell);

describe('hostile words in every field of a design and of a reply', () => {
  it('stand in every field that takes words', () => {
    const plain = new Set(
      fields.map((field) => field.replaceAll(/\[\d+\]/g, '[]').replace(/(\.content\.parts\[\]\.opening)+/, '…')),
    );
    for (const field of [
      'title',
      'customer',
      'notes',
      'vehicle.description',
      'survey.notes',
      'survey.closures[].name',
      'cabinet.carcasses[].name',
      'gear[].name',
      'gear[].user',
      'gear[].note',
      'questions[].text',
      'houseRules[].why',
      'accepted[].why',
      'record.asBuilt[].text',
      'record.weighed[].note',
      'record.torqueChecks[].due',
      'who',
      'remarks[].text',
      'remarks[].withName',
      'remarks[].toName',
    ])
      expect([field, plain.has(field)]).toEqual([field, true]);
    // Each of the words stands somewhere, the one of ten thousand letters too.
    const text = JSON.stringify(design);
    for (const words of HOSTILE) expect(text.includes(JSON.stringify(words).slice(1, -1))).toBe(true);
  });

  it(
    'leave every paper of the packet there is',
    async () => {
      const plain = await packetOf(demoDesign('harrow-fell'));
      const kinds = (list: readonly PacketFile[]): readonly string[] =>
        [...new Set(list.map(({ kind }) => kind))].sort();
      expect(kinds(files)).toEqual(kinds(plain));
      expect(files.length).toBe(plain.length);
      for (const { path } of files) expect(path).toMatch(/^(?:[a-z]+\/)?[A-Za-z0-9-]+\.[a-z]+$/);
    },
    WAIT_MS,
  );

  it('are text in SVG: no element and no attribute but those of a drawing', () => {
    const drawings = textsOf('.svg');
    expect(drawings.length).toBeGreaterThan(30);
    for (const [path, text] of drawings) {
      const tags = new Set(Array.from(text.matchAll(/<\/?([^\s/>]+)/g), ([, tag]) => tag));
      expect([path, [...tags].filter((tag) => !/^(\?xml|svg|title|g|path|circle|text)$/.test(tag ?? ''))]).toEqual([
        path,
        [],
      ]);
      expect([path, /\son\w+\s*=\s*["'][^"']*["'][^<]*>/i.test(text.replaceAll(/>[^<]*</g, '><'))]).toEqual([
        path,
        false,
      ]);
      expect([path, /[^\P{Cc}\t\n\r]/u.test(text)]).toEqual([path, false]);
    }
    expect(drawings.some(([, text]) => text.includes('&lt;script&gt;'))).toBe(true);
  });

  it(
    'are text in PDF, which runs nothing and is read to its end',
    () => {
      const papers = bytesOf('.pdf');
      expect(papers.length).toBeGreaterThan(8);
      let said = '';
      for (const [path, bytes] of papers) {
        const raw = Buffer.from(bytes).toString('latin1');
        expect([path, /\/(JavaScript|JS|Launch|URI|OpenAction|AA)\b/.test(raw)]).toEqual([path, false]);
        said += pdfText(bytes);
      }
      expect(said).toContain('<script>');
    },
    WAIT_MS,
  );

  it(
    'change nothing in DXF: two readers find the same parts as of the plain demo',
    async () => {
      const drawings = textsOf('.dxf');
      const plain = new Map(
        (await packetOf(demoDesign('harrow-fell'))).flatMap((file) =>
          'text' in file ? [[file.path, file.text] as const] : [],
        ),
      );
      expect(drawings.length).toBeGreaterThan(20);
      for (const [path, text] of drawings) {
        const own = byParser(text);
        expect([path, own]).toEqual([path, byParser(plain.get(path) ?? '')]);
      }
      const [first] = drawings;
      expect(first && byEzdxf([first[1]])).toBeDefined();
    },
    WAIT_MS,
  );

  it('are text in lists: no row is broken, and no cell begins as a formula', () => {
    const lists = textsOf('.csv');
    expect(lists.length).toBeGreaterThan(4);
    for (const [path, text] of lists) {
      const rows = parseCsv(text) as readonly (readonly string[])[];
      const width = rows[0]?.length;
      expect([path, readCsvFile(text)]).toEqual([path, rows]);
      for (const row of rows) expect([path, row.length]).toEqual([path, width]);
      for (const cell of rows.flat())
        expect([path, cell, !FORMULA.test(cell) || isFigure(cell)]).toEqual([path, cell, true]);
    }
  });

  it('are text in the workbook, without a formula', () => {
    const [book] = bytesOf('.xlsx');
    if (!book) throw new Error('no workbook');
    const sheets = readWorkbook(book[1]);
    expect(sheets.length).toBeGreaterThan(2);
    for (const { name, formulas, rows } of sheets) {
      expect([name, formulas]).toEqual([name, 0]);
      for (const cell of rows.flat())
        if (typeof cell === 'string')
          expect([name, cell.slice(0, 40), FORMULA.test(cell)]).toEqual([name, cell.slice(0, 40), false]);
    }
  });

  it('are data in the review copy, whatever of the shop goes in', () => {
    const space = flow.space(design);
    const data = createReviewData({
      design,
      fitout: flow.fitOut(design),
      catalog: flow.catalog,
      rules: flow.rules(design),
      space: space.ok ? space.value : null,
      inspection: flow.inspection(design),
      order: flow.openingOrder(design),
      withShop: SHOP_EXTRAS,
    });
    const page = fillReviewPage(`<a>${DATA_MARK}</a>`, data);
    expect(page.slice(3, -4)).not.toMatch(/[<>&\u2028\u2029]/);
    expect(JSON.parse(page.slice(3, -4))).toEqual(JSON.parse(JSON.stringify(data)));
    expect(page.length).toBeLessThan(4_000_000);
  });

  it('come out of a reply as they went in, each with its part', () => {
    const placed = placedRemarks(design, revisionStamp(design).sha256);
    expect(placed.length).toBeGreaterThan(3);
    const names = nameOfPart(design, flow.fitOut(design));
    for (const remark of placed) expect(sayRemark(remark, names)).toContain(remark.remark.text);
  });
});
