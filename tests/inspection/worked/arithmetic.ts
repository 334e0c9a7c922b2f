/** A number as it stands in words: `3,004`, `4.2 %`, `0.95`. */
export interface Printed {
  /** Without a sign; a percentage as a share. */
  readonly value: number;
  /** Half of its last printed place. */
  readonly half: number;
  readonly text: string;
}

type Token =
  | { readonly kind: 'number'; readonly number: Printed }
  | { readonly kind: 'sign'; readonly text: string }
  | { readonly kind: 'equals' }
  | { readonly kind: 'word' };

const NUMBER = /^(?:\d{1,3}(?:,\d{3})+(?!\d)|\d+)(?:\.\d+)?(?: ?%)?/;
const SIGN = /^(?:atan|sin|cos|tan|abs|[+−·/()√²³⁴½π])/;

/** Reads a number with thousands parted by commas and perhaps a per cent sign; throws for what is none. */
export const printed = (text: string): Printed => {
  if (NUMBER.exec(text)?.[0] !== text) throw new Error(`not a number as the pages print it: ${text}`);
  const percent = text.endsWith('%');
  const digits = text.replace(/ ?%$/, '').replaceAll(',', '');
  const scale = percent ? 100 : 1;
  const places = digits.split('.')[1]?.length ?? 0;
  return { value: Number(digits) / scale, half: 0.5 / 10 ** places / scale, text: text.replace(' %', '%') };
};

const tokensOf = (words: string): readonly Token[] => {
  const tokens: Token[] = [];
  for (let at = 0; at < words.length; ) {
    const rest = words.slice(at);
    const number = NUMBER.exec(rest)?.[0];
    const sign = SIGN.exec(rest)?.[0];
    if (number !== undefined) tokens.push({ kind: 'number', number: printed(number) });
    else if (sign !== undefined) tokens.push({ kind: 'sign', text: sign });
    else if (rest.startsWith('=')) tokens.push({ kind: 'equals' });
    else if (!/^[\s°]/.test(rest)) tokens.push({ kind: 'word' });
    at += (number ?? sign ?? ' ').length;
  }
  return tokens;
};

const RADIANS = Math.PI / 180;
const FUNCTIONS: Readonly<Record<string, (x: number) => number>> = {
  '√': Math.sqrt,
  atan: (x) => Math.atan(x) / RADIANS,
  sin: (x) => Math.sin(x * RADIANS),
  cos: (x) => Math.cos(x * RADIANS),
  tan: (x) => Math.tan(x * RADIANS),
  abs: Math.abs,
};
const POWERS: Readonly<Record<string, number>> = { '²': 2, '³': 3, '⁴': 4 };

/**
 * The value of a sum as written on paper: `·` and `/` before `+` and `−`, a root or a bracket after a number multiplies
 * it, and so does `π`; angles in degrees. Null for what is no whole sum.
 */
const worthOf = (tokens: readonly Token[]): number | null => {
  let at = 0;
  const sign = (): string | null => {
    const token = tokens[at];
    return token?.kind === 'sign' ? token.text : null;
  };
  const atom = (): number => {
    const token = tokens[at];
    at += 1;
    if (token?.kind === 'number') return token.number.value;
    if (token?.kind !== 'sign') return Number.NaN;
    if (token.text === '½') return 0.5;
    if (token.text === 'π') return Math.PI;
    const apply = FUNCTIONS[token.text];
    if (apply) return apply(raised());
    if (token.text !== '(') return Number.NaN;
    const inside = terms();
    if (sign() !== ')') return Number.NaN;
    at += 1;
    return inside;
  };
  const raised = (): number => {
    let value = atom();
    for (let power = POWERS[sign() ?? '']; power !== undefined; power = POWERS[sign() ?? '']) {
      value **= power;
      at += 1;
    }
    return value;
  };
  const multiplies = (text: string | null): boolean =>
    text !== null && (text in FUNCTIONS || text === '(' || text === 'π');
  const product = (): number => {
    let value = raised();
    for (;;) {
      const next = sign();
      if (next === '·' || next === '/') {
        at += 1;
        const factor = raised();
        value = next === '·' ? value * factor : value / factor;
      } else if (multiplies(next)) value *= raised();
      else return value;
    }
  };
  const terms = (): number => {
    let minus = sign() === '−';
    if (minus) at += 1;
    let value = minus ? -product() : product();
    for (let next = sign(); next === '+' || next === '−'; next = sign()) {
      minus = next === '−';
      at += 1;
      value += minus ? -product() : product();
    }
    return value;
  };
  const value = terms();
  return at === tokens.length && Number.isFinite(value) ? value : null;
};

export interface Reading {
  /** Every number in the words, in their order. */
  readonly numbers: readonly Printed[];
  /** Numbers that a sum in the words comes to, and that the sum was found to give. */
  readonly sums: readonly Printed[];
  /** Numbers that stand in such a sum. */
  readonly summed: readonly Printed[];
  /** Sums that do not come to what is written after them, or that cannot be read. */
  readonly wrong: readonly string[];
}

const isPart = ({ kind }: Token): boolean => kind === 'number' || kind === 'sign';
const textOf = (tokens: readonly Token[]): string =>
  tokens
    .map((token) => (token.kind === 'number' ? token.number.text : token.kind === 'sign' ? token.text : ''))
    .join(' ');

/** Reads the numbers of a sentence and works out every sum `… = number` in it anew. */
export const readWords = (words: string): Reading => {
  const tokens = tokensOf(words);
  const sums: Printed[] = [];
  const summed: Printed[] = [];
  const wrong: string[] = [];
  const numbersIn = (some: readonly Token[]): readonly Printed[] =>
    some.flatMap((token) => (token.kind === 'number' ? [token.number] : []));
  tokens.forEach(({ kind }, i) => {
    if (kind !== 'equals') return;
    const before = tokens.slice(0, i);
    const left = before.slice(before.findLastIndex((token) => !isPart(token)) + 1);
    const after = tokens.slice(i + 1);
    const end = after.findIndex((token) => !isPart(token));
    const right = end < 0 ? after : after.slice(0, end);
    // Without a sum before it, what follows is only given a name.
    if (left.length === 0) return;
    const [value, comesTo] = [worthOf(left), worthOf(right)];
    const numbers = numbersIn(right);
    const [result] = numbers;
    const fits = value !== null && comesTo !== null && result !== undefined && numbers.length === 1;
    if (fits && Math.abs(value - comesTo) <= result.half + 1e-9) {
      sums.push(result);
      summed.push(...numbersIn(left));
    } else wrong.push(`${textOf(left)} = ${textOf(right)}: ${value ?? 'cannot be read'}`);
  });
  return { numbers: numbersIn(tokens), sums, summed, wrong };
};
