import { type Box, boxSize, ROUNDING_MM, type Vec2, type Vec3 } from '../../base/index.ts';
import type { Hardware, Material, Slide } from '../../catalog/index.ts';
import { type FittingByKind, type NodeId, openingsFrom, openingsInside } from '../../design/index.ts';
import { largerOf, UP, withAxis } from '../axes.ts';
import type { CarcassContext, Counting } from '../context.ts';
import { gearMass } from '../gear-size.ts';
import { frontNeed } from '../hardware.ts';
import { isLetIn } from '../let-in.ts';
import { sheetMassKg } from '../masses.ts';
import type { FitProblem } from '../parts.ts';
import { mmWords, rulesFight } from '../problem.ts';
import { type LockAsk, leastSlide, NO_LOCKS, type SlideAsk, type SlideOption, slideFor } from '../slide-choice.ts';
import { allowedSlideLoadKg } from '../slide-load.ts';
import type { Room } from '../solved.ts';
import { stockOf } from '../stock.ts';
import { slotLength } from './tie-down.ts';

type SlideOut = FittingByKind['slide-out'];

/** Sheets and room allowances of one slide-out. */
export interface Make {
  readonly deckSheet: Material;
  readonly lipSheet: Material;
  readonly behind: number;
  readonly above: number;
  readonly below: number;
  readonly beside: number;
  /** Width that the two rows of slots for straps take on the deck between lips or rails, and length of one slot. */
  readonly slots: readonly [wide: number, long: number];
}

export const makeOf = (fitting: SlideOut, context: CarcassContext): Make => {
  const { catalog, carcass, rule } = context;
  return {
    deckSheet: stockOf(catalog, fitting.deckMaterial, carcass.id).material,
    lipSheet: stockOf(catalog, fitting.lipMaterial, carcass.id).material,
    behind: rule('back-clear'),
    above: rule('tray-clear-above'),
    below: rule('drawer-clear-below'),
    beside: rule('gap-moving-parts'),
    slots: [fitting.tieDown ? 2 * (rule('tie-slot-set-in') + rule('tie-slot-width')) : 0, slotLength(fitting, context)],
  };
};

/** On what slides the tray may run. */
export const mountsOf = ({ mount }: SlideOut): readonly Slide['mount'][] =>
  mount === null ? ['side', 'under'] : [mount];

/** Where it locks because the user wants it; a heavy one locks shut and out whatever he wants. */
export const wantedLocks = ({ lockEveryMm }: SlideOut): LockAsk =>
  lockEveryMm === null ? NO_LOCKS : { in: true, out: true, everyMm: lockEveryMm };

/** Room beside the tray on each side: the side space of its slide, or the gap of moving parts over an under-mount. */
const beside = (slide: Slide, make: Make): number => (slide.mount === 'side' ? slide.sideSpaceMm : make.beside);

/** Room under the deck: the slide itself, or the clearance of a tray between its slides. */
const under = (slide: Slide, make: Make): number => (slide.mount === 'side' ? make.below : slide.heightMm);

/**
 * Height of the tray's sides from the lower face of the deck: the lip above the deck, or above the second one that
 * they carry, and beside a side slide at least so much that the slide has wood to sit on.
 */
export const sideHeight = (fitting: SlideOut, slide: Slide, make: Make): number => {
  const { lipHeightMm, second } = fitting;
  const lip = lipHeightMm > 0 || second ? make.deckSheet.thicknessMm + (second?.upMm ?? 0) + lipHeightMm : 0;
  return slide.mount === 'side' ? Math.max(lip, slide.heightMm) : lip;
};

const sidesThick = (fitting: SlideOut, slide: Slide, make: Make): number =>
  sideHeight(fitting, slide, make) > 0 ? 2 * make.lipSheet.thicknessMm : 0;

const letInLatch = ({ latch }: SlideOut, catalog: CarcassContext['catalog']): Hardware | null => {
  const record = latch === null ? null : (catalog.hardware.get(latch) ?? null);
  return isLetIn(record) ? record : null;
};

