import type { Vec3 } from '../../base/index.ts';
import {
  type Carcass,
  type Design,
  findOpening,
  type Gear,
  type GearPlace,
  type NodeId,
  type Opening,
  openingsFrom,
  placeGear,
  STANCES,
} from '../../design/index.ts';
import type { Finding } from '../finding.ts';
import { type Candidate, roundedUp, type WayFinder } from './candidate.ts';
import { reversed, type Shift, shiftsOff } from './escape.ts';

/** Other openings are tried in the order of the design, and no more of them than this. */
const MOST_OPENINGS = 6;

const ROOM_AXES = ['across', 'deep', 'up'] as const;

/** The room axis that runs along each vehicle axis, and its sign, by the way the carcass's open face looks. */
const ACROSS_AND_DEEP: Readonly<Record<Carcass['facing'], { readonly across: Vec3; readonly deep: Vec3 }>> = {
  rear: { across: [0, -1, 0], deep: [1, 0, 0] },
  front: { across: [0, 1, 0], deep: [-1, 0, 0] },
  left: { across: [-1, 0, 0], deep: [0, -1, 0] },
  right: { across: [1, 0, 0], deep: [0, 1, 0] },
};

interface Stowed {
  readonly gear: Gear;
  readonly place: GearPlace;
}

const stowedGear = (design: Design, id: string | undefined): Stowed | null => {
  const gear = design.gear.find((own) => own.id === id);
  return gear?.place ? { gear, place: gear.place } : null;
};

const at = (design: Design, { gear, place }: Stowed, change: Partial<GearPlace>): Design =>
  placeGear(design, gear.id, { ...place, ...change });

type RoomShift = Pick<Shift, 'mm' | 'group' | 'rank'> & { readonly axis: 0 | 1 | 2 };

const shifted = (design: Design, stowed: Stowed, { axis, mm, group, rank }: RoomShift): readonly Candidate[] => {
  const [across, deep, up] = stowed.place.at.map((own, i) => (i === axis ? own + mm : own));
  if (across === undefined || deep === undefined || up === undefined || Math.min(across, deep, up) < 0) return [];
  return [
    {
      kind: 'move-gear',
      facts: { gear: stowed.gear.name, axis: ROOM_AXES[axis], mm },
      design: at(design, stowed, { at: [across, deep, up] }),
      change: rank,
      group: `move ${stowed.gear.id} ${group}`,
    },
  ];
};

const alongRoom = (design: Design, stowed: Stowed, shift: Shift): readonly Candidate[] => {
  const { axis, mm, group, rank } = shift;
  if (axis === 'z') return shifted(design, stowed, { axis: 2, mm, group, rank });
  const facing = findOpening(design, stowed.place.opening)?.carcass.facing;
  if (!facing) return [];
  const { across, deep } = ACROSS_AND_DEEP[facing];
  const i = axis === 'x' ? 0 : 1;
  return across[i] !== 0
    ? shifted(design, stowed, { axis: 0, mm: mm * across[i], group, rank })
    : shifted(design, stowed, { axis: 1, mm: mm * deep[i], group, rank });
};

const toCorner = (design: Design, stowed: Stowed): readonly Candidate[] => {
  const change = Math.hypot(...stowed.place.at);
  if (change === 0) return [];
  const facts = { gear: stowed.gear.name, axis: 'corner', mm: change };
  return [{ kind: 'move-gear', facts, design: at(design, stowed, { at: [0, 0, 0] }), change, group: null }];
};

/** The item turned by a quarter, or lying another way unless it must stand, in the near corner of the same room. */
const turned = (design: Design, stowed: Stowed): readonly Candidate[] => {
  const { gear, place } = stowed;
  const quarter = place.turnDeg === 90 || place.turnDeg === 270 ? 0 : 90;
  const stances = gear.needs.includes('upright') ? [] : STANCES.filter((stance) => stance !== place.stance);
  const ways: readonly Partial<GearPlace>[] = [{ turnDeg: quarter }, ...stances.map((stance) => ({ stance }))];
  return ways.map((way, change): Candidate => {
    const facts = { gear: gear.name, stance: way.stance ?? place.stance, turnDeg: way.turnDeg ?? place.turnDeg };
    return { kind: 'turn-gear', facts, design: at(design, stowed, { at: [0, 0, 0], ...way }), change, group: null };
  });
};

