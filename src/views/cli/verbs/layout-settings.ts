import { houseRules, standardCatalog } from '../../../catalog/index.ts';
import { type LayoutJob, lengthFrom, trimAll } from '../../../shop/index.ts';
import { BadInput, type Complaint } from '../bad-input.ts';

/** As they stand on the command line. */
export interface LayoutOptions {
  readonly stock?: string;
  readonly cut?: string;
  readonly kerf?: string;
  readonly trim?: string;
  readonly seconds?: string;
  readonly stages?: string;
  readonly seed?: string;
}

const DEFAULT_SECONDS = 2;
const MOST_SECONDS = 3600;

/** What the command line says; whatever it leaves out is for the house rules to say. */
export interface GivenSettings {
  readonly cut?: LayoutJob['cut'];
  readonly kerf?: number;
  readonly trim?: number;
  readonly stages?: LayoutJob['stages'];
  readonly seconds: number;
  readonly seed: number;
}

const CUTS: readonly LayoutJob['cut'][] = ['saw', 'router', 'shear'];

/** Rounds of cuts as they are typed. */
export const STAGES: ReadonlyMap<string, LayoutJob['stages']> = new Map<string, LayoutJob['stages']>([
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

/** Reads the options. Throws BadInput with every one that cannot be read. */
export const settingsFrom = (options: LayoutOptions): GivenSettings => {
  const complaints: Complaint[] = [];
  const read = <T>(
    at: string,
    text: string | undefined,
    as: (text: string) => T | null,
    expected: string,
  ): T | null => {
    if (text === undefined) return null;
    const value = as(text);
    if (value === null) complaints.push({ file: null, at, says: `expected ${expected}, found '${text}'` });
    return value;
  };
  const cut = read('--cut', options.cut, (text) => CUTS.find((each) => each === text) ?? null, 'saw, router or shear');
  const kerf = read('--kerf', options.kerf, spare, 'a length of zero or more');
  const trim = read('--trim', options.trim, spare, 'a length of zero or more');
  const seconds = read(
    '--seconds',
    options.seconds,
    (text) => inRange(text, 0, MOST_SECONDS, false),
    `seconds from 0 to ${MOST_SECONDS}`,
  );
  const stages = read('--stages', options.stages, (text) => STAGES.get(text) ?? null, '2, 3 or any');
  const seed = read(
    '--seed',
    options.seed,
    (text) => inRange(text, 0, Number.MAX_SAFE_INTEGER, true),
    'a whole number of zero or more',
  );
  if (complaints.length > 0) throw new BadInput(complaints);
  return {
    ...(cut === null ? {} : { cut }),
    ...(kerf === null ? {} : { kerf }),
    ...(trim === null ? {} : { trim }),
    ...(stages === null ? {} : { stages }),
    seconds: seconds ?? DEFAULT_SECONDS,
    seed: seed ?? 1,
  };
};

/** The job with what the command line says in place of its own settings. A saw without a kerf is a shear. */
export const jobWith = (job: LayoutJob, { cut = job.cut, kerf, trim, stages }: GivenSettings): LayoutJob => {
  const routed = cut === 'router' && job.cut !== 'router';
  const usual = routed ? houseRules(standardCatalog(), []).value('router-diameter') : job.kerf;
  const width = kerf ?? usual;
  return {
    ...job,
    cut: cut === 'saw' && width === 0 ? 'shear' : cut,
    kerf: width,
    ...(trim === undefined ? {} : { trim: trimAll(trim) }),
    ...(stages === undefined ? {} : { stages }),
  };
};
