/** Where and how a text stops being JSON. */
export interface JsonFault {
  /** Index of the first character that cannot stand where it stands; the length of the text when it stops too early. */
  readonly position: number;
  readonly cutShort: boolean;
}

const SPACE = /[ \t\r\n]*/y;
/** Any character from the space up but the quote and the backslash, or an escape. */
const STRING = /"(?:[ !#-[\]-\uffff]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/y;
const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const WORD = /true|false|null/y;

/**
 * Finds the first fault of a text that `JSON.parse` refused. The engine's own message names a position on some
 * versions and only quotes the text on others, so the place is found here, by the grammar of RFC 8259, with a stack
 * of open brackets instead of recursion.
 */
export const jsonFault = (text: string): JsonFault => {
  const open: ('{' | '[')[] = [];
  let at = 0;
  let expects: 'value' | 'value-or-end' | 'key' | 'key-or-end' | 'colon' | 'comma-or-end' = 'value';
  const take = (pattern: RegExp): boolean => {
    pattern.lastIndex = at;
    const match = pattern.exec(text);
    if (!match) return false;
    at += match[0].length;
    return true;
  };
  const fault = (): JsonFault => ({
    position: at,
    cutShort: at >= text.length || (text[at] === '"' && !text.includes('"', at + 1)),
  });
  for (;;) {
    take(SPACE);
    const char = text[at];
    if (expects === 'comma-or-end' && open.length === 0) return fault();
    const closes = char === (open.at(-1) === '{' ? '}' : ']') && open.length > 0;
    if (closes && (expects === 'value-or-end' || expects === 'key-or-end' || expects === 'comma-or-end')) {
      open.pop();
      at++;
      expects = 'comma-or-end';
    } else if (expects === 'comma-or-end') {
      if (char !== ',') return fault();
      at++;
      expects = open.at(-1) === '{' ? 'key' : 'value';
    } else if (expects === 'colon') {
      if (char !== ':') return fault();
      at++;
      expects = 'value';
    } else if (expects === 'key' || expects === 'key-or-end') {
      if (!take(STRING)) return fault();
      expects = 'colon';
    } else if (char === '{' || char === '[') {
      open.push(char);
      at++;
      expects = char === '{' ? 'key-or-end' : 'value-or-end';
    } else if (take(STRING) || take(NUMBER) || take(WORD)) expects = 'comma-or-end';
    else return fault();
  }
};
