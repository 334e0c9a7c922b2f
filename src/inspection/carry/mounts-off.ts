import { add, boxAround, boxMiddle, distance, ROUNDING_MM, scale, type Vec3 } from '../../base/index.ts';
import { type ConvexShape, certifiedTravel, convexHull, gapWithin, type Motion } from '../../bodies/index.ts';
import { makeJob } from '../job.ts';
import { openVehicle } from '../travel/movers.ts';
import type { CarryInput } from './carry-in.ts';
import type { CarriedMount, CarryLeg, CarryPath, CarryPose } from './carry-result.ts';
import { type Carried, carriedPast, type Past, solidPast } from './carry-scene.ts';
import { AT_HOME, planOut, wayOf } from './plan-out.ts';

/** A mount is off once it has come this far. */
const OFF_MM = 150;
/** How far around its way off the nearest is told. */
const WATCHED_MM = 30;
/** What is carried in two hands needs no long search. */
const BUDGET = 1_500;

/** Rearward and down first: away from a hatch, away from a ceiling. */
const AXES: readonly Vec3[] = [
  [-1, 0, 0],
  [0, 0, -1],
  [0, 1, 0],
  [0, -1, 0],
  [1, 0, 0],
  [0, 0, 1],
];

interface Standing {
  readonly name: string;
  readonly shape: ConvexShape;
  /** Half width at 95 % of a gap to it. */
  readonly doubt: number;
}

interface Off {
  readonly along: Vec3;
  readonly reaches: number;
  readonly leg: CarryLeg;
}

/** One straight way off, as far as it goes. */
const offAlong = (along: Vec3, own: readonly ConvexShape[], others: readonly Standing[]): Off => {
  const motion: Motion = { kind: 'slide', along, fromMm: 0, toMm: OFF_MM };
  const shapes = others.map(({ shape }) => shape);
  const { contact, nearest, leastGap, reaches } = certifiedTravel(motion, own, shapes, 0, { limit: WATCHED_MM });
  const met = contact ?? nearest;
  const other = met ? others[met.obstacle] : undefined;
  const leg = {
    leastGap,
    nearest: other?.name ?? '',
    uncertainty: other?.doubt ?? 0,
    at: met && ([met.from, met.to] as const),
  };
  return { along, reaches, leg };
};

const shifted = (pose: CarryPose, by: Vec3): CarryPose => ({ ...pose, shift: add(pose.shift, by) });

export interface MountGround {
  readonly outsideX: number;
  readonly wantedMm: number;
  readonly vehicle: readonly Past[];
  readonly carcasses: readonly Carried[];
}

/** The way of a mount that has come off, from where it then is out behind the vehicle; null where none was found. */
const wayOut = (
  id: string,
  own: readonly ConvexShape[],
  off: Off,
  others: readonly Standing[],
  { outsideX, wantedMm, vehicle, carcasses }: MountGround,
): { readonly path: CarryPath | null; readonly stuck: CarriedMount['stuck'] } => {
  const by = scale(off.along, OFF_MM);
  const points = own.flatMap(({ vertices }) => vertices).map((vertex) => add(vertex, by));
  const box = boxAround(points);
  const poses: readonly CarryPose[] = [AT_HOME, shifted(AT_HOME, by)];
  if (box.max[0] <= outsideX) return { path: wayOf(poses, [off.leg]), stuck: null };
  const middle = boxMiddle(box);
  const carried: Carried = {
    id,
    name: id,
    shape: convexHull(points),
    middle,
    reach: Math.max(...points.map((point) => distance(point, middle))),
    massKg: 0,
  };
  const past = [
    ...vehicle,
    ...carcasses.map(carriedPast),
    ...others.map(({ name, shape, doubt }) => solidPast(name, shape, doubt)),
  ];
  const { path, stuck } = planOut({ carried, past, wantedMm, outsideX, budget: BUDGET });
  if (!path) return { path, stuck };
  const onward = path.poses.slice(1).map((pose) => shifted(pose, by));
  return { path: wayOf([...poses, ...onward], [off.leg, ...path.legs]), stuck: null };
};

/** Each mount comes straight off some way, with the closures open and the cabinet in its place, and then out. */
export const mountsOff = (input: CarryInput, ground: MountGround): readonly CarriedMount[] => {
  if (input.design.mounts.length === 0) return [];
  const job = makeJob(input);
  const hanging = openVehicle(job, input.space);
  const cabinet = job.standing.filter(({ closure, body }) => closure === null && body.kind !== 'plug-room');
  return input.design.mounts.map(({ id }): CarriedMount => {
    const riding = hanging.filter(({ part }) => part === id).map(({ shape }) => shape);
    const own =
      riding.length > 0 ? riding : cabinet.filter(({ body }) => body.origin === id).map(({ body }) => body.shape);
    const vertices = own.flatMap((shape) => shape.vertices);
    // A mount that the catalog does not know has no body; the check of the cabinet says so.
    if (vertices.length === 0) return { mount: id, comesOff: false, path: null, stuck: null, middle: [0, 0, 0] };
    const middle = boxMiddle(boxAround(vertices));
    const mounted = hanging.filter(({ part, vehicle }) => part !== id && vehicle === null);
    const others: readonly Standing[] = [
      ...hanging.filter(({ part }) => part !== id),
      ...cabinet.filter(({ body }) => body.origin !== id).map(({ body }) => ({ ...body, doubt: 0 })),
      // What it is fixed to touches it and is not in its way.
    ].filter(({ shape }) => own.every((piece) => gapWithin(piece, shape, ROUNDING_MM) === null));
    const ways = AXES.map((along) => offAlong(along, own, others));
    const off = ways.find(({ reaches }) => reaches >= OFF_MM - ROUNDING_MM);
    if (!off) {
      const furthest = ways.reduce((best, way) => (way.reaches > best.reaches ? way : best));
      return {
        mount: id,
        comesOff: false,
        path: null,
        stuck: { mm: furthest.reaches, by: furthest.leg.nearest },
        middle,
      };
    }
    return { mount: id, comesOff: true, middle, ...wayOut(id, own, off, mounted, ground) };
  });
};
