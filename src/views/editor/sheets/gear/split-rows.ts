const SEPARATORS = ['\t', ';', ','] as const;

/** What parts the cells: a tab where there is one (a spreadsheet's own copy), else what the first line has more of. */
const separatorOf = (text: string): string => {
  if (text.includes('\t')) return '\t';
  const first = text.split('\n').find((line) => line.trim() !== '') ?? '';
  const count = (separator: string): number => first.split(separator).length;
  return SEPARATORS.reduce((best, next) => (count(next) > count(best) ? next : best), ',');
};

/** A cell in quotes may hold the separator, line ends and doubled quotes; an inch mark elsewhere is only a character. */
const readCell = (text: string, start: number, separator: string): { readonly cell: string; readonly end: number } => {
  let at = start;
  while (text[at] === ' ') at++;
  if (text[at] === '"') {
    let cell = '';
    for (let i = at + 1; i < text.length; i++) {
      if (text[i] !== '"') cell += text[i];
      else if (text[i + 1] === '"') {
        cell += '"';
        i++;
      } else {
        const rest = /^[ ]*/.exec(text.slice(i + 1))?.[0].length ?? 0;
        const after = text[i + 1 + rest];
        if (after === undefined || after === separator || after === '\n') return { cell, end: i + 1 + rest };
        break;
      }
    }
  }
  let end = start;
  while (end < text.length && text[end] !== separator && text[end] !== '\n') end++;
  return { cell: text.slice(start, end), end };
};

/** Pasted text as rows of trimmed cells; empty lines are left out but counted. */
export const splitRows = (pasted: string): readonly { readonly line: number; readonly cells: readonly string[] }[] => {
  const text = pasted.replace(/\r\n?/g, '\n');
  const separator = separatorOf(text);
  const rows: { line: number; cells: string[] }[] = [];
  let cells: string[] = [];
  let line = 1;
  let at = 0;
  while (at <= text.length) {
    const { cell, end } = readCell(text, at, separator);
    cells.push(cell.trim());
    if (text[end] !== separator) {
      if (cells.some((one) => one !== '')) rows.push({ line, cells });
      cells = [];
      line += 1;
    }
    at = end + 1;
  }
  return rows;
};
