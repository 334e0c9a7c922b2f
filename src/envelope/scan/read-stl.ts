import type { Result } from '../../base/index.ts';
import { readNumber, readWord, type TextReader } from './byte-text.ts';
import { growList } from './grow-list.ts';
import { fault, MOST_TRIANGLES, type ScanMesh, soundMesh, tooMany } from './scan-mesh.ts';
import { weldCorners } from './weld.ts';

/** Binary: 80 bytes of anything, a count, then 50 bytes a triangle: normal, three corners, two spare bytes. */
const HEAD_BYTES = 84;
const TRIANGLE_BYTES = 50;
const NORMAL_BYTES = 12;

const viewOf = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

const countOf = (bytes: Uint8Array): number => (bytes.length >= HEAD_BYTES ? viewOf(bytes).getUint32(80, true) : -1);

/** A binary file is as long as its count says; a text file begins with a word and is not. */
export const isBinaryStl = (bytes: Uint8Array): boolean =>
  bytes.length >= HEAD_BYTES && bytes.length === HEAD_BYTES + TRIANGLE_BYTES * countOf(bytes);

/** A binary file that breaks off before the end that its count promises: how long it is, and should be; null for none. */
export const cutStl = (bytes: Uint8Array): Result<ScanMesh> | null => {
  const count = countOf(bytes);
  const whole = HEAD_BYTES + TRIANGLE_BYTES * count;
  // Four bytes of text, read as a count, are far more than any scan has.
  if (count < 1 || count > MOST_TRIANGLES || bytes.length >= whole) return null;
  return fault('cut-short', `${whole} bytes for ${count} triangles`, `${bytes.length} bytes`);
};

const readBinary = (bytes: Uint8Array): Result<ScanMesh> => {
  const count = countOf(bytes);
  if (count > MOST_TRIANGLES) return tooMany(count);
  const view = viewOf(bytes);
  const corners = new Float32Array(9 * count);
  for (let t = 0; t < count; t++) {
    const from = HEAD_BYTES + TRIANGLE_BYTES * t + NORMAL_BYTES;
    for (let k = 0; k < 9; k++) corners[9 * t + k] = view.getFloat32(from + 4 * k, true);
  }
  const welded = weldCorners(corners);
  return soundMesh('stl', welded.positions, welded.corners);
};

const readText = (bytes: Uint8Array): Result<ScanMesh> => {
  const reader: TextReader = { bytes, at: 0 };
  const list = growList();
  for (let word = readWord(reader); word !== ''; word = readWord(reader)) {
    if (word !== 'vertex') continue;
    for (let axis = 0; axis < 3; axis++) list.push(readNumber(reader));
    if (list.length() > 9 * MOST_TRIANGLES) return tooMany(list.length() / 9);
  }
  const corners = Float32Array.from(list.floats());
  if (corners.length % 9 !== 0) return fault('cut-short', 'three corners for every triangle');
  const welded = weldCorners(corners);
  return soundMesh('stl', welded.positions, welded.corners);
};

/** Reads an STL file, binary or text; corners at the same place become one point. */
export const readStl = (bytes: Uint8Array): Result<ScanMesh> => {
  if (isBinaryStl(bytes)) return readBinary(bytes);
  const first = readWord({ bytes, at: 0 });
  if (first === 'solid') return readText(bytes);
  return fault('cut-short', `${HEAD_BYTES + TRIANGLE_BYTES * countOf(bytes)} bytes`, `${bytes.length} bytes`);
};
