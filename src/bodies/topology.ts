import type { Vec3 } from '../base/index.ts';
import type { ConvexShape } from './shapes.ts';

/** Which vertices an edge or a triangle of a convex shape joins, as indices into its vertices. */
export interface Topology {
  readonly edges: readonly (readonly [number, number])[];
  readonly triangles: readonly (readonly [number, number, number])[];
}

/** Shapes moved by shapeAt share their list of faces, so the list is the key. */
const byFaces = new WeakMap<readonly (readonly number[])[], Topology>();
const byCount = new Map<number, Topology>();

const fromFaces = (faces: ConvexShape['faces']): Topology => {
  const edges: [number, number][] = [];
  const triangles: [number, number, number][] = [];
  const seen = new Set<string>();
  for (const face of faces) {
    const [hub] = face;
    if (hub === undefined) continue;
    face.forEach((corner, i) => {
      const next = face[(i + 1) % face.length] ?? hub;
      const key = corner < next ? `${corner}:${next}` : `${next}:${corner}`;
      if (!seen.has(key)) edges.push([corner, next]);
      seen.add(key);
      if (i > 0 && i + 1 < face.length) triangles.push([hub, corner, next]);
    });
  }
  return { edges, triangles };
};

/** Every pair and every triple: more than the hull has, never less, and all of it lies in the hull. */
const fromCount = (count: number): Topology => {
  const edges: [number, number][] = [];
  const triangles: [number, number, number][] = [];
  for (let i = 0; i < count; i++)
    for (let j = i + 1; j < count; j++) {
      edges.push([i, j]);
      for (let k = j + 1; k < count; k++) triangles.push([i, j, k]);
    }
  return { edges, triangles };
};

/**
 * Edges and triangles of a shape. Where the shape states no faces (bars, balls, flat pieces) every pair and every
 * triple of vertices stands in, which suits a search for the nearest or the least: it only looks at more.
 */
export const topologyOf = (shape: ConvexShape): Topology => {
  if (shape.faces.length === 0) {
    const count = shape.vertices.length;
    const known = byCount.get(count);
    if (known) return known;
    const made = fromCount(count);
    byCount.set(count, made);
    return made;
  }
  const known = byFaces.get(shape.faces);
  if (known) return known;
  const made = fromFaces(shape.faces);
  byFaces.set(shape.faces, made);
  return made;
};

/** The vertex of that index. Throws on an index the shape does not have: the shape is broken. */
export const vertexOf = (shape: ConvexShape, index: number): Vec3 => {
  const vertex = shape.vertices[index];
  if (!vertex) throw new RangeError(`shape of ${shape.vertices.length} vertices has no vertex ${index}`);
  return vertex;
};
