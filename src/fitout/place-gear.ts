import { add, boxAt, boxMiddle, type Pose, placed, shift, type Vec3 } from '../base/index.ts';
import { boxShape } from '../bodies/index.ts';
import type { Gear, GearPlace, NodeId } from '../design/index.ts';
import { gearSize } from './gear-size.ts';
import type { Body, FitProblem, GearRoom, MassItem, PartId, PlacedGear, SolvedOpening } from './parts.ts';

export interface GearParts {
  readonly bodies: readonly Body[];
  readonly masses: readonly MassItem[];
  readonly gear: readonly PlacedGear[];
  readonly problems: readonly FitProblem[];
}

interface Standing {
  readonly pose: Pose;
  readonly mover: PartId | null;
}

const noRoom = (gear: Gear, place: GearPlace): FitProblem => ({
  code: 'no-such-opening',
  at: gear.id,
  axis: null,
  needMm: null,
  haveMm: null,
  because: place.level === 0 ? [place.opening] : [place.opening, `level ${place.level}`],
});

/** How well a mass is known where its record gives nothing: by where it was taken from. */
const SIGMA_RULES: { readonly [From in Gear['massFrom']]: string } = {
  measured: 'mass-sigma-measured',
  catalogue: 'mass-sigma-catalogue',
  estimated: 'mass-sigma-estimated',
};

/** Standard deviation of the mass of an item (kg): its own, or a share of its mass. */
const gearSigma = ({ massKg, massSigmaKg, massFrom }: Gear, rule: (id: string) => number): number =>
  massSigmaKg > 0 ? massSigmaKg : massKg * rule(SIGMA_RULES[massFrom]);

const gearAt = (
  gear: Gear,
  place: GearPlace,
  carcass: NodeId,
  { pose, mover }: Standing,
  sigmaKg: number,
): Omit<GearParts, 'problems'> => {
  const size: Vec3 = gearSize(gear, place);
  const box = boxAt(add(placed(pose, [0, 0, 0]), place.at), size);
  const body: PartId = `${gear.id}/body`;
  const common = { origin: gear.id, carcass, name: gear.name, mover };
  return {
    bodies: [{ ...common, id: body, kind: 'gear', shape: boxShape(box) }],
    masses: [
      {
        ...common,
        id: `${gear.id}/mass`,
        kind: 'gear',
        massKg: gear.massKg,
        sigmaKg,
        at: boxMiddle(box),
      },
    ],
    gear: [{ gear: gear.id, opening: place.opening, level: place.level, from: place.at, size, body }],
  };
};

/**
 * The gear of one carcass in its rooms, in carcass coordinates. Gear in an opening that has no such room is a
 * problem; where the opening itself exists the gear still stands at its low corner, so that it shows and weighs.
 */
export const placeGear = (
  list: readonly Gear[],
  carcass: NodeId,
  rooms: readonly GearRoom[],
  openings: readonly SolvedOpening[],
  rule: (id: string) => number,
): GearParts => {
  const parts = list.flatMap((gear): readonly GearParts[] => {
    const { place } = gear;
    if (!place) return [];
    const room = rooms.find(({ opening, level }) => opening === place.opening && level === place.level);
    if (room) return [{ ...gearAt(gear, place, carcass, room, gearSigma(gear, rule)), problems: [] }];
    const problems = [noRoom(gear, place)];
    const opening = openings.find(({ id }) => id === place.opening);
    if (!opening) return [{ bodies: [], masses: [], gear: [], problems }];
    return [
      {
        ...gearAt(gear, place, carcass, { pose: shift(opening.from), mover: opening.mover }, gearSigma(gear, rule)),
        problems,
      },
    ];
  });
  return {
    bodies: parts.flatMap(({ bodies }) => bodies),
    masses: parts.flatMap(({ masses }) => masses),
    gear: parts.flatMap(({ gear }) => gear),
    problems: parts.flatMap(({ problems }) => problems),
  };
};
