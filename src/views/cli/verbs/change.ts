import { basename, dirname } from 'node:path';
import { pathText } from '../../../base/index.ts';
import {
  clearOpening,
  type Design,
  type Division,
  designNodes,
  divideOpening,
  FITTING_KINDS,
  findOpening,
  fitOpening,
  type NodeId,
  openingsFrom,
  printDesign,
  readDesign,
  replaceStock,
  setValue,
} from '../../../design/index.ts';
import type { Flow } from '../../../flow.ts';
import { type Finding, openStops } from '../../../inspection/index.ts';
import { nameOfPart, sayProblem } from '../../../says/index.ts';
import { BadInput, badInput } from '../bad-input.ts';
import { openFlow } from '../open-flow.ts';
import type { Outcome } from '../outcome.ts';
import { readDesignFile } from '../read-design-file.ts';
import { readStockFile } from '../read-layout-lists.ts';
import { sayer } from '../sayer.ts';
import { writeFiles } from '../write-files.ts';
import { heldBy } from './openings.ts';

/** As they stand on the command line. */
export interface ChangeOptions {
  readonly in?: string;
  readonly fit?: string;
  readonly divide?: string;
  readonly clear?: boolean;
  readonly set: readonly string[];
  readonly stock?: string;
  readonly to?: string;
}

/** One thing that was changed, in the words of the file. */
interface Changed {
  readonly at: string;
  readonly before: unknown;
  readonly after: unknown;
}

const ALONG: readonly Division[] = ['columns', 'rows', 'layers'];
const MOST_PARTS = 40;
/** What is frozen, signed, or decides how the file is read is no value to be typed over. */
const CLOSED = /^(format|version|revisions|replies|approvals)\b/;

const listed = (words: readonly string[]): string => {
  const shown = words.slice(0, 30);
  return `${shown.join(', ')}${shown.length < words.length ? ', …' : ''}` || 'nothing';
};

const openingOf = (design: Design, id: string, path: string): NodeId => {
  const ids = design.cabinet.carcasses.flatMap(({ opening }) => openingsFrom(opening).map((inside) => inside.id));
  const found = ids.find((one) => one === id);
  if (found === undefined) throw badInput(`there is no opening "${id}"; there is ${listed(ids)}`, path, '--in');
  return found;
};

const divided = (design: Design, id: NodeId, words: string): Design => {
  const [, count = '', alongWord = ''] = /^(\d+) ?(\w+)$/.exec(words) ?? [];
  const along = ALONG.find((one) => one === alongWord);
  if (!along || Number(count) < 2 || Number(count) > MOST_PARTS)
    throw badInput(
      `--divide takes a number from 2 to ${MOST_PARTS} and ${ALONG.join(', ')}, as 3rows; found "${words}"`,
    );
  return divideOpening(design, id, along, Number(count));
};

const refilled = (design: Design, id: NodeId, options: ChangeOptions): Design => {
  if (options.clear === true) return clearOpening(design, id);
  if (options.divide !== undefined) return divided(design, id, options.divide);
  if (options.fit === undefined) return design;
  const kind = FITTING_KINDS.find((one) => one === options.fit);
  if (!kind) throw badInput(`--fit takes one of ${FITTING_KINDS.join(', ')}; found "${options.fit}"`);
  return fitOpening(design, id, kind);
};

/** Where a field that is named without its place stands: in the fitting of the opening, or in what it holds. */
const placeIn = (design: Design, id: NodeId): string => {
  const node = designNodes(design).find((one) => one.id === id);
  const content = [...(node?.path ?? []), 'content'];
  return pathText(findOpening(design, id)?.opening.content.kind === 'fitted' ? [...content, 'fitting'] : content);
};

/** One `path=value` set in the file's own document and read anew, so that the schema judges it. */
const withSet = (
  design: Design,
  word: string,
  inside: NodeId | null,
  file: string,
): { readonly design: Design; readonly changed: Changed } => {
  const sign = word.indexOf('=');
  if (sign < 1) throw badInput(`--set takes path=value, as size.width=600mm; found "${word}"`);
  const field = word.slice(0, sign).trim();
  const at = inside === null ? field : `${placeIn(design, inside)}.${field}`;
  if (CLOSED.test(at))
    throw badInput('is not to be typed over: it is frozen, signed or tells how the file is read', file, at);
  const set = setValue(JSON.parse(printDesign(design)), at, word.slice(sign + 1).trim(), design.units);
  if (!set.ok)
    throw badInput(`nothing of that name stands there; there is ${listed(set.error.there)}`, file, set.error.at || at);
  const read = readDesign(JSON.stringify(set.value.document));
  if (!read.ok)
    throw new BadInput(
      read.error.map((problem) => ({ file, at: problem.at, says: sayProblem({ ...problem, at: '' }) })),
    );
  return { design: read.value, changed: { at, before: set.value.before, after: set.value.after } };
};

