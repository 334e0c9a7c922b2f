import { boxAround, placed, type Vec2, type Vec3 } from '../../../../base/index.ts';
import type { DeepReadonly, Solid, Zone } from '../../../../design/index.ts';
import type { SolvedCarcass } from '../../../../fitout/index.ts';

/** An outline as the drawing of the survey shows it, in the two axes of that drawing. */
export type Outline =
  | { readonly shape: 'polygon'; readonly corners: readonly Vec2[] }
  | { readonly shape: 'bar'; readonly from: Vec2; readonly to: Vec2; readonly radius: number };

/** Two of the three vehicle axes. */
export type Plane = (point: Vec3) => Vec2;
/** Seen from the rear: left of the vehicle at the left, up is up. */
export const FROM_REAR: Plane = ([, y, z]) => [-y, z];
/** Seen from above: forward is up, left of the vehicle at the left. */
export const FROM_ABOVE: Plane = ([x, y]) => [-y, x];
/** Seen from the right side: rear at the left, up is up. */
export const FROM_SIDE: Plane = ([x, , z]) => [x, z];

const rectangle = (a: Vec2, b: Vec2): Outline => {
  const [left, right] = [Math.min(a[0], b[0]), Math.max(a[0], b[0])];
  const [low, high] = [Math.min(a[1], b[1]), Math.max(a[1], b[1])];
  return {
    shape: 'polygon',
    corners: [
      [left, low],
      [right, low],
      [right, high],
      [left, high],
    ],
  };
};

/** The outline of a solid of the survey in a plane; a side outline shows as itself from the side, else as its box. */
export const outlineOf = (solid: DeepReadonly<Solid>, plane: Plane): Outline => {
  if (solid.shape === 'box') return rectangle(plane(solid.min), plane(solid.max));
  if (solid.shape === 'capsule')
    return { shape: 'bar', from: plane(solid.from), to: plane(solid.to), radius: solid.radiusMm };
  if (plane === FROM_SIDE) return { shape: 'polygon', corners: solid.outline };
  const box = boxAround(
    solid.outline.flatMap(([x, z]): Vec3[] => [
      [x, solid.fromY, z],
      [x, solid.toY, z],
    ]),
  );
  return rectangle(plane(box.min), plane(box.max));
};

/** The outline of a zone: from above its own line, where it has one. */
export const zoneOutline = ({ solid, outlineFromAbove }: DeepReadonly<Zone>, plane: Plane): Outline =>
  plane === FROM_ABOVE && outlineFromAbove
    ? { shape: 'polygon', corners: outlineFromAbove.map(([x, y]) => FROM_ABOVE([x, y, 0])) }
    : outlineOf(solid, plane);

/** True when the solid stands at this depth. */
export const solidStandsAt = (solid: DeepReadonly<Solid>, x: number): boolean => {
  if (solid.shape === 'box') return solid.min[0] <= x && x <= solid.max[0];
  if (solid.shape === 'side-prism') {
    const xs = solid.outline.map((point) => point[0]);
    return Math.min(...xs) <= x && x <= Math.max(...xs);
  }
  const [a, b] = [solid.from[0], solid.to[0]];
  return Math.min(a, b) - solid.radiusMm <= x && x <= Math.max(a, b) + solid.radiusMm;
};

/** The box of a solved carcass in vehicle axes. */
export const carcassBox = (carcass: DeepReadonly<SolvedCarcass>) => {
  const [w, d, h] = carcass.size;
  const corners: readonly Vec3[] = [
    [0, 0, 0],
    [w, 0, 0],
    [0, d, 0],
    [0, 0, h],
    [w, d, 0],
    [w, 0, h],
    [0, d, h],
    [w, d, h],
  ];
  return boxAround(corners.map((corner) => placed(carcass.pose, corner)));
};

export const boxOutline = (min: Vec3, max: Vec3, plane: Plane): Outline => rectangle(plane(min), plane(max));
