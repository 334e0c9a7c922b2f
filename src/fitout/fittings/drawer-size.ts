import { type Box, boxSize, ROUNDING_MM, type Vec3 } from '../../base/index.ts';
import type { Material, Slide } from '../../catalog/index.ts';
import { type FittingByKind, type NodeId, openingsFrom } from '../../design/index.ts';
import { largerOf, UP } from '../axes.ts';
import type { CarcassContext, Counting } from '../context.ts';
import { gearMass } from '../gear-size.ts';
import { frontNeed } from '../hardware.ts';
import { isLetIn, needBehind } from '../let-in.ts';
import { sheetMassKg } from '../masses.ts';
import type { FitProblem } from '../parts.ts';
import { mmWords, rulesFight } from '../problem.ts';
import { type LockAsk, leastSlide, type SlideAsk, type SlideOption, slideFor } from '../slide-choice.ts';
import type { Room } from '../solved.ts';
import { stockOf } from '../stock.ts';
import { boxJoints } from './drawer-box.ts';

type Drawer = FittingByKind['drawer'];

/** Sheets and room allowances of one drawer. */
export interface Make {
  readonly sheet: Material;
  readonly bottomSheet: Material;
  readonly frontSheet: Material;
  /** How far the box stands behind the face: an inset front stands in the opening. */
  readonly frontDeep: number;
  readonly below: number;
  readonly above: number;
  readonly behind: number;
  readonly bottomUp: number;
}

export const makeOf = (fitting: Drawer, context: CarcassContext): Make => {
  const { catalog, carcass, rule, material } = context;
  const sheet = stockOf(catalog, fitting.boxMaterial, carcass.id).material;
  return {
    sheet,
    bottomSheet: stockOf(catalog, fitting.bottomMaterial, carcass.id).material,
    frontSheet: material,
    frontDeep: fitting.front === 'inset' ? material.thicknessMm : 0,
    below: rule('drawer-clear-below'),
    above: rule('drawer-clear-above'),
    behind: rule('back-clear'),
    bottomUp: boxJoints(fitting, sheet.thicknessMm, context).bottomUp,
  };
};

/** Clear room that the box must have inside: what its opening needs, but no less than is worth building. */
const clearNeed = (fitting: Drawer, context: CarcassContext, counting: Counting, make: Make): Vec3 => {
  const worth = context.rule('least-inside');
  return largerOf([worth, worth, worth], context.least(fitting.inside, counting, make.sheet));
};

/** Mass of an empty box of this outside size with its front, joints not taken off (kg). */
const emptyKg = ([w, d, h]: Vec3, make: Make): number => {
  const sides = 2 * (w + d) * h * make.sheet.thicknessMm;
  const front = w * h * make.frontSheet.thicknessMm;
  const bottom = w * d * make.bottomSheet.thicknessMm;
  return sheetMassKg(sides, make.sheet) + sheetMassKg(front, make.frontSheet) + sheetMassKg(bottom, make.bottomSheet);
};

/** Where the slides of a drawer must lock, as the user wants it. */
export const drawerLocks = ({ slideLocks }: Pick<Drawer, 'slideLocks'>): LockAsk => ({
  in: slideLocks === 'shut' || slideLocks === 'both',
  out: slideLocks === 'out' || slideLocks === 'both',
  everyMm: null,
});

const askOf = (
  fitting: Drawer,
  context: CarcassContext,
  make: Make,
  size: { readonly width: (slide: Slide) => number; readonly height: number; readonly clear: Vec3 },
): SlideAsk => {
  const gearKg = gearMass(context, openingsFrom(fitting.inside));
  return {
    slide: fitting.slide,
    lengthMm: fitting.slideLengthMm,
    mounts: ['side'],
    shortest: () => size.clear[1] + 2 * make.sheet.thicknessMm,
    width: size.width,
    load: ({ slide, lengthMm }) => gearKg + emptyKg([size.width(slide), lengthMm, size.height], make),
    locks: () => drawerLocks(fitting),
  };
};

/** The lowest box that holds its bottom with room above it, and that its slide can be screwed to. */
const lowestBox = (context: CarcassContext, make: Make, slideHeight: number): number =>
  Math.max(slideHeight, make.bottomUp + make.bottomSheet.thicknessMm + context.rule('least-inside'));

/** Height of the box: as the user set it, as far as that can be built, or else as `free` allows. */
const boxHeightOf = (fitting: Drawer, context: CarcassContext, make: Make, slideHeight: number, free: number): number =>
  Math.max(lowestBox(context, make, slideHeight), fitting.boxHeightMm ?? free);

interface Need {
  /** Least room of the drawer: across × deep × up. */
  readonly room: Vec3;
  readonly option: SlideOption | null;
}

/** How far the middle of a pull stands from that of a latch that is let in, which a hand must reach as well. */
export const pullBeside = ({ latch, pull }: Pick<Drawer, 'latch' | 'pull'>, context: CarcassContext): number => {
  if (pull === null || latch === null || !isLetIn(context.catalog.hardware.get(latch) ?? null)) return 0;
  const [latchWide, pullWide] = [frontNeed(context, [latch])[0], frontNeed(context, [pull])[0]];
  return latchWide / 2 + context.rule('gap-moving-parts') + pullWide / 2;
};

/** Across × up that latch and pull ask to be cut out of the front of the box, about their middle. */
const cutBehind = (fitting: Drawer, context: CarcassContext): readonly [number, number] => {
  const [latch, pull] = [fitting.latch, fitting.pull].map((item) =>
    needBehind(context, item, context.material.thicknessMm),
  );
  const across = pull && pull[0] > 0 ? 2 * pullBeside(fitting, context) + pull[0] : 0;
  return [Math.max(latch?.[0] ?? 0, across), Math.max(latch?.[1] ?? 0, pull?.[1] ?? 0)];
};

