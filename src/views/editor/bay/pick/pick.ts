import { inverse, type Pose, placed, turned, type Vec3 } from '../../../../base/index.ts';
import type { ConvexShape } from '../../../../bodies/index.ts';
import { type Ray, rayThrough } from './ray-hit.ts';

/** Something that can be pointed at. Its shape stands in vehicle axes with its mover stowed. */
export interface Pickable {
  readonly id: string;
  readonly shape: ConvexShape;
  readonly mover: string | null;
}

/** What is kept of the scene when a side is cut away: points with normal · p ≤ reach. */
export interface HalfSpace {
  readonly normal: Vec3;
  readonly reach: number;
}

export interface Pick<T extends Pickable> {
  readonly what: T;
  /** Along the ray, millimetres. */
  readonly far: number;
  /** Where the ray meets it, in vehicle axes as shown. */
  readonly point: Vec3;
  /** The same point with the mover stowed. */
  readonly stowedPoint: Vec3;
}

/** The part of the ray that runs through what is kept. */
const keptSpan = (ray: Ray, kept: HalfSpace | null): readonly [number, number] => {
  if (!kept) return [0, Number.POSITIVE_INFINITY];
  const [nx, ny, nz] = kept.normal;
  const speed = nx * ray.direction[0] + ny * ray.direction[1] + nz * ray.direction[2];
  const gap = kept.reach - (nx * ray.origin[0] + ny * ray.origin[1] + nz * ray.origin[2]);
  if (speed === 0) return gap < 0 ? [0, -1] : [0, Number.POSITIVE_INFINITY];
  return speed > 0 ? [0, gap / speed] : [Math.max(0, gap / speed), Number.POSITIVE_INFINITY];
};

const along = (ray: Ray, t: number): Vec3 => [
  ray.origin[0] + ray.direction[0] * t,
  ray.origin[1] + ray.direction[1] * t,
  ray.origin[2] + ray.direction[2] * t,
];

/** The nearest thing on the ray that is not cut away, or null. Of two at the same distance the first named wins. */
export const pickNearest = <T extends Pickable>(
  ray: Ray,
  things: readonly T[],
  poses: ReadonlyMap<string, Pose>,
  kept: HalfSpace | null,
): Pick<T> | null => {
  const [first, last] = keptSpan(ray, kept);
  const locals = new Map<string, Ray>();
  const localRay = (mover: string | null): Ray => {
    const pose = mover === null ? undefined : poses.get(mover);
    if (mover === null || !pose) return ray;
    const known = locals.get(mover);
    if (known) return known;
    const back = inverse(pose);
    const local = { origin: placed(back, ray.origin), direction: turned(back, ray.direction) };
    locals.set(mover, local);
    return local;
  };
  let best: Pick<T> | null = null;
  for (const what of things) {
    const local = localRay(what.mover);
    const span = rayThrough(local, what.shape);
    if (!span) continue;
    const far = Math.max(span.enters, first);
    if (far > Math.min(span.leaves, last) || (best && far >= best.far)) continue;
    best = { what, far, point: along(ray, far), stowedPoint: along(local, far) };
  }
  return best;
};
