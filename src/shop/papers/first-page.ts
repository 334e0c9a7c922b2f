import { openStops } from '../../inspection/index.ts';
import { CAUTIONS, sayCutWarning } from '../../says/index.ts';
import type { Drawing } from '../drawing/drawing.ts';
import type { PacketFile } from '../packet-file.ts';
import { type PaperCell, type PaperPiece, paperPages } from '../paper/index.ts';
import { NOT_RELEASED, releaseLines } from '../release.ts';
import { sheetsText } from '../stock-words.ts';
import { namesOf, type PapersInput, paperHead, SCREENING } from './paper.ts';
import { moneyText } from './price-paper.ts';

/** Files of one folder in one line: `drawings/`, 36 files. */
const fileRows = (files: readonly PacketFile[]): readonly (readonly PaperCell[])[] => {
  const folders = new Map<string, PacketFile[]>();
  for (const file of files) {
    const [folder] = file.path.includes('/') ? file.path.split('/') : [file.path];
    const key = folder ?? file.path;
    folders.set(key, [...(folders.get(key) ?? []), file]);
  }
  return [...folders].map(([name, own]) => {
    const [first] = own;
    const alone = first !== undefined && first.path === name;
    return [
      alone ? name : `${name}/`,
      alone ? first.about : (FOLDERS[name] ?? ''),
      String(own.length),
      { tick: true } as const,
    ];
  });
};

const FOLDERS: Readonly<Record<string, string>> = {
  views: 'the cabinet from all sides',
  layouts: 'every sheet with its cuts in order',
  drawings: 'every part with its dimensions and work',
  router: 'every part for router, laser or shear',
  template: 'what is drilled in the vehicle and in braces',
};

/** Two beside each other, so that they stay on the first page. */
const cautions = (): PaperPiece => {
  const half = Math.ceil(CAUTIONS.length / 2);
  const cell = (i: number): string => {
    const caution = CAUTIONS[i];
    return caution === undefined ? '' : `${i + 1}. ${caution.short}`;
  };
  return {
    kind: 'table',
    columns: [
      { title: 'Each is written out on the inspection sheet.', share: 50 },
      { title: '', share: 50 },
    ],
    rows: Array.from({ length: half }, (_, i) => [cell(i), cell(half + i)]),
  };
};

const MOST_MISSING = 60;

const words = (text: string, strong = false): PaperPiece => ({ kind: 'words', words: text, strong });

/** What is in the packet, what is not and why, and what must be known before anybody cuts. */
export const firstPage = (
  input: PapersInput,
  files: readonly PacketFile[],
  missing: readonly string[],
): readonly Drawing[] => {
  const { design, fitout, inspection, drawings, layouts, hardware, price, cutAgain } = input;
  const held = releaseLines(design, inspection, namesOf(input));
  const stops = openStops(inspection).length;
  const warning = cutAgain ? sayCutWarning(cutAgain.letter, cutAgain.panels) : '';
  const more = missing.length - MOST_MISSING;
  const count = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;
  return paperPages(paperHead(design, 'Packet for the shop', SCREENING), [
    ...(held.length === 0 ? [] : [words(NOT_RELEASED, true), ...held.map((line) => words(line))]),
    ...(stops === 0
      ? []
      : [
          words(
            `${count(stops, 'stop')} ${stops === 1 ? 'stands' : 'stand'} against this design: see the inspection sheet before cutting.`,
            true,
          ),
        ]),
    ...(warning === '' ? [] : [words(warning, true)]),
    { kind: 'heading', words: missing.length === 0 ? 'Nothing is missing' : 'What is missing' },
    ...missing.slice(0, MOST_MISSING).map((line) => words(`– ${line}`)),
    ...(more > 0 ? [words(`– and ${more} more: see manifest.json.`)] : []),
    { kind: 'heading', words: 'What is in it' },
    words(
      `${count(fitout.panels.length, 'part')} of ${count(drawings.rows.length, 'mark')} from ${sheetsText(layouts)}; ${count(hardware.length, 'line')} of hardware; price ${moneyText(price.total)}. One mark for a part everywhere: on its label, in the cut list, on the sheet it is cut from, on its drawing and in its router file.`,
    ),
    {
      kind: 'table',
      columns: [
        { title: 'file', share: 28 },
        { title: 'what it is', share: 56 },
        { title: 'files', share: 7, align: 'right' },
        { title: 'seen', share: 6 },
      ],
      rows: fileRows(files),
    },
    { kind: 'heading', words: 'Cautions' },
    cautions(),
  ]);
};
