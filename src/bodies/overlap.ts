import { ROUNDING_MM, ROUNDING_RAD, scale, type Vec3 } from '../base/index.ts';
import type { ConvexShape } from './shapes.ts';
import { topologyOf, vertexOf } from './topology.ts';

/** How far b must move along `direction` to part from a: `depth` ≥ 0 when they overlap, below 0 when apart. */
export interface Overlap {
  readonly depth: number;
  /** Unit vector from a towards b. */
  readonly direction: Vec3;
}

/** Two directions this near (square of the sine) are one: at a metre they differ by rounding. */
const SAME_DIRECTION = ROUNDING_RAD ** 2;

const AXES: readonly Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

/** Adds the direction of (x, y, z) unless it or its opposite is there already. */
const addDirection = (known: Vec3[], x: number, y: number, z: number): void => {
  const size = Math.sqrt(x * x + y * y + z * z);
  if (!(size > 0)) return;
  const p = x / size;
  const q = y / size;
  const r = z / size;
  for (const other of known) {
    const u = other[1] * r - other[2] * q;
    const v = other[2] * p - other[0] * r;
    const w = other[0] * q - other[1] * p;
    if (u * u + v * v + w * w < SAME_DIRECTION) return;
  }
  known.push([p, q, r]);
};

const addCross = (known: Vec3[], u: Vec3, v: Vec3): void =>
  addDirection(known, u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]);

const edgeDirections = (shape: ConvexShape): readonly Vec3[] => {
  const known: Vec3[] = [];
  for (const [i, j] of topologyOf(shape).edges) {
    const [from, to] = [vertexOf(shape, i), vertexOf(shape, j)];
    addDirection(known, to[0] - from[0], to[1] - from[1], to[2] - from[2]);
  }
  return known;
};

/** One normal a plane of the shape (hot loop: scalars only). */
const faceNormals = (shape: ConvexShape): readonly Vec3[] => {
  const known: Vec3[] = [];
  for (const [i, j, k] of topologyOf(shape).triangles) {
    const p = vertexOf(shape, i);
    const q = vertexOf(shape, j);
    const r = vertexOf(shape, k);
    const ux = q[0] - p[0];
    const uy = q[1] - p[1];
    const uz = q[2] - p[2];
    const vx = r[0] - p[0];
    const vy = r[1] - p[1];
    const vz = r[2] - p[2];
    const x = uy * vz - uz * vy;
    const y = uz * vx - ux * vz;
    const z = ux * vy - uy * vx;
    // A sliver's normal is noise; the faces around it carry the true ones.
    const least =
      ROUNDING_MM * (Math.abs(ux) + Math.abs(uy) + Math.abs(uz) + Math.abs(vx) + Math.abs(vy) + Math.abs(vz));
    if (x * x + y * y + z * z > least * least) addDirection(known, x, y, z);
  }
  return known;
};

/** Least and greatest height of the vertices along a direction, written to `span` (hot loop: no allocation). */
const setSpan = (vertices: readonly Vec3[], along: Vec3, span: { low: number; high: number }): void => {
  let low = Infinity;
  let high = -Infinity;
  for (const vertex of vertices) {
    const height = vertex[0] * along[0] + vertex[1] * along[1] + vertex[2] * along[2];
    if (height < low) low = height;
    if (height > high) high = height;
  }
  span.low = low;
  span.high = high;
};

const spanA = { low: 0, high: 0 };
const spanB = { low: 0, high: 0 };

/** Depth along a direction and its opposite, whichever is less. Positive keeps the direction. */
const depthAlong = (a: ConvexShape, b: ConvexShape, direction: Vec3): Overlap => {
  setSpan(a.vertices, direction, spanA);
  setSpan(b.vertices, direction, spanB);
  const ahead = spanA.high - spanB.low;
  const behind = spanB.high - spanA.low;
  return ahead <= behind ? { depth: ahead, direction } : { depth: behind, direction: scale(direction, -1) };
};

const bothEdges = (a: ConvexShape, b: ConvexShape): readonly Vec3[] => {
  const known: Vec3[] = [];
  const edgesB = edgeDirections(b);
  for (const e of edgeDirections(a)) for (const f of edgesB) addCross(known, e, f);
  return known;
};

/** Directions for shapes without volume, whose difference may be flat, straight or a point. */
const thinDirections = (a: ConvexShape, b: ConvexShape): readonly Vec3[] => {
  if (a.faces.length > 0 && b.faces.length > 0) return [];
  const known: Vec3[] = [...AXES];
  for (const e of [...edgeDirections(a), ...edgeDirections(b)]) for (const axis of AXES) addCross(known, e, axis);
  return known;
};

/**
 * Depth by which the cores of two convex shapes overlap (radii left out) and the direction of least separation: the
 * least over every face normal of either and every cross product of an edge of one with an edge of the other, which
 * are all the face normals their difference can have (separating axis theorem). A face normal is preferred to an
 * edge pair of the same depth.
 */
export const overlapDepth = (a: ConvexShape, b: ConvexShape): Overlap => {
  let best: Overlap = { depth: Infinity, direction: [1, 0, 0] };
  const look = (directions: readonly Vec3[]): void => {
    for (const direction of directions) {
      const found = depthAlong(a, b, direction);
      if (found.depth < best.depth - ROUNDING_MM) best = found;
    }
  };
  look(faceNormals(a));
  look(faceNormals(b));
  look(bothEdges(a, b));
  look(thinDirections(a, b));
  return best;
};
