import { add, ORIGIN, scale, signedArea, subtract, type Vec2, type Vec3 } from '../../base/index.ts';
import type { Shape } from './drawing.ts';
import { leaders, type Pointed } from './leaders.ts';
import { type Sight, seenAt } from './projection.ts';
import { type DrawnSolid, lookAt } from './seen-edges.ts';
import { line, onSheet } from './shapes.ts';
import type { Area } from './sheet.ts';

/** Solids seen from one side, each by the id of its panel; some drawn heavy, some with their name beside the picture. */
export interface SpacePicture {
  readonly solids: readonly DrawnSolid<string>[];
  readonly sight: Sight;
  readonly heavy: ReadonlySet<string>;
  readonly names: ReadonlyMap<string, string>;
}

/** Where on a face a leader may end: near its middle first, then towards its corners. */
const TOWARDS_CORNERS = [0, 0.35, 0.6, 0.85, 0.94] as const;

const facePoints = ({ shape }: DrawnSolid<string>): readonly Vec3[] => {
  const faces = shape.faces.map((face) => {
    const corners = face.map((index) => shape.vertices[index]).filter((corner) => corner !== undefined);
    const middle = scale(
      corners.reduce((sum, corner) => add(sum, corner), ORIGIN),
      1 / Math.max(1, corners.length),
    );
    return { corners, middle };
  });
  return TOWARDS_CORNERS.flatMap((share) =>
    faces.flatMap(({ corners, middle }) =>
      share === 0 ? [middle] : corners.map((corner) => add(middle, scale(subtract(corner, middle), share))),
    ),
  );
};

/** The picture's extent as seen, in mm of the things. */
export const seenExtent = ({ solids, sight }: Pick<SpacePicture, 'solids' | 'sight'>): Area => {
  const points = solids.flatMap(({ shape }) => shape.vertices.map((vertex) => seenAt(sight, vertex)));
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return points.length === 0
    ? { from: [0, 0], to: [0, 0] }
    : { from: [Math.min(...xs), Math.min(...ys)], to: [Math.max(...xs), Math.max(...ys)] };
};

/** A point of each named panel that is in sight, on its largest face in view where possible; panels that are hidden have none. */
const pointedAt = (
  { solids, names }: SpacePicture,
  sees: (point: Vec3, item: string) => boolean,
  faces: (solid: DrawnSolid<string>) => readonly Vec3[],
): ReadonlyMap<string, Vec3> => {
  const found = new Map<string, Vec3>();
  for (const solid of solids) {
    if (!names.has(solid.item) || found.has(solid.item)) continue;
    const point = faces(solid).find((each) => sees(each, solid.item));
    if (point) found.set(solid.item, point);
  }
  return found;
};

/** How much of a face is seen; negative for one that looks away. */
const seenArea = ({ shape }: DrawnSolid<string>, face: readonly number[], sight: Sight): number =>
  signedArea(face.map((index) => seenAt(sight, shape.vertices[index] ?? ORIGIN)));

/** Draws the picture with its lower left corner at a place of the sheet, so much smaller than the things are. */
export const spaceShapes = (picture: SpacePicture, scaled: number, at: Vec2): readonly Shape[] => {
  const { solids, sight, heavy, names } = picture;
  const { from, to } = seenExtent(picture);
  const move = onSheet(scaled, [at[0] - from[0] * scaled, at[1] - from[1] * scaled]);
  const look = lookAt(solids, sight);
  // Only faces that look at the eye can be pointed at, the largest first.
  const facing = (solid: DrawnSolid<string>): readonly Vec3[] => {
    const faces = solid.shape.faces
      .map((face) => ({ face, area: seenArea(solid, face, sight) }))
      .filter(({ area }) => area > 0)
      .sort((a, b) => b.area - a.area)
      .map(({ face }) => face);
    return facePoints({ ...solid, shape: { ...solid.shape, faces } });
  };
  const points = pointedAt(picture, look.sees, facing);
  const pointed = [...points].map(
    ([id, point]): Pointed => ({ words: names.get(id) ?? id, at: move(seenAt(sight, point)) }),
  );
  return [
    ...look.edges.map((edge) => line(heavy.has(edge.item) ? 'outline' : 'seen', move(edge.from), move(edge.to))),
    ...leaders(pointed, { from: move(from), to: move(to) }),
  ];
};
