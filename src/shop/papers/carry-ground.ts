import { ROUNDING_MM, type Vec2, type Vec3 } from '../../base/index.ts';
import { boxShape, type ConvexShape, type Shell, shellTriangles } from '../../bodies/index.ts';
import type { Design } from '../../design/index.ts';
import { type CargoSpace, closurePose, vehicleBodyAt } from '../../envelope/index.ts';
import type { LayerName, Stroke } from '../drawing/drawing.ts';
import { convexOutline } from '../drawing/projection.ts';
import { line, ring } from '../drawing/shapes.ts';

/** One of the three sights of a carry: which way it looks, and where a point of the vehicle is drawn. */
export interface CarrySight {
  readonly name: 'side' | 'above' | 'behind';
  readonly title: string;
  readonly on: (point: Vec3) => Vec2;
  /** The axis along which it looks. */
  readonly along: 0 | 1 | 2;
  /** The turn that is seen true. */
  readonly turn: 'pitchRad' | 'rollRad' | 'yawRad';
}

/** Rear to the left from the side and from above; from behind as those who carry look in. */
export const CARRY_SIGHTS: readonly CarrySight[] = [
  { name: 'side', title: 'from the right', on: ([x, , z]) => [x, z], along: 1, turn: 'pitchRad' },
  { name: 'above', title: 'from above', on: ([x, y]) => [x, y], along: 2, turn: 'yawRad' },
  { name: 'behind', title: 'from behind, looking in', on: ([, y, z]) => [-y, z], along: 0, turn: 'rollRad' },
];

/** A name with the point that it is the name of. */
export interface Named {
  readonly words: string;
  readonly at: Vec2;
}

export interface Ground {
  readonly strokes: readonly Stroke[];
  readonly names: readonly Named[];
}

/** How much of the body below the sill and of the bumper is drawn, mm. */
const SILL_DOWN_MM = 140;
const FRAME_DEEP_MM = 30;
const OPEN_LAYER: Readonly<Record<CarrySight['name'], LayerName>> = { side: 'rule', above: 'hatch', behind: 'hatch' };

/** The outline of a body as a sight shows it; a round one by the squares round its ends. */
export const outlineSeen = ({ vertices, radius }: ConvexShape, { on }: CarrySight): readonly Vec2[] =>
  convexOutline(
    vertices.map(on).flatMap(([x, y]): readonly Vec2[] =>
      radius === 0
        ? [[x, y]]
        : [
            [x - radius, y - radius],
            [x + radius, y - radius],
            [x + radius, y + radius],
            [x - radius, y + radius],
          ],
    ),
  );

/** Where a plane square to an axis cuts the skin: a line for each triangle that it passes through. */
export const cutOfSkin = (skin: Shell, along: 0 | 1 | 2, at: number): readonly (readonly [Vec3, Vec3])[] =>
  shellTriangles(skin).flatMap((triangle) => {
    const points = triangle.flatMap((a, i): readonly Vec3[] => {
      const b = triangle[(i + 1) % 3] ?? a;
      const [from, to] = [a[along] - at, b[along] - at];
      if (from < 0 === to < 0) return [];
      const share = from / (from - to);
      return [[a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share, a[2] + (b[2] - a[2]) * share]];
    });
    const [from, to] = points;
    return from && to ? [[from, to] as const] : [];
  });

/** A name at the point that is better than all others; none where there is no point. */
const nameAt = (words: string, points: readonly Vec2[], better: (a: Vec2, b: Vec2) => boolean): readonly Named[] => {
  const best = points.reduce<Vec2 | null>(
    (found, point) => (found === null || better(point, found) ? point : found),
    null,
  );
  return best ? [{ words, at: best }] : [];
};

/**
 * What stands still of the vehicle, as a sight shows it with its closures open: the skin cut through `middle`, the frame
 * of the opening, sill and bumper, every obstacle and closure, each with its name.
 */