/**
 * Height of the front lip over the deck: that of the others, or what a latch needs that is let in, as far as a second
 * deck lets it.
 */
export const frontLip = (fitting: SlideOut, { catalog }: Pick<CarcassContext, 'catalog'>, make: Make): number => {
  const latch = letInLatch(fitting, catalog);
  const wanted = latch?.sizeMm?.[1] ?? 0;
  const most = fitting.second ? fitting.second.upMm - make.deckSheet.thicknessMm : Infinity;
  return Math.max(fitting.lipHeightMm, Math.min(wanted, most));
};

const lipsThick = (fitting: SlideOut, context: CarcassContext, make: Make): number =>
  [frontLip(fitting, context, make), fitting.lipHeightMm].filter((height) => height > 0).length *
  make.lipSheet.thicknessMm;

const clearNeed = (fitting: SlideOut, context: CarcassContext, counting: Counting, make: Make): Vec3 => {
  const worth = context.rule('least-inside');
  const [wide, long] = make.slots;
  const deck: Vec3 = [worth + wide, Math.max(worth, long), worth];
  const below = largerOf(deck, context.least(fitting.inside, counting, make.lipSheet));
  const { second } = fitting;
  if (!second) return below;
  const above = largerOf([worth, worth, worth], context.least(second.inside, counting, make.lipSheet));
  return withAxis(largerOf(below, above), UP, second.upMm + above[UP]);
};

/** Height between the decks that what is built below needs, and that the second one leaves. */
export const lowSecond = (
  fitting: SlideOut,
  context: CarcassContext,
  make: Make,
  at: NodeId,
): readonly FitProblem[] => {
  const { second } = fitting;
  if (!second) return [];
  const worth = context.rule('least-inside');
  const need = Math.max(worth, fitting.lipHeightMm, context.least(fitting.inside, 'built', make.lipSheet)[UP]);
  const have = second.upMm - make.deckSheet.thicknessMm;
  if (have >= need - ROUNDING_MM) return [];
  return [rulesFight(at, UP, need, have, [`second level at ${mmWords(second.upMm)}`, `${mmWords(need)} below it`])];
};

/** Mass of the deck and its lips of this outside size (kg). */
const emptyKg = (
  fitting: SlideOut,
  slide: Slide,
  [width, depth]: Vec2,
  make: Make,
  context: Pick<CarcassContext, 'catalog'>,
): number => {
  const lips = width * (fitting.lipHeightMm + frontLip(fitting, context, make));
  const sides = 2 * depth * sideHeight(fitting, slide, make) + lips;
  const ends = fitting.second ? 2 * width * fitting.lipHeightMm * make.lipSheet.thicknessMm : 0;
  const deck = (fitting.second ? 2 : 1) * width * depth * make.deckSheet.thicknessMm;
  return sheetMassKg(deck, make.deckSheet) + sheetMassKg(sides * make.lipSheet.thicknessMm + ends, make.lipSheet);
};

/** Width that rails under the deck take from it, as wide as they are high. */
const railsWide = (slide: Slide): number => (slide.mount === 'side' ? 0 : 2 * slide.heightMm);

/** Width of a tray with so much clear room inside, and with slots for straps between its rails. */
const leastWide = (fitting: SlideOut, slide: Slide, clear: number, make: Make): number =>
  Math.max(clear, railsWide(slide) + make.slots[0]) + sidesThick(fitting, slide, make);

interface Frame {
  /** Width of the tray on a slide, and its depth where it is known. */
  readonly width: (slide: Slide) => number;
  readonly depth: number | null;
  readonly shortest: number;
}

