import { beforeAll, describe, expect, it } from 'vitest';
import { loadSolids } from '../../../src/bodies/index.ts';
import { standardCatalog } from '../../../src/catalog/index.ts';
import { changeDocument } from '../../../src/design/index.ts';
import { createFlow, type Flow } from '../../../src/flow.ts';
import { createPacket } from '../../../src/shop/packet.ts';
import { drawingsToPdf } from '../../../src/shop/paper/pdf.ts';
import { demoDesign } from '../../golden/flow.ts';
import { faces, pdfFonts, pdfWords } from './poppler.ts';
import { textFaults } from './text-boxes.ts';

let flow: Flow;

beforeAll(async () => {
  flow = createFlow({ catalog: standardCatalog(), solids: await loadSolids() });
}, 60_000);

/** Every printed file of the packet of a demo design, by its path. Millimetres come on A4 and A3, inches on letter and tabloid. */
const printed = async (name: string, units: 'in' | 'mm'): Promise<ReadonlyMap<string, Uint8Array>> => {
  const design = changeDocument(demoDesign(name), { units });
  const space = flow.space(design);
  const packet = await createPacket({
    design,
    fitout: flow.fitOut(design),
    catalog: flow.catalog,
    rules: flow.rules(design),
    space: space.ok ? space.value : null,
    inspection: flow.inspection(design),
    toPdf: (pages, about) => drawingsToPdf(pages, about, faces),
  });
  return new Map(
    packet.files.flatMap((file) => ('bytes' in file && file.path.endsWith('.pdf') ? [[file.path, file.bytes]] : [])),
  );
};

const PACKETS = ['quillmoor', 'harrow-fell', 'ostrel-moor', 'skerrow-gap'].flatMap((name) =>
  (['mm', 'in'] as const).map((units) => [name, units] as const),
);

describe('every page of every packet', () => {
  it.each(PACKETS)(
    'of %s in %s has words, all inside the page, none on others, in faces that come with it',
    async (name, units) => {
      const files = await printed(name, units);
      expect(files.size).toBeGreaterThan(15);
      const faults: string[] = [];
      for (const [path, bytes] of files) {
        const pages = pdfWords(bytes);
        expect(pages.length).toBeGreaterThan(0);
        pages.forEach((page, i) => {
          const where = `${path} page ${i + 1}`;
          if (page.words.length === 0) faults.push(`${where} is empty`);
          faults.push(...textFaults(page).map((fault) => `${where}: ${fault}`));
        });
        // Columns of pdffonts from the right: object, its generation, unicode, subset, embedded.
        for (const line of pdfFonts(bytes)) expect(line.trim().split(/\s+/).at(-5)).toBe('yes');
      }
      expect(faults).toEqual([]);
    },
    120_000,
  );
});

describe('faults of words on a page', () => {
  const page = (words: readonly (readonly [string, number, number])[]) => {
    const shapes = words.map(([each, x, y]) => ({
      kind: 'text' as const,
      layer: 'text' as const,
      at: [x, y] as const,
      text: each,
      height: 3,
      align: 'left' as const,
      turnRad: 0,
      strong: false,
      within: null,
    }));
    const [first] = pdfWords(
      drawingsToPdf([{ title: 't', size: [100, 100], scale: 1, shapes }], { title: 't', subject: '' }, faces),
    );
    if (!first) throw new Error('no page');
    return textFaults(first);
  };

  it('are seen where one word stands on another or runs over the edge, and not where lines stand close', () => {
    expect(
      page([
        ['drawer', 10, 50],
        ['locker', 11, 51],
      ]),
    ).toHaveLength(1);
    expect(page([['drawer', 96, 50]])).toHaveLength(1);
    // Capitals of 3 mm at 4 mm from line to line.
    expect(
      page([
        ['DRAWER', 10, 50],
        ['LOCKER', 10, 46],
      ]),
    ).toEqual([]);
  });
});
