import { basename, dirname } from 'node:path';
import { CLOSURE_KINDS, VEHICLE_CLASSES } from '../../../design/index.ts';
import { surveyPlan } from '../../../envelope/index.ts';
import { surveySheet } from '../../../shop/index.ts';
import { badInput } from '../bad-input.ts';
import { openPdfWriter } from '../open-pdf-writer.ts';
import type { Outcome } from '../outcome.ts';
import { writeFiles } from '../write-files.ts';

const PAPERS = ['a4', 'letter'] as const;

export interface SheetOptions {
  readonly closure: string;
  readonly class: string;
  readonly paper: string;
  readonly to: string;
}

/** The word as one of those that there are. Throws BadInput that lists them. */
const oneOf = <W extends string>(all: readonly W[], word: string, option: string): W => {
  const found = all.find((own) => own === word.toLowerCase());
  if (found === undefined) throw badInput(`${option} does not know "${word}"; it takes ${all.join(', ')}`);
  return found;
};

/** `sheet --closure KIND --to FILE.pdf`: the blank survey sheet to print, for a kind of closure and a vehicle class. */
export const sheet = ({ closure, class: vehicleClass, paper, to }: SheetOptions): Outcome => {
  const kind = oneOf(CLOSURE_KINDS, closure, '--closure');
  const wanted = oneOf(VEHICLE_CLASSES, vehicleClass, '--class');
  const size = oneOf(PAPERS, paper, '--paper');
  if (!to.toLowerCase().endsWith('.pdf')) throw badInput('--to takes a file that ends in .pdf', to);
  const plan = surveyPlan(kind, wanted);
  const pages = surveySheet({ plan, units: size === 'letter' ? 'in' : 'mm' });
  const about = `survey sheet, ${kind.replaceAll('-', ' ')}, ${wanted.replaceAll('-', ' ')}`;
  writeFiles(dirname(to), [{ path: basename(to), content: openPdfWriter()(pages, { title: about, subject: '' }) }]);
  const readings = plan.steps.filter(({ reading }) => reading !== null).length;
  return {
    lines: [`${basename(to)}: ${about}, ${pages.length} pages, ${readings} readings`],
    json: { files: [{ path: basename(to), kind: 'pdf', about }], pages: pages.length, readings },
    exitCode: 0,
  };
};