const keyOf = ({ rule, parts }: Finding): string => [rule, ...parts].join(' ');

/** Findings of the one that the other does not have. */
const only = (these: readonly Finding[], those: readonly Finding[]): readonly Finding[] => {
  const keys = new Set(those.map(keyOf));
  return these.filter((finding) => !keys.has(keyOf(finding)));
};

const rowsText = ({ stock }: Design): string => `${stock.length} row${stock.length === 1 ? '' : 's'}`;

const valueWords = (value: unknown): string => (value === undefined ? 'nothing' : (JSON.stringify(value) ?? 'nothing'));

const findingWords = (flow: Flow, design: Design, findings: readonly Finding[]): readonly string[] => {
  const say = sayer(design, flow.fitOut(design));
  return findings.map((finding) => `${finding.severity}: ${say.finding(finding).title}`);
};

/**
 * `change DESIGN`: fits, divides or clears an opening, sets values, or puts a list in place of the stock, through the same edits as the window, and says
 * which findings come and go. Nothing is written without `--to`. 1 where a stop stands afterwards.
 */
export const change = async (path: string, options: ChangeOptions): Promise<Outcome> => {
  const design = readDesignFile(path);
  const filling = [options.fit, options.divide, options.clear].filter((one) => one !== undefined && one !== false);
  if (filling.length > 1) throw badInput('one of --fit, --divide and --clear at a time');
  if (filling.length === 0 && options.set.length === 0 && options.stock === undefined)
    throw badInput('nothing is to be changed: give --fit, --divide or --clear with --in, --set path=value, or --stock');
  if (filling.length > 0 && options.in === undefined) throw badInput('--in says which opening; `openings` lists them');
  const inside = options.in === undefined ? null : openingOf(design, options.in, path);
  const changes: Changed[] = [];
  let after = design;
  if (inside !== null && filling.length > 0) {
    after = refilled(design, inside, options);
    changes.push({ at: inside, before: heldBy(design, inside), after: heldBy(after, inside) });
  }
  for (const word of options.set) {
    const step = withSet(after, word, inside, path);
    after = step.design;
    changes.push(step.changed);
  }
  const flow = await openFlow();
  if (options.stock !== undefined) {
    const listed = replaceStock(after, readStockFile(options.stock, flow.catalog));
    changes.push({ at: 'stock', before: rowsText(after), after: rowsText(listed) });
    after = listed;
  }
  const [then, now] = [flow.inspectionAtOnce(design), flow.inspectionAtOnce(after)];
  const come = findingWords(flow, after, only(now.findings, then.findings));
  const gone = findingWords(flow, design, only(then.findings, now.findings));
  const names = nameOfPart(design, flow.fitOut(design));
  const homeless = after.gear.filter(
    ({ id, place }) => place === null && design.gear.some((gear) => gear.id === id && gear.place !== null),
  );
  const { to } = options;
  if (to !== undefined) writeFiles(dirname(to), [{ path: basename(to), content: printDesign(after) }]);
  return {
    lines: [
      `${design.title}: ${changes.length} change${changes.length === 1 ? '' : 's'}`,
      ...changes.map(({ at, before, after: value }) => `  ${at}: ${valueWords(before)} -> ${valueWords(value)}`),
      ...homeless.map(({ id }) => `  ${names(id)} has lost its place`),
      ...(come.length === 0 ? [] : ['findings that come:', ...come.map((line) => `  ${line}`)]),
      ...(gone.length === 0 ? [] : ['findings that go:', ...gone.map((line) => `  ${line}`)]),
      to === undefined ? 'Tried only: --to names the file to write, which may be the same.' : `${to}: written`,
    ],
    json: {
      changes: changes.map(({ at, before = null, after: value }) => ({ at, before, after: value })),
      withoutPlace: homeless.map(({ id }) => id),
      come,
      gone,
      stops: openStops(now).length,
      written: to ?? null,
    },
    exitCode: openStops(now).length > 0 ? 1 : 0,
  };
};
