import { describe, expect, it } from 'vitest';
import { houseRules } from '../../src/catalog/index.ts';
import type { FitOut } from '../../src/fitout/index.ts';
import { createPacket, type Packet, type PacketInput } from '../../src/shop/packet.ts';
import { drawingsToPdf } from '../../src/shop/paper/pdf.ts';
import { catalog, design, emptyInspection, fitOutOf, node, panel, rules, twoColumns } from './fixture.ts';
import { faces, pdfText } from './paper/poppler.ts';

const packetOf = (fitout: FitOut, changes: Partial<PacketInput> = {}): Promise<Packet> =>
  createPacket({
    design: design(),
    fitout,
    catalog,
    rules,
    space: null,
    inspection: emptyInspection,
    toPdf: (pages, about) => drawingsToPdf(pages, about, faces),
    ...changes,
  });

/** Words of the first page, in one line. */
const firstPage = ({ files }: Packet): string => {
  const [first] = files;
  if (first?.path !== 'first-page.pdf' || !('bytes' in first)) throw new Error('the first page is not first');
  return pdfText(first.bytes).replace(/\s+/g, ' ');
};

/** The rest of the packet came: lists, papers, and a drawing and a router file for each mark. */
const isWhole = ({ files }: Packet, marks: number): void => {
  const paths = files.map(({ path }) => path);
  for (const path of ['cut-list.csv', 'lists.xlsx', 'cut-list.pdf', 'labels.pdf', 'price.pdf', 'manifest.json'])
    expect(paths).toContain(path);
  expect(paths.filter((path) => path.startsWith('router/'))).toHaveLength(marks);
  expect(paths.filter((path) => /^drawings\/[A-Z]+\d+\.svg$/.test(path))).toHaveLength(marks);
};

const withRule = (rule: string, value: number) => houseRules(catalog, [{ rule, value, who: 'R. Mapp', why: 'test' }]);

