import loadHighs from 'highs';
import { houseRules, standardCatalog } from '../../../catalog/index.ts';
import {
  createImprover,
  cutRows,
  cutSequences,
  highsSolver,
  type Layout,
  type LayoutJob,
  lengthFrom,
  proveTwoStage,
  recombine,
  type SheetSequence,
  sayLayout,
  trimAll,
} from '../../../shop/index.ts';
import { BadInput, type Complaint } from '../bad-input.ts';
import type { Outcome } from '../outcome.ts';
import { readLayoutLists } from '../read-layout-lists.ts';
import { textTable } from '../text-table.ts';

/** As they stand on the command line. */
export interface LayoutOptions {
  readonly stock: string;
  readonly cut?: string;
  readonly kerf?: string;
  readonly trim?: string;
  readonly seconds?: string;
  readonly stages?: string;
  readonly seed?: string;
}

const DEFAULT_SECONDS = 2;
const MOST_SECONDS = 3600;
/** Between two looks at the clock. */
const TURNS = 20;
const MS = 1000;
const MM = (mm: number): string => `${Number(mm.toFixed(1))}`;
const PERCENT = 100;

interface Settings {
  readonly cut: LayoutJob['cut'];
  readonly kerf: number;
  readonly trim: number;
  readonly seconds: number;
  readonly stages: LayoutJob['stages'];
  readonly seed: number;
}

const CUTS: readonly LayoutJob['cut'][] = ['saw', 'router', 'shear'];

const STAGES: ReadonlyMap<string, LayoutJob['stages']> = new Map<string, LayoutJob['stages']>([
  ['2', 2],
  ['3', 3],
  ['any', 'any'],
]);

/** Zero is a length here: a shear takes nothing away. */
const spare = (text: string): number | null => (/^0+(\.0+)?( *(mm|in))?$/.test(text) ? 0 : lengthFrom(text));

const inRange = (text: string, least: number, most: number, whole: boolean): number | null => {
  const value = text.trim() === '' ? Number.NaN : Number(text);
  return value >= least && value <= most && (!whole || Number.isInteger(value)) ? value : null;
};

/** Kerf, trim and rounds of cuts come from the house rules where the command line does not say. */
const settingsFrom = (options: LayoutOptions): Settings => {
  const rules = houseRules(standardCatalog(), []);
  const complaints: Complaint[] = [];
  const read = <T>(
    at: string,
    text: string | undefined,
    usual: T,
    as: (text: string) => T | null,
    expected: string,
  ): T => {
    if (text === undefined) return usual;
    const value = as(text);
    if (value !== null) return value;
    complaints.push({ file: null, at, says: `expected ${expected}, found '${text}'` });
    return usual;
  };
  const cut = read(
    '--cut',
    options.cut,
    'saw',
    (text) => CUTS.find((each) => each === text) ?? null,
    'saw, router or shear',
  );
  const settings: Settings = {
    cut,
    kerf: read(
      '--kerf',
      options.kerf,
      rules.value(cut === 'router' ? 'router-diameter' : 'saw-kerf'),
      spare,
      'a length of zero or more',
    ),
    trim: read('--trim', options.trim, rules.value('sheet-trim'), spare, 'a length of zero or more'),
    seconds: read(
      '--seconds',
      options.seconds,
      DEFAULT_SECONDS,
      (text) => inRange(text, 0, MOST_SECONDS, false),
      `seconds from 0 to ${MOST_SECONDS}`,
    ),
    stages: read(
      '--stages',
      options.stages,
      STAGES.get(String(rules.value('cut-stages-max'))) ?? 'any',
      (text) => STAGES.get(text) ?? null,
      '2, 3 or any',
    ),
    seed: read(
      '--seed',
      options.seed,
      1,
      (text) => inRange(text, 0, Number.MAX_SAFE_INTEGER, true),
      'a whole number of zero or more',
    ),
  };
  if (complaints.length > 0) throw new BadInput(complaints);
  return settings;
};

const jobOf = (options: LayoutOptions, partsPath: string, settings: Settings): LayoutJob => {
  const rules = houseRules(standardCatalog(), []);
  return {
    ...readLayoutLists(partsPath, options.stock),
    cut: settings.cut === 'saw' && settings.kerf === 0 ? 'shear' : settings.cut,
    kerf: settings.kerf,
    trim: trimAll(settings.trim),
    stages: settings.stages,
    keep: {
      minSide: rules.value('offcut-min-side'),
      minAreaMm2: rules.value('offcut-min-area'),
      valueShare: rules.value('offcut-value-share'),
    },
  };
};