/** Openings that can hold gear, beside the one it is in: those without rooms of their own. */
type Ranked = (a: Opening, b: Opening) => number;

const otherOpenings = (design: Design, own: NodeId, ranked: Ranked): readonly Opening[] =>
  design.cabinet.carcasses
    .flatMap((carcass) => openingsFrom(carcass.opening))
    .filter(({ id, content }) => id !== own && content.kind !== 'divided')
    .toSorted(ranked)
    .slice(0, MOST_OPENINGS);

const elsewhere = (design: Design, stowed: Stowed, ranked: Ranked = () => 0): readonly Candidate[] =>
  otherOpenings(design, stowed.place.opening, ranked).map((opening, change) => ({
    kind: 'move-gear-elsewhere',
    facts: { gear: stowed.gear.name, opening: opening.id },
    design: at(design, stowed, { opening: opening.id, level: 0, at: [0, 0, 0] }),
    change,
    group: null,
  }));

/** The gear that a gap finding is about, moved in its room, turned, or stowed in another opening. */
export const gearWays: WayFinder = (finding, design) => {
  const stowed = stowedGear(design, finding.parts[0]);
  if (!stowed) return [];
  const shifts = shiftsOff(finding, design.units);
  return [
    ...shifts.flatMap((shift) => alongRoom(design, stowed, shift)),
    ...toCorner(design, stowed),
    ...turned(design, stowed),
    ...elsewhere(design, stowed),
  ];
};

/** Rooms that nothing has to be opened for come first, since every mover is a motion more. */
const motionsInto = ({ content }: Opening): number =>
  content.kind === 'fitted' && ('slide' in content.fitting || 'hung' in content.fitting) ? 1 : 0;

/** Gear stowed where a hand gets at it with fewer motions. */
export const nearerWays: WayFinder = (finding, design) => {
  const stowed = stowedGear(design, finding.parts[0]);
  return stowed ? elsewhere(design, stowed, (a, b) => motionsInto(a) - motionsInto(b)) : [];
};

/** Gear that is in the way of something, out of its way: in the near corner of its room, or in another. */
export const gearAsideWays = (design: Design, parts: readonly string[]): readonly Candidate[] =>
  parts.flatMap((part) => {
    const stowed = stowedGear(design, part);
    return stowed ? [...toCorner(design, stowed), ...elsewhere(design, stowed)] : [];
  });

/** The items that an item meets on its way out, put aside. */
export const gearMetWays: WayFinder = (finding, design) =>
  gearAsideWays(design, String(finding.facts.met ?? '').split(' '));

/** The second of two items of gear moved off the first. */
export const secondGearWays: WayFinder = (finding, design) => {
  const stowed = stowedGear(design, finding.parts[1]);
  if (!stowed) return [];
  return reversed(shiftsOff(finding, design.units)).flatMap((shift) => alongRoom(design, stowed, shift));
};

const axisOf = (finding: Finding): 0 | 1 | 2 => {
  const { axis } = finding.facts;
  return axis === 'deep' ? 1 : axis === 'up' ? 2 : 0;
};

/** Gear that sticks out of its room: pushed back in, turned, or stowed elsewhere. */
export const roomWays: WayFinder = (finding, design) => {
  const stowed = stowedGear(design, finding.parts[0]);
  if (!stowed) return [];
  const mm = roundedUp(finding.limit - finding.value, design.units);
  const axis = axisOf(finding);
  return [
    ...shifted(design, stowed, { axis, mm: -mm, group: 'less', rank: mm }),
    ...shifted(design, stowed, { axis, mm, group: 'more', rank: mm }),
    ...toCorner(design, stowed),
    ...turned(design, stowed),
    ...elsewhere(design, stowed),
  ];
};
