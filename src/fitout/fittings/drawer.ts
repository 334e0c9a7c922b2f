import { type Box, boxSize, type Vec3 } from '../../base/index.ts';
import type { FittingByKind, Opening } from '../../design/index.ts';
import { RIGHT, TO_FACE } from '../axes.ts';
import { backStops } from '../back-stop.ts';
import type { Board } from '../board.ts';
import type { CarcassContext } from '../context.ts';
import { fastenersOf, screwsAlong } from '../hardware.ts';
import { frontPiece } from '../let-in.ts';
import type { FitProblem, PartId } from '../parts.ts';
import { badJoint } from '../problem.ts';
import { type SlideOption, slideProblems } from '../slide-choice.ts';
import { type SlideSide, slideParts, slidingOut } from '../slide-parts.ts';
import { type FittingParts, NO_PARTS, type Room, together, type Wall, type Walls } from '../solved.ts';
import { PIECES } from '../standard-pieces.ts';
import { stockOf } from '../stock.ts';
import { boxJoints, type DrawerBox, drawerBox } from './drawer-box.ts';
import {
  boxPlace,
  chooseSlide,
  drawerLocks,
  frontMiddle,
  lowBox,
  type Make,
  makeOf,
  needOf,
  pullBeside,
} from './drawer-size.ts';
import type { FittingSolver } from './solver.ts';

type Drawer = FittingByKind['drawer'];

/** A front laid over what surrounds the opening stands before the face, where no panel may be. */
const overPanel = ({ front }: Drawer, { opening, walls }: Room): readonly FitProblem[] =>
  front === 'overlay' && walls.front !== null
    ? [badJoint(opening.id, [`front over the face meets ${walls.front.board.name}`])]
    : [];

/** The drawer front: inside the opening with the reveal all round, or over half of what surrounds it. */
const frontBoard = (fitting: Drawer, room: Room, context: CarcassContext, name: string): Board => {
  const { min, max } = room.box;
  const { material, carcass } = context;
  const reveal = context.rule('reveal-front');
  const inset = fitting.front === 'inset';
  const inward = inset ? reveal : -(material.thicknessMm - reveal) / 2;
  const face = inset ? min[1] : min[1] - material.thicknessMm;
  return {
    id: `${room.opening.id}/front`,
    origin: room.opening.id,
    role: 'front',
    name: `${name} front`,
    material,
    box: {
      min: [min[0] + inward, face, min[2] + inward],
      max: [max[0] - inward, face + material.thicknessMm, max[2] - inward],
    },
    along: RIGHT,
    face: TO_FACE,
    seat: 'rabbet',
    side: null,
    band: carcass.edgeBand === null ? null : { item: carcass.edgeBand, on: 'all-edges' },
  };
};

const slideSides = (room: Room, box: DrawerBox, outside: Box, { slide, lengthMm }: SlideOption): SlideSide[] => {
  const [from, low] = [outside.min[1], outside.min[2]];
  const pair: readonly (readonly ['left' | 'right', number, number, number])[] = [
    ['left', room.box.min[0], outside.min[0], room.box.min[0]],
    ['right', outside.max[0], room.box.max[0], room.box.max[0]],
  ];
  return pair.map(([side, x0, x1, wallAt]) => {
    const boxAt = side === 'left' ? x1 : x0;
    const wall = room.walls[side];
    return {
      side,
      box: { min: [x0, from, low], max: [x1, from + lengthMm, low + slide.heightMm] },
      fixedTo: wall && { board: wall.board.id, surface: (along, up) => [wallAt, from + along, low + up] },
      carries: { board: box[side].id, surface: (along, up) => [boxAt, from + along, low + up] },
    };
  });
};

/**
 * Latch and pull in the middle of the front: the latch reaches inward from its face, the pull stands out of it. A pull
 * stands beside a latch that is let in, to its left.
 */
const frontHardware = (
  fitting: Drawer,
  room: Room,
  front: Board,
  box: DrawerBox,
  context: CarcassContext,
  mover: PartId,
) => {
  const { id } = room.opening;
  const { min, max } = front.box;
  const boards = [front, box.front];
  const up = frontMiddle(fitting, front.box, { from: box.inside.min[2], to: box.front.box.max[2] }, context);
  const middle: Vec3 = [(min[0] + max[0]) / 2, min[1], up];
  const piece = (role: 'latch' | 'pull', way: 'inward' | 'outward', at: Vec3): FittingParts =>
    fitting[role] === null
      ? NO_PARTS
      : frontPiece(context, { id: `${id}/${role}`, origin: id, item: fitting[role], mover, at, boards }, way);
  const beside = pullBeside(fitting, context);
  return together([
    piece('latch', 'inward', middle),
    piece('pull', 'outward', [middle[0] - beside, middle[1], middle[2]]),
  ]);
};

