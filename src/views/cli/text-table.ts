/** One column of a table for people: its title and which side its words keep to. */
export interface TextColumn {
  readonly title: string;
  readonly align: 'left' | 'right';
}

/** Characters as a terminal counts them. */
const widthOf = (words: string): number => Array.from(words).length;

const padded = (words: string, width: number, align: TextColumn['align']): string => {
  const blanks = ' '.repeat(Math.max(0, width - widthOf(words)));
  return align === 'left' ? words + blanks : blanks + words;
};

/** Rows under their titles in straight columns, two blanks apart, without blanks at the ends of lines. */
export const textTable = (columns: readonly TextColumn[], rows: readonly (readonly string[])[]): readonly string[] => {
  const lines = [columns.map(({ title }) => title), ...rows];
  const widths = columns.map((_, i) => Math.max(...lines.map((cells) => widthOf(cells[i] ?? ''))));
  return lines.map((cells) =>
    columns
      .map(({ align }, i) => padded(cells[i] ?? '', widths[i] ?? 0, align))
      .join('  ')
      .trimEnd(),
  );
};
