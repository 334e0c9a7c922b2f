import { add, cross, length, scale, subtract, unit, type Vec2, type Vec3 } from '../../base/index.ts';
import type { ConvexShape } from '../../bodies/index.ts';
import {
  type Colour,
  flatNormal,
  type LineData,
  type MeshData,
  pushCorner,
  pushLine,
  pushTriangles,
} from './mesh-data.ts';

export interface BodyPaint {
  readonly mesh: MeshData;
  readonly lines: LineData | null;
  readonly colour: Colour;
  readonly shadeAt: (point: Vec3, normal: Vec3) => number;
}

const pushFlatFace = (corners: readonly Vec3[], paint: BodyPaint): void => {
  const normal = flatNormal(corners);
  if (!normal) return;
  const fan = corners.slice(2).map((_, i) => [0, i + 1, i + 2] as const);
  const drawn = corners.map((at) => ({ at, uv: [0, 0] as const, shade: paint.shadeAt(at, normal) }));
  pushTriangles(paint.mesh, drawn, fan, normal, paint.colour);
};

/** Sides of a round bar, and rings of its round ends. */
const SIDES = 18;
const END_RINGS = 4;

/** Two unit vectors across `axis`. */
export const acrossAxes = (axis: Vec3): readonly [Vec3, Vec3] => {
  const helper: Vec3 = Math.abs(axis[2]) < 0.9 ? [0, 0, 1] : [1, 0, 0];
  const first = unit(cross(helper, axis));
  return [first, cross(axis, first)];
};

/** Unit vectors round an axis, one for each side and the first again. */
const spokes = (axis: Vec3): readonly Vec3[] => {
  const [p, q] = acrossAxes(axis);
  return Array.from({ length: SIDES + 1 }, (_, side) => {
    const angle = (2 * Math.PI * side) / SIDES;
    return add(scale(p, Math.cos(angle)), scale(q, Math.sin(angle)));
  });
};

type Ring = readonly [along: number, radius: number];

/** Corners of the two triangles of a side: near ring, near ring, far ring; near, far, far. */
const SIDE_CORNERS: readonly (readonly [far: 0 | 1, next: 0 | 1])[] = [
  [0, 0],
  [0, 1],
  [1, 1],
  [0, 0],
  [1, 1],
  [1, 0],
];

const FLAT: Vec2 = [0, 0];

/** A surface of revolution about a line: rings of [along, radius] from one end to the other. */
export const pushTurned = (from: Vec3, axis: Vec3, rings: readonly Ring[], paint: BodyPaint): void => {
  const round = spokes(axis);
  const circles = rings.map(([along, radius]) => {
    const middle = add(from, scale(axis, along));
    return round.map((spoke) => add(middle, scale(spoke, radius)));
  });
  rings.slice(1).forEach(([along, radius], i) => {
    const [alongBefore, radiusBefore] = rings[i] ?? [along, radius];
    const slope = Math.hypot(along - alongBefore, radius - radiusBefore) || 1;
    const steep = (along - alongBefore) / slope;
    const lean = scale(axis, (radiusBefore - radius) / slope);
    const normals = round.map((spoke) => add(scale(spoke, steep), lean));
    const pair = [circles[i], circles[i + 1]];
    for (let side = 0; side < SIDES; side++)
      for (const [far, next] of SIDE_CORNERS) {
        const point = pair[far]?.[side + next];
        const normal = normals[side + next];
        if (point && normal) pushCorner(paint.mesh, point, normal, FLAT, paint.colour, paint.shadeAt(point, normal));
      }
  });
  if (!paint.lines) return;
  for (const [i, [, radius]] of rings.entries()) {
    const circle = circles[i] ?? [];
    if (radius <= 0 || (i > 0 && i < rings.length - 1)) continue;
    for (let side = 0; side < SIDES; side++) {
      const [a, b] = [circle[side], circle[side + 1]];
      if (a && b) pushLine(paint.lines, a, b);
    }
  }
};

/** Rings of a bar of the length and radius with round ends, from −radius to length + radius. */
export const roundEnds = (long: number, radius: number): readonly (readonly [number, number])[] => {
  const quarter = Array.from({ length: END_RINGS + 1 }, (_, i) => (i / END_RINGS) * (Math.PI / 2));
  const near = quarter.map((angle) => [-Math.cos(angle) * radius, Math.sin(angle) * radius] as const);
  const far = quarter.map((angle) => [long + Math.sin(angle) * radius, Math.cos(angle) * radius] as const);
  return [...near, ...far];
};

/** Adds a convex body: flat faces as they are, bars and balls turned round their line. */
export const pushConvex = (shape: ConvexShape, paint: BodyPaint): void => {
  if (shape.faces.length === 0) {
    const [from, to = from] = shape.vertices;
    if (!from || !to || !(shape.radius > 0)) return;
    const long = length(subtract(to, from));
    const axis: Vec3 = long > 0 ? unit(subtract(to, from)) : [0, 0, 1];
    pushTurned(from, axis, roundEnds(long, shape.radius), { ...paint, lines: null });
    return;
  }
  const drawn = new Set<string>();
  for (const face of shape.faces) {
    const corners = face.map((index) => shape.vertices[index]).filter((corner) => corner !== undefined);
    pushFlatFace(corners, paint);
    if (!paint.lines) continue;
    for (const [i, a] of face.entries()) {
      const b = face[(i + 1) % face.length] ?? a;
      const key = a < b ? `${a}-${b}` : `${b}-${a}`;
      const [from, to] = [shape.vertices[a], shape.vertices[b]];
      if (!drawn.has(key) && from && to) pushLine(paint.lines, from, to);
      drawn.add(key);
    }
  }
};
