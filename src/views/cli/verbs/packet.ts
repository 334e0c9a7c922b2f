import { readFileSync, rmSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { openStops } from '../../../inspection/index.ts';
import { cutAgain } from '../../../revision/index.ts';
import { nameOfPart, sayCutWarning } from '../../../says/index.ts';
import {
  createPacket,
  isLabelSheetId,
  LABEL_SHEET_IDS,
  LABEL_SHEETS,
  moneyText,
  NOT_RELEASED,
  PACKET_FORMAT,
  type Packet,
  type PacketFile,
  type PacketInput,
  releaseLines,
  zipFiles,
} from '../../../shop/index.ts';
import { BadInput, type Complaint } from '../bad-input.ts';
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

/** As they stand on the command line. */
export interface PacketOptions {
  readonly to: string;
  readonly labels?: string;
  readonly labelsFrom?: string;
}

const isZip = (to: string): boolean => to.toLowerCase().endsWith('.zip');

/** The labels that somebody has bought, and the first free one of a sheet that has been begun. */
const labelsFrom = ({ labels, labelsFrom: first }: PacketOptions): Pick<PacketInput, 'labelSheet' | 'firstLabel'> => {
  const complaints: Complaint[] = [];
  const complain = (at: string, says: string): void => {
    complaints.push({ file: null, at, says });
  };
  const sheet = labels !== undefined && isLabelSheetId(labels) ? labels : undefined;
  if (labels !== undefined && sheet === undefined) {
    const known = LABEL_SHEET_IDS.map((id) => `${id} (${LABEL_SHEETS[id].about})`).join('; ');
    complain('--labels', `expected a sheet of labels: ${known}; found '${labels}'`);
  }
  const most = sheet === undefined ? null : LABEL_SHEETS[sheet].columns * LABEL_SHEETS[sheet].rows;
  const number = first === undefined ? 1 : Number(first);
  if (!Number.isInteger(number) || number < 1 || (most !== null && number > most))
    complain('--labels-from', `expected the number of a label on its sheet, from 1; found '${first}'`);
  if (complaints.length > 0) throw new BadInput(complaints);
  return { ...(sheet === undefined ? {} : { labelSheet: sheet }), firstLabel: number };
};

/** Into a folder, where files of an earlier packet that are no longer in this one go; or as one archive. */
const write = (to: string, files: readonly PacketFile[]): void => {
  if (isZip(to)) {
    writeFiles(dirname(to), [{ path: basename(to), content: zipFiles(files) }]);
    return;
  }
  const earlier = earlierFiles(to);
  writeFiles(
    to,
    files.map((file) => ({ path: file.path, content: 'text' in file ? file.text : file.bytes })),
  );
  removeStale(to, earlier, files);
};

const sheetsJson = ({ layouts }: Packet): readonly unknown[] =>
  layouts.boards.flatMap(({ board, layout, proof }) =>
    layout.sheets.map(({ stock, offcut, length, width, price, parts }) => ({
      material: board.material,
      thickness: board.thickness,
      stock,
      offcut,
      length,
      width,
      price,
      parts: parts.length,
      proof,
    })),
  );

const priceJson = ({ price }: Packet): unknown => ({
  total: price.total,
  sigma: price.sigma,
  groups: price.groups,
  movers: price.movers,
});

/** `packet DESIGN --to DIR|FILE.zip`: everything for the saw. */
export const packet = async (path: string, options: PacketOptions): Promise<Outcome> => {
  const { to } = options;
  const labels = labelsFrom(options);
  if (!isZip(to)) expectFolder(to);
  const design = readDesignFile(path);
  const flow = await openFlow();
  const space = flow.space(design);
  const fitout = flow.fitOut(design);
  // The search for a way in takes minutes where there is none: it waits until everything fits where it stands.
  const atOnce = flow.inspection(design);
  const fits = !openStops(atOnce).some(({ rule }) => rule === 'body-in-space');
  const inspection = fits ? flow.wholeInspection(design) : atOnce;
  const again = cutAgain(design, flow.fitOut);
  const made = await createPacket({
    ...labels,
    design,
    fitout,
    inspection,
    carry: fits ? flow.carryIn(design) : null,
    catalog: flow.catalog,
    rules: flow.rules(design),
    space: space.ok ? space.value : null,
    cutAgain: again,
    toPdf: openPdfWriter(),
  });
  const warning = again ? sayCutWarning(again.letter, again.panels) : '';
  const { files, missing, price } = made;
  write(to, files);
  const stops = openStops(inspection).length;
  const held = releaseLines(design, inspection, nameOfPart(design, fitout));
  return {
    lines: [
      ...textTable(
        COLUMNS,
        files.map(({ path: name, about }) => [name, about]),
      ),
      '',
      `${files.length} files in ${to}; price ${moneyText(price.total)} ± ${moneyText(price.sigma)}`,
      ...(missing.length === 0 ? [] : ['Missing:', ...missing.map((line) => `  ${line}`)]),
      ...(warning === '' ? [] : [warning]),
      ...(held.length > 0 ? [NOT_RELEASED, ...held] : []),
      ...(stops > 0 ? [`${stops} stop${stops === 1 ? '' : 's'} not cleared: see inspection.txt before cutting`] : []),
    ],
    json: {
      files: files.map(({ path: name, kind, about }) => ({ path: name, kind, about })),
      parts: fitout.panels.length,
      sheets: sheetsJson(made),
      price: price.total,
      priceOf: priceJson(made),
      missing,
      held,
      stops,
    },
    exitCode: stops > 0 ? 1 : 0,
  };
};
