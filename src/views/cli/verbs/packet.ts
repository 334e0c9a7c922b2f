import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { openStops } from '../../../inspection/index.ts';
import { cutAgain } from '../../../revision/index.ts';
import { nameOfPart, sayCutWarning } from '../../../says/index.ts';
import { createPacket, NOT_RELEASED, PACKET_FORMAT, type PacketFile, releaseLines } from '../../../shop/index.ts';
import { openFlow } from '../open-flow.ts';
import { openPdfWriter } from '../open-pdf-writer.ts';
import type { Outcome } from '../outcome.ts';
import { readDesignFile } from '../read-design-file.ts';
import { textTable } from '../text-table.ts';
import { expectFolder, writeFiles } from '../write-files.ts';

const COLUMNS = [
  { title: 'file', align: 'left' },
  { title: 'about', align: 'left' },
] as const;

/** Paths as a packet makes them: one folder at most, no dots that lead out of it. */
const PACKET_PATH = /^(?:[a-z]+\/)?[A-Za-z0-9-]+\.[a-z]+$/;

/** Files that an earlier packet in this folder lists. An old drawing left lying would be cut from. */
const earlierFiles = (folder: string): readonly string[] => {
  try {
    const manifest: unknown = JSON.parse(readFileSync(join(folder, 'manifest.json'), 'utf8'));
    if (typeof manifest !== 'object' || manifest === null || !('format' in manifest) || !('files' in manifest))
      return [];
    if (manifest.format !== PACKET_FORMAT || !Array.isArray(manifest.files)) return [];
    return manifest.files.flatMap((file: unknown) =>
      typeof file === 'object' && file !== null && 'path' in file && typeof file.path === 'string' ? [file.path] : [],
    );
  } catch {
    return [];
  }
};

const removeStale = (folder: string, earlier: readonly string[], now: readonly PacketFile[]): void => {
  const kept = new Set(now.map(({ path }) => path));
  for (const path of earlier)
    if (PACKET_PATH.test(path) && !kept.has(path)) rmSync(join(folder, path), { force: true });
};

/** `packet DESIGN --to DIR`: everything for the saw. Files of an earlier packet there that are no longer in it go. */
export const packet = async (path: string, folder: string): Promise<Outcome> => {
  expectFolder(folder);
  const design = readDesignFile(path);
  const flow = await openFlow();
  const space = flow.space(design);
  const fitout = flow.fitOut(design);
  const inspection = flow.inspection(design);
  const again = cutAgain(design, flow.fitOut);
  const { files, layouts } = createPacket({
    design,
    fitout,
    inspection,
    catalog: flow.catalog,
    rules: flow.rules(design),
    space: space.ok ? space.value : null,
    cutAgain: again,
    toPdf: openPdfWriter(),
  });
  const warning = again ? sayCutWarning(again.letter, again.panels) : '';
  const earlier = earlierFiles(folder);
  writeFiles(
    folder,
    files.map((file) => ({ path: file.path, content: 'text' in file ? file.text : file.bytes })),
  );
  removeStale(folder, earlier, files);
  const stops = openStops(inspection).length;
  const held = releaseLines(design, inspection, nameOfPart(design, fitout));
  return {
    lines: [
      ...textTable(
        COLUMNS,
        files.map(({ path: name, about }) => [name, about]),
      ),
      '',
      `${files.length} files in ${folder}`,
      ...(warning === '' ? [] : [warning]),
      ...(held.length > 0 ? [NOT_RELEASED, ...held] : []),
      ...(stops > 0 ? [`${stops} stop${stops === 1 ? '' : 's'} not cleared: see inspection.txt before cutting`] : []),
    ],
    json: {
      files: files.map(({ path: name, kind, about }) => ({ path: name, kind, about })),
      parts: fitout.panels.length,
      sheets: layouts.boards.flatMap(({ board, layout, proof }) =>
        layout.sheets.map(({ stock, length, width, price, parts }) => ({
          material: board.material,
          thickness: board.thickness,
          stock,
          length,
          width,
          price,
          parts: parts.length,
          proof,
        })),
      ),
      price: null,
      held,
      stops,
    },
    exitCode: stops > 0 ? 1 : 0,
  };
};
