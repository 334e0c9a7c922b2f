import { boxUnion, cross, dot, negate, scale, subtract, unit, type Vec3 } from '../../base/index.ts';
import type { InspectionInput, Job } from '../job.ts';
import { fittedItems } from '../loads/index.ts';
import { plateCollapse } from './links.ts';
import { type Thrown, thrownBy, wayOf } from './load-sets.ts';

type Mover = Job['fitout']['movers'][number];

/** A drawer, tray, door or board with what it carries and which way it opens when stowed. */
export interface HeldMover {
  readonly mover: Mover;
  readonly carcass: string | null;
  /** The mover with everything that it carries, and what leans on it from behind. */
  readonly kg: number;
  /** Centre of mass of the mover with what it carries, stowed. */
  readonly centre: Vec3;
  readonly opens: Vec3;
}

/** The mover itself and everything carried by it, one on the other. */
const carriedBy = (movers: readonly Mover[], id: string): ReadonlySet<string> => {
  const all = new Set([id]);
  for (let before = 0; before < all.size; ) {
    before = all.size;
    for (const { id: own, carriedBy: carrier } of movers) if (carrier !== null && all.has(carrier)) all.add(own);
  }
  return all;
};

/** The openings inside an opening, itself among them. */
const within = ({ fitout }: InspectionInput, root: string): ReadonlySet<string> => {
  const all = new Set([root]);
  for (const { id, parent } of fitout.openings) if (parent !== null && all.has(parent)) all.add(id);
  return all;
};

/** Gear that stands still behind a leaf and is kept by nothing else. */
const leaningOn = (job: InspectionInput, { origin, motion }: Mover): ReadonlySet<string> => {
  if (motion.kind === 'slide') return new Set();
  const inside = within(job, origin);
  const closed = new Set(
    job.fitout.rooms
      .filter(({ opening, keeps, mover }) => inside.has(opening) && keeps === 'closed' && mover === null)
      .map(({ opening }) => opening),
  );
  return new Set(job.fitout.gear.filter(({ opening }) => closed.has(opening)).map(({ gear }) => gear));
};

/** Which way something goes first when its mover leaves its stowed place. */
const opensTo = (mover: Mover, centre: Vec3): Vec3 => {
  const { motion } = mover;
  if (motion.kind === 'slide') return motion.direction;
  return unit(cross(motion.axis, subtract(centre, motion.point)));
};

/** Every mover of the cabinet that weighs something. */
export const heldMovers = (job: InspectionInput): readonly HeldMover[] => {
  const { fitout, rules } = job;
  const items = fittedItems(fitout, rules);
  return fitout.movers.flatMap((mover): readonly HeldMover[] => {
    const ids = carriedBy(fitout.movers, mover.id);
    const leaning = leaningOn(job, mover);
    let [kg, own] = [0, 0];
    let moment: Vec3 = [0, 0, 0];
    let carcass: string | null = null;
    fitout.masses.forEach((mass, i) => {
      const item = items[i];
      if (!item) return;
      if (mass.mover !== null && ids.has(mass.mover)) {
        kg += item.kg;
        own += item.kg;
        moment = [moment[0] + item.kg * item.at[0], moment[1] + item.kg * item.at[1], moment[2] + item.kg * item.at[2]];
        carcass ??= mass.carcass;
      } else if (leaning.has(mass.origin)) kg += item.kg;
    });
    if (own <= 0) return [];
    const centre = scale(moment, 1 / own);
    return [{ mover, carcass, kg, centre, opens: opensTo(mover, centre) }];
  });
};

/** What rated pieces of some kinds at one opening hold together (N), and those that have no rating. */
export const ratedAt = (
  { fitout, catalog }: Job,
  opening: string,
  kinds: readonly string[],
  which: (id: string) => boolean = () => true,
): { readonly ratedN: number; readonly pieces: readonly string[]; readonly unrated: readonly string[] } => {
  let ratedN = 0;
  const pieces: string[] = [];
  const unrated: string[] = [];
  for (const { id, origin, from, item, quantity } of fitout.hardware) {
    if (origin !== opening || from !== 'hardware' || !which(id)) continue;
    const record = catalog.hardware.get(item);
    if (!record || !kinds.includes(record.kind)) continue;
    pieces.push(record.id);
    if (record.ratedN === null) unrated.push(record.id);
    else ratedN += record.ratedN * (record.by === 'piece' ? quantity : 1);
  }
  return { ratedN, pieces, unrated };
};

/** How a mover is thrown along a direction by the load sets of the design; null where they do not speak of it. */
export const thrownAlong = (job: Job, direction: Vec3): Thrown | null =>
  thrownBy(job.design.holdTo, job.rules).find(({ way }) => way === wayOf(direction)) ?? null;

export const forceOf = ({ rules }: Pick<Job, 'rules'>, kg: number, g: number): number =>
  kg * g * rules.value('standard-gravity');

/** The axes of the vehicle square to a direction, for faces that stand square in it. */
const acrossIt = (direction: Vec3): readonly (0 | 1 | 2)[] =>
  ([0, 1, 2] as const).filter(
    (axis) => Math.abs(dot(direction, [axis === 0 ? 1 : 0, axis === 1 ? 1 : 0, axis === 2 ? 1 : 0])) < 0.5,
  );

/**
 * What the back panel of a carcass holds (N) when a box runs into it: a plate held at the edges of the opening, the box
 * as a patch in its middle, at the share of its strength that counts under shock. Zero without a back; null where the
 * strength of its sheet is not known.
 */
export const backPanelHoldsN = (job: Job, { mover, carcass, opens }: HeldMover): number | null => {
  const { fitout, catalog, rules } = job;
  const back = fitout.panels.find((panel) => panel.carcass === carcass && panel.role === 'back');
  const opening = fitout.openings.find(({ id }) => id === mover.origin);
  const boxes = job.standing
    .filter(({ body }) => body.mover === mover.id && body.kind === 'panel')
    .map(({ box }) => box);
  const [first, ...rest] = boxes;
  if (!back || !opening || !first) return 0;
  const strength = catalog.materials.get(back.material)?.bendingStrengthMPa ?? null;
  if (strength === null) return null;
  const box = rest.reduce(boxUnion, first);
  const patch = Math.min(...acrossIt(opens).map((axis) => box.max[axis] - box.min[axis])) / 2;
  const radius = Math.min(opening.size[0], opening.size[2]) / 2;
  const allowed = Math.min(strength.along, strength.across) * rules.value('bending-shock-share');
  return plateCollapse((allowed * back.thickness ** 2) / 6, patch, radius);
};

/** Into the cabinet: the way that a mover cannot go. */
export const inward = ({ opens }: HeldMover): Vec3 => negate(opens);
