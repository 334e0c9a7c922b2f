import { good, type Result } from '../../base/index.ts';
import { latin, readNumber, type TextReader } from './byte-text.ts';
import { growList } from './grow-list.ts';
import { fault, MOST_TRIANGLES, type ScanMesh, soundMesh, tooMany } from './scan-mesh.ts';

type Kind = 'i1' | 'u1' | 'i2' | 'u2' | 'i4' | 'u4' | 'f4' | 'f8';

const KINDS: Readonly<Record<string, Kind>> = {
  char: 'i1',
  int8: 'i1',
  uchar: 'u1',
  uint8: 'u1',
  short: 'i2',
  int16: 'i2',
  ushort: 'u2',
  uint16: 'u2',
  int: 'i4',
  int32: 'i4',
  uint: 'u4',
  uint32: 'u4',
  float: 'f4',
  float32: 'f4',
  double: 'f8',
  float64: 'f8',
};

type Taker = () => number;

interface Property {
  readonly name: string;
  readonly kind: Kind;
  /** What counts a list, or null for a single value. */
  readonly count: Kind | null;
}

interface Element {
  readonly name: string;
  readonly count: number;
  readonly properties: readonly Property[];
}

interface Head {
  readonly format: string;
  readonly elements: readonly Element[];
  readonly bodyAt: number;
}

const END = 'end_header';
/** A head longer than this is none. */
const MOST_HEAD_BYTES = 65_536;

const readHead = (bytes: Uint8Array): Head | null => {
  const text = latin(bytes, 0, MOST_HEAD_BYTES);
  const end = text.indexOf(END);
  if (!/^ply\r?\n/.test(text) || end < 0) return null;
  let format = '';
  const elements: { name: string; count: number; properties: Property[] }[] = [];
  for (const line of text.slice(0, end).split(/\r?\n/)) {
    const [word, a = '', b = '', c = '', d = ''] = line.trim().split(/\s+/);
    if (word === 'format') format = a;
    else if (word === 'element') elements.push({ name: a, count: Number(b), properties: [] });
    else if (word === 'property') {
      const list = a === 'list';
      const kind = KINDS[list ? c : a];
      const count = list ? KINDS[b] : null;
      if (kind === undefined || count === undefined) return null;
      elements.at(-1)?.properties.push({ name: list ? d : b, kind, count });
    }
  }
  const newline = text.indexOf('\n', end);
  return elements.some(({ count }) => !Number.isInteger(count) || count < 0) || newline < 0
    ? null
    : { format, elements, bodyAt: newline + 1 };
};

/** Takes one value after another from the body, text or binary. NaN past its end. */
const takersOf = (bytes: Uint8Array, { format, bodyAt }: Head): Readonly<Record<Kind, Taker>> | null => {
  if (format === 'ascii') {
    const reader: TextReader = { bytes, at: bodyAt };
    const take: Taker = () => readNumber(reader);
    return { i1: take, u1: take, i2: take, u2: take, i4: take, u4: take, f4: take, f8: take };
  }
  if (format !== 'binary_little_endian' && format !== 'binary_big_endian') return null;
  const little = format === 'binary_little_endian';
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let at = bodyAt;
  const step =
    (size: number, get: (from: number) => number): Taker =>
    () => {
      if (at + size > bytes.length) return Number.NaN;
      const value = get(at);
      at += size;
      return value;
    };
  return {
    i1: step(1, (from) => view.getInt8(from)),
    u1: step(1, (from) => view.getUint8(from)),
    i2: step(2, (from) => view.getInt16(from, little)),
    u2: step(2, (from) => view.getUint16(from, little)),
    i4: step(4, (from) => view.getInt32(from, little)),
    u4: step(4, (from) => view.getUint32(from, little)),
    f4: step(4, (from) => view.getFloat32(from, little)),
    f8: step(8, (from) => view.getFloat64(from, little)),
  };
};

const AXES: Readonly<Record<string, number>> = { x: 0, y: 1, z: 2 };
const CORNER_LISTS: ReadonlySet<string> = new Set(['vertex_indices', 'vertex_index']);

const readVertices = (element: Element, take: Readonly<Record<Kind, Taker>>): Float64Array => {
  const positions = new Float64Array(3 * element.count);
  const columns = element.properties.map(({ name, kind }) => ({ axis: AXES[name] ?? -1, next: take[kind] }));
  for (let i = 0; i < element.count; i++)
    for (const { axis, next } of columns) {
      const value = next();
      if (axis >= 0) positions[3 * i + axis] = value;
    }
  return positions;
};

const skipValue = ({ kind, count }: Property, take: Readonly<Record<Kind, Taker>>): void => {
  const values = count === null ? 1 : take[count]();
  for (let k = 0; k < values; k++) take[kind]();
};

/** Faces with more corners are split into fans. Null where the body ends too soon. */
const readFaces = (element: Element, take: Readonly<Record<Kind, Taker>>): Result<Uint32Array> => {
  const list = growList();
  for (let face = 0; face < element.count; face++)
    for (const property of element.properties) {
      if (property.count === null || !CORNER_LISTS.has(property.name)) {
        skipValue(property, take);
        continue;
      }
      const corners = take[property.count]();
      const next = take[property.kind];
      const hub = next();
      let before = next();
      if (!(corners > 0)) return fault('cut-short', `${element.count} faces`, `${face} faces`);
      for (let k = 2; k < corners; k++) {
        const corner = next();
        if (!(corner >= 0)) return fault('cut-short', `${element.count} faces`, `${face} faces`);
        list.push(hub);
        list.push(before);
        list.push(corner);
        before = corner;
      }
      if (list.length() > 3 * MOST_TRIANGLES) return tooMany(list.length() / 3);
    }
  return good(list.indices());
};

/** Reads a PLY file, text or binary of either byte order. Colours, normals and other elements are passed by. */
export const readPly = (bytes: Uint8Array): Result<ScanMesh> => {
  const head = readHead(bytes);
  const take = head ? takersOf(bytes, head) : null;
  if (!head || !take) return fault('not-a-mesh', 'a sound PLY head: format, element vertex, element face');
  if (head.elements.some(({ name, count }) => name === 'face' && count > MOST_TRIANGLES))
    return tooMany(Math.max(...head.elements.map(({ count }) => count)));
  let positions = new Float64Array();
  let triangles = new Uint32Array();
  for (const element of head.elements) {
    // A body shorter than its head promises would keep the loops busy for nothing.
    if (element.count > bytes.length) return fault('cut-short', `${element.count} rows of ${element.name}`);
    if (element.name === 'vertex') positions = Float64Array.from(readVertices(element, take));
    else if (element.name === 'face') {
      const read = readFaces(element, take);
      if (!read.ok) return read;
      triangles = Uint32Array.from(read.value);
    } else for (let i = 0; i < element.count; i++) for (const property of element.properties) skipValue(property, take);
  }
  return soundMesh('ply', positions, triangles);
};