describe('bad input', () => {
  it('a part larger than every sheet is named, and the rest comes', async () => {
    const packet = await packetOf(fitOutOf([panel('long', { length: 3000 }), panel('short')]));
    expect(firstPage(packet)).toContain(
      '1 of A1 (3000 mm × 600 mm) is missing: it is larger than every sheet; the largest offers 2420 mm × 1200 mm after trimming.',
    );
    isWhole(packet, 2);
  });

  it('a board of which no sheet is in stock is named, and what is made of others is laid out', async () => {
    const materials = new Map(
      [...catalog.materials].map(([id, each]) => [id, id === 'ply-18' ? { ...each, sheets: [] } : each]),
    );
    const parts = [panel('wide'), panel('thin', { material: 'ply-6', thickness: 6.4 })];
    const packet = await packetOf(fitOutOf(parts), { catalog: { ...catalog, materials } });
    expect(firstPage(packet)).toContain('no sheet of Birch plywood 18 mm is in the stock list');
    expect(firstPage(packet)).toContain('1 part lies on no sheet: its material is not in the price.');
    // The other board still has its sheet.
    expect(packet.layouts.sheets).toBe(1);
    isWhole(packet, 2);
  });

  it('without any stock nothing lies on a sheet, and every drawing, list and label still comes', async () => {
    const materials = new Map([...catalog.materials].map(([id, each]) => [id, { ...each, sheets: [] }]));
    const packet = await packetOf(twoColumns(), { catalog: { ...catalog, materials } });
    const text = firstPage(packet);
    expect(text).toContain('no sheet of Birch plywood 18 mm is in the stock list');
    expect(text).toContain('no sheet of Birch plywood 6.5 mm is in the stock list');
    expect(packet.layouts.sheets).toBe(0);
    isWhole(packet, 6);
  });

  it('a cabinet of more parts than a person can follow step by step has its pictures and no order', async () => {
    const parts = Array.from({ length: 301 }, (_, i) => panel(`p${i}`, { length: 300, width: 20 }));
    const packet = await packetOf(fitOutOf(parts));
    expect(firstPage(packet)).toContain(
      'The drawing assembly-order could not be made: it would show more than 300 parts at once',
    );
    expect(packet.files.map(({ path }) => path)).toEqual(
      expect.arrayContaining(['views/exploded-carcass-1.svg', 'views/assembly-carcass-1.svg']),
    );
  }, 60_000);

  it('a grain-locked part that fits only turned is named', async () => {
    const packet = await packetOf(fitOutOf([panel('tall', { length: 700, width: 1500 })]));
    expect(firstPage(packet)).toContain('it fits only turned, and its grain forbids that');
    isWhole(packet, 1);
  });

  it('a material that the catalog does not have is named, with what hangs on it', async () => {
    const packet = await packetOf(fitOutOf([panel('odd', { material: 'no-such-board' }), panel('short')]));
    const text = firstPage(packet);
    expect(text).toContain('no sheet of no-such-board is in the stock list');
    expect(text).toContain('material is not in the catalog');
    expect(text).toContain('1 part lies on no sheet: its material is not in the price.');
    isWhole(packet, 2);
  });

  it('a fitting that could not be solved is named', async () => {
    const problem = {
      code: 'unknown-material',
      at: node('carcass-1'),
      axis: null,
      needMm: null,
      haveMm: null,
      because: ['no-such-board'],
    } as const;
    const packet = await packetOf({ ...twoColumns(), problems: [problem] });
    expect(firstPage(packet)).toMatch(
      /asks for a material that the catalog does not have: no-such-board\. Its parts are drawn as far as they are known: do not cut them yet\./,
    );
    isWhole(packet, 6);
    // Where nothing of it could be made, that is said instead.
    const elsewhere = await packetOf({ ...twoColumns(), problems: [{ ...problem, at: node('carcass-9') }] });
    expect(elsewhere.missing[0]).toMatch(/no-such-board\. Its parts are missing\.$/);
  });

  it('a kerf below zero is not used, and that is said', async () => {
    const packet = await packetOf(twoColumns(), { rules: withRule('saw-kerf', -3) });
    const text = firstPage(packet);
    expect(text).toMatch(/The setting kerf is not a length of zero or more and was not used/);
    expect(text).toContain('The sheets are laid out without a kerf: parts may come out short.');
    isWhole(packet, 6);
  });

  it('what throws is named, and nothing else is lost', async () => {
    const packet = await packetOf(twoColumns(), {
      toPdf: (pages, about) => {
        if (about.title.startsWith('cut list')) throw new Error('the face has no such letter');
        return drawingsToPdf(pages, about, faces);
      },
    });
    expect(packet.missing).toContain('cut-list.pdf could not be made: the face has no such letter');
    expect(firstPage(packet)).toContain('cut-list.pdf could not be made: the face has no such letter');
    expect(packet.files.map(({ path }) => path)).toContain('labels.pdf');
  });

  it('an empty cabinet says so', async () => {
    const packet = await packetOf(fitOutOf([]));
    expect(firstPage(packet)).toContain('the cabinet has no panel yet');
  });

  it('five thousand parts are all counted, laid out and labelled', async () => {
    const parts = Array.from({ length: 5000 }, (_, i) => panel(`p${i}`, { length: 200 + (i % 40) * 5, width: 150 }));
    const packet = await packetOf(fitOutOf(parts));
    const manifest = packet.files.at(-1);
    expect(manifest && 'text' in manifest ? JSON.parse(manifest.text) : null).toMatchObject({ parts: 5000, marks: 40 });
    const laid = packet.layouts.boards.flatMap(({ layout }) => layout.sheets.flatMap(({ parts: all }) => all));
    expect(laid).toHaveLength(5000);
    const labels = packet.files.find(({ path }) => path === 'labels.pdf');
    // Fourteen on a sheet: 358 sheets.
    if (!labels || !('bytes' in labels)) throw new Error('no labels');
    expect(new TextDecoder('latin1').decode(labels.bytes).match(/\/Type \/Page\b/g)).toHaveLength(358);
    isWhole(packet, 40);
  }, 240_000);
});
