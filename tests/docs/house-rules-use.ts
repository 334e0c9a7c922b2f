import { readdirSync, readFileSync } from 'node:fs';
import { INSTRUMENTS } from '../../src/design/index.ts';
import { RULE_IDS } from '../../src/inspection/index.ts';
import { demoDesign, wholeFlow } from '../golden/flow.ts';

const SRC = new URL('../../src/', import.meta.url);
const DEMOS = ['harrow-fell', 'quillmoor', 'skerrow-gap', 'ostrel-moor', 'ten-faults'] as const;

/** The demo whose carcasses are carried in by plain ways: their search takes no time here. */
const CARRIED = 'quillmoor';

/** The checks that looked up each house rule while the demo designs were inspected; carried in is one of them. */
export const consultedByDemos = async (): Promise<ReadonlyMap<string, readonly string[]>> => {
  const flow = await wholeFlow();
  const inspections = DEMOS.map((name) => {
    const design = demoDesign(name);
    return (name === CARRIED ? flow.wholeInspection(design) : flow.inspection(design)).consulted;
  });
  const checksOf = new Map<string, string[]>();
  for (const check of RULE_IDS)
    for (const id of new Set(inspections.flatMap((consulted) => consulted[check] ?? [])))
      checksOf.set(id, [...(checksOf.get(id) ?? []), check]);
  return checksOf;
};

/** The text of every source file, by its path under src. Data files and tests are not among them. */
const sources = (): readonly (readonly [string, string])[] =>
  readdirSync(SRC, { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.tsx?$/.test(path))
    .sort()
    .map((path) => [path, readFileSync(new URL(path, SRC), 'utf8')]);

/** Where the ids of checks and their words are listed: an id there is the check, not the house rule of that name. */
const LISTS_OF_CHECKS = /^says\/|^inspection\/(rule-ids\.ts|(rules|ways-out)\/index\.ts)/;
/** What else is put together from pieces: names of faces, marks and figures. Only what is looked up in rules counts. */
const LOOKED_UP = /(?:\b(?:value|record)\(|ruleLimit\([\w.]+, |\bid = )`([^`]+)`/g;

const escaped = (text: string): string => text.replaceAll(/[.*+?^$()[\]{}|\\]/g, '\\$&');

/** The ids that a template can give, as a pattern: a gap is an instrument of the survey or else one word of an id. */
const patternOf = (template: string): RegExp => {
  const gapOf = (gap: string): string => (gap.endsWith('.instrument}') ? `(?:${INSTRUMENTS.join('|')})` : '[a-z0-9]+');
  const pieces = template
    .split(/(\$\{[^}]*\})/)
    .map((piece) => (piece.startsWith('${') ? gapOf(piece) : escaped(piece)));
  return new RegExp(`^${pieces.join('')}$`);
};

/** The rooms of src whose code names each house rule, whole or put together of pieces, in the order of their names. */
export const roomsThatRead = (ids: readonly string[]): ReadonlyMap<string, readonly string[]> => {
  const rooms = new Map<string, Set<string>>(ids.map((id) => [id, new Set()]));
  for (const [path, text] of sources()) {
    if (LISTS_OF_CHECKS.test(path)) continue;
    const room = path.split('/')[0] ?? path;
    const quoted = new Set([...text.matchAll(/'([a-z0-9-]+)'/g)].map(([, id]) => id));
    const patterns = [...text.matchAll(LOOKED_UP)].map(([, template = '']) => patternOf(template));
    for (const id of ids) if (quoted.has(id) || patterns.some((pattern) => pattern.test(id))) rooms.get(id)?.add(room);
  }
  return new Map([...rooms].map(([id, found]) => [id, [...found].sort()]));
};
