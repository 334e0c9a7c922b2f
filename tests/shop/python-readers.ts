import { spawnSync } from 'node:child_process';
import { NEEDS, provide } from '../needs.mjs';

/** A cell as somebody else's reader has it: text, a figure, or nothing. */
export type ReadCell = string | number | null;

export interface ReadSheet {
  readonly name: string;
  readonly rows: readonly (readonly ReadCell[])[];
  /** Cells that the reader takes for a formula. */
  readonly formulas: number;
}

const run = (python: string, script: string, input: Uint8Array | string): string => {
  const { status, stdout, stderr } = spawnSync(python, ['-c', script], { input, encoding: 'utf8', maxBuffer: 1e8 });
  if (status !== 0) throw new Error(stderr);
  return stdout;
};

const WORKBOOK = `
import io, json, sys
import openpyxl
book = openpyxl.load_workbook(io.BytesIO(sys.stdin.buffer.read()))
json.dump([dict(name=sheet.title, rows=[[c.value for c in row] for row in sheet.iter_rows()],
  formulas=sum(c.data_type == 'f' for row in sheet.iter_rows() for c in row)) for sheet in book.worksheets], sys.stdout)
`;

/** A workbook as openpyxl reads it. */
export const readWorkbook = (bytes: Uint8Array): readonly ReadSheet[] => {
  const python = provide(NEEDS.openpyxl);
  if (python === null) throw new Error('the reader of workbooks is not here');
  return JSON.parse(run(python, WORKBOOK, bytes)) as readonly ReadSheet[];
};

const CSV = `
import csv, io, json, sys
text = sys.stdin.buffer.read().decode('utf-8-sig')
json.dump(list(csv.reader(io.StringIO(text, newline=''), strict=True)), sys.stdout)
`;

/** A comma-separated file as Python reads it. */
export const readCsvFile = (text: string): readonly (readonly string[])[] =>
  JSON.parse(run('python3', CSV, text)) as readonly (readonly string[])[];
