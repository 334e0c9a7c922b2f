import { add, cross, dot, negate, ROUNDING_MM, scale, subtract, unit, type Vec3 } from '../base/index.ts';
import type { Gap } from './gap.ts';
import { shellHolds } from './inside.ts';
import { overlapDepth } from './overlap.ts';
import type { PreparedShell } from './prepared.ts';
import { outsideProbes } from './probes.ts';
import type { ConvexShape } from './shapes.ts';
import type { Triangle } from './shell.ts';
import { asShape, nearestSkinPoint, nearSkin } from './skin.ts';

/** Stands in where every triangle touched is without area. */
const UP: Vec3 = [0, 0, 1];

const grown = (core: number, radius: number, from: Vec3, direction: Vec3): Gap => {
  const distance = Math.abs(core - radius) <= ROUNDING_MM ? 0 : core - radius;
  const start = add(from, scale(direction, radius));
  return { distance, from: start, to: add(start, scale(direction, distance)), direction };
};

interface Outside {
  readonly depth: number;
  readonly from: Vec3;
  readonly to: Vec3;
}

/** The probe that stands furthest outside; depth 0 where none stands outside by more than rounding. */
const deepest = (probes: readonly Vec3[], prepared: PreparedShell, touch: Vec3): Outside => {
  let best: Outside = { depth: ROUNDING_MM, from: touch, to: touch };
  for (const from of probes) {
    const near = nearestSkinPoint(from, prepared, best.depth);
    if (near && !shellHolds(prepared, from)) best = { depth: near.distance, from, to: near.to };
  }
  return best.depth > ROUNDING_MM ? best : { ...best, depth: 0 };
};

/** Outward normal of the first triangle touched that has one. */
const touchDirection = (met: readonly Triangle[]): Vec3 => {
  for (const [a, b, c] of met) {
    const normal = cross(subtract(b, a), subtract(c, a));
    if (dot(normal, normal) > 0) return unit(normal);
  }
  return UP;
};

/** Triangles that run through the body rather than along its surface. */
const crossed = (shape: ConvexShape, met: readonly Triangle[]): readonly Triangle[] =>
  met.filter((triangle) => overlapDepth(shape, asShape(triangle)).depth > ROUNDING_MM);

const middleOf = ({ vertices }: ConvexShape): Vec3 => scale(vertices.reduce(add), 1 / vertices.length);

/**
 * How a body stands inside a closed skin. Null: wholly inside and further than `limit` from it. Positive: wholly
 * inside, with the two nearest points (`from` on the body, `to` on the skin). 0: touching from inside within
 * rounding. Negative: the body pokes through or stands outside, `from` is its point found deepest outside and `to`
 * the skin nearest to that point. `direction` points outwards, and to = from + direction × distance.
 *
 * Clear, touching and poking are told apart exactly (to ROUNDING_MM). The depth is measured at vertices, edges and
 * behind the skin (outsideProbes): it is the depth of a real point of the body, and the deepest one wherever that is
 * a vertex or lies straight behind the skin.
 */
export const clearanceInside = (shape: ConvexShape, prepared: PreparedShell, limit: number): Gap | null => {
  const { core, from, to, met } = nearSkin(shape, prepared, limit + shape.radius);
  const through = crossed(shape, met);
  // A body that no skin runs through lies wholly to one side, and so does its middle.
  if (through.length === 0 && shellHolds(prepared, middleOf(shape))) {
    if (core - shape.radius > limit) return null;
    return grown(core, shape.radius, from, core > 0 ? unit(subtract(to, from)) : touchDirection(met));
  }
  const out = deepest(through.length > 0 ? outsideProbes(shape, through) : shape.vertices, prepared, from);
  if (out.depth === 0) return grown(0, shape.radius, out.from, touchDirection(met));
  return grown(-out.depth, shape.radius, out.from, negate(unit(subtract(out.to, out.from))));
};

/** Distance of a body to the skin, 0 where it meets it, whichever side it stands on; null beyond `limit`. */
export const skinGap = (shape: ConvexShape, prepared: PreparedShell, limit: number): Gap | null => {
  const { core, from, to, met } = nearSkin(shape, prepared, limit + shape.radius);
  if (core - shape.radius > limit) return null;
  if (met.length > 0) return grown(0, shape.radius, from, touchDirection(met));
  return grown(core, shape.radius, from, unit(subtract(to, from)));
};
