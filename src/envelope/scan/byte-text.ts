/** Reads words and numbers from bytes without making strings of them: a text mesh has ten million numbers. */
export interface TextReader {
  readonly bytes: Uint8Array;
  at: number;
}

const SPACE = 32;
const NEWLINE = 10;
const [ZERO, NINE, DOT, PLUS, MINUS, UPPER_E, LOWER_E] = [48, 57, 46, 43, 45, 69, 101] as const;

/** Powers of ten that a double holds exactly; a whole number of at most 15 digits over one of them rounds once. */
const EXACT_POWERS = Float64Array.from({ length: 23 }, (_, i) => 10 ** i);
const EXACT_DIGITS = 15;

/** The text between two places, byte by byte as characters (Latin 1). */
export const latin = (bytes: Uint8Array, from: number, to: number): string => {
  let text = '';
  for (let i = from; i < Math.min(to, bytes.length); i++) text += String.fromCharCode(bytes[i] ?? 0);
  return text;
};

/** Moves on to the next thing that is no blank; stays on this line if told to. False at its end. */
export const toNext = (reader: TextReader, withinLine: boolean): boolean => {
  const { bytes } = reader;
  while (reader.at < bytes.length) {
    const code = bytes[reader.at] ?? 0;
    if (code > SPACE) return true;
    if (withinLine && code === NEWLINE) return false;
    reader.at++;
  }
  return false;
};

export const nextLine = (reader: TextReader): void => {
  const end = reader.bytes.indexOf(NEWLINE, reader.at);
  reader.at = end < 0 ? reader.bytes.length : end + 1;
};

/** The next word; empty at the end. */
export const readWord = (reader: TextReader, withinLine = false): string => {
  if (!toNext(reader, withinLine)) return '';
  const from = reader.at;
  while (reader.at < reader.bytes.length && (reader.bytes[reader.at] ?? 0) > SPACE) reader.at++;
  return latin(reader.bytes, from, reader.at);
};

const slowNumber = (reader: TextReader, from: number): number => {
  reader.at = from;
  const word = readWord(reader);
  return word === '' ? Number.NaN : Number(word);
};

/** The next number; NaN where there is none. Stands after it. Marked hot. */
export const readNumber = (reader: TextReader, withinLine = false): number => {
  if (!toNext(reader, withinLine)) return Number.NaN;
  const { bytes } = reader;
  const from = reader.at;
  let i = from;
  const sign = bytes[i] === MINUS ? -1 : 1;
  if (bytes[i] === MINUS || bytes[i] === PLUS) i++;
  let digits = 0;
  let whole = 0;
  let places = 0;
  let dot = false;
  for (; i < bytes.length; i++) {
    const code = bytes[i] ?? 0;
    if (code >= ZERO && code <= NINE) {
      whole = whole * 10 + (code - ZERO);
      if (whole > 0) digits++;
      if (dot) places++;
    } else if (code === DOT && !dot) dot = true;
    else break;
  }
  let power = -places;
  const code = bytes[i] ?? SPACE;
  if (code === UPPER_E || code === LOWER_E) {
    i++;
    const down = bytes[i] === MINUS;
    if (down || bytes[i] === PLUS) i++;
    let exponent = 0;
    for (; (bytes[i] ?? 0) >= ZERO && (bytes[i] ?? 0) <= NINE; i++) exponent = exponent * 10 + ((bytes[i] ?? 0) - ZERO);
    power += down ? -exponent : exponent;
  }
  const ends = (bytes[i] ?? SPACE) <= SPACE;
  const plain = i - from > (dot ? 1 : 0) + (sign < 0 ? 1 : 0);
  if (!ends || !plain || digits > EXACT_DIGITS || Math.abs(power) >= EXACT_POWERS.length)
    return slowNumber(reader, from);
  reader.at = i;
  const scale = EXACT_POWERS[Math.abs(power)] ?? 1;
  return sign * (power < 0 ? whole / scale : whole * scale);
};
