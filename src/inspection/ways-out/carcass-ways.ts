import { type AxisPlace, type Carcass, changeCarcass, type Design, openingsFrom } from '../../design/index.ts';
import type { Finding } from '../finding.ts';
import { type Candidate, markOff, roundedUp, sizedCandidate, type WayFinder } from './candidate.ts';
import { reversed, type Shift, shiftsOff, type VehicleAxis } from './escape.ts';

type Size = keyof Carcass['size'];

/** Which size of the carcass runs along each axis of the vehicle, by the way its open face looks. */
const SIZE_ALONG: Readonly<Record<Carcass['facing'], Readonly<Record<VehicleAxis, Size>>>> = {
  rear: { x: 'depth', y: 'width', z: 'height' },
  front: { x: 'depth', y: 'width', z: 'height' },
  left: { x: 'width', y: 'depth', z: 'height' },
  right: { x: 'width', y: 'depth', z: 'height' },
};

/** The place moved by `mm`, or null where the rule cannot give that much. */
const movedPlace = (place: AxisPlace, mm: number): AxisPlace | null => {
  if (place.rule === 'at') return { rule: 'at', mm: place.mm + mm };
  const gapMm = place.gapMm + (place.side === 'plus' ? mm : -mm);
  return gapMm >= 0 ? { ...place, gapMm } : null;
};

const moved = (design: Design, carcass: Carcass, { axis, mm, group, rank }: Shift): Candidate | null => {
  const place = movedPlace(carcass.place[axis], mm);
  if (!place) return null;
  return {
    kind: 'move-carcass',
    facts: { carcass: carcass.name, axis, mm },
    design: changeCarcass(design, carcass.id, { place: { ...carcass.place, [axis]: place } }),
    change: rank,
    group: `move ${carcass.id} ${group}`,
  };
};

/**
 * The carcass made smaller along the axis, its other end staying where it is. A shift towards greater coordinates
 * means that the low end gives way, so the carcass moves by what it loses; a carcass placed beside another at that end
 * moves by itself.
 */
const shrunk = (design: Design, carcass: Carcass, { axis, mm, group, rank }: Shift): Candidate | null => {
  const size = SIZE_ALONG[carcass.facing][axis];
  const left = carcass.size[size] - Math.abs(mm);
  const place = mm > 0 ? movedPlace(carcass.place[axis], mm) : carcass.place[axis];
  if (left <= 0 || !place) return null;
  return {
    kind: 'shrink-carcass',
    facts: { carcass: carcass.name, size, mm: Math.abs(mm) },
    design: changeCarcass(design, carcass.id, {
      size: { ...carcass.size, [size]: left },
      place: { ...carcass.place, [axis]: place },
    }),
    change: rank,
    group: `shrink ${carcass.id} ${group}`,
  };
};

const carcassOf = (design: Design, id: string | undefined): Carcass | undefined =>
  design.cabinet.carcasses.find((carcass) => carcass.id === id);

/** The carcass that a part belongs to: itself, that of its opening, or that of a panel by its mark. */
export const carcassAround = (design: Design, part: string | undefined): Carcass | undefined => {
  const own = part?.split('/')[0];
  return (
    carcassOf(design, own) ??
    design.cabinet.carcasses.find(({ opening }) => openingsFrom(opening).some(({ id }) => id === own))
  );
};

/** A carcass moved along an axis by no more than clears the finding; `rank` where it stands among others of its kind. */
export const movedAlong = (
  design: Design,
  carcass: Carcass | undefined,
  axis: VehicleAxis,
  mm: number,
  rank?: number,
): readonly Candidate[] => {
  if (!carcass || !(Math.abs(mm) > 0)) return [];
  const sign = Math.sign(mm);
  return sizedCandidate(roundedUp(Math.abs(mm), design.units), markOff(design.units), (amount) =>
    moved(design, carcass, { axis, mm: sign * amount, group: `${axis} ${sign}`, rank: rank ?? amount }),
  );
};

/** A carcass made smaller, its low end staying where it is. */
export const shrunkBy = (design: Design, carcass: Carcass, size: Size, mm: number): readonly Candidate[] =>
  sizedCandidate(roundedUp(mm, design.units), markOff(design.units), (amount) => {
    const left = carcass.size[size] - amount;
    if (left <= 0) return null;
    return {
      kind: 'shrink-carcass',
      facts: { carcass: carcass.name, size, mm: amount },
      design: changeCarcass(design, carcass.id, { size: { ...carcass.size, [size]: left } }),
      change: amount,
      group: `shrink ${carcass.id} ${size}`,
    };
  });

const isThere = (candidate: Candidate | null): candidate is Candidate => candidate !== null;

/** The first part moved or made smaller, where it is a carcass. */
const ofFirst = (finding: Finding, design: Design, shifts: readonly Shift[]): readonly Candidate[] => {
  const carcass = carcassOf(design, finding.parts[0]);
  if (!carcass) return [];
  return shifts.flatMap((shift) =>
    [moved, shrunk].flatMap((by) =>
      sizedCandidate(Math.abs(shift.mm), markOff(design.units), (amount) =>
        by(design, carcass, { ...shift, mm: Math.sign(shift.mm) * amount }),
      ),
    ),
  );
};

/** The carcass that a gap finding is about, moved off the vehicle or made smaller on that side. */
export const carcassWays: WayFinder = (finding, design) => ofFirst(finding, design, shiftsOff(finding, design.units));

/** Two carcasses in each other's way: either one moved off the other. */
export const twoCarcassWays: WayFinder = (finding, design) => {
  const shifts = shiftsOff(finding, design.units);
  const second = carcassOf(design, finding.parts[1]);
  const away = reversed(shifts);
  const other = second ? away.map((shift) => moved(design, second, shift)).filter(isThere) : [];
  return [...ofFirst(finding, design, shifts), ...other];
};
