import type { z } from 'zod';
import { bad, good, type Problem, pathText, type Result } from '../base/index.ts';
import { DESIGN_FORMAT, DESIGN_VERSION, type Design, designSchema } from './design.ts';
import { FITTING_KINDS } from './fittings/index.ts';
import { jsonFault } from './json-fault.ts';
import { migrated } from './migrations.ts';
import { referenceProblems } from './references.ts';

/** Larger than any honest design by far; what is larger is refused before it is parsed. */
export const MOST_DESIGN_CHARACTERS = 20_000_000;
/** Deeper than any cabinet; keeps a hostile file from running the reader out of stack. */
const MOST_LEVELS = 400;
/** A whole van has some two hundred; beyond this the tree is a mistake or an attack. */
export const MOST_OPENINGS = 2_000;

const lineAndColumn = (text: string, position: number): string => {
  const before = text.slice(0, position);
  const line = before.split('\n').length;
  return `line ${line}, column ${position - before.lastIndexOf('\n')}`;
};

const parseJson = (text: string): Result<unknown> => {
  try {
    return good(JSON.parse(text));
  } catch {
    const { position, cutShort } = jsonFault(text);
    const got = text.slice(position, position + 20).split('\n')[0] ?? '';
    return bad([{ at: lineAndColumn(text, position), code: cutShort ? 'cut-short' : 'not-json', got }]);
  }
};

/** Levels of nesting, and the openings met, without recursion. */
const measure = (document: unknown): { readonly levels: number; readonly openings: number } => {
  let levels = 0;
  let openings = 0;
  const waiting: { readonly value: object; readonly level: number }[] = [];
  const enter = (value: unknown, level: number): void => {
    if (typeof value === 'object' && value !== null) waiting.push({ value, level });
  };
  enter(document, 1);
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    levels = Math.max(levels, next.level);
    if (levels > MOST_LEVELS) break;
    if ('content' in next.value && 'id' in next.value) openings++;
    for (const child of Object.values(next.value)) enter(child, next.level + 1);
  }
  return { levels, openings };
};

const shown = (value: unknown): string => {
  if (value === undefined) return 'nothing';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object' && value !== null) return 'a group';
  const text = JSON.stringify(value) ?? 'nothing';
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
};

const valueAt = (document: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>(
    (value, key) =>
      typeof value === 'object' && value !== null ? (value as Record<PropertyKey, unknown>)[key] : undefined,
    document,
  );

const problemOf = (issue: z.core.$ZodIssue, document: unknown): Problem => {
  const at = pathText(issue.path);
  const got = shown(valueAt(document, issue.path));
  if (issue.code === 'unrecognized_keys') return { at, code: 'unknown-key', got: issue.keys.join(', ') };
  if (issue.code === 'invalid_union' && at.endsWith('fitting.kind'))
    return { at, code: 'unknown-fitting', expected: FITTING_KINDS.join(', '), got };
  if (issue.code === 'too_small' && issue.origin === 'number')
    return { at, code: 'too-small', expected: `${issue.inclusive ? 'at least' : 'more than'} ${issue.minimum}`, got };
  if (issue.code === 'too_big' && issue.origin === 'number')
    return { at, code: 'too-big', expected: `at most ${issue.maximum}`, got };
  if (issue.code === 'invalid_type')
    return { at, code: got === 'nothing' ? 'missing' : 'wrong-type', expected: `a ${issue.expected}`, got };
  if (issue.code === 'invalid_value')
    return { at, code: 'not-allowed', expected: issue.values.map(String).join(', '), got };
  return { at, code: 'not-allowed', expected: issue.message, got };
};

/** The longest list of problems worth reading; the count of the rest is said. */
const MOST_PROBLEMS = 50;

const listed = (problems: readonly Problem[]): readonly Problem[] =>
  problems.length <= MOST_PROBLEMS
    ? problems
    : [...problems.slice(0, MOST_PROBLEMS), { at: '', code: 'and-more', got: String(problems.length - MOST_PROBLEMS) }];

/** Reads a design from parsed JSON: format and version, migrations, schema, then references between nodes. */
export const readDesignDocument = (document: unknown): Result<Design> => {
  if (typeof document !== 'object' || document === null || Array.isArray(document))
    return bad([{ at: '', code: 'not-a-design', got: shown(document) }]);
  const { levels, openings } = measure(document);
  if (levels > MOST_LEVELS) return bad([{ at: '', code: 'too-deep', expected: `at most ${MOST_LEVELS} levels` }]);
  const raw = document as Readonly<Record<string, unknown>>;
  if (raw.format !== DESIGN_FORMAT)
    return bad([{ at: 'format', code: 'not-a-design', expected: DESIGN_FORMAT, got: shown(raw.format) }]);
  const { version } = raw;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
    return bad([
      { at: 'version', code: 'wrong-type', expected: `a whole number up to ${DESIGN_VERSION}`, got: shown(version) },
    ]);
  if (version > DESIGN_VERSION)
    return bad([{ at: 'version', code: 'newer-version', expected: `at most ${DESIGN_VERSION}`, got: String(version) }]);
  if (openings > MOST_OPENINGS)
    return bad([
      {
        at: 'cabinet.carcasses',
        code: 'too-many',
        expected: `at most ${MOST_OPENINGS} openings`,
        got: String(openings),
      },
    ]);
  const current = migrated(raw, version);
  const read = designSchema.safeParse(current);
  if (!read.success) return bad(listed(read.error.issues.map((issue) => problemOf(issue, current))));
  const design = read.data as Design;
  const problems = referenceProblems(design);
  return problems.length > 0 ? bad(listed(problems)) : good(design);
};

/** Reads a design file. Every fault comes with its place; a newer file is refused rather than half understood. */
export const readDesign = (text: string): Result<Design> => {
  if (text.length > MOST_DESIGN_CHARACTERS)
    return bad([
      { at: '', code: 'too-large', expected: `at most ${MOST_DESIGN_CHARACTERS} characters`, got: String(text.length) },
    ]);
  if (text.trim() === '') return bad([{ at: '', code: 'empty-file' }]);
  const json = parseJson(text.startsWith('\uFEFF') ? text.slice(1) : text);
  return json.ok ? readDesignDocument(json.value) : json;
};

/** The text of a design file: two-space JSON that `readDesign` reads back to the same design. */
export const printDesign = (design: Design): string => `${JSON.stringify(design, null, 2)}\n`;
