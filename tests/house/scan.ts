/**
 * A reader of source text just good enough for the house rules: it tells code from comments, strings and regular
 * expressions, and finds what a file imports. Text inside JSX is read as code; a stray quote there ends with its line.
 */

/** The same text, same length and lines, in which comments, string contents and regular expressions are blanks. */
export const codeOnly = (text: string): string => {
  const out: string[] = [];
  // What closes the innermost template expression: the depth of braces inside it.
  const templates: number[] = [];
  let at = 0;
  const keep = (count: number): void => {
    out.push(text.slice(at, at + count));
    at += count;
  };
  const blank = (end: number): void => {
    out.push(text.slice(at, end).replace(/[^\n]/g, ' '));
    at = end;
  };
  const templateText = (): void => {
    const end = templateEnd(text, at);
    blank(end);
    if (text.startsWith('${', at)) {
      keep(2);
      templates.push(0);
    } else keep(1);
  };
  while (at < text.length) {
    const rest = text.slice(at, at + 2);
    const char = rest[0] ?? '';
    const depth = templates.at(-1);
    if (rest === '//') blank(lineEnd(text, at));
    else if (rest === '/*') blank(blockEnd(text, at));
    else if (char === '"' || char === "'") {
      keep(1);
      blank(quoteEnd(text, at, char));
      if (text[at] === char) keep(1);
    } else if (char === '`') {
      keep(1);
      templateText();
    } else if (char === '/' && regexMayStart(out)) {
      keep(1);
      blank(regexEnd(text, at));
      keep(1);
    } else if (depth !== undefined && char === '{') {
      templates[templates.length - 1] = depth + 1;
      keep(1);
    } else if (depth !== undefined && char === '}') {
      keep(1);
      if (depth === 0) {
        templates.pop();
        templateText();
      } else templates[templates.length - 1] = depth - 1;
    } else keep(1);
  }
  return out.join('');
};

const lineEnd = (text: string, from: number): number => {
  const end = text.indexOf('\n', from);
  return end === -1 ? text.length : end;
};

const blockEnd = (text: string, from: number): number => {
  const end = text.indexOf('*/', from + 2);
  return end === -1 ? text.length : end + 2;
};

const quoteEnd = (text: string, from: number, quote: string): number => {
  let at = from;
  while (at < text.length && text[at] !== quote && text[at] !== '\n') at += text[at] === '\\' ? 2 : 1;
  return Math.min(at, text.length);
};

const templateEnd = (text: string, from: number): number => {
  let at = from;
  while (at < text.length && text[at] !== '`' && !text.startsWith('${', at)) at += text[at] === '\\' ? 2 : 1;
  return Math.min(at, text.length);
};

const regexEnd = (text: string, from: number): number => {
  let at = from;
  let inClass = false;
  while (at < text.length && text[at] !== '\n' && (inClass || text[at] !== '/')) {
    if (text[at] === '[') inClass = true;
    if (text[at] === ']') inClass = false;
    at += text[at] === '\\' ? 2 : 1;
  }
  return Math.min(at, text.length);
};

/** A slash divides after a name, a number or a closing bracket; elsewhere it opens a regular expression. */
const regexMayStart = (out: readonly string[]): boolean => {
  let before = '';
  for (let i = out.length - 1; i >= 0 && before.length < 12; i--) before = (out[i] ?? '') + before;
  before = before.trimEnd();
  if (/\b(?:return|typeof|case|in|of)$/.test(before)) return true;
  // `<` comes before the slash of a closing tag, not of a regular expression.
  return before === '' || /[(,=:[!&|?{};+\-*%~^>]$/.test(before);
};

export interface Import {
  readonly specifier: string;
  /** Counted from 1. */
  readonly line: number;
  /** True when nothing of it is left after compiling: `import type`, `export type`. */
  readonly typeOnly: boolean;
}

export const lineAt = (text: string, offset: number): number => text.slice(0, offset).split('\n').length;

/** Every file or package the text imports: statements, `import(…)`, `require(…)`, `new URL(…)`, `import.meta.glob(…)`. */
export const importsOf = (text: string, code: string = codeOnly(text)): readonly Import[] => {
  const opening =
    /\bfrom\s*(['"])|\bimport\s*(['"])|\b(?:import|require|new\s+URL|import\.meta\.glob(?:<[^>]*>)?)\s*\(\s*(['"`])/g;
  return [...code.matchAll(opening)].map((match) => {
    const start = match.index + match[0].length;
    const quote = match[1] ?? match[2] ?? match[3] ?? '"';
    const end = code.indexOf(quote, start);
    const before = code.slice(0, match.index);
    const statement = code.slice(Math.max(before.lastIndexOf('import'), before.lastIndexOf('export'), 0));
    return {
      specifier: text.slice(start, end === -1 ? start : end),
      line: lineAt(text, start),
      typeOnly: match[1] !== undefined && /^(?:import|export)\s+type\s+[^,]/.test(statement),
    };
  });
};
