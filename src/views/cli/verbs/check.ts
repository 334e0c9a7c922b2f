import type { BadInput } from '../bad-input.ts';
import type { Outcome } from '../outcome.ts';
import { readDesignFile } from '../read-design-file.ts';

const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

/** `check DESIGN`: is the file sound? Its schema and its references only; what is wrong with the cabinet is not asked. */
export const check = (path: string): Outcome => {
  const design = readDesignFile(path);
  const { carcasses } = design.cabinet;
  const counts = [
    counted(carcasses.length, 'carcass', 'carcasses'),
    counted(design.gear.length, 'item of gear', 'items of gear'),
    counted(design.survey.stations.length, 'station', 'stations'),
  ].join(', ');
  return { lines: [`${path}: sound`, `${design.title}: ${counts}`], json: { problems: [] }, exitCode: 0 };
};

/** What `--json` prints of any bad input: the same list that `check` gives. */
export const problemsJson = ({ complaints }: BadInput): unknown => ({
  problems: complaints.map(({ at, says }) => ({ at, says })),
});
