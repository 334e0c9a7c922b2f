import type { Result, Vec3 } from '../../base/index.ts';
import { latin } from './byte-text.ts';
import { fault, MOST_TRIANGLES, type ScanMesh, soundMesh, tooMany } from './scan-mesh.ts';

/** glTF 2.0 binary: a head of 12 bytes, then chunks of length, type and data. Numbers little-endian. */
const MAGIC = 0x46546c67;
const JSON_CHUNK = 0x4e4f534a;
const BIN_CHUNK = 0x004e4942;
const TRIANGLES_MODE = 4;
/** Component types of accessors, with their size and how they are read. */
const COMPONENTS: Readonly<Record<number, readonly [size: number, get: (view: DataView, at: number) => number]>> = {
  5121: [1, (view, at) => view.getUint8(at)],
  5123: [2, (view, at) => view.getUint16(at, true)],
  5125: [4, (view, at) => view.getUint32(at, true)],
  5126: [4, (view, at) => view.getFloat32(at, true)],
};

type Plain = Readonly<Record<string, unknown>>;
const plain = (value: unknown): Plain => (typeof value === 'object' && value !== null ? (value as Plain) : {});
const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);
const itemOf = (value: unknown, index: unknown): Plain => plain(listOf(value)[typeof index === 'number' ? index : -1]);
const numberOf = (value: unknown, otherwise: number): number => (typeof value === 'number' ? value : otherwise);

interface Parts {
  readonly json: Plain;
  readonly bin: DataView;
}

const chunksOf = (bytes: Uint8Array): Parts | null => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let json: Plain | null = null;
  let bin: DataView = new DataView(new ArrayBuffer(0));
  for (let at = 12; at + 8 <= bytes.length; ) {
    const [size, type] = [view.getUint32(at, true), view.getUint32(at + 4, true)];
    const from = at + 8;
    if (from + size > bytes.length) return null;
    if (type === JSON_CHUNK) {
      try {
        json = plain(JSON.parse(latin(bytes, from, from + size)));
      } catch {
        return null;
      }
    } else if (type === BIN_CHUNK) bin = new DataView(bytes.buffer, bytes.byteOffset + from, size);
    at = from + size;
  }
  return json ? { json, bin } : null;
};

/** All numbers of an accessor, or null where it points outside the file or is packed in a way we do not read. */
const numbersOf = ({ json, bin }: Parts, index: unknown, width: number): Float64Array | null => {
  const accessor = itemOf(json.accessors, index);
  const view = itemOf(json.bufferViews, accessor.bufferView);
  const component = COMPONENTS[numberOf(accessor.componentType, 0)];
  const count = numberOf(accessor.count, 0);
  if (!component || accessor.sparse !== undefined || numberOf(view.buffer, -1) !== 0) return null;
  const [size, get] = component;
  const stride = numberOf(view.byteStride, size * width);
  const from = numberOf(view.byteOffset, 0) + numberOf(accessor.byteOffset, 0);
  if (count > 0 && from + stride * (count - 1) + size * width > bin.byteLength) return null;
  const out = new Float64Array(count * width);
  for (let i = 0; i < count; i++)
    for (let k = 0; k < width; k++) out[i * width + k] = get(bin, from + i * stride + k * size);
  return out;
};

/** Four columns of four, as glTF writes a matrix. */
type Matrix = readonly number[];
const IDENTITY: Matrix = [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1];

const times = (a: Matrix, b: Matrix): Matrix =>
  Array.from({ length: 16 }, (_, i) => {
    const [column, row] = [i >> 2, i & 3];
    let sum = 0;
    for (let k = 0; k < 4; k++) sum += (a[4 * k + row] ?? 0) * (b[4 * column + k] ?? 0);
    return sum;
  });

/** Column-major matrix of translation · rotation (unit quaternion x, y, z, w) · scale. */
const composed = (node: Plain): Matrix => {
  const given = listOf(node.matrix);
  if (given.length === 16) return given.map((value) => numberOf(value, 0));
  const [x = 0, y = 0, z = 0, w = 1] = listOf(node.rotation).map((value) => numberOf(value, 0));
  const [sx = 1, sy = 1, sz = 1] = listOf(node.scale).map((value) => numberOf(value, 1));
  const [tx = 0, ty = 0, tz = 0] = listOf(node.translation).map((value) => numberOf(value, 0));
  return [
    ...[1 - 2 * (y * y + z * z), 2 * (x * y + w * z), 2 * (x * z - w * y)].map((part) => part * sx),
    0,
    ...[2 * (x * y - w * z), 1 - 2 * (x * x + z * z), 2 * (y * z + w * x)].map((part) => part * sy),
    0,
    ...[2 * (x * z + w * y), 2 * (y * z - w * x), 1 - 2 * (x * x + y * y)].map((part) => part * sz),
    0,
    tx,
    ty,
    tz,
    1,
  ];
};

