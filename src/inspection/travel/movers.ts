import { after, HOME, length, type Pose, ROUNDING_RAD, turnAbout } from '../../base/index.ts';
import type { ConvexShape, Motion } from '../../bodies/index.ts';
import { shapeAt } from '../../bodies/index.ts';
import { type CargoSpace, type PlacedClosure, vehicleBodyAt } from '../../envelope/index.ts';
import type { FitOut } from '../../fitout/index.ts';
import { halfWidthTo, type Job } from '../job.ts';

export type CabinetMover = FitOut['movers'][number];

/** The motion of a mover of the cabinet, from stowed to fully out. */
export const motionOf = ({ motion }: CabinetMover): Motion =>
  motion.kind === 'slide'
    ? { kind: 'slide', along: motion.direction, fromMm: 0, toMm: motion.travel }
    : { kind: 'turn', point: motion.point, axis: motion.axis, fromRad: 0, toRad: motion.travelRad };

/** Why a motion cannot be judged: no way to go, an amount that is none, or more than once round; null where it can. */
export type Unsound = 'no-axis' | 'no-amount' | 'goes-round';

/** What is wrong with the motion of a mover, which no solved cabinet has but a hurt file may ask for. */
export const unsoundMotion = ({ motion }: CabinetMover): Unsound | null => {
  const [along, amount] = motion.kind === 'slide' ? [motion.direction, motion.travel] : [motion.axis, motion.travelRad];
  if (!(length(along) > ROUNDING_RAD)) return 'no-axis';
  if (!Number.isFinite(amount)) return 'no-amount';
  return motion.kind === 'turn' && Math.abs(amount) > 2 * Math.PI ? 'goes-round' : null;
};

/** The ids of a mover and of every mover that it carries, however deep. */
export const carriedWith = (movers: readonly CabinetMover[], id: string): ReadonlySet<string> => {
  const ids = new Set<string>([id]);
  for (let before = 0; before < ids.size; ) {
    before = ids.size;
    for (const mover of movers) if (mover.carriedBy !== null && ids.has(mover.carriedBy)) ids.add(mover.id);
  }
  return ids;
};

/** The swing of a closure, from closed to open. */
export const swingOf = ({ point, axis, opensRad }: PlacedClosure): Motion => ({
  kind: 'turn',
  point,
  axis,
  fromRad: 0,
  toRad: opensRad,
});

/** Where a closure and what it carries stand when it and every closure that carries it are open. */
export const openPose = (closures: ReadonlyMap<string, PlacedClosure>, id: string): Pose => {
  let pose: Pose = HOME;
  const seen = new Set<string>();
  for (
    let at = closures.get(id);
    at && !seen.has(at.id);
    at = at.carriedBy === null ? undefined : closures.get(at.carriedBy)
  ) {
    seen.add(at.id);
    pose = after(turnAbout(at.point, at.axis, at.opensRad), pose);
  }
  return pose;
};

/** Something that a mover could meet on its way. */
export interface InTheWay {
  /** What a finding names: the node or part. */
  readonly part: string;
  readonly name: string;
  readonly shape: ConvexShape;
  /** The body of the vehicle that it is; null for the cabinet. */
  readonly vehicle: string | null;
  /** Half width at 95 % of a gap to it; 0 for the cabinet, whose parts stand to each other as they are built. */
  readonly doubt: number;
}

/** Bodies of the vehicle with every closure open: what drawers and boards are pulled out past. */
export const openVehicle = (job: Job, space: CargoSpace): readonly InTheWay[] => {
  const closures = new Map<string, PlacedClosure>(space.closures.map((closure) => [closure.id, closure]));
  const vehicle = space.bodies.map((body) => ({
    part: body.closure ?? body.origin,
    name: body.name,
    vehicle: body.id,
    doubt: halfWidthTo(job, body.id),
    shape: body.closure === null ? body.shape : vehicleBodyAt(body, openPose(closures, body.closure)),
  }));
  const hanging = job.standing.flatMap(({ body, closure }) =>
    closure === null
      ? []
      : [
          {
            part: body.origin,
            name: body.name,
            vehicle: null,
            // What hangs on a closure is where the closure is.
            doubt: halfWidthTo(job, space.bodies.find((own) => own.closure === closure && !own.stays)?.id ?? closure),
            shape: shapeAt(body.shape, openPose(closures, closure)),
          },
        ],
  );
  return [...vehicle, ...hanging];
};
