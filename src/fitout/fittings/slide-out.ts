import type { Box, Vec3 } from '../../base/index.ts';
import type { FittingByKind, Opening } from '../../design/index.ts';
import { backStops } from '../back-stop.ts';
import type { CarcassContext } from '../context.ts';
import { fastenersOf, hardwareOf, onFront, pieceOf, screwsAlong } from '../hardware.ts';
import type { PartId } from '../parts.ts';
import { type SlideOption, slideProblems } from '../slide-choice.ts';
import { type SlideSide, slideParts, slidingOut } from '../slide-parts.ts';
import { type FittingParts, NO_PARTS, NO_WALLS, type Room, together, type Walls } from '../solved.ts';
import { PIECES } from '../standard-pieces.ts';
import { stockOf } from '../stock.ts';
import { chooseSlide, type Make, makeOf, needOf, sideHeight, trayPlace } from './slide-out-size.ts';
import type { FittingSolver } from './solver.ts';
import { type TrayBoards, trayBoards } from './tray-boards.ts';

type SlideOut = FittingByKind['slide-out'];

/** Slides between the walls and the tray's sides, from the lower face of the deck up. */
const besideTray = (room: Room, tray: TrayBoards, outside: Box, { slide, lengthMm }: SlideOption): SlideSide[] => {
  const [from, low] = [outside.min[1], outside.min[2]];
  const pair: readonly (readonly ['left' | 'right', number, number])[] = [
    ['left', room.box.min[0], outside.min[0]],
    ['right', room.box.max[0], outside.max[0]],
  ];
  return pair.map(([side, wallAt, trayAt]) => {
    const wall = room.walls[side];
    const board = tray[side];
    return {
      side,
      box: {
        min: [Math.min(wallAt, trayAt), from, low],
        max: [Math.max(wallAt, trayAt), from + lengthMm, low + slide.heightMm],
      },
      fixedTo: wall && { board: wall.board.id, surface: (along, up) => [wallAt, from + along, low + up] },
      carries: board && { board: board.id, surface: (along, up) => [trayAt, from + along, low + up] },
    };
  });
};

/** Rails under the deck along its two edges, as wide as they are high where there is room, standing on the floor. */
const underTray = (room: Room, tray: TrayBoards, outside: Box, { slide, lengthMm }: SlideOption): SlideSide[] => {
  const [from, floor, deck] = [outside.min[1], room.box.min[2], outside.min[2]];
  const wide = Math.min(slide.heightMm, (outside.max[0] - outside.min[0]) / 2);
  const pair: readonly (readonly ['left' | 'right', number])[] = [
    ['left', outside.min[0]],
    ['right', outside.max[0] - wide],
  ];
  const wall = room.walls.bottom;
  return pair.map(([side, x]) => ({
    side,
    box: { min: [x, from, floor], max: [x + wide, from + lengthMm, deck] },
    fixedTo: wall && { board: wall.board.id, surface: (along) => [x + wide / 2, from + along, floor] },
    carries: { board: tray.deck.id, surface: (along) => [x + wide / 2, from + along, deck] },
  }));
};

const insideRoom = (
  fitting: SlideOut,
  room: Room,
  tray: TrayBoards,
  make: Make,
  context: CarcassContext,
  mover: PartId,
): Room => {
  const share = context.rule('dado-depth-share');
  const walls: Walls = {
    ...NO_WALLS,
    bottom: { board: tray.deck, housing: share * make.deckSheet.thicknessMm },
  };
  return {
    opening: fitting.inside,
    parent: room.opening.id,
    depth: room.depth + 1,
    box: tray.inside,
    walls,
    mover,
    assembly: mover,
    material: make.lipSheet,
    housing: share * make.lipSheet.thicknessMm,
    fits: true,
    keeps: fitting.lipHeightMm > 0 ? 'lip' : 'nothing',
  };
};

