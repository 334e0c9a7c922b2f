import { type Box, boxMiddle, groupBy, ROUNDING_MM, type Vec3 } from '../base/index.ts';
import { boxShape } from '../bodies/index.ts';
import type { Slide } from '../catalog/index.ts';
import type { HoleWish } from './board.ts';
import type { CarcassContext } from './context.ts';
import { fastenersOf } from './hardware.ts';
import type { Body, HardwareUse, MassItem, Mover, PartId } from './parts.ts';
import { badJoint } from './problem.ts';
import type { SlideOption } from './slide-choice.ts';
import { type FittingParts, NO_PARTS, type Room, together } from './solved.ts';
import { slideFastener } from './standard-pieces.ts';

/** One slide of a pair: the room it takes, and the surfaces that its two members are screwed to. */
export interface SlideSide {
  readonly side: 'left' | 'right' | 'lower' | 'upper';
  /** The side of the room whose panel it is fixed to, where that is another word. */
  readonly meets?: 'left' | 'right';
  readonly box: Box;
  /** The board of the carcass side and of the mover, null where there is none, each with the screwed surface. */
  readonly fixedTo: { readonly board: PartId; readonly surface: Surface } | null;
  readonly carries: { readonly board: PartId; readonly surface: Surface } | null;
}

/** Where a hole `along` from the front of the member and `up` from its lower edge lies, in carcass coordinates. */
export type Surface = (along: number, up: number) => Vec3;

const MM_PER_METRE = 1000;
const SLIDES_IN_A_PAIR = 2;

interface SlideJob {
  readonly room: Room;
  readonly option: SlideOption;
  readonly sides: readonly SlideSide[];
  readonly mover: PartId;
}

const holesOf = (
  context: CarcassContext,
  { room, option }: SlideJob,
  holes: Slide['boxHoles'],
  on: SlideSide['carries'],
  thickness: number,
): readonly HoleWish[] => {
  if (!on || !room.fits) return [];
  const depth = Math.min(context.rule('pilot-depth'), thickness / 2);
  return holes
    .filter(({ alongMm }) => alongMm < option.lengthMm)
    .map(({ alongMm, upMm, diameterMm }) => ({
      board: on.board,
      at: on.surface(alongMm, upMm),
      diameter: diameterMm,
      depth: slideFastener(diameterMm).blind ? depth : null,
      why: `${option.slide.id} screw`,
    }));
};

/** Fasteners for every hole of the pair, one line for each kind. */
const slideFasteners = (context: CarcassContext, job: SlideJob, holes: readonly HoleWish[]): FittingParts => {
  const { id } = job.room.opening;
  const byItem = groupBy(holes, ({ diameter }) => slideFastener(diameter).item);
  return together(
    [...byItem].map(([item, list]) =>
      fastenersOf(context, {
        id: `${id}/slide-fasteners-${item}`,
        origin: id,
        item,
        quantity: list.length,
        mover: null,
      }),
    ),
  );
};

/**
 * A pair of slides: a body and half the mass on each side, which stay with the carcass; the pair on the pick list;
 * holes in the boards on both sides. A side without a board to fix the slide to is a problem.
 */
export const slideParts = (
  context: CarcassContext,
  job: SlideJob,
  thickness: { readonly fixed: number; readonly moving: number },
): FittingParts => {
  const { room, option, sides } = job;
  const { slide, lengthMm } = option;
  const { id } = room.opening;
  const common = { origin: id, carcass: context.carcass.id, name: slide.name, mover: room.mover };
  const massKg = (slide.massKgPerMetre * lengthMm) / MM_PER_METRE / SLIDES_IN_A_PAIR;
  const sigma = context.rule('hardware-mass-sigma-share');
  const pair: HardwareUse = {
    ...common,
    id: `${id}/slides`,
    from: 'slide',
    item: slide.id,
    quantity: 1,
    lengthMm,
    at: null,
  };
  const holes = sides.flatMap((side) => [
    ...holesOf(context, job, slide.carcassHoles, side.fixedTo, thickness.fixed),
    ...holesOf(context, job, slide.boxHoles, side.carries, thickness.moving),
  ]);
  const parts: FittingParts = {
    ...NO_PARTS,
    bodies: sides.map(({ side, box }): Body => {
      return { ...common, id: `${id}/slide-${side}`, kind: 'hardware', shape: boxShape(box) };
    }),
    masses: sides.map(({ side, box }): MassItem => {
      const at = boxMiddle(box);
      return { ...common, id: `${id}/slide-${side}`, kind: 'hardware', massKg, sigmaKg: massKg * sigma, at };
    }),
    hardware: [pair],
    holes,
    problems: sides.flatMap(({ side, meets = side, fixedTo }) =>
      fixedTo === null ? [badJoint(id, [`${slide.id} meets no panel at its ${meets}`])] : [],
    ),
  };
  return together([parts, slideFasteners(context, job, holes)]);
};

/** The positions between shut and out that something is used in: half way, or wherever it locks. */
const restsBetween = (travel: number, lockEveryMm: number | null): Mover['rests'] => {
  if (lockEveryMm === null) return [{ name: 'half', share: 1 / 2 }];
  const count = Math.ceil((travel - ROUNDING_MM) / lockEveryMm) - 1;
  return Array.from({ length: Math.max(0, count) }, (_, i) => ({
    name: `lock ${i + 1}`,
    share: ((i + 1) * lockEveryMm) / travel,
  }));
};

/** Something that slides out of the face, with the positions that it is used in. */
export const slidingOut = (
  room: Room,
  id: PartId,
  name: string,
  option: SlideOption,
  lockEveryMm: number | null = null,
): Mover => {
  const travel = option.lengthMm * option.slide.extension;
  return {
    id,
    origin: room.opening.id,
    name,
    motion: { kind: 'slide', direction: [0, -1, 0], travel },
    carriedBy: room.mover,
    rests: [{ name: 'stowed', share: 0 }, ...restsBetween(travel, lockEveryMm), { name: 'open', share: 1 }],
  };
};
