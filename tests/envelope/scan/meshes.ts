import { type Pose, placed, type Vec3 } from '../../../src/base/index.ts';

/** A mesh as lists, before it becomes a file. */
export interface Plain {
  readonly points: readonly Vec3[];
  readonly triangles: readonly (readonly [number, number, number])[];
}

/** A closed box with each face split into n × n squares of two triangles, looking outward. */
export const boxMesh = (min: Vec3, max: Vec3, n: number): Plain => {
  const byKey = new Map<string, number>();
  const points: Vec3[] = [];
  const triangles: (readonly [number, number, number])[] = [];
  const at = (cell: Vec3): number => {
    const key = cell.join(' ');
    const known = byKey.get(key);
    if (known !== undefined) return known;
    byKey.set(key, points.length);
    const along = (axis: 0 | 1 | 2): number => min[axis] + ((max[axis] - min[axis]) * cell[axis]) / n;
    return points.push([along(0), along(1), along(2)]) - 1;
  };
  for (const axis of [0, 1, 2] as const)
    for (const side of [0, n])
      for (let i = 0; i < n; i++)
        for (let j = 0; j < n; j++) {
          const [u, v] = [((axis + 1) % 3) as 0 | 1 | 2, ((axis + 2) % 3) as 0 | 1 | 2];
          const corner = (di: number, dj: number): number => {
            const cell: [number, number, number] = [0, 0, 0];
            cell[axis] = side;
            cell[u] = i + di;
            cell[v] = j + dj;
            return at(cell);
          };
          const quad = [corner(0, 0), corner(1, 0), corner(1, 1), corner(0, 1)];
          const [a = 0, b = 0, c = 0, d = 0] = side === 0 ? quad.toReversed() : quad;
          triangles.push([a, b, c], [a, c, d]);
        }
  return { points, triangles };
};

export const movedMesh = (mesh: Plain, pose: Pose): Plain => ({
  ...mesh,
  points: mesh.points.map((point) => placed(pose, point)),
});

const encoded = (text: string): Uint8Array => new TextEncoder().encode(text);

export const asStlText = ({ points, triangles }: Plain): Uint8Array =>
  encoded(
    [
      'solid scan',
      ...triangles.map(
        (triangle) =>
          `facet normal 0 0 0\n outer loop\n${triangle.map((i) => `  vertex ${points[i]?.join(' ')}`).join('\n')}\n endloop\nendfacet`,
      ),
      'endsolid scan',
    ].join('\n'),
  );

export const asStl = ({ points, triangles }: Plain): Uint8Array => {
  const bytes = new Uint8Array(84 + 50 * triangles.length);
  const view = new DataView(bytes.buffer);
  view.setUint32(80, triangles.length, true);
  triangles.forEach((triangle, t) => {
    triangle.forEach((i, k) => {
      points[i]?.forEach((at, axis) => {
        view.setFloat32(84 + 50 * t + 12 + 12 * k + 4 * axis, at, true);
      });
    });
  });
  return bytes;
};

export const asObj = ({ points, triangles }: Plain): Uint8Array =>
  encoded(
    [
      '# a scan',
      'o scan',
      ...points.map((point) => `v ${point.join(' ')}`),
      'vn 0 0 1',
      ...triangles.map((triangle, t) =>
        t % 2 === 0
          ? `f ${triangle.map((i) => `${i + 1}//1`).join(' ')}`
          : `f ${triangle.map((i) => i - points.length).join(' ')}`,
      ),
    ].join('\n'),
  );

export const asPlyText = ({ points, triangles }: Plain): Uint8Array =>
  encoded(
    [
      'ply',
      'format ascii 1.0',
      'comment a scan',
      `element vertex ${points.length}`,
      'property float x',
      'property float y',
      'property float z',
      'property uchar red',
      `element face ${triangles.length}`,
      'property list uchar int vertex_indices',
      'end_header',
      ...points.map((point) => `${point.join(' ')} 7`),
      ...triangles.map((triangle) => `3 ${triangle.join(' ')}`),
      '',
    ].join('\n'),
  );

export const asPly = ({ points, triangles }: Plain, little: boolean): Uint8Array => {
  const head = encoded(
    [
      'ply',
      `format binary_${little ? 'little' : 'big'}_endian 1.0`,
      `element vertex ${points.length}`,
      'property double x',
      'property double y',
      'property double z',
      'property uchar red',
      `element face ${triangles.length}`,
      'property uchar flags',
      'property list uchar uint vertex_indices',
      'end_header',
      '',
    ].join('\n'),
  );
  const bytes = new Uint8Array(head.length + 25 * points.length + 14 * triangles.length);
  bytes.set(head);
  const view = new DataView(bytes.buffer);
  let at = head.length;
  for (const point of points) {
    for (const c of point) {
      view.setFloat64(at, c, little);
      at += 8;
    }
    view.setUint8(at++, 7);
  }
  for (const triangle of triangles) {
    view.setUint8(at++, 1);
    view.setUint8(at++, 3);
    for (const i of triangle) {
      view.setUint32(at, i, little);
      at += 4;
    }
  }
  return bytes;
};

/** A glTF binary of one mesh under a node that doubles it and lifts it by ten. */
export const asGlb = ({ points, triangles }: Plain, extra: Record<string, unknown> = {}): Uint8Array => {
  const positions = Float32Array.from(points.flat());
  const indices = Uint32Array.from(triangles.flat());
  const bin = new Uint8Array(positions.byteLength + indices.byteLength);
  bin.set(new Uint8Array(positions.buffer));
  bin.set(new Uint8Array(indices.buffer), positions.byteLength);
  const json = JSON.stringify({
    asset: { version: '2.0' },
    scene: 0,
    scenes: [{ nodes: [0] }],
    nodes: [
      { children: [1], translation: [0, 10, 0] },
      { mesh: 0, scale: [2, 2, 2] },
    ],
    meshes: [{ primitives: [{ attributes: { POSITION: 0 }, indices: 1 }] }],
    accessors: [
      { bufferView: 0, componentType: 5126, count: points.length, type: 'VEC3' },
      { bufferView: 1, componentType: 5125, count: indices.length, type: 'SCALAR' },
    ],
    bufferViews: [
      { buffer: 0, byteOffset: 0, byteLength: positions.byteLength },
      { buffer: 0, byteOffset: positions.byteLength, byteLength: indices.byteLength },
    ],
    buffers: [{ byteLength: bin.length }],
    ...extra,
  });
  const text = encoded(json.padEnd(Math.ceil(json.length / 4) * 4));
  const bytes = new Uint8Array(12 + 8 + text.length + 8 + bin.length);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, 0x46546c67, true);
  view.setUint32(4, 2, true);
  view.setUint32(8, bytes.length, true);
  view.setUint32(12, text.length, true);
  view.setUint32(16, 0x4e4f534a, true);
  bytes.set(text, 20);
  view.setUint32(20 + text.length, bin.length, true);
  view.setUint32(24 + text.length, 0x004e4942, true);
  bytes.set(bin, 28 + text.length);
  return bytes;
};
