import { degrees, type LengthUnits } from '../../../../base/index.ts';
import type { Survey } from '../../../../design/index.ts';
import type { SurveyRead } from '../../../../envelope/index.ts';
import { sayAmount, sayExtraReading, saySlip } from '../../../../says/index.ts';
import type { ReadingRow } from './readings-rows.ts';

export interface SaidDoubt {
  /** The reading that the buttons are about. */
  readonly row: ReadingRow;
  readonly title: string;
  readonly detail: string;
  readonly kind: 'named' | 'doubt';
}

/** Half width at 95 % of a normal spread, in standard deviations. */
const SIGMAS = 2;

/** What the others make a reading is known to σ √((1 − r) / r); with several suspects that no longer holds. */
const spreadOf = ({ verdict }: SurveyRead, id: string): number | null => {
  const row = verdict?.adjustment.readings.find((one) => one.id === id);
  if (!row || verdict?.suspects.length !== 1 || row.redundancy <= 0 || row.w === 0) return null;
  return (SIGMAS * (row.residual / row.w) * Math.sqrt(1 - row.redundancy)) / row.redundancy;
};

const named = (rows: readonly ReadingRow[], read: SurveyRead, units: LengthUnits): SaidDoubt | null => {
  const { verdict } = read;
  const suspect = verdict?.suspects[0];
  const row = rows.find(({ reading }) => reading.id === suspect?.id);
  if (!verdict || !suspect || !row) return null;
  const said = (value: number): string =>
    row.angle ? sayAmount(degrees(value), 'deg', units) : sayAmount(value, 'mm', units);
  const spread = spreadOf(read, suspect.id);
  const others = verdict.adjustment.readings.length - verdict.suspects.length;
  const slip = saySlip(suspect.slip ?? '', units);
  return {
    row,
    kind: 'named',
    title: `Reading ${row.number}, ${row.words}, is likely misread.`,
    detail:
      `The other ${others} readings put it at ${said(suspect.others)}${spread === null ? '' : ` ± ${said(spread)}`}; ` +
      `you wrote ${said(suspect.read)}.${slip === '' ? '' : ` It may be ${slip}.`}`,
  };
};

const listed = (numbers: readonly number[]): string =>
  numbers.length < 2 ? numbers.join('') : `${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)}`;

const inDoubt = (rows: readonly ReadingRow[], { verdict }: SurveyRead, survey: Survey): SaidDoubt | null => {
  const doubtful = (verdict?.undecided ?? []).flatMap((id) => rows.find(({ reading }) => reading.id === id) ?? []);
  const [row] = doubtful;
  if (!row || !verdict) return null;
  const tell = verdict.wouldTell;
  return {
    row,
    kind: 'doubt',
    title: `One of readings ${listed(doubtful.map(({ number }) => number).toSorted((a, b) => a - b))} is wrong.`,
    detail: tell
      ? `The readings cannot tell which. To tell, ${sayExtraReading(survey, tell)}.`
      : 'The readings cannot tell which. Measure each of them again.',
  };
};

/** What to say of the readings that do not agree, the worst first; null while all agree. */
export const sayDoubt = (
  rows: readonly ReadingRow[],
  read: SurveyRead,
  survey: Survey,
  units: LengthUnits,
): SaidDoubt | null => named(rows, read, units) ?? inDoubt(rows, read, survey);