/** Works until the time is up or nothing can get better; two stages are proved first, which also finds mixes of sheets. */
const solved = async (
  job: LayoutJob,
  { seconds, seed }: Settings,
): Promise<{ readonly layout: Layout; readonly seconds: number }> => {
  const began = performance.now();
  const spent = (): number => (performance.now() - began) / MS;
  const improver = createImprover(job, seed);
  improver.step(TURNS);
  if (improver.done()) return { layout: improver.best(), seconds: spent() };
  const solver = highsSolver(await loadHighs());
  if (job.stages === 2) proveTwoStage(improver, solver);
  while (!improver.done() && spent() < seconds) {
    improver.step(TURNS);
    recombine(improver, solver);
  }
  return { layout: improver.best(), seconds: spent() };
};

const COLUMNS = [
  { title: 'no.', align: 'right' },
  { title: 'cut', align: 'left' },
  { title: 'set to', align: 'left' },
  { title: 'gives', align: 'left' },
  { title: 'times', align: 'right' },
] as const;

const tableLines = (sequence: SheetSequence, place: number): readonly string[] =>
  textTable(
    COLUMNS,
    cutRows(sequence, place, 'mm').map((row) => [
      String(row.number),
      row.cut,
      row.setTo,
      row.gives,
      `× ${row.repeats}`,
    ]),
  );

const sheetLines = (layout: Layout, sequences: readonly SheetSequence[]): readonly string[] =>
  layout.sheets.flatMap((sheet, at) => {
    const sequence = sequences.find(({ sheets }) => sheets.includes(at));
    const material = sheet.material === '' ? '' : `, ${sheet.material}`;
    return [
      `sheet ${at + 1} of ${layout.sheets.length}: ${sheet.stock}${material}, ${MM(sheet.length)} × ${MM(sheet.width)} mm, ${sheet.parts.length} parts`,
      ...(sequence === undefined ? [] : tableLines(sequence, sequence.sheets.indexOf(at))),
      '',
    ];
  });

const sheetsJson = (layout: Layout, sequences: readonly SheetSequence[]): readonly unknown[] =>
  layout.sheets.map(({ stock, material, length, width, price, parts, offcuts }, at) => {
    const sequence = sequences.find(({ sheets }) => sheets.includes(at));
    const rows = sequence === undefined ? [] : cutRows(sequence, sequence.sheets.indexOf(at), 'mm');
    return {
      stock,
      material,
      length,
      width,
      price,
      parts: parts.map(({ mark, x, y, length: along, width: across, turned }) => ({
        mark,
        x,
        y,
        length: along,
        width: across,
        turned,
      })),
      offcuts,
      cuts: (sequence?.lines ?? []).map(({ number, stage, by, from, setting, cutLength, repeats }, i) => ({
        number,
        stage,
        by,
        from,
        setting,
        cutLength,
        repeats,
        gives: rows[i]?.gives ?? '',
      })),
    };
  });

/** `layout PARTS.csv --stock STOCK.csv`: sheet layouts with the sequence of cuts, for any parts list. */
export const layout = async (partsPath: string, options: LayoutOptions): Promise<Outcome> => {
  const settings = settingsFrom(options);
  const job = jobOf(options, partsPath, settings);
  const { layout: best, seconds } = await solved(job, settings);
  const sequences = cutSequences(job, best);
  return {
    lines: [
      ...sheetLines(best, sequences),
      `${best.sheets.length} sheets, ${MM(best.usedShare * PERCENT)} % used, price ${best.price.toFixed(2)}`,
      ...sayLayout(best, (mm) => `${MM(mm)} mm`),
    ],
    json: {
      sheets: sheetsJson(best, sequences),
      unplaced: best.unplaced,
      notes: best.notes,
      lowerBoundSheets: best.proof.lowerBoundSheets,
      proof: best.proof,
      usedShare: best.usedShare,
      price: best.price,
      seconds: Number(seconds.toFixed(3)),
    },
    exitCode: 0,
  };
};
