import { boxSize, ROUNDING_MM, type Vec3 } from '../../base/index.ts';
import { ACROSS, BACKWARD, DEEP, LEFT, RIGHT, UP } from '../axes.ts';
import type { Board } from '../board.ts';
import type { CarcassContext } from '../context.ts';
import type { PartId } from '../parts.ts';
import { type SlideOption, slideFor, slideProblems } from '../slide-choice.ts';
import { type SlideSide, slideParts, slidingOut } from '../slide-parts.ts';
import { type FittingParts, NO_PARTS, type Room, together } from '../solved.ts';
import { type BoardMake, boardNeed, boardSize, type CommandBoard, carriageAsk, leastBoard } from './board-make.ts';
import type { HingeWall } from './hinges.ts';

/** The slide for the room, or the one that the least room was reckoned with. */
export const carriageSlide = (
  fitting: CommandBoard,
  room: Room,
  make: BoardMake,
  context: CarcassContext,
): SlideOption | null => {
  const [across, deep, up] = boxSize(room.box);
  const least = leastBoard(fitting, make, context);
  const free: Vec3 = [across, 0, up - 2 * make.reveal];
  const ask = carriageAsk(fitting, make, boardSize(fitting, least, free), context);
  const depth = deep - make.sheet.thicknessMm - context.rule('back-clear');
  const need = boardNeed(fitting, 'built', context).option;
  const fits = ({ slide, lengthMm }: SlideOption): boolean =>
    lengthMm <= depth + ROUNDING_MM &&
    lengthMm >= ask.shortest(slide) - ROUNDING_MM &&
    slide.sideSpaceMm <= (need?.slide.sideSpaceMm ?? Infinity) + ROUNDING_MM &&
    2 * slide.heightMm + 3 * make.gap <= up + ROUNDING_MM;
  return slideFor(context, ask, fits) ?? need;
};

export interface CarriageJob {
  readonly fitting: CommandBoard;
  readonly room: Room;
  readonly make: BoardMake;
  readonly option: SlideOption;
  readonly name: string;
  readonly mover: PartId;
}

const carriageBoard = ({ fitting, room, make, option, name }: CarriageJob, context: CarcassContext): Board => {
  const { min, max } = room.box;
  const left = fitting.hinge === 'left';
  const outer = left ? min[ACROSS] + option.slide.sideSpaceMm : max[ACROSS] - option.slide.sideSpaceMm;
  const inner = left ? outer + make.carriage : outer - make.carriage;
  const from = min[DEEP] + make.sheet.thicknessMm;
  return {
    id: `${room.opening.id}/carriage`,
    origin: room.opening.id,
    role: 'carriage',
    name: `${name} carriage`,
    material: context.material,
    box: {
      min: [Math.min(outer, inner), from, min[UP] + make.gap],
      max: [Math.max(outer, inner), from + option.lengthMm, max[UP] - make.gap],
    },
    along: BACKWARD,
    face: left ? LEFT : RIGHT,
    seat: 'rabbet',
    side: fitting.hinge,
    band: null,
  };
};

/** The two slides of the pair, one over the other, between the wall at the hinge and the carriage. */
const slideSides = (job: CarriageJob, board: Board): readonly SlideSide[] => {
  const { fitting, room, option } = job;
  const { slide, lengthMm } = option;
  const left = fitting.hinge === 'left';
  const wallAt = (left ? room.box.min : room.box.max)[ACROSS];
  const boardAt = (left ? board.box.min : board.box.max)[ACROSS];
  const from = board.box.min[DEEP];
  const wall = room.walls[fitting.hinge];
  const heights = [
    ['lower', board.box.min[UP]],
    ['upper', board.box.max[UP] - slide.heightMm],
  ] as const;
  return heights.map(([side, low]): SlideSide => {
    return {
      side,
      meets: fitting.hinge,
      box: {
        min: [Math.min(wallAt, boardAt), from, low],
        max: [Math.max(wallAt, boardAt), from + lengthMm, low + slide.heightMm],
      },
      fixedTo: wall && { board: wall.board.id, surface: (along, up) => [wallAt, from + along, low + up] },
      carries: { board: board.id, surface: (along, up) => [boardAt, from + along, low + up] },
    };
  });
};

/** The hinge side of a carriage: its outer face, from its front edge on. */
export const carriageWall = (job: CarriageJob, context: CarcassContext): HingeWall => {
  const { id, box } = carriageBoard(job, context);
  const at = (job.fitting.hinge === 'left' ? box.min : box.max)[ACROSS];
  return { board: id, thickness: job.make.carriage, at, from: box.min[DEEP] };
};

/** A carriage that brings a board straight out of the face on a pair of slides, both on the wall at the hinge. */
export const carriageParts = (job: CarriageJob, context: CarcassContext): FittingParts => {
  const { fitting, room, option, name, mover } = job;
  const board = carriageBoard(job, context);
  const own: FittingParts = {
    ...NO_PARTS,
    assemblies: [{ assembly: mover, mover, boards: [board] }],
    movers: [slidingOut(room, mover, `${name} carriage`, option)],
    problems: slideProblems(context, { slide: fitting.slide, mounts: ['side'] }, option, room.opening.id),
  };
  const thickness = { fixed: context.material.thicknessMm, moving: context.material.thicknessMm };
  const sides = slideSides(job, board);
  return together([own, slideParts(context, { room, option, sides, mover }, thickness)]);
};
