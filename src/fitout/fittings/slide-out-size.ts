import { type Box, boxSize, ROUNDING_MM, type Vec3 } from '../../base/index.ts';
import type { Material, Slide } from '../../catalog/index.ts';
import { type FittingByKind, openingsFrom } from '../../design/index.ts';
import { largerOf } from '../axes.ts';
import type { CarcassContext, Counting } from '../context.ts';
import { gearMass } from '../gear-size.ts';
import { frontNeed } from '../hardware.ts';
import { sheetMassKg } from '../masses.ts';
import { leastSlide, type SlideAsk, type SlideOption, slideFor } from '../slide-choice.ts';
import type { Room } from '../solved.ts';
import { stockOf } from '../stock.ts';

type SlideOut = FittingByKind['slide-out'];

/** Sheets and room allowances of one slide-out. */
export interface Make {
  readonly deckSheet: Material;
  readonly lipSheet: Material;
  readonly behind: number;
  readonly above: number;
  readonly below: number;
  readonly beside: number;
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
  };
};

/** Room beside the tray on each side: the side space of its slide, or the gap of moving parts over an under-mount. */
const beside = (slide: Slide, make: Make): number => (slide.mount === 'side' ? slide.sideSpaceMm : make.beside);

/** Room under the deck: the slide itself, or the clearance of a tray between its slides. */
const under = (slide: Slide, make: Make): number => (slide.mount === 'side' ? make.below : slide.heightMm);

/**
 * Height of the tray's sides from the lower face of the deck: the lip above the deck, and beside a side slide at
 * least so much that the slide has wood to sit on.
 */
export const sideHeight = (fitting: SlideOut, slide: Slide, make: Make): number => {
  const lip = fitting.lipHeightMm > 0 ? make.deckSheet.thicknessMm + fitting.lipHeightMm : 0;
  return slide.mount === 'side' ? Math.max(lip, slide.heightMm) : lip;
};

const sidesThick = (fitting: SlideOut, slide: Slide, make: Make): number =>
  sideHeight(fitting, slide, make) > 0 ? 2 * make.lipSheet.thicknessMm : 0;

const lipsThick = (fitting: SlideOut, make: Make): number =>
  fitting.lipHeightMm > 0 ? 2 * make.lipSheet.thicknessMm : 0;

const clearNeed = (fitting: SlideOut, context: CarcassContext, counting: Counting, make: Make): Vec3 => {
  const worth = context.rule('least-inside');
  return largerOf([worth, worth, worth], context.least(fitting.inside, counting, make.lipSheet));
};

/** Mass of the deck and its lips of this outside size (kg). */
const emptyKg = (fitting: SlideOut, slide: Slide, width: number, depth: number, make: Make): number => {
  const sides = 2 * depth * sideHeight(fitting, slide, make) + 2 * width * fitting.lipHeightMm;
  const deck = width * depth * make.deckSheet.thicknessMm;
  return sheetMassKg(deck, make.deckSheet) + sheetMassKg(sides * make.lipSheet.thicknessMm, make.lipSheet);
};

interface Frame {
  /** Width of the tray on a slide, and its depth where it is known. */
  readonly width: (slide: Slide) => number;
  readonly depth: number | null;
  readonly shortest: number;
}

const askOf = (fitting: SlideOut, context: CarcassContext, make: Make, frame: Frame): SlideAsk => {
  const gearKg = gearMass(context, openingsFrom(fitting.inside));
  return {
    slide: fitting.slide,
    lengthMm: fitting.slideLengthMm,
    mounts: ['side', 'under'],
    shortest: () => frame.shortest,
    width: frame.width,
    load: ({ slide, lengthMm }) => gearKg + emptyKg(fitting, slide, frame.width(slide), frame.depth ?? lengthMm, make),
    locks: (loadKg) => loadKg > context.rule('slide-out-lock-mass'),
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
  const shortest = clear[1] + lipsThick(fitting, make);
  const width = (slide: Slide): number => clear[0] + sidesThick(fitting, slide, make);
  const option = leastSlide(context, askOf(fitting, context, make, { width, depth: null, shortest }));
  if (!option) return { room: clear, option };
  const { slide, lengthMm } = option;
  const [latchWide, latchHigh] = frontNeed(context, [fitting.latch]);
  const deck = make.deckSheet.thicknessMm;
  const overDeck = Math.max(clear[2], sideHeight(fitting, slide, make) - deck, latchHigh - deck);
  return {
    room: [
      Math.max(width(slide), latchWide) + 2 * beside(slide, make),
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
      width(slide) >= clear[0] + sidesThick(fitting, slide, make) - ROUNDING_MM &&
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
