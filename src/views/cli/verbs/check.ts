import { standardCatalog } from '../../../catalog/index.ts';
import { stockProblems } from '../../../design/index.ts';
import { sayProblem } from '../../../says/index.ts';
import { BadInput } from '../bad-input.ts';
import type { Outcome } from '../outcome.ts';
import { readDesignFile } from '../read-design-file.ts';

const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

/** `check DESIGN`: is the file sound? Its schema, its references and the materials of its stock; what is wrong with the cabinet is not asked. */
export const check = (path: string): Outcome => {
  const design = readDesignFile(path);
  // A row of stock of an unknown material would serve nothing and never be missed in the cabinet.
  const problems = stockProblems(design.stock, standardCatalog());
  if (problems.length > 0)
    throw new BadInput(
      problems.map((problem) => ({ file: path, at: problem.at, says: sayProblem({ ...problem, at: '' }) })),
    );
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
