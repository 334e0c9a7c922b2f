import { type Box, boxSize, type Vec3 } from '../../base/index.ts';
import type { FittingByKind, Opening } from '../../design/index.ts';
import { backStops } from '../back-stop.ts';
import type { Board } from '../board.ts';
import type { CarcassContext } from '../context.ts';
import { fastenersOf, hardwareOf, pieceOf, screwsAlong } from '../hardware.ts';
import { frontPiece, isLetIn } from '../let-in.ts';
import type { PartId } from '../parts.ts';
import { type SlideOption, slideProblems } from '../slide-choice.ts';
import { type SlideSide, slideParts, slidingOut } from '../slide-parts.ts';
import { type FittingParts, NO_PARTS, NO_WALLS, type Room, together, type Wall, type Walls } from '../solved.ts';
import { PIECES } from '../standard-pieces.ts';
import { stockOf } from '../stock.ts';
import { type SecondLevel, secondLevel } from './second-level.ts';
import {
  chooseSlide,
  frontLip,
  lowSecond,
  type Make,
  makeOf,
  mountsOf,
  needOf,
  safeLoadKg,
  sideHeight,
  trayPlace,
  wantedLocks,
} from './slide-out-size.ts';
import type { FittingSolver } from './solver.ts';
import { tieDownParts } from './tie-down.ts';
import { type TrayBoards, type TrayJob, trayBoards } from './tray-boards.ts';

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

interface Carried {
  readonly fitting: SlideOut;
  readonly room: Room;
  readonly make: Make;
  readonly context: CarcassContext;
  readonly mover: PartId;
}

/** A room on a deck of the tray. */
const roomOn = (
  { fitting, room, make, context, mover }: Carried,
  opening: Opening,
  box: Box,
  walls: Walls,
  strapped: boolean,
): Room => {
  // A strap over the load holds what stands on the deck itself, and nothing in rooms that it is divided into.
  const held = strapped && opening.content.kind === 'empty';
  return {
    opening,
    parent: room.opening.id,
    depth: room.depth + 1,
    box,
    walls,
    mover,
    assembly: mover,
    material: make.lipSheet,
    housing: context.rule('dado-depth-share') * make.lipSheet.thicknessMm,
    fits: true,
    keeps: held ? 'strap' : fitting.lipHeightMm > 0 ? 'lip' : 'nothing',
  };
};

/** The rooms of the tray: on its deck, and on the second one where there is one. */
const insideRooms = (carried: Carried, tray: TrayBoards, second: SecondLevel | null): readonly Room[] => {
  const { fitting, make, context } = carried;
  const share = context.rule('dado-depth-share');
  const onDeck = (deck: Board): Wall => ({ board: deck, housing: share * make.deckSheet.thicknessMm });
  const beside = (board: Board | null): Wall | null => board && { board, housing: share * make.lipSheet.thicknessMm };
  const strapped = fitting.tieDown !== null;
  const bottom = onDeck(tray.deck);
  if (!second || !fitting.second)
    return [roomOn(carried, fitting.inside, tray.inside, { ...NO_WALLS, bottom }, strapped)];
  const below: Walls = {
    ...NO_WALLS,
    bottom,
    left: beside(tray.left),
    right: beside(tray.right),
    top: { board: second.deck, housing: 0 },
  };
  const above: Walls = { ...NO_WALLS, bottom: onDeck(second.deck) };
  return [
    roomOn(carried, fitting.inside, second.below, below, strapped),
    roomOn(carried, fitting.second.inside, second.above, above, false),
  ];
};

/**
 * The latch in the middle of the tray's front, reaching inward from its face: one that is let in stands in the lip, any
 * other before lip and deck, no lower than the tray itself.
 */
const latchParts = ({ fitting, room, make, context, mover }: Carried, outside: Box, tray: TrayBoards): FittingParts => {
  const { id } = room.opening;
  if (fitting.latch === null) return NO_PARTS;
  const { record } = hardwareOf(context, fitting.latch, id);
  const lip = isLetIn(record) ? tray.front : null;
  const front = make.deckSheet.thicknessMm + fitting.lipHeightMm;
  const up = lip
    ? (lip.box.min[2] + lip.box.max[2]) / 2
    : outside.min[2] + Math.max(front, record?.sizeMm?.[1] ?? 0) / 2;
  const at: Vec3 = [(outside.min[0] + outside.max[0]) / 2, outside.min[1], up];
  const piece = { id: `${id}/latch`, origin: id, item: fitting.latch, mover, at, boards: lip ? [lip] : [] };
  return frontPiece(context, piece, 'inward');
};

