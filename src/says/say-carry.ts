import { degrees, type LengthUnits, ROUNDING_MM, ROUNDING_RAD } from '../base/index.ts';
import type { CarriedCarcass, CarriedMount, CarryIn, CarryLeg, CarryPath, CarryPose } from '../inspection/index.ts';
import { sayLength } from './amounts.ts';
import { sentence } from './words.ts';

type Naming = (id: string) => string;

/** Which way each axis of the vehicle goes, below and above nothing. Vehicle axes: x forward, y left, z up. */
const SHIFT_WORDS = [
  (by: string, more: boolean) => `slide it ${by} ${more ? 'forward' : 'rearward'}`,
  (by: string, more: boolean) => `set it ${by} to the ${more ? 'left' : 'right'}`,
  (by: string, more: boolean) => `${more ? 'lift' : 'lower'} it ${by}`,
] as const;

const TURN_WORDS = [
  ['pitchRad', 'tilt its front edge down', 'tilt its front edge up'],
  ['rollRad', 'tilt it over to the left', 'tilt it over to the right'],
  ['yawRad', 'swing its front edge to the right', 'swing its front edge to the left'],
] as const;

/** The axis along which most is moved is said last, since it is what the others make room for. */
const legWords = (from: CarryPose, to: CarryPose, units: LengthUnits): string => {
  const turns = TURN_WORDS.flatMap(([key, less, more]) => {
    const by = to[key] - from[key];
    if (Math.abs(by) <= ROUNDING_RAD) return [];
    // A turn about +y brings the front edge down.
    const rises = key === 'pitchRad' ? by < 0 : by > 0;
    return [`${rises ? more : less} ${Math.round(Math.abs(degrees(by)))}°`];
  });
  const shifts = SHIFT_WORDS.flatMap((words, axis) => {
    const by = (to.shift[axis] ?? 0) - (from.shift[axis] ?? 0);
    return Math.abs(by) <= ROUNDING_MM
      ? []
      : [{ size: Math.abs(by), text: words(sayLength(Math.abs(by), units), by > 0) }];
  }).toSorted((a, b) => a.size - b.size);
  return [...turns, ...shifts.map(({ text }) => text)].join(', ');
};

const ATTITUDES = [
  ['pitchRad', 'front edge down', 'front edge up'],
  ['rollRad', 'tilted over to the right', 'tilted over to the left'],
  ['yawRad', 'front edge swung to the left', 'front edge swung to the right'],
] as const;

/** How it is turned about one axis, in a few words: `12° front edge down`; empty where it is not. */
export const sayTurned = (pose: CarryPose, about: 'pitchRad' | 'rollRad' | 'yawRad'): string => {
  const [, more, less] = ATTITUDES.find(([key]) => key === about) ?? ATTITUDES[0];
  const angle = pose[about];
  return Math.abs(angle) <= ROUNDING_RAD ? '' : `${Math.round(Math.abs(degrees(angle)))}° ${angle > 0 ? more : less}`;
};

/** How it is held at a pose, in a sentence. */
export const sayHeld = (pose: CarryPose): string => {
  const turned = ATTITUDES.map(([key]) => sayTurned(pose, key)).filter((words) => words !== '');
  return sentence(turned.length === 0 ? 'held level and square to the vehicle.' : `held ${turned.join(', ')}.`);
};

/** A gap on the way with how well it is known: `13.7 ± 4.5 mm`. */
export const sayCarryGap = (
  { leastGap, uncertainty }: Pick<CarryLeg, 'leastGap' | 'uncertainty'>,
  units: LengthUnits,
): string =>
  `${sayLength(Math.max(0, leastGap), units)}${uncertainty > 0 ? ` ± ${sayLength(uncertainty, units)}` : ''}`;

/** The least gap of one step, in a sentence. */
export const sayLegGap = (leg: CarryLeg | null, units: LengthUnits): string =>
  leg && Number.isFinite(leg.leastGap)
    ? sentence(`least gap ${sayCarryGap(leg, units)}, to ${leg.nearest}.`)
    : 'Nothing near on this step.';