const askOf = (fitting: SlideOut, context: CarcassContext, make: Make, frame: Frame): SlideAsk => {
  const gearKg = gearMass(context, openingsInside(fitting).flatMap(openingsFrom));
  return {
    slide: fitting.slide,
    lengthMm: fitting.slideLengthMm,
    mounts: mountsOf(fitting),
    shortest: () => frame.shortest,
    width: frame.width,
    load: ({ slide, lengthMm }) =>
      gearKg + emptyKg(fitting, slide, [frame.width(slide), frame.depth ?? lengthMm], make, context),
    locks: (loadKg) => {
      const wanted = wantedLocks(fitting);
      return loadKg > context.rule('slide-out-lock-mass') ? { ...wanted, in: true, out: true } : wanted;
    },
  };
};

interface Need {
  /** Least room of the slide-out: across × deep × up. */
  readonly room: Vec3;
  readonly option: SlideOption | null;
}

/** Least room of a slide-out and the slide that it is reckoned with: the shortest that carries what is on it. */
export const needOf = (fitting: SlideOut, context: CarcassContext, counting: Counting): Need => {
  const make = makeOf(fitting, context);
  const clear = clearNeed(fitting, context, counting, make);
  const shortest = clear[1] + lipsThick(fitting, context, make);
  const width = (slide: Slide): number => leastWide(fitting, slide, clear[0], make);
  const option = leastSlide(context, askOf(fitting, context, make, { width, depth: null, shortest }));
  if (!option) return { room: clear, option };
  const { slide, lengthMm } = option;
  const [latchWide, latchHigh] = frontNeed(context, [fitting.latch]);
  const deck = make.deckSheet.thicknessMm;
  const lip = frontLip(fitting, context, make);
  // A latch that is let in stands in the lip over the deck, any other before both.
  const overDeck = Math.max(clear[2], sideHeight(fitting, slide, make) - deck, lip, latchHigh - deck);
  const sides = letInLatch(fitting, context.catalog) === null ? 0 : sidesThick(fitting, slide, make);
  return {
    room: [
      Math.max(width(slide), latchWide + sides) + 2 * beside(slide, make),
      Math.max(lengthMm, shortest) + make.behind,
      under(slide, make) + deck + overDeck + make.above,
    ],
    option,
  };
};

/** The slide for the room; where none fits, the one that the least room was reckoned with. */
export const chooseSlide = (fitting: SlideOut, room: Room, context: CarcassContext, make: Make): SlideOption | null => {
  const [w, d, h] = boxSize(room.box);
  const clear = clearNeed(fitting, context, 'built', make);
  const width = (slide: Slide): number => w - 2 * beside(slide, make);
  const depth = d - make.behind;
  const ask = askOf(fitting, context, make, { width, depth, shortest: 0 });
  const fits = ({ slide, lengthMm }: SlideOption): boolean => {
    const overDeck = Math.max(clear[2], sideHeight(fitting, slide, make) - make.deckSheet.thicknessMm);
    return (
      lengthMm <= depth + ROUNDING_MM &&
      width(slide) >= leastWide(fitting, slide, clear[0], make) - ROUNDING_MM &&
      under(slide, make) + make.deckSheet.thicknessMm + overDeck + make.above <= h + ROUNDING_MM
    );
  };
  return slideFor(context, ask, fits) ?? needOf(fitting, context, 'built').option;
};

/** The tray in its room: full depth but for the clearance behind, from the lower face of the deck to its ceiling. */
export const trayPlace = ({ box }: Room, make: Make, { slide }: SlideOption): Box => {
  const side = beside(slide, make);
  return {
    min: [box.min[0] + side, box.min[1], box.min[2] + under(slide, make)],
    max: [box.max[0] - side, box.max[1] - make.behind, box.max[2] - make.above],
  };
};

/** What may be put on the tray: what its slides may carry in a vehicle less the tray itself, in whole kilograms. */
export const safeLoadKg = (
  fitting: SlideOut,
  context: CarcassContext,
  make: Make,
  { slide, lengthMm }: SlideOption,
  [width, depth]: Vec3,
): number => {
  const allowed = allowedSlideLoadKg(slide, lengthMm, width, context.rules);
  return Math.max(0, Math.floor(allowed - emptyKg(fitting, slide, [width, depth], make, context)));
};
