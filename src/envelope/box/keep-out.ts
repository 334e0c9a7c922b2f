import { type Box, type Pose, placed, ROUNDING_MM, turnAbout } from '../../base/index.ts';
import {
  boxShape,
  type ConvexShape,
  type PreparedShell,
  prepareShell,
  type Shell,
  shapeBox,
  shellTriangles,
} from '../../bodies/index.ts';
import type { HouseRules } from '../../catalog/index.ts';
import type { Obstacle } from '../../design/index.ts';
import { gapHalfWidth } from '../gap-uncertainty.ts';
import type { CargoSpace, PlacedClosure, PlacedZone, VehicleBody } from '../space.ts';

/** Something that a carcass must keep off, as a convex shape, and by how much. */
export interface KeepOut {
  readonly kind: 'obstacle' | 'closure' | 'zone' | 'carcass';
  readonly id: string;
  readonly shape: ConvexShape;
  /** The gap that is asked for, uncertainty included (mm). */
  readonly gap: number;
  readonly rule: string;
}

/** The widest step of a swing that one hull stands in for; its bulge beyond the hull is added to the radius. */
const STEP_RAD = (5 * Math.PI) / 180;

/** The house rule that says how far each kind of obstacle is kept off. */
const GAP_OF_OBSTACLE: Readonly<Record<Obstacle['kind'], string>> = {
  latch: 'gap-trim',
  striker: 'gap-trim',
  strut: 'gap-strut',
  'tie-down': 'gap-floor-obstacle',
  trim: 'gap-trim',
  lamp: 'gap-trim',
  'seat-back': 'gap-seat',
  wheelhouse: 'gap-floor-obstacle',
  other: 'gap-trim',
};

/**
 * The room that a closure takes on its way, without holes between steps: for each step the hull of both ends, grown by
 * the rise of the arc over its chord, r (1 − cos(δ/2)), at the point furthest from the hinge.
 */
const sweptBy = (shape: ConvexShape, { point, axis, opensRad }: PlacedClosure): readonly ConvexShape[] => {
  const steps = Math.max(1, Math.ceil(opensRad / STEP_RAD));
  const poseAt = (k: number): Pose => turnAbout(point, axis, (opensRad * k) / steps);
  const reach = Math.max(
    ...shape.vertices.map((vertex) => {
      const [x, y, z] = [vertex[0] - point[0], vertex[1] - point[1], vertex[2] - point[2]];
      const along = x * axis[0] + y * axis[1] + z * axis[2];
      return Math.sqrt(Math.max(0, x * x + y * y + z * z - along * along));
    }),
  );
  const bulge = reach * (1 - Math.cos(opensRad / steps / 2));
  return Array.from({ length: steps }, (_, k) => {
    const ends = [poseAt(k), poseAt(k + 1)].flatMap((pose) => shape.vertices.map((vertex) => placed(pose, vertex)));
    return { vertices: ends, faces: [], radius: shape.radius + bulge };
  });
};

const closureGap = (space: CargoSpace, body: VehicleBody): string => {
  const closure = space.closures.find(({ id }) => id === body.closure);
  if (body.kind === 'obstacle') return 'gap-strut';
  return closure?.kind === 'hatch-glass' ? 'gap-hatch-glass' : 'gap-hatch-trim';
};

/** A carcass that stands there already. */
export interface StandingCarcass {
  readonly id: string;
  readonly box: Box;
}

export interface KeepOutOptions {
  readonly carcasses: readonly StandingCarcass[];
  /** Kinds of the survey's obstacles by id, which choose the gap. */
  readonly kinds: ReadonlyMap<string, Obstacle['kind']>;
  /** True to add the half width at 95 % to every gap, so that an inspection has nothing to say. */
  readonly withUncertainty: boolean;
  /** Height of the underside: what ends below it bears the carcass. */
  readonly underside: number;
}

/** Obstacles, the whole swing of every closure, zones in which nothing stands and other carcasses, each with its gap. */
export const keepOuts = (space: CargoSpace, rules: HouseRules, options: KeepOutOptions): readonly KeepOut[] => {
  const half = (body: string): number => (options.withUncertainty ? gapHalfWidth(space, rules, { body }) : 0);
  const around = options.withUncertainty ? gapHalfWidth(space, rules, 'anything') : 0;
  const fromBody = (body: VehicleBody): readonly KeepOut[] => {
    const closure = body.closure === null ? undefined : space.closures.find(({ id }) => id === body.closure);
    const rule = closure ? closureGap(space, body) : GAP_OF_OBSTACLE[options.kinds.get(body.origin) ?? 'other'];
    const gap = rules.value(rule) + half(body.id);
    const shapes = closure ? sweptBy(body.shape, closure) : [body.shape];
    const kind = closure ? 'closure' : 'obstacle';
    return shapes.map((shape) => ({ kind, id: body.origin, shape, gap, rule }));
  };
  const fromZone = (zone: PlacedZone): readonly KeepOut[] =>
    zone.rule === 'no-hole'
      ? []
      : [
          {
            kind: 'zone',
            id: zone.id,
            shape: zone.shape,
            gap: (zone.rule === 'nothing-stands' ? rules.value('gap-airbag') : 0) + around,
            rule: zone.rule === 'nothing-stands' ? 'gap-airbag' : zone.rule,
          },
        ];
  // Both are built by the shop and set against each other: the survey has no part in the gap between them.
  const fromCarcass = ({ id, box }: StandingCarcass): KeepOut => ({
    kind: 'carcass',
    id,
    shape: boxShape(box),
    gap: rules.value('gap-between-carcasses'),
    rule: 'gap-between-carcasses',
  });
  const all = [
    ...space.bodies.flatMap(fromBody),
    ...space.zones.flatMap(fromZone),
    ...options.carcasses.map(fromCarcass),
  ];
  return all.filter(({ shape }) => shapeBox(shape).max[2] > options.underside + ROUNDING_MM);
};

/**
 * The skin that a carcass standing at this height keeps off: not the floor under it, nor the open rear end where a
 * closure looks rearward (the closure itself speaks for it).
 */
export const skinAround = (space: CargoSpace, underside: number, opensRear: boolean): PreparedShell => {
  const { skin } = space;
  const rear = space.sections[0]?.x ?? -Infinity;
  const kept = shellTriangles(skin).flatMap((triangle, i) => {
    const under = triangle.every((corner) => corner[2] <= underside + ROUNDING_MM);
    const end = opensRear && triangle.every((corner) => Math.abs(corner[0] - rear) <= ROUNDING_MM);
    return under || end ? [] : [0, 1, 2].map((k) => skin.triangles[3 * i + k] ?? 0);
  });
  const part: Shell = { positions: skin.positions, triangles: kept };
  return prepareShell(part);
};