/** One step of a way: what is done, and from which to which of its waypoints. */
export interface CarryStep {
  /** One sentence without a full stop. */
  readonly words: string;
  readonly from: CarryPose;
  readonly to: CarryPose;
  /** What is nearest meanwhile. */
  readonly leg: CarryLeg | null;
}

/** The steps of a way: in, from behind the vehicle to the place, or out, the other way round. */
export const carrySteps = (path: CarryPath, way: 'in' | 'out', units: LengthUnits): readonly CarryStep[] => {
  const [poses, legs] = way === 'in' ? [path.poses.toReversed(), path.legs.toReversed()] : [path.poses, path.legs];
  return poses.slice(1).flatMap((to, i) => {
    const from = poses[i];
    const words = from ? legWords(from, to, units) : '';
    return from && words !== '' ? [{ words: sentence(words), from, to, leg: legs[i] ?? null }] : [];
  });
};

/** The steps of carrying it in, from behind the vehicle to its place. */
export const sayCarrySteps = ({ path }: CarriedCarcass, units: LengthUnits): readonly string[] =>
  path ? carrySteps(path, 'in', units).map(({ words }) => words) : [];

/** How a carcass is taken out again, in a sentence: by itself, or after those that were carried in later. */
export const sayTakenOut = (own: CarriedCarcass, names: Naming): string => {
  const name = names(own.carcass);
  if (own.alone) return sentence(`${name} comes out again with everything else in its place.`);
  return own.path
    ? sentence(
        `with everything else in its place no way out was found for ${name}: what was carried in later goes out first.`,
      )
    : sentence(`no way out was found for ${name}.`);
};

/** How a mount is taken off and out, in a sentence. */
export const sayMountOff = (
  { mount, comesOff, path, stuck }: CarriedMount,
  units: LengthUnits,
  names: Naming,
): string => {
  const met = stuck && stuck.by !== '' ? ` In the way: ${stuck.by}.` : '';
  if (!comesOff) return sentence(`no straight way off was found for ${names(mount)}.${met}`);
  if (!path)
    return sentence(`${names(mount)} comes straight off, but no way out of the vehicle was found for it.${met}`);
  const gap = Number.isFinite(path.leastGap) ? `, ${sayCarryGap(path, units)} from ${path.nearest} at the nearest` : '';
  return sentence(`${names(mount)} comes straight off and out${gap}.`);
};

/** One carcass in a sentence or two: its least gap, or where the search stuck. */
export const sayCarried = (own: CarriedCarcass, wantedMm: number, units: LengthUnits, names: Naming): string => {
  const name = names(own.carcass);
  if (!own.path) {
    const by = own.stuck && own.stuck.by !== '' ? `, mostly on ${own.stuck.by}` : '';
    const reached = own.stuck
      ? ` Drawn straight it comes ${sayLength(own.stuck.mm, units)} out of its place${by}.`
      : '';
    return sentence(`${name}: no way in was found. That is not to say that there is none.${reached}`);
  }
  const { leastGap, nearest, uncertainty } = own.path;
  const gap = Number.isFinite(leastGap)
    ? `passes ${sayCarryGap(own.path, units)} from ${nearest} at the nearest`
    : 'meets nothing on its way';
  const tight = leastGap < wantedMm + uncertainty ? `; ${sayLength(wantedMm, units)} is wanted` : '';
  return sentence(`${name} ${gap}${tight}.`);
};

/** The whole carry-in as lines for paper and terminal, in the order in which the carcasses go in. */
export const sayCarryIn = (carry: CarryIn, units: LengthUnits, names: Naming): readonly string[] => [
  ...carry.carcasses.flatMap((own, i) => [
    `${i + 1}. ${sayCarried(own, carry.wantedMm, units, names)}`,
    ...sayCarrySteps(own, units).map((step) => `   - ${step}.`),
    ...(own.path ? [`   ${sayTakenOut(own, names)}`] : []),
  ]),
  ...carry.mounts.flatMap((own) => [
    sayMountOff(own, units, names),
    ...(own.path ? carrySteps(own.path, 'out', units).map(({ words }) => `   - ${words}.`) : []),
  ]),
];
