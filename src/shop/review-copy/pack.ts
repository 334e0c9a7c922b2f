const SIGNS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';

/** Bytes as Base64 (RFC 4648), for a file that is text throughout. */
export const base64 = (bytes: Uint8Array): string => {
  const text: string[] = [];
  for (let i = 0; i < bytes.length; i += 3) {
    const [a = 0, b = 0, c = 0] = [bytes[i], bytes[i + 1], bytes[i + 2]];
    const left = bytes.length - i;
    text.push(
      SIGNS.charAt(a >> 2),
      SIGNS.charAt(((a & 3) << 4) | (b >> 4)),
      left > 1 ? SIGNS.charAt(((b & 15) << 2) | (c >> 6)) : '=',
      left > 2 ? SIGNS.charAt(c & 63) : '=',
    );
  }
  return text.join('');
};

/** Coordinates are kept in steps of this many millimetres: too small to be seen, and a van still fits in two bytes. */
export const STEP_MM = 0.5;
const MOST_STEPS = 32_767;

/** Little-endian, whatever machine writes. */
const words = (values: Iterable<number>, wordOf: (value: number) => number): Uint8Array => {
  const whole = Array.from(values, wordOf);
  const bytes = new Uint8Array(whole.length * 2);
  const view = new DataView(bytes.buffer);
  whole.forEach((word, i) => {
    view.setInt16(i * 2, word, true);
  });
  return bytes;
};

/** Millimetres as two bytes each. Throws RangeError on a coordinate farther out than 16 m. */
export const packCoordinates = (mm: Iterable<number>): string =>
  base64(
    words(mm, (value) => {
      const steps = Math.round(value / STEP_MM);
      if (Math.abs(steps) > MOST_STEPS) throw new RangeError(`packCoordinates: ${value} mm is too far out`);
      return steps;
    }),
  );

/** Directions, −1 to 1, as one byte each. */
export const packDirections = (values: Iterable<number>): string =>
  base64(Uint8Array.from(values, (value) => Math.round(value * 127) & 0xff));

/** Linear light, 0 to 1, as the root of it in one byte: steps are finest where the eye sees them best. */
export const packColours = (values: Iterable<number>): string =>
  base64(Uint8Array.from(values, (value) => Math.round(Math.sqrt(Math.min(1, Math.max(0, value))) * 255)));
