import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FitOut } from '../../src/fitout/index.ts';
import type { Finding, Inspection } from '../../src/inspection/index.ts';
import { createPacket, type Packet } from '../../src/shop/packet.ts';
import type { PacketFile } from '../../src/shop/packet-file.ts';
import { catalog, design, emptyFitOut, emptyInspection, fitOutOf, panel, rules, twoColumns } from './fixture.ts';
import { anyFitOut } from './random-fit-out.ts';

const packetOf = (
  fitout: FitOut,
  inspection: Inspection = emptyInspection,
  title = 'Brook Hollow support car',
): Promise<Packet> => createPacket({ design: design(title), fitout, catalog, rules, space: null, inspection });
const textOf = (packet: Packet, path: string): string => {
  const file = packet.files.find((each) => each.path === path);
  if (!file || !('text' in file)) throw new Error(`no text file ${path}`);
  return file.text;
};
const byKind = (packet: Packet, kind: PacketFile['kind']): readonly string[] =>
  packet.files.filter((file) => file.kind === kind).map(({ path }) => path);

const finding: Finding = {
  rule: 'body-in-space',
  severity: 'stop',
  parts: ['side-left'],
  value: 2.5,
  limit: 6,
  unit: 'mm',
  uncertainty: 3,
  at: null,
  source: 'shop judgement',
  status: 'shop habit',
  margin: 'gap',
  facts: {},
  waysOut: [],
  accepted: { who: 'R. Mapp', why: 'trim is cut back there', on: '2031-05-02' },
};

describe('packet', () => {
  it('holds lists, views, one drawing a part, the inspection sheet and a manifest', async () => {
    const packet = await packetOf(twoColumns());
    expect(byKind(packet, 'list')).toEqual([
      'cut-list.csv',
      'hardware.csv',
      'cut-sequence.csv',
      'stock-left.csv',
      'router-layers.csv',
      'masses.csv',
      'price.csv',
      'lists.xlsx',
    ]);
    expect(byKind(packet, 'view')).toEqual([
      'views/face-carcass-1.svg',
      'views/plan.svg',
      'views/side.svg',
      'views/exploded-carcass-1.svg',
      'views/assembly-carcass-1.svg',
    ]);
    expect(byKind(packet, 'part-drawing')).toEqual(
      ['A1', 'A2', 'A3', 'A4', 'A5', 'A6'].map((m) => `drawings/${m}.svg`),
    );
    expect(byKind(packet, 'router')).toEqual(['A1', 'A2', 'A3', 'A4', 'A5', 'A6'].map((m) => `router/${m}.dxf`));
    // Six parts of ply 18 have 3.0 m² in all, the one of ply 6 has 0.6 m²; a sheet has 2.98 m², so 2 and 1 sheets.
    expect(byKind(packet, 'layout')).toEqual(['layouts/ply-18-1.svg', 'layouts/ply-18-2.svg', 'layouts/ply-6-1.svg']);
    expect(byKind(packet, 'sheet')).toEqual(['inspection.txt']);
    expect(byKind(packet, 'contents')).toEqual(['design.json', 'manifest.json']);
  });

  it('lists in its manifest every other file and the counts of the cut list', async () => {
    const packet = await packetOf(twoColumns());
    const manifest = JSON.parse(textOf(packet, 'manifest.json'));
    expect(manifest.files.map(({ path }: { path: string }) => path)).toEqual(
      packet.files.slice(0, -1).map(({ path }) => path),
    );
    expect(manifest).toMatchObject({ format: 'hatchwright-packet', version: 1, parts: 7, marks: 6, units: 'mm' });
  });

  it('brings three books to print where it is given a writer, a page for each sheet', async () => {
    const pagesOf = new Map<string, number>();
    const { files } = await createPacket({
      design: design(),
      fitout: twoColumns(),
      catalog,
      rules,
      space: null,
      inspection: emptyInspection,
      toPdf: (pages, { title }) => {
        pagesOf.set(title, pages.length);
        return new Uint8Array([pages.length]);
      },
    });
    // Face, plan, side, drawn apart, put together; three sheets of ply, and one page for each of the files of part drawings.
    expect(
      ['all views to print', 'all sheets with their cuts to print', 'all part drawings to print'].map((book) =>
        pagesOf.get(book),
      ),
    ).toEqual([5, 3, files.filter(({ kind }) => kind === 'part-drawing').length]);
    expect(files.flatMap(({ kind, path }) => (kind === 'book' ? [path] : []))).toEqual([
      'views.pdf',
      'layouts.pdf',
      'drawings.pdf',
    ]);
  });

  it('can be made of an empty cabinet', async () => {
    const packet = await packetOf(emptyFitOut);
    expect(byKind(packet, 'part-drawing')).toEqual([]);
    expect(byKind(packet, 'view')).toEqual(['views/plan.svg', 'views/side.svg']);
  });

  it('puts a finding on the sheet with value, limit, source, mark, and who lets it stand', async () => {
    const sheet = textOf(await packetOf(twoColumns(), { ...emptyInspection, findings: [finding] }), 'inspection.txt');
    expect(sheet).toContain('1 stop, 0 cautions, 0 notes; 1 of them accepted.');
    for (const words of [
      'STOP',
      '2.5 mm ± 3 mm',
      'limit 6 mm',
      'shop judgement',
      'marks: A1',
      'accepted by R. Mapp',
      'trim is cut back',
    ])
      expect(sheet.replace(/\s+/g, ' ')).toContain(words);
    expect(sheet).toContain('Cautions');
    for (const line of sheet.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
  });

  it('is safe whatever people write', async () => {
    const packet = await packetOf(
      fitOutOf([panel('p', { name: '<script>=1</script>' })]),
      emptyInspection,
      '"><svg onload=x>',
    );
    for (const file of packet.files) {
      expect(file.path).toMatch(/^[a-zA-Z0-9.-]+(\/[a-zA-Z0-9.-]+)?$/);
      if (file.path.endsWith('.svg')) expect('text' in file ? file.text : '').not.toMatch(/<script|<svg onload/);
    }
  });
});

describe('laws of the packet', () => {
  it('every panel is drawn, every path is new, and the same design gives the same bytes', async () => {
    await fc.assert(
      fc.asyncProperty(anyFitOut, async (fitout) => {
        const packet = await packetOf(fitout);
        expect(await packetOf(structuredClone(fitout))).toEqual(packet);
        const paths = packet.files.map(({ path }) => path);
        expect(new Set(paths).size).toBe(paths.length);
        const manifest = JSON.parse(textOf(packet, 'manifest.json'));
        expect(manifest.parts).toBe(fitout.panels.length);
        const first = paths.filter((path) => path.startsWith('drawings/') && !path.includes('-'));
        expect(first).toHaveLength(manifest.marks);
      }),
      { seed: 662_607, numRuns: 12 },
    );
  });
});
