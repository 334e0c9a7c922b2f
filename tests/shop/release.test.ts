import { describe, expect, it } from 'vitest';
import type { Finding } from '../../src/inspection/index.ts';
import {
  booksOf,
  createDrawings,
  type Drawing,
  heldDrawings,
  NOT_RELEASED,
  papersOf,
  shopWork,
} from '../../src/shop/index.ts';
import { createPacket } from '../../src/shop/packet.ts';
import { drawingsToPdf } from '../../src/shop/paper/pdf.ts';
import { catalog, design, emptyInspection, rules, twoColumns } from './fixture.ts';
import { faces, pdfText } from './paper/poppler.ts';

const START: Finding = {
  rule: 'start-values',
  severity: 'stop',
  parts: [],
  value: 3,
  limit: 0,
  unit: 'count',
  uncertainty: 0,
  at: null,
  source: 'survey of the design',
  status: 'design',
  margin: null,
  facts: { openingOnly: 0 },
  waysOut: [],
  accepted: null,
};

const packetWith = (findings: readonly Finding[]) =>
  createPacket({
    design: design('Brook Hollow support car'),
    fitout: twoColumns(),
    catalog,
    rules,
    space: null,
    inspection: { ...emptyInspection, findings },
    toPdf: (pages, about) => drawingsToPdf(pages, about, faces),
  });

/** What is cut from: every page of these says when the packet is held back. */
const CUT_FROM = /^(?:drawings|layouts)\/|^(?:drawings|layouts|cut-list)\.pdf$/;

const wordsOf = (packet: Awaited<ReturnType<typeof packetWith>>) =>
  packet.files.flatMap((file) =>
    file.path.endsWith('.svg') && 'text' in file
      ? [{ path: file.path, words: file.text }]
      : file.path.endsWith('.pdf') && 'bytes' in file
        ? [{ path: file.path, words: pdfText(file.bytes) }]
        : [],
  );

describe('a packet that a survey holds back', () => {
  it('says so on its first page with the reason, and on every page that is cut from', async () => {
    const words = wordsOf(await packetWith([START]));
    const first = words.find(({ path }) => path === 'first-page.pdf')?.words.replace(/\s+/g, ' ');
    expect(first).toContain(NOT_RELEASED);
    expect(first).toContain('The survey holds start values of a vehicle class. Panels stand where they shape the room');
    const cutFrom = words.filter(({ path }) => CUT_FROM.test(path));
    expect(cutFrom.length).toBeGreaterThan(8);
    for (const { path, words: own } of cutFrom) {
      const pages = path.endsWith('.pdf') ? own.split('\f').filter((page) => page.trim() !== '') : [own];
      for (const page of pages) expect(page, path).toContain(NOT_RELEASED);
    }
  });

  it('says nothing of it once that is settled, or when a named person lets it stand', async () => {
    const accepted = { ...START, accepted: { who: 'R. Mapp', why: 'a test piece', on: '2031-05-02' } };
    for (const findings of [[], [accepted]])
      for (const { path, words } of wordsOf(await packetWith(findings)))
        expect(words, path).not.toContain(NOT_RELEASED);
  });

  it('says so on what is taken out of it singly too: papers, books and drawings', () => {
    const input = {
      design: design('Brook Hollow support car'),
      fitout: twoColumns(),
      catalog,
      rules,
      space: null,
      inspection: { ...emptyInspection, findings: [START] },
    };
    const work = shopWork(input, heldDrawings(createDrawings(input), input.inspection));
    const stamped = (page: Drawing): number =>
      page.shapes.filter((shape) => shape.kind === 'text' && shape.text.startsWith(NOT_RELEASED)).length;
    const papers = [...papersOf(work), ...booksOf(work)].filter(({ name }) =>
      ['cut-list', 'views', 'layouts', 'drawings'].includes(name),
    );
    expect(papers).toHaveLength(4);
    for (const { name, pages } of papers) {
      expect(pages().length, name).toBeGreaterThan(0);
      // Once a page, not twice.
      for (const page of pages()) expect(stamped(page), name).toBe(1);
    }
  });

  it('says so in every file for a router, on a layer of words and in a comment, and in the table of layers', async () => {
    const routers = (packet: Awaited<ReturnType<typeof packetWith>>) =>
      packet.files.flatMap((file) => (file.path.endsWith('.dxf') && 'text' in file ? [file.text] : []));
    const [held, free] = [routers(await packetWith([START])), routers(await packetWith([]))];
    expect(held.length).toBe(free.length);
    expect(held.length).toBeGreaterThan(3);
    for (const text of held) {
      expect(text.startsWith(`999\n${NOT_RELEASED}\n`)).toBe(true);
      expect(text).toContain('HELD-DO-NOT-CUT');
    }
    for (const text of free) expect(text).not.toMatch(/HELD|999\nNOT/);
    const table = (await packetWith([START])).files.find(({ path }) => path === 'router-layers.csv');
    expect(table && 'text' in table ? table.text : '').toMatch(/HELD-DO-NOT-CUT,.*NOT RELEASED FOR CUTTING.*A1/);
  });
});
