import { readFileSync, writeFileSync } from 'node:fs';
import { afterAll, describe, expect, it, vi } from 'vitest';
import { type Design, printDesign } from '../../../src/design/index.ts';
import { NOT_RELEASED } from '../../../src/shop/index.ts';
import { pdfText } from '../../shop/paper/poppler.ts';
import { demo, inProcess, PATIENCE_MS, scratch } from './command.ts';

const { at, sweep } = scratch();
vi.setConfig({ testTimeout: PATIENCE_MS });
afterAll(sweep);

/** One empty carcass of a demo job, changed, with its house rules and its survey changed. */
const written = (
  name: string,
  changes: Partial<Design>,
  more: Partial<Design['cabinet']['carcasses'][number]> = {},
): string => {
  const design = demo('quillmoor');
  const carcasses = design.cabinet.carcasses
    .slice(0, 1)
    .map((carcass) => ({ ...carcass, ...more, opening: { ...carcass.opening, content: { kind: 'empty' as const } } }));
  const path = at(`${name}.json`);
  writeFileSync(path, printDesign({ ...design, cabinet: { carcasses, braces: [] }, gear: [], mounts: [], ...changes }));
  return path;
};

const firstPage = (folder: string): string => pdfText(readFileSync(at(folder, 'first-page.pdf'))).replace(/\s+/g, ' ');

describe('packet of a design that asks for what there is not', () => {
  it('comes whole but for a material that nobody has, which its first page and the terminal name', async () => {
    const { complaints, out } = await inProcess([
      'packet',
      written('odd', {}, { material: 'no-such-board' }),
      '--to',
      at('odd'),
    ]);
    expect(complaints).toBe('');
    for (const text of [out.replace(/\s+/g, ' '), firstPage('odd')]) {
      expect(text).toContain('no-such-board: 2 of A1 (536 mm × 980 mm) are missing: no sheet of no-such-board');
      // Sides, top and bottom: four parts of three marks. The back is of another board.
      expect(text).toContain('A2, A3, A1: material is not in the catalog.');
      expect(text).toContain('4 parts lie on no sheet: their material is not in the price.');
    }
    const manifest = JSON.parse(readFileSync(at('odd', 'manifest.json'), 'utf8'));
    expect(manifest).toMatchObject({ parts: 5, marks: 4 });
    expect(manifest.files.filter(({ kind }: { kind: string }) => kind === 'router')).toHaveLength(4 + 1);
  });

  it('names what no sheet holds, and what fits one only across its grain, of a cabinet larger than the vehicle', async () => {
    const size = { width: 4000, height: 536, depth: 1600 };
    const { complaints } = await inProcess(['packet', written('vast', {}, { size }), '--to', at('vast')]);
    expect(complaints).toBe('');
    const text = firstPage('vast');
    // Every folder says what it is for.
    expect(text).toContain('template/ what is drilled in the vehicle and in braces 1');
    // 4000 − 2 · (14.9 − 5) in dados of a board measured at 14.9, and a side of 536 along its grain.
    expect(text).toMatch(
      /1 of A2 \(3980\.2 mm × 1600 mm\) is missing: it is larger than every sheet; the largest offers/,
    );
    expect(text).toMatch(/2 of A1 \(536 mm × 1600 mm\) are missing: it fits only turned, and its grain forbids that/);
    expect(text).toContain('it does not fit where it stands, so that no way was searched for');
    const paths = readFileSync(at('vast', 'manifest.json'), 'utf8');
    for (const path of ['drawings/A1.svg', 'router/A2.dxf', 'cut-list.pdf', 'labels.pdf'])
      expect(paths).toContain(path);
  });

  it('comes whole with a kerf below zero, and says that the sheets have none', async () => {
    const houseRules = [{ rule: 'saw-kerf', value: -3, who: 'R. Mapp', why: 'a slip of the pen' }];
    const { complaints } = await inProcess(['packet', written('kerf', { houseRules }), '--to', at('kerf')]);
    expect(complaints).toBe('');
    expect(firstPage('kerf')).toContain('The setting kerf is not a length of zero or more and was not used.');
    expect(firstPage('kerf')).toContain('The sheets are laid out without a kerf: parts may come out short.');
  });
});

describe('one drawing of a design that the survey holds back', () => {
  const held = (): string => {
    const { survey } = demo('quillmoor');
    return written('held', { survey: { ...survey, startValues: true } });
  };
  const drawn = async (design: string, view: string, file: string) => {
    const { code, out, complaints } = await inProcess(['draw', design, '--view', view, '--to', at(file), '--json']);
    expect({ code, complaints }).toEqual({ code: 0, complaints: '' });
    return JSON.parse(out);
  };

  it('says so on every sheet, in every format, and to whoever asked for it', async () => {
    const design = held();
    const { files, held: why } = await drawn(design, 'A1', 'a1.svg');
    expect(why[0]).toContain('The survey holds start values');
    for (const { path } of files) expect(readFileSync(at(path), 'utf8')).toContain(NOT_RELEASED);
    await drawn(design, 'face-carcass-1', 'face.pdf');
    expect(pdfText(readFileSync(at('face.pdf')))).toContain(NOT_RELEASED);
    for (const view of ['A1', 'template-carcass-1']) {
      await drawn(design, view, 'one.dxf');
      const text = readFileSync(at('one.dxf'), 'utf8');
      expect(text.startsWith(`999\n${NOT_RELEASED}\n`)).toBe(true);
      expect(text).toContain('HELD-DO-NOT-CUT');
    }
    const { out } = await inProcess(['draw', design, '--view', 'A1', '--to', at('a1.svg')]);
    expect(out).toContain(NOT_RELEASED);
  });

  it('says nothing of it where nothing is held back', async () => {
    const design = written('free', {});
    expect((await drawn(design, 'A1', 'free.svg')).held).toEqual([]);
    expect(readFileSync(at('free.svg'), 'utf8')).not.toContain(NOT_RELEASED);
    await drawn(design, 'A1', 'free.dxf');
    expect(readFileSync(at('free.dxf'), 'utf8')).not.toMatch(/HELD|999\nNOT/);
  });

  it('is no file for a machine where no machine follows it', async () => {
    const { code, complaints } = await inProcess(['draw', written('v', {}), '--view', 'plan', '--to', at('plan.dxf')]);
    expect(code).toBe(2);
    expect(complaints).toContain('a .dxf is written of a part or of an anchor template');
  });
});