const fasteners = (fitting: Drawer, room: Room, outside: Box, context: CarcassContext, mover: PartId): FittingParts => {
  const origin = room.opening.id;
  const [wide, deep] = boxSize(outside);
  const round = 2 * (screwsAlong(context, wide) + screwsAlong(context, deep));
  const bottom = fitting.bottomJoint === 'below' ? round : 0;
  const corners = 4 * screwsAlong(context, outside.max[2] - outside.min[2]);
  const front = 2 * screwsAlong(context, outside.max[0] - outside.min[0]);
  return together([
    fastenersOf(context, { id: `${origin}/box-screws`, origin, item: PIECES.box, quantity: corners, mover }),
    fastenersOf(context, { id: `${origin}/front-screws`, origin, item: PIECES.front, quantity: front, mover }),
    fastenersOf(context, { id: `${origin}/bottom-screws`, origin, item: PIECES.front, quantity: bottom, mover }),
  ]);
};

const insideRoom = (
  fitting: Drawer,
  room: Room,
  box: DrawerBox,
  make: Make,
  context: CarcassContext,
  mover: PartId,
): Room => {
  const housing = context.rule('dado-depth-share') * make.sheet.thicknessMm;
  const wall = (board: Board): Wall => ({ board, housing });
  const walls: Walls = {
    left: wall(box.left),
    right: wall(box.right),
    front: wall(box.front),
    back: wall(box.back),
    bottom: { board: box.bottom, housing: 0 },
    top: null,
  };
  return {
    opening: fitting.inside,
    parent: room.opening.id,
    depth: room.depth + 1,
    box: box.inside,
    walls,
    mover,
    assembly: mover,
    material: make.sheet,
    housing,
    fits: true,
    keeps: 'closed',
  };
};

const nameOf = (opening: Opening, context: CarcassContext): string =>
  opening.name === '' ? `${context.carcass.name} drawer`.trim() : opening.name;

const solveDrawer = (fitting: Drawer, room: Room, context: CarcassContext): FittingParts => {
  const make = makeOf(fitting, context);
  const { opening } = room;
  const option = chooseSlide(fitting, room, context, make);
  const stock = [fitting.boxMaterial, fitting.bottomMaterial].map((id) => stockOf(context.catalog, id, opening.id));
  const problems = stock.flatMap((each) => each.problems);
  if (!option) return { ...NO_PARTS, problems };
  const mover: PartId = `${opening.id}/drawer`;
  const name = nameOf(opening, context);
  const outside = boxPlace(fitting, room, context, make, option);
  const joints = boxJoints(fitting, make.sheet.thicknessMm, context);
  const { sheet, bottomSheet } = make;
  const box = drawerBox({ opening: opening.id, name, box: outside, sheet, bottomSheet, joints });
  const front = frontBoard(fitting, room, context, name);
  const boards = [box.left, box.right, box.front, box.back, box.bottom, front];
  const own: FittingParts = {
    ...NO_PARTS,
    assemblies: [{ assembly: mover, mover, boards }],
    movers: [slidingOut(room, mover, name, option)],
    inner: [insideRoom(fitting, room, box, make, context, mover)],
    problems: [
      ...problems,
      ...slideProblems(
        context,
        { slide: fitting.slide, mounts: ['side'], locks: drawerLocks(fitting) },
        option,
        opening.id,
      ),
      ...overPanel(fitting, room),
      ...lowBox(fitting, context, make, option, opening.id),
    ],
  };
  const sides = slideSides(room, box, outside, option);
  const thickness = { fixed: context.material.thicknessMm, moving: sheet.thicknessMm };
  return together([
    own,
    slideParts(context, { room, option, sides, mover }, thickness),
    frontHardware(fitting, room, front, box, context, mover),
    backStops(context, room, outside, fitting.backStop),
    fasteners(fitting, room, outside, context, mover),
  ]);
};

/**
 * A drawer: a box on a pair of side slides behind a front. The slide is the user's, or the lightest that carries the
 * gear inside with the box, as long as the depth allows. The box is as wide as the opening less the measured side
 * space of the slide on each side, and as long as the slide.
 */
export const drawerSolver: FittingSolver<Drawer> = {
  leastRoom: (fitting, { counting }, context) => needOf(fitting, context, counting).room,
  solve: solveDrawer,
};
