import { STEP_MM } from '../../../shop/index.ts';

const bytesOf = (text: string): Uint8Array => Uint8Array.from(atob(text), (sign) => sign.charCodeAt(0));

/** Millimetres from two bytes each, little-endian. */
export const coordinates = (text: string): Float32Array => {
  const bytes = bytesOf(text);
  const view = new DataView(bytes.buffer);
  return Float32Array.from({ length: bytes.length / 2 }, (_, i) => view.getInt16(i * 2, true) * STEP_MM);
};

/** Directions from one signed byte each. */
export const directions = (text: string): Float32Array =>
  Float32Array.from(bytesOf(text), (byte) => (byte > 127 ? byte - 256 : byte) / 127);

/** Linear light from its root. */
export const colours = (text: string): Float32Array => Float32Array.from(bytesOf(text), (byte) => (byte / 255) ** 2);
