import { add, cross, dot, ROUNDING_MM, scale, subtract, type Vec3 } from '../base/index.ts';
import { convexHull } from './hull.ts';
import type { ConvexShape } from './shapes.ts';

/** What lies on the inner side of a plane: every point with normal · point ≤ offset; the normal has length 1. */
export interface HalfSpace {
  readonly normal: Vec3;
  readonly offset: number;
}

/** How far a point lies beyond the plane of a half space (mm); negative inside it. */
export const beyondPlane = ({ normal, offset }: HalfSpace, point: Vec3): number => dot(normal, point) - offset;

const clippedRing = (ring: readonly Vec3[], half: HalfSpace): readonly Vec3[] =>
  ring.flatMap((point, i) => {
    const next = ring[(i + 1) % ring.length] ?? point;
    const [here, there] = [beyondPlane(half, point), beyondPlane(half, next)];
    const kept = here <= 0 ? [point] : [];
    if (here < 0 === there < 0 || here === 0 || there === 0) return kept;
    return [...kept, add(point, scale(subtract(next, point), here / (here - there)))];
  });

const ringOf = ({ vertices }: Pick<ConvexShape, 'vertices'>, face: readonly number[]): readonly Vec3[] =>
  face.map((index) => vertices[index]).filter((vertex) => vertex !== undefined);

const clippedOnce = (shape: ConvexShape, half: HalfSpace): ConvexShape | null => {
  const over = shape.vertices.map((vertex) => beyondPlane(half, vertex));
  if (over.every((mm) => mm <= ROUNDING_MM)) return shape;
  if (over.every((mm) => mm >= -ROUNDING_MM)) return null;
  const points = shape.faces.flatMap((face) => clippedRing(ringOf(shape, face), half));
  const hull = points.length < 4 ? null : convexHull(points);
  return hull && hull.faces.length > 0 ? hull : null;
};

/** The part of a convex solid with plane faces that lies in every half space, or null where nothing with volume does. */
export const clippedShape = (shape: ConvexShape, halves: readonly HalfSpace[]): ConvexShape | null =>
  halves.reduce<ConvexShape | null>((left, half) => left && clippedOnce(left, half), shape);

/** Volume (mm³) and centre of volume of a convex solid with plane faces, from tetrahedra about one of its corners. */
export const convexVolume = ({
  vertices,
  faces,
}: ConvexShape): { readonly volumeMm3: number; readonly centre: Vec3 } => {
  const from = vertices[0] ?? [0, 0, 0];
  let volumeMm3 = 0;
  let moment: Vec3 = [0, 0, 0];
  for (const face of faces) {
    const [hub, ...rest] = ringOf({ vertices }, face).map((vertex) => subtract(vertex, from));
    rest.slice(1).forEach((c, i) => {
      const b = rest[i];
      if (!hub || !b) return;
      const part = dot(hub, cross(b, c)) / 6;
      volumeMm3 += part;
      moment = add(moment, scale(add(add(hub, b), c), part / 4));
    });
  }
  return { volumeMm3, centre: volumeMm3 > 0 ? add(from, scale(moment, 1 / volumeMm3)) : from };
};
