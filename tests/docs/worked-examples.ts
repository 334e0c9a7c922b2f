import { cellOf, type WorkedExample } from '../inspection/worked/example.ts';

const IDS = /^\| ((?:`[a-z-]+`(?:, )?)+) \|/;

/** The ids of the rules that a row of a table of checks is about; none for any other line. */
export const rulesOf = (line: string): readonly string[] =>
  (IDS.exec(line)?.[1] ?? '').split(', ').flatMap((id) => (id === '' ? [] : [id.replaceAll('`', '')]));

/** docs/checks.md with, in the last cell of each row of its tables, the worked examples of the rules of the row. */
export const withExamples = (page: string, examples: readonly WorkedExample[]): string =>
  page
    .split('\n')
    .map((line) => {
      const ids = rulesOf(line);
      const own = examples.filter(({ rule }) => ids.includes(rule));
      if (own.length === 0) return line;
      const cells = line.split(' | ').slice(0, -1);
      return `${[...cells, own.map(cellOf).join('; ')].join(' | ')} |`;
    })
    .join('\n');
