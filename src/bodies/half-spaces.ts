import { cross, dot, length, scale, subtract, type Vec3 } from '../base/index.ts';
import type { HalfSpace } from './clip.ts';
import type { ConvexShape } from './shapes.ts';

/** The plane of each face of a convex solid with plane faces, looking outward; a face without area has none. */
export const halfSpacesOf = ({ vertices, faces }: ConvexShape): readonly HalfSpace[] =>
  faces.flatMap((face): readonly HalfSpace[] => {
    const [hub, ...rest] = face.map((index) => vertices[index]).filter((vertex) => vertex !== undefined);
    if (!hub) return [];
    const spokes = rest.map((vertex) => subtract(vertex, hub));
    const area = spokes.slice(1).reduce<Vec3>(
      (sum, spoke, i) => {
        const [x, y, z] = cross(spokes[i] ?? spoke, spoke);
        return [sum[0] + x, sum[1] + y, sum[2] + z];
      },
      [0, 0, 0],
    );
    const size = length(area);
    if (!(size > 0)) return [];
    const normal = scale(area, 1 / size);
    return [{ normal, offset: dot(normal, hub) }];
  });