/** The latch in the middle of the tray's front, reaching inward from its face, no lower than the tray itself. */
const latchParts = (
  fitting: SlideOut,
  room: Room,
  outside: Box,
  make: Make,
  context: CarcassContext,
  mover: PartId,
) => {
  const { id } = room.opening;
  if (fitting.latch === null) return NO_PARTS;
  const size = hardwareOf(context, fitting.latch, id).record?.sizeMm ?? null;
  const front = make.deckSheet.thicknessMm + fitting.lipHeightMm;
  const up = outside.min[2] + Math.max(front, size?.[1] ?? 0) / 2;
  const at: Vec3 = [(outside.min[0] + outside.max[0]) / 2, outside.min[1], up];
  const place = size ? onFront(size, at, 'inward') : at;
  return pieceOf(context, { id: `${id}/latch`, origin: id, item: fitting.latch, quantity: 1, at: place, mover });
};

const fasteners = (tray: TrayBoards, room: Room, context: CarcassContext, mover: PartId): FittingParts => {
  const { id } = room.opening;
  const { min, max } = tray.deck.box;
  const lengthwise = tray.left ? 2 * screwsAlong(context, max[1] - min[1]) : 0;
  const ends = tray.all.filter(({ role }) => role.startsWith('lip-')).length;
  const quantity = lengthwise + ends * screwsAlong(context, max[0] - min[0]);
  return fastenersOf(context, { id: `${id}/tray-screws`, origin: id, item: PIECES.box, quantity, mover });
};

const nameOf = (opening: Opening, context: CarcassContext): string =>
  opening.name === '' ? `${context.carcass.name} tray`.trim() : opening.name;

const solveSlideOut = (fitting: SlideOut, room: Room, context: CarcassContext): FittingParts => {
  const { opening } = room;
  const make = makeOf(fitting, context);
  const option = chooseSlide(fitting, room, context, make);
  const needed = [fitting.deckMaterial, fitting.lipMaterial];
  const problems = needed.flatMap((id) => stockOf(context.catalog, id, opening.id).problems);
  if (!option) return { ...NO_PARTS, problems };
  const { slide } = option;
  const mover: PartId = `${opening.id}/tray`;
  const name = nameOf(opening, context);
  const outside = trayPlace(room, make, option);
  const tray = trayBoards({
    opening: opening.id,
    name,
    box: outside,
    deckSheet: make.deckSheet,
    lipSheet: make.lipSheet,
    sideHeight: sideHeight(fitting, slide, make),
    lipHeight: fitting.lipHeightMm,
    housing: context.rule('dado-depth-share') * make.lipSheet.thicknessMm,
  });
  const own: FittingParts = {
    ...NO_PARTS,
    assemblies: [{ assembly: mover, mover, boards: tray.all }],
    movers: [slidingOut(room, mover, name, option)],
    inner: [insideRoom(fitting, room, tray, make, context, mover)],
    problems: [
      ...problems,
      ...slideProblems(context, { slide: fitting.slide, mounts: ['side', 'under'] }, option, opening.id),
    ],
  };
  const sides = (slide.mount === 'side' ? besideTray : underTray)(room, tray, outside, option);
  const moving = slide.mount === 'side' ? make.lipSheet : make.deckSheet;
  const thickness = { fixed: context.material.thicknessMm, moving: moving.thicknessMm };
  return together([
    own,
    slideParts(context, { room, option, sides, mover }, thickness),
    latchParts(fitting, room, outside, make, context, mover),
    backStops(context, room, outside, fitting.backStop),
    fasteners(tray, room, context, mover),
  ]);
};

/**
 * A full-depth tray that slides out of the face: a deck with a lip all round on side slides, or over under-mount
 * slides that take their height beneath it. Gear stands on the deck and moves with it.
 */
export const slideOutSolver: FittingSolver<SlideOut> = {
  leastRoom: (fitting, { counting }, context) => needOf(fitting, context, counting).room,
  solve: solveSlideOut,
};
