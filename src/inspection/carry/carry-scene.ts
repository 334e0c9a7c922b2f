import { boxAround, boxMiddle, distance, ROUNDING_MM, type Vec2, type Vec3 } from '../../base/index.ts';
import {
  boxShape,
  type ConvexShape,
  convexHull,
  distanceWithin,
  type Gap,
  gapWithin,
  type PreparedShell,
  prepareShell,
  type Shell,
  shellPoint,
  skinGap,
} from '../../bodies/index.ts';
import type { HouseRules } from '../../catalog/index.ts';
import type { Design } from '../../design/index.ts';
import { type CargoSpace, closurePose, gapHalfWidth, vehicleBodyAt } from '../../envelope/index.ts';
import type { FitOut } from '../../fitout/index.ts';

/** Something that a carcass is carried past. */
export interface Past {
  readonly name: string;
  /** How far a carried shape stands from it; Infinity beyond the limit. */
  readonly gap: (shape: ConvexShape, limit: number) => number;
  /** The same with the two nearest points; null beyond the limit. */
  readonly place: (shape: ConvexShape, limit: number) => Gap | null;
  /** Half width at 95 % of a gap to it, at a point of it. */
  readonly halfWidth: (at: Vec3) => number;
  /** Of all its points the worst. */
  readonly doubt: number;
}

/** The frame of the opening is this deep; the body of the vehicle round it is drawn this wide. */
const FRAME_MM = { deep: 30, wide: 500, corner: 200 };
const BUMPER_MM = { half: 900, down: 600 };

/** A solid that is passed; the doubt is the half width at 95 % of a gap to it, nothing between parts of the cabinet. */
export const solidPast = (name: string, shape: ConvexShape, doubt = 0): Past => ({
  name,
  gap: (carried, limit) => distanceWithin(carried, shape, limit),
  place: (carried, limit) => gapWithin(carried, shape, limit),
  halfWidth: () => doubt,
  doubt,
});

/** The skin without its rear end, which is the opening that a carcass comes through. */
const openSkin = ({ skin, bounds }: CargoSpace): PreparedShell => {
  const triangles: number[] = [];
  for (let i = 0; i < skin.triangles.length; i += 3) {
    const corners = [0, 1, 2].map((k) => skin.triangles[i + k] ?? 0);
    if (corners.some((corner) => shellPoint(skin, corner)[0] > bounds.min[0] + ROUNDING_MM)) triangles.push(...corners);
  }
  const open: Shell = { positions: skin.positions, triangles };
  return prepareShell(open);
};

const turnOf = (a: Vec2, b: Vec2, c: Vec2): number => (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]);

/** Bars round the taped opening, one along each of its edges; at outward corners they run past each other. */
const frameOf = (ring: readonly Vec2[]): readonly ConvexShape[] => {
  const area = ring.reduce((sum, a, i) => {
    const b = ring[(i + 1) % ring.length] ?? a;
    return sum + a[0] * b[1] - a[1] * b[0];
  }, 0);
  const round = area > 0 ? ring : ring.toReversed();
  const at = (i: number): Vec2 => round[(i + round.length) % round.length] ?? [0, 0];
  return round.flatMap((_, i) => {
    const [before, a, b, next] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
    const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (long <= ROUNDING_MM) return [];
    const along: Vec2 = [(b[0] - a[0]) / long, (b[1] - a[1]) / long];
    const out: Vec2 = [along[1], -along[0]];
    const from = turnOf(before, a, b) > 0 ? -FRAME_MM.corner : 0;
    const to = long + (turnOf(a, b, next) > 0 ? FRAME_MM.corner : 0);
    const point = (s: number, o: number, x: number): Vec3 => [
      x,
      a[0] + along[0] * s + out[0] * o,
      a[1] + along[1] * s + out[1] * o,
    ];
    const corners = [from, to].flatMap((s) =>
      [0, FRAME_MM.wide].flatMap((o) => [-FRAME_MM.deep, 0].map((x) => point(s, o, x))),
    );
    return [convexHull(corners)];
  });
};

/** What a carcass is carried past in the empty vehicle, its closures open. */
export const vehiclePast = (design: Design, space: CargoSpace, rules: HouseRules): readonly Past[] => {
  const skin = openSkin(space);
  // Frame and bumper were taped with the rest: known as the worst of the skin.
  const worst = gapHalfWidth(space, rules, 'anything');
  const opened = Object.fromEntries(space.closures.map(({ id, opensRad }) => [id, opensRad]));
  const bumper = design.vehicle.bumperBehindSillMm;
  return [
    ...space.bodies.map((body) =>
      solidPast(
        body.name,
        body.closure === null ? body.shape : vehicleBodyAt(body, closurePose(space, body.closure, opened)),
        gapHalfWidth(space, rules, { body: body.id }),
      ),
    ),
    ...frameOf(design.survey.aperture ?? []).map((shape) => solidPast('the frame of the opening', shape, worst)),
    ...(bumper > 0
      ? [
          solidPast(
            'the bumper',
            boxShape({ min: [-bumper, -BUMPER_MM.half, -BUMPER_MM.down], max: [0, BUMPER_MM.half, 0] }),
            worst,
          ),
        ]
      : []),
    // Last, since it costs most and what stands nearer shortens the search.
    {
      name: 'the trim',
      gap: (shape, limit) => skinGap(shape, skin, limit)?.distance ?? Infinity,
      place: (shape, limit) => skinGap(shape, skin, limit),
      halfWidth: (at) => gapHalfWidth(space, rules, { skinAt: at }),
      doubt: worst,
    },
  ];
};

/** A carcass as it is carried: the hull of its panels and hardware, drawers and boards in, gear out. */
export interface Carried {
  readonly id: string;
  readonly name: string;
  readonly shape: ConvexShape;
  readonly middle: Vec3;
  /** Distance of its furthest point from its middle. */
  readonly reach: number;
  readonly massKg: number;
}

export const carriedOf = (fitout: FitOut): readonly Carried[] =>
  fitout.carcasses.flatMap(({ id, name, massKg }) => {
    const points = fitout.bodies
      .filter(({ carcass, kind }) => carcass === id && kind !== 'gear' && kind !== 'plug-room')
      .flatMap(({ shape }) => shape.vertices);
    if (points.length < 4) return [];
    const middle = boxMiddle(boxAround(points));
    const reach = Math.max(...points.map((point) => distance(point, middle)));
    return [{ id, name, shape: convexHull(points), middle, reach, massKg }];
  });

export const carriedPast = ({ name, shape }: Carried): Past => solidPast(name, shape);