/**
 * Height of the middle of latch and pull: the middle of the front, or as little off it as brings their cut-outs
 * between the bottom of the box and its upper edge.
 */
export const frontMiddle = (
  fitting: Drawer,
  front: Box,
  box: { readonly from: number; readonly to: number },
  context: CarcassContext,
): number => {
  const middle = (front.min[UP] + front.max[UP]) / 2;
  const [, cut] = cutBehind(fitting, context);
  const room = cut / 2 + context.rule('let-in-edge');
  const [low, high] = [box.from + room, box.to - room];
  return cut === 0 || low > high ? middle : Math.min(high, Math.max(low, middle));
};

/**
 * Least opening in which the front of the box holds the cut-outs for latch and pull between its sides, over its bottom
 * and under its upper edge, and the front their rims.
 */
const behindFront = (fitting: Drawer, context: CarcassContext, make: Make, space: number): Vec3 => {
  const [across, up] = cutBehind(fitting, context);
  if (across === 0) return [0, 0, 0];
  const edge = context.rule('let-in-edge');
  const low = make.below + make.bottomUp + make.bottomSheet.thicknessMm;
  const rim = frontNeed(context, [fitting.latch, fitting.pull])[1] / 2 + context.rule('reveal-front');
  return [
    across + 2 * (edge + make.sheet.thicknessMm + space),
    0,
    Math.max(low, make.above) + edge + up / 2 + Math.max(Math.min(low, make.above) + edge + up / 2, rim),
  ];
};

/** Least room of a drawer and the slide that it is reckoned with: the shortest that carries what is inside. */
export const needOf = (fitting: Drawer, context: CarcassContext, counting: Counting): Need => {
  const make = makeOf(fitting, context);
  const clear = clearNeed(fitting, context, counting, make);
  const boxWidth = 2 * make.sheet.thicknessMm + clear[0];
  const full = make.bottomUp + make.bottomSheet.thicknessMm + clear[2];
  const height = boxHeightOf(fitting, context, make, 0, full);
  const option = leastSlide(context, askOf(fitting, context, make, { width: () => boxWidth, height, clear }));
  const [space, slideHeight] = option ? [option.slide.sideSpaceMm, option.slide.heightMm] : [0, 0];
  const length = option?.lengthMm ?? clear[1];
  const boxHeight = boxHeightOf(fitting, context, make, slideHeight, full);
  const room: Vec3 = [2 * space + boxWidth, make.frontDeep + length + make.behind, make.below + boxHeight + make.above];
  // Latch and pull lie within the front, which stands the reveal inside the opening.
  const [wide, high] = frontNeed(context, [fitting.latch, fitting.pull]);
  const [pull] = frontNeed(context, [fitting.pull]);
  const reveals = 2 * context.rule('reveal-front');
  const behind = behindFront(fitting, context, make, space);
  return {
    room: largerOf(largerOf(room, behind), [
      Math.max(wide, 2 * pullBeside(fitting, context) + pull) + reveals,
      0,
      high + reveals,
    ]),
    option,
  };
};

/** The slide for the room; where none fits, the one that the least room was reckoned with. */
export const chooseSlide = (fitting: Drawer, room: Room, context: CarcassContext, make: Make): SlideOption | null => {
  const [w, d, h] = boxSize(room.box);
  const clear = clearNeed(fitting, context, 'built', make);
  const most = h - make.below - make.above;
  const height = boxHeightOf(fitting, context, make, 0, most);
  const width = (slide: Slide): number => w - 2 * slide.sideSpaceMm;
  const ask = askOf(fitting, context, make, { width, height, clear });
  const fits = ({ slide, lengthMm }: SlideOption): boolean =>
    lengthMm <= d - make.frontDeep - make.behind + ROUNDING_MM &&
    width(slide) >= 2 * make.sheet.thicknessMm + clear[0] - ROUNDING_MM &&
    boxHeightOf(fitting, context, make, slide.heightMm, most) <= most + ROUNDING_MM;
  return slideFor(context, ask, fits) ?? needOf(fitting, context, 'built').option;
};

/** Outside of the box on its slides. */
export const boxPlace = (
  fitting: Drawer,
  room: Room,
  context: CarcassContext,
  make: Make,
  option: SlideOption,
): Box => {
  const { min, max } = room.box;
  const { slide, lengthMm } = option;
  const low: Vec3 = [min[0] + slide.sideSpaceMm, min[1] + make.frontDeep, min[2] + make.below];
  const height = boxHeightOf(fitting, context, make, slide.heightMm, max[2] - make.above - low[2]);
  return { min: low, max: [max[0] - slide.sideSpaceMm, low[1] + lengthMm, low[2] + height] };
};

/** A box height that the bottom and the slide do not fit into. */
export const lowBox = (
  fitting: Drawer,
  context: CarcassContext,
  make: Make,
  { slide }: SlideOption,
  at: NodeId,
): readonly FitProblem[] => {
  const { boxHeightMm } = fitting;
  const need = lowestBox(context, make, slide.heightMm);
  if (boxHeightMm === null || boxHeightMm >= need - ROUNDING_MM) return [];
  return [
    rulesFight(at, UP, need, boxHeightMm, [`box ${mmWords(boxHeightMm)} high`, `slide and bottom ${mmWords(need)}`]),
  ];
};
