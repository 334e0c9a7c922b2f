import { degrees } from '../../../../base/index.ts';
import { type Reading, readsAngle, type Survey } from '../../../../design/index.ts';
import type { SurveyRead } from '../../../../envelope/index.ts';
import { sayReading } from '../../../../says/index.ts';

/** One reading as the table shows it. */
export interface ReadingRow {
  readonly reading: Reading;
  /** Its place in the list, from 1. */
  readonly number: number;
  readonly words: string;
  readonly angle: boolean;
  /** In the unit of the reading, or null while it takes no part: left out, or faulty. */
  readonly adjusted: number | null;
  /** Read less adjusted, in standard deviations of the reading; 0 while it takes no part. */
  readonly tolerances: number;
  readonly suspect: 'named' | 'doubt' | null;
  /** True when no other reading would show an error in it. */
  readonly alone: boolean;
}

/** The survey without the readings that are named, or null while none is: what the honest ones make of it. */
export const withoutSuspects = (survey: Survey, { verdict }: SurveyRead): Survey | null => {
  const named = new Set(verdict?.suspects.map(({ id }) => id));
  if (named.size === 0) return null;
  return { ...survey, readings: survey.readings.filter(({ id }) => !named.has(id)) };
};

/**
 * The readings of a survey with what the adjustment says of each, in the order of the list. A misread one draws all
 * others off: `calm`, the survey read without it, then gives the adjusted values.
 */
export const readingRows = (
  survey: Survey,
  { verdict }: SurveyRead,
  calm: SurveyRead | null = null,
): readonly ReadingRow[] => {
  const adjusted = new Map((calm?.verdict ?? verdict)?.adjustment.readings.map((row) => [row.id, row]));
  const named = new Map(verdict?.suspects.map((suspect) => [suspect.id, suspect]));
  const whole = new Map(verdict?.adjustment.readings.map((row) => [row.id, row]));
  const [doubt, alone] = [new Set(verdict?.undecided), new Set(verdict?.unchecked)];
  return survey.readings.map((reading, i) => {
    const angle = readsAngle(reading.kind);
    const suspect = named.get(reading.id);
    const row = adjusted.get(reading.id);
    // w = v / (σ √r): v / σ is how many tolerances of the reading it lies off; read less others is v / r.
    const off = whole.get(reading.id);
    const tolerances = suspect
      ? (off?.w ?? 0) / Math.sqrt(off?.redundancy || 1)
      : (row?.w ?? 0) * Math.sqrt(row?.redundancy ?? 0);
    const made = suspect ? suspect.others : row?.adjusted;
    return {
      reading,
      number: i + 1,
      words: sayReading(survey, reading),
      angle,
      adjusted: made === undefined ? null : angle ? degrees(made) : made,
      tolerances,
      suspect: named.has(reading.id) ? 'named' : doubt.has(reading.id) ? 'doubt' : null,
      alone: alone.has(reading.id),
    };
  });
};

/** The state of the readings in one line: `64 taken · 38 to spare · one likely misread`. */
export const readingsSummary = (rows: readonly ReadingRow[], { verdict }: SurveyRead): string => {
  const out = rows.filter(({ reading }) => reading.leftOut !== null).length;
  const state = !verdict
    ? null
    : verdict.suspects.length > 0
      ? `${verdict.suspects.length === 1 ? 'one' : verdict.suspects.length} likely misread`
      : verdict.undecided.length > 0
        ? `one of ${verdict.undecided.length} is wrong`
        : 'all agree';
  return [
    `${rows.length} taken`,
    ...(out > 0 ? [`${out} left out`] : []),
    ...(verdict ? [`${verdict.adjustment.redundancy} to spare`] : []),
    ...(state ? [state] : []),
  ].join(' · ');
};
