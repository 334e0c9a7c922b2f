import { boxesMeet, HOME, type Pose, placed, ROUNDING_MM, ROUNDING_RAD, turned } from '../../../../base/index.ts';
import {
  type ConvexShape,
  certifiedTravel,
  gapBetween,
  shapeAt,
  shapeBox,
  type Motion as Travel,
} from '../../../../bodies/index.ts';
import { type CargoSpace, vehicleBodyAt } from '../../../../envelope/index.ts';
import type { FitOut, Mover } from '../../../../fitout/index.ts';

/** How far a mover can go either way from where it stands, as shares of its travel, and what stops it there. */
export interface PullRange {
  readonly low: number;
  readonly high: number;
  readonly lowStop: string | null;
  readonly highStop: string | null;
}

export interface PullGround {
  readonly fitOut: FitOut;
  readonly space: CargoSpace | null;
  readonly movers: readonly Mover[];
  readonly poses: ReadonlyMap<string, Pose>;
}

interface Standing {
  readonly name: string;
  readonly shape: ConvexShape;
}

const carriedMovers = (movers: readonly Mover[], id: string): ReadonlySet<string> => {
  const found = new Set([id]);
  for (let before = 0; before < found.size; ) {
    before = found.size;
    for (const mover of movers) if (mover.carriedBy !== null && found.has(mover.carriedBy)) found.add(mover.id);
  }
  return found;
};

/** Solid things as they stand now. Hardware meets both sides of a mover by design, and plug room is air. */
const solidThings = ({
  fitOut,
  space,
  poses,
}: PullGround): readonly (Standing & { readonly mover: string | null; readonly strut: boolean })[] => {
  const at = (shape: ConvexShape, mover: string | null): ConvexShape => {
    const pose = mover === null ? undefined : poses.get(mover);
    return pose ? shapeAt(shape, pose) : shape;
  };
  const cabinet = fitOut.bodies
    .filter((body) => body.kind !== 'hardware' && body.kind !== 'plug-room')
    .map((body) => ({ name: body.name, shape: at(body.shape, body.mover), mover: body.mover, strut: false }));
  const vehicle = (space?.bodies ?? []).map((body) => ({
    name: body.name,
    shape: body.closure === null ? body.shape : vehicleBodyAt(body, poses.get(body.closure) ?? HOME),
    // A strut does not go as one with its closure, and is not in the way of it.
    mover: body.closure,
    strut: body.stays !== undefined,
  }));
  return [...cabinet, ...vehicle];
};

/** True when two bodies share room where they stand; touching does not count. */
const overlapNow = (a: ConvexShape, b: ConvexShape): boolean =>
  boxesMeet(shapeBox(a), shapeBox(b)) && gapBetween(a, b).distance < -ROUNDING_MM;

/** The way from where the mover stands to a share of its travel, from amount 0. */
const wayTo = ({ motion }: Mover, carrier: Pose, by: number): Travel =>
  motion.kind === 'slide'
    ? { kind: 'slide', along: turned(carrier, motion.direction), fromMm: 0, toMm: motion.travel * by }
    : {
        kind: 'turn',
        point: placed(carrier, motion.point),
        axis: turned(carrier, motion.axis),
        fromRad: 0,
        toRad: motion.travelRad * by,
      };

const wholeTravel = ({ motion }: Mover): number => (motion.kind === 'slide' ? motion.travel : motion.travelRad);

/**
 * How far a mover can be pulled out and pushed in from where it stands now, with everything else where it stands now.
 * The way is proven, not sampled. What a mover meets already where it stands is left out, so that a fault of the
 * design does not lock it.
 */
export const pullRange = (mover: Mover, share: number, ground: PullGround): PullRange => {
  const open: PullRange = { low: 0, high: 1, lowStop: null, highStop: null };
  if (wholeTravel(mover) <= (mover.motion.kind === 'slide' ? ROUNDING_MM : ROUNDING_RAD)) return open;
  const moving = carriedMovers(ground.movers, mover.id);
  const things = solidThings(ground);
  const shapes = things.flatMap(({ mover: on, strut, shape }) =>
    on !== null && !strut && moving.has(on) ? [shape] : [],
  );
  const others = things.filter((thing) => thing.mover === null || !moving.has(thing.mover));
  const obstacles = others.filter(({ shape }) => !shapes.some((own) => overlapNow(own, shape)));
  const carrier = (mover.carriedBy !== null && ground.poses.get(mover.carriedBy)) || HOME;
  const reach = (by: number): { readonly share: number; readonly stop: string | null } => {
    if (by === 0) return { share, stop: null };
    const result = certifiedTravel(
      wayTo(mover, carrier, by),
      shapes,
      obstacles.map(({ shape }) => shape),
      0,
      { limit: ROUNDING_MM },
    );
    const stop = result.contact && (obstacles[result.contact.obstacle]?.name ?? null);
    return { share: share + result.reaches / wholeTravel(mover), stop };
  };
  const [out, back] = [reach(1 - share), reach(-share)];
  return {
    low: Math.min(share, Math.max(0, back.share)),
    high: Math.max(share, Math.min(1, out.share)),
    lowStop: back.stop,
    highStop: out.stop,
  };
};