const fasteners = (
  tray: TrayBoards,
  boards: readonly Board[],
  room: Room,
  context: CarcassContext,
  mover: PartId,
): FittingParts => {
  const { id } = room.opening;
  const { min, max } = tray.deck.box;
  const decks = boards.filter(({ role }) => role.endsWith('deck')).length;
  const lengthwise = tray.left ? 2 * decks * screwsAlong(context, max[1] - min[1]) : 0;
  const ends = boards.filter(({ role }) => role.includes('lip-')).length;
  const quantity = lengthwise + ends * screwsAlong(context, max[0] - min[0]);
  return fastenersOf(context, { id: `${id}/tray-screws`, origin: id, item: PIECES.box, quantity, mover });
};

/** The plate on the front of the tray that says what may be put on it. */
const loadPlate = (
  { fitting, room, make, context, mover }: Carried,
  outside: Box,
  option: SlideOption,
): FittingParts => {
  const { id } = room.opening;
  const { min, max } = outside;
  const at: Vec3 = [(min[0] + max[0]) / 2, min[1], min[2]];
  const parts = pieceOf(context, {
    id: `${id}/load-plate`,
    origin: id,
    item: fitting.loadPlate,
    quantity: 1,
    at,
    mover,
  });
  const safe = safeLoadKg(fitting, context, make, option, boxSize(outside));
  return { ...parts, hardware: parts.hardware.map((use) => ({ ...use, safeLoadKg: safe })) };
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
  const job: TrayJob = {
    opening: opening.id,
    name,
    box: outside,
    deckSheet: make.deckSheet,
    lipSheet: make.lipSheet,
    sideHeight: sideHeight(fitting, slide, make),
    frontLip: frontLip(fitting, context, make),
    lipHeight: fitting.lipHeightMm,
    housing: context.rule('dado-depth-share') * make.lipSheet.thicknessMm,
  };
  const tray = trayBoards(job);
  const second = secondLevel(fitting, tray, job);
  const boards = [...tray.all, ...(second?.boards ?? [])];
  const carried: Carried = { fitting, room, make, context, mover };
  const own: FittingParts = {
    ...NO_PARTS,
    assemblies: [{ assembly: mover, mover, boards }],
    movers: [slidingOut(room, mover, name, option, fitting.lockEveryMm)],
    inner: insideRooms(carried, tray, second),
    problems: [
      ...problems,
      ...slideProblems(
        context,
        { slide: fitting.slide, mounts: mountsOf(fitting), locks: wantedLocks(fitting) },
        option,
        opening.id,
      ),
      ...lowSecond(fitting, context, make, opening.id),
    ],
  };
  const sides = (slide.mount === 'side' ? besideTray : underTray)(room, tray, outside, option);
  const moving = slide.mount === 'side' ? make.lipSheet : make.deckSheet;
  const thickness = { fixed: context.material.thicknessMm, moving: moving.thicknessMm };
  return together([
    own,
    slideParts(context, { room, option, sides, mover }, thickness),
    latchParts(carried, outside, tray),
    backStops(context, room, outside, fitting.backStop),
    tieDownParts(fitting, room, tray, slide.mount === 'under' ? slide.heightMm : 0, context, mover),
    loadPlate(carried, outside, option),
    fasteners(tray, boards, room, context, mover),
  ]);
};

/**
 * A full-depth tray that slides out of the face: a deck with a lip all round on side slides, or over under-mount
 * slides that take their height beneath it. Gear stands on the deck, strapped through its slots, and on a second deck
 * between its sides, and moves with it.
 */
export const slideOutSolver: FittingSolver<SlideOut> = {
  leastRoom: (fitting, { counting }, context) => needOf(fitting, context, counting).room,
  solve: solveSlideOut,
};