export const vehicleGround = (design: Design, space: CargoSpace, middle: Vec3, sight: CarrySight): Ground => {
  const { on, along, name } = sight;
  const rear = space.bounds.min[0] + ROUNDING_MM;
  const opened = Object.fromEntries(space.closures.map(({ id, opensRad }) => [id, opensRad]));
  const cut = cutOfSkin(space.skin, along, middle[along]).filter(([a, b]) => a[0] > rear || b[0] > rear);
  const aperture = design.survey.aperture ?? [];
  const ys = aperture.map(([y]) => y);
  const zs = aperture.map(([, z]) => z);
  const bumper = design.vehicle.bumperBehindSillMm;
  const thick = (min: Vec3, max: Vec3, layer: LayerName): Stroke =>
    ring(layer, outlineSeen(boxShape({ min, max }), sight));
  const frame: readonly Stroke[] =
    aperture.length === 0
      ? []
      : name === 'behind'
        ? [
            ring(
              'seen',
              aperture.map(([y, z]): Vec2 => on([0, y, z])),
            ),
          ]
        : name === 'side'
          ? [thick([-FRAME_DEEP_MM, 0, Math.max(...zs)], [0, 0, Math.max(...zs) + FRAME_DEEP_MM * 2], 'seen')]
          : [
              thick([-FRAME_DEEP_MM, Math.max(...ys), 0], [0, Math.max(...ys) + FRAME_DEEP_MM * 3, 0], 'seen'),
              thick([-FRAME_DEEP_MM, Math.min(...ys) - FRAME_DEEP_MM * 3, 0], [0, Math.min(...ys), 0], 'seen'),
            ];
  const halfWide =
    aperture.length === 0 ? Math.max(...space.bounds.max.slice(1, 2).map(Math.abs)) : Math.max(...ys.map(Math.abs));
  const sill: readonly Stroke[] =
    name === 'side'
      ? [line('seen', on([0, 0, 0]), on([0, 0, -SILL_DOWN_MM]))]
      : name === 'above'
        ? [line('seen', on([0, -halfWide, 0]), on([0, halfWide, 0]))]
        : [];
  const bumpers: readonly Stroke[] =
    bumper > 0 && name !== 'behind' ? [thick([-bumper, -halfWide, -SILL_DOWN_MM], [0, halfWide, 0], 'seen')] : [];
  const bodies = space.bodies.map((body) => ({
    name: body.name,
    closure: body.closure !== null,
    outline: outlineSeen(
      body.closure === null ? body.shape : vehicleBodyAt(body, closurePose(space, body.closure, opened)),
      sight,
    ),
  }));
  const cutPoints = cut.flatMap(([a, b]) => [on(a), on(b)]);
  const middleOf = (points: readonly Vec2[]): Vec2 => [
    points.reduce((sum, [x]) => sum + x, 0) / Math.max(1, points.length),
    points.reduce((sum, [, y]) => sum + y, 0) / Math.max(1, points.length),
  ];
  return {
    strokes: [
      ...cut.map(([a, b]) => line('seen', on(a), on(b))),
      ...frame,
      ...sill,
      ...bumpers,
      // Seen from above or behind, an open closure lies over all else: as thin as can be.
      ...bodies.map(({ outline, closure }) => ring(closure ? OPEN_LAYER[name] : 'seen', outline)),
    ],
    names: [
      ...(name === 'side' ? [{ words: 'sill', at: on([0, 0, 0]) }] : []),
      ...(bumper > 0 && name === 'side' ? [{ words: 'bumper', at: on([-bumper, 0, -SILL_DOWN_MM / 2]) }] : []),
      ...(name === 'side' ? nameAt('roof', cutPoints, (a, b) => a[1] > b[1]) : []),
      ...(name === 'behind' && aperture.length > 0 ? [{ words: 'opening', at: on([0, 0, Math.max(...zs)]) }] : []),
      // The pieces of a closure have one name, told from the side.
      ...bodies
        .filter(
          (body, i) => bodies.findIndex((own) => own.name === body.name) === i && (!body.closure || name === 'side'),
        )
        .map((body) => ({ words: body.name, at: middleOf(body.outline) })),
    ],
  };
};