interface Placed {
  readonly mesh: Plain;
  readonly matrix: Matrix;
}

/** Deeper than any scan's tree; keeps a tree that holds itself from running on. */
const MOST_LEVELS = 64;

const placedMeshes = (json: Plain): readonly Placed[] => {
  const found: Placed[] = [];
  const visit = (index: unknown, outer: Matrix, level: number): void => {
    const node = itemOf(json.nodes, index);
    const matrix = times(outer, composed(node));
    if (node.mesh !== undefined) found.push({ mesh: itemOf(json.meshes, node.mesh), matrix });
    if (level < MOST_LEVELS) for (const child of listOf(node.children)) visit(child, matrix, level + 1);
  };
  const scene = itemOf(json.scenes, numberOf(json.scene, 0));
  for (const root of listOf(scene.nodes)) visit(root, IDENTITY, 0);
  return found.length > 0 ? found : listOf(json.meshes).map((mesh) => ({ mesh: plain(mesh), matrix: IDENTITY }));
};

const moved = (m: Matrix, [x, y, z]: Vec3): Vec3 => [
  (m[0] ?? 0) * x + (m[4] ?? 0) * y + (m[8] ?? 0) * z + (m[12] ?? 0),
  (m[1] ?? 0) * x + (m[5] ?? 0) * y + (m[9] ?? 0) * z + (m[13] ?? 0),
  (m[2] ?? 0) * x + (m[6] ?? 0) * y + (m[10] ?? 0) * z + (m[14] ?? 0),
];

interface Piece {
  readonly positions: Float64Array;
  readonly triangles: Uint32Array;
}

const pieceOf = (parts: Parts, primitive: Plain, matrix: Matrix): Piece | null => {
  const local = numbersOf(parts, plain(primitive.attributes).POSITION, 3);
  if (!local) return null;
  const positions = new Float64Array(local.length);
  for (let i = 0; i < local.length; i += 3)
    positions.set(moved(matrix, [local[i] ?? 0, local[i + 1] ?? 0, local[i + 2] ?? 0]), i);
  if (primitive.indices === undefined)
    return { positions, triangles: Uint32Array.from({ length: positions.length / 3 }, (_, i) => i) };
  const indices = numbersOf(parts, primitive.indices, 1);
  return indices ? { positions, triangles: Uint32Array.from(indices) } : null;
};

const joined = (pieces: readonly Piece[]): Piece => {
  const positions = new Float64Array(pieces.reduce((sum, piece) => sum + piece.positions.length, 0));
  const triangles = new Uint32Array(pieces.reduce((sum, piece) => sum + piece.triangles.length, 0));
  let [point, corner] = [0, 0];
  for (const piece of pieces) {
    positions.set(piece.positions, 3 * point);
    for (let i = 0; i < piece.triangles.length; i++) triangles[corner + i] = (piece.triangles[i] ?? 0) + point;
    point += piece.positions.length / 3;
    corner += piece.triangles.length;
  }
  return { positions, triangles };
};

/** Reads points and triangles of a glTF 2.0 binary file, its nodes' placements applied. glTF lengths are metres. */
export const readGlb = (bytes: Uint8Array): Result<ScanMesh> => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length < 20 || view.getUint32(0, true) !== MAGIC) return fault('not-a-mesh', 'a glTF binary file');
  if (view.getUint32(4, true) !== 2) return fault('not-a-mesh', 'glTF version 2', `version ${view.getUint32(4, true)}`);
  if (view.getUint32(8, true) > bytes.length)
    return fault('cut-short', `${view.getUint32(8, true)} bytes`, `${bytes.length} bytes`);
  const parts = chunksOf(bytes);
  if (!parts) return fault('cut-short', 'whole chunks of JSON and data');
  const needs = listOf(parts.json.extensionsRequired).map(String);
  if (needs.length > 0) return fault('compressed', 'a mesh saved without compression', needs.join(', '));
  const pieces: Piece[] = [];
  for (const { mesh, matrix } of placedMeshes(parts.json))
    for (const raw of listOf(mesh.primitives)) {
      const primitive = plain(raw);
      if (numberOf(primitive.mode, TRIANGLES_MODE) !== TRIANGLES_MODE) continue;
      const piece = pieceOf(parts, primitive, matrix);
      if (!piece)
        return fault(
          'bad-index',
          'positions and triangles inside the file',
          typeof mesh.name === 'string' ? mesh.name : 'a mesh without a name',
        );
      pieces.push(piece);
      const count = pieces.reduce((sum, own) => sum + own.triangles.length / 3, 0);
      if (count > MOST_TRIANGLES) return tooMany(count);
    }
  const { positions, triangles } = joined(pieces);
  return soundMesh('glb', positions, triangles);
};
