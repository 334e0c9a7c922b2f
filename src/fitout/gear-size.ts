import { add, subtract, type Vec3 } from '../base/index.ts';
import type { Gear, GearPlace, NodeId } from '../design/index.ts';
import { largerOf } from './axes.ts';
import type { CarcassContext } from './context.ts';

/** [across, deep, up] of an item of length × width × height, turned by 0, for each way that it may lie. */
const LYING: { readonly [Stance in GearPlace['stance']]: (size: Vec3) => Vec3 } = {
  upright: ([length, width, height]) => [width, length, height],
  'on-side': ([length, width, height]) => [height, length, width],
  'on-back': ([length, width, height]) => [width, height, length],
};

/**
 * The box that an item takes in its room: across × deep × up. Sizes are length × width × height as it stands
 * upright. At turn 0:
 * - upright: width across, length deep, height up;
 * - on its side (rolled about its length): height across, length deep, width up;
 * - on its back (tipped about its width): width across, height deep, length up.
 * A turn of 90° or 270° about the upright axis swaps across and deep; 180° takes the same box.
 */
export const gearSize = (gear: Gear, place: GearPlace): Vec3 => {
  const [across, deep, up] = LYING[place.stance](gear.sizeMm);
  return place.turnDeg === 90 || place.turnDeg === 270 ? [deep, across, up] : [across, deep, up];
};

/**
 * Room that the gear placed in one room of an opening takes from the near low left corner, with the spare beside and
 * behind it and the hand room above it; nothing where there is no gear.
 */
export const stockedRoom = (context: Omit<CarcassContext, 'least'>, opening: NodeId, level = 0): Vec3 => {
  const spare: Vec3 = [context.rule('gap-gear'), context.rule('gap-gear'), context.rule('hand-room-gear')];
  return context
    .gearIn(opening)
    .flatMap((gear) => (gear.place && gear.place.level === level ? [{ gear, place: gear.place }] : []))
    .map(({ gear, place }) => add(add(place.at, gearSize(gear, place)), spare))
    .reduce(largerOf, [0, 0, 0] as const);
};

/** The set of the catalog with the next larger cylinder: the lightest that is heavier, in packs for breathing. */
const nextSet = ({ massKg }: Gear, { catalog }: Pick<CarcassContext, 'catalog'>): Vec3 | null =>
  [...catalog.gear.values()]
    .filter((kind) => kind.group === 'breathing' && kind.form === 'pack' && kind.massKg > massKg)
    .reduce<{ readonly massKg: number; readonly sizeMm: Vec3 } | null>(
      (least, kind) => (least === null || kind.massKg < least.massKg ? kind : least),
      null,
    )?.sizeMm ?? null;

/** How much larger the sets in an opening become with the next larger cylinder: across × deep × up as they lie. */
export const nextSizeGrowth = (context: Omit<CarcassContext, 'least'>, opening: NodeId): Vec3 =>
  context
    .gearIn(opening)
    .map((gear): Vec3 => {
      const next = nextSet(gear, context);
      if (!next || !gear.place) return [0, 0, 0];
      const larger = gearSize({ ...gear, sizeMm: largerOf(gear.sizeMm, next) }, gear.place);
      return subtract(larger, gearSize(gear, gear.place));
    })
    .reduce(largerOf, [0, 0, 0] as const);

/** Mass of the gear whose place is in any of the openings (kg). */
export const gearMass = (
  context: Omit<CarcassContext, 'least'>,
  openings: readonly { readonly id: NodeId }[],
): number => openings.flatMap(({ id }) => context.gearIn(id)).reduce((sum, gear) => sum + gear.massKg, 0);
