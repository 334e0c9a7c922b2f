import type { Vec3 } from '../../base/index.ts';
import { shellTriangles } from '../../bodies/index.ts';
import type { CargoSpace } from '../../envelope/index.ts';
import { flatNormal } from './mesh-data.ts';

/** Triangles of the skin as plain coordinates, the floor apart from the rest. */
export interface SkinFaces {
  readonly floor: readonly number[];
  readonly walls: readonly number[];
}

/** Outward normals of the floor look down at least this steeply. */
const FLOOR_DOWN = -0.8;
/** End faces look along the vehicle at least this much: the mouth and the seat back stay open to the eye. */
const END_ALONG = 0.9;

/** The skin of the cargo space without its two ends, inside faces outward, so that it is seen from inside only. */
export const skinFaces = (skin: CargoSpace['skin']): SkinFaces => {
  const floor: number[] = [];
  const walls: number[] = [];
  for (const corners of shellTriangles(skin)) {
    const normal = flatNormal(corners);
    if (!normal || Math.abs(normal[0]) > END_ALONG) continue;
    const inward: readonly Vec3[] = corners.toReversed();
    (normal[2] < FLOOR_DOWN ? floor : walls).push(...inward.flat());
  }
  return { floor, walls };
};
