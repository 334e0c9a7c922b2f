import { describe, expect, test } from 'vitest';
import { codeOnly, importsOf, lineAt } from './scan.ts';

const specifiers = (text: string): readonly string[] => importsOf(text).map(({ specifier }) => specifier);

describe('codeOnly', () => {
  test('keeps length and lines', () => {
    const text = "const a = 'x\\'y'; // c\n/* d\n e */ const b = `f${1}g`;\n";
    const code = codeOnly(text);
    expect(code).toHaveLength(text.length);
    expect(code.split('\n')).toHaveLength(text.split('\n').length);
  });

  test.each([
    ['line comment', 'a; // hidden', 'a;'],
    ['block comment', 'a; /* hidden\n hidden */ b;', 'a; b;'],
    ['single quotes', "a('hidden');", "a('');"],
    ['double quotes', 'a("hid\\"den");', 'a("");'],
    ['comment signs in a string', "a('/* hidden'); b;", "a(''); b;"],
    ['quote in a comment', "a; // it's hidden\nb('hidden');", "a; b('');"],
    ['template with an expression', 'a(`hidden${seen}hidden`);', 'a(`${seen}`);'],
    ['template within a template', 'a(`hidden${b(`hidden${c}`)}`); d;', 'a(`${b(`${c}`)}`); d;'],
    ['braces in a template expression', 'a(`${b({ c: {} })}hidden`); d;', 'a(`${b({ c: {} })}`); d;'],
    ['regular expression', 'a = /hidden\'"/g; b;', 'a = //g; b;'],
    ['slash in a class of a regular expression', 'a.match(/[/"]hidden/); b;', 'a.match(//); b;'],
    ['division', "a = b / c / d; e('hidden');", "a = b / c / d; e('');"],
    ['division after a bracket', "a = (b) / 2; c('hidden/');", "a = (b) / 2; c('');"],
    ['closing tag', "a = <p>text</p>; b('hidden');", "a = <p>text</p>; b('');"],
  ])('%s', (_, text, expected) => {
    expect(codeOnly(text).replace(/\s+/g, '')).toBe(expected.replace(/\s+/g, ''));
  });
});

describe('importsOf', () => {
  test.each([
    ['named', "import { a } from './a.ts';", './a.ts'],
    ['over several lines', "import {\n  a,\n  b,\n} from './a.ts';", './a.ts'],
    ['side effect', "import './a.css';", './a.css'],
    ['export from', "export * from './a.ts';", './a.ts'],
    ['dynamic', "const a = await import('./a.ts');", './a.ts'],
    ['dynamic in a template', 'await import(`./a.ts`);', './a.ts'],
    ['worker', "new Worker(new URL('./a.ts', import.meta.url));", './a.ts'],
    ['glob', "import.meta.glob('./a/*.ts');", './a/*.ts'],
    ['glob with a type', "import.meta.glob<string>('./a/*.ts');", './a/*.ts'],
    ['require', "require('./a.ts');", './a.ts'],
    ['double quotes', 'import a from "./a.ts";', './a.ts'],
  ])('%s', (_, text, expected) => {
    expect(specifiers(text)).toEqual([expected]);
  });

  test('sees none in comments, strings and names', () => {
    const text = `// import './a.ts'\nconst b = "import './c.ts'";\nconst d = { from: 'e' }; Array.from('f'); reimport('g');`;
    expect(specifiers(text)).toEqual([]);
  });

  test('tells imports of types from those of values', () => {
    const text = [
      "import type { A } from './a.ts';",
      "import { type B, b } from './b.ts';",
      "export type { C } from './c.ts';",
      "import d from './d.ts';",
      "import type E from './e.ts';",
    ].join('\n');
    expect(importsOf(text).map(({ typeOnly }) => typeOnly)).toEqual([true, false, true, false, true]);
  });

  test('gives the line', () => {
    expect(importsOf("\n\nimport a from './a.ts';").map(({ line }) => line)).toEqual([3]);
    expect(lineAt('a\nb\nc', 4)).toBe(3);
  });
});
