import { type Box, subtract, type Vec3 } from '../base/index.ts';
import type { Material } from '../catalog/index.ts';
import type { Carcass } from '../design/index.ts';
import { DOWNWARD, hasVolume, LEFT, RIGHT, TO_FACE, UPWARD } from './axes.ts';
import { type Board, faceBand, isBoard } from './board.ts';
import { type ChamferCut, chamferCuts } from './chamfers.ts';
import { clipBoard, planesFor } from './clip-board.ts';
import type { CarcassContext } from './context.ts';
import { outsideSize } from './frames.ts';
import { type JointDepths, jointDepths } from './joint-depths.ts';
import type { FitProblem } from './parts.ts';
import { NO_WALLS, type Wall, type Walls } from './solved.ts';
import { standHeight } from './stand.ts';
import { stockOf } from './stock.ts';
import { notchedFor, type WheelCut, wheelCuts } from './wheelhouses.ts';

export interface CarcassShell {
  readonly boards: readonly Board[];
  /** What the carcass's own opening fills, or null where the panels leave no room. */
  readonly inside: Box | null;
  /** What the panels and the set-back take of the outside size: across × deep × up. */
  readonly taken: Vec3;
  readonly walls: Walls;
  /** How deep dividers are housed. */
  readonly housing: number;
  readonly chamfers: readonly ChamferCut[];
  readonly wheels: readonly WheelCut[];
  /** What the shell fills: the outside less what it stands on. */
  readonly outside: Box;
  readonly problems: readonly FitProblem[];
}

/** How far the back stands in front of the rear edges. */
const setBack = ({ joints }: Carcass): number => (joints.back.kind === 'groove' ? joints.back.setbackMm : 0);

/** The boxes of the shell's panels, each with what is housed in its neighbours. */
const boxesOf = (
  size: Vec3,
  t: number,
  joints: JointDepths,
  rear: { readonly from: number; readonly to: number; readonly floor: number },
) => {
  const [w, d, h] = size;
  const low = rear.floor;
  const { corner, back } = joints;
  return {
    left: { min: [0, 0, low], max: [t, d, h] },
    right: { min: [w - t, 0, low], max: [w, d, h] },
    top: { min: [t - corner, 0, h - t], max: [w - t + corner, d, h] },
    bottom: { min: [t - corner, 0, low], max: [w - t + corner, d, low + t] },
    back: { min: [t - back, rear.from, low + t - back], max: [w - t + back, rear.to, h - t + back] },
    inside: { min: [t, 0, low + t], max: [w - t, rear.from, h - t] },
  } as const satisfies Record<string, Box>;
};

const shellBoards = (context: CarcassContext, backMaterial: Material, boxes: ReturnType<typeof boxesOf>) => {
  const { carcass, material } = context;
  const owner = carcass.name === '' ? carcass.id : carcass.name;
  const board = (role: string, box: Box, rest: Pick<Board, 'along' | 'face'> & Partial<Board>): Board => ({
    id: `${carcass.id}/${role}`,
    origin: carcass.id,
    role,
    name: `${owner} ${role.replace('-', ' ')}`,
    material,
    box,
    seat: carcass.joints.corner === 'rabbet' ? 'rabbet' : 'dado',
    side: null,
    band: faceBand(carcass.edgeBand),
    ...rest,
  });
  return {
    left: board('side-left', boxes.left, { along: UPWARD, face: RIGHT, side: 'left' }),
    right: board('side-right', boxes.right, { along: UPWARD, face: LEFT, side: 'right' }),
    top: board('top', boxes.top, { along: RIGHT, face: DOWNWARD }),
    bottom: board('bottom', boxes.bottom, { along: RIGHT, face: UPWARD }),
    back: board('back', boxes.back, {
      along: RIGHT,
      face: TO_FACE,
      material: backMaterial,
      seat: carcass.joints.back.kind === 'rabbet' ? 'rabbet' : 'groove',
      band: null,
    }),
  };
};

/**
 * The five panels of a carcass. Sides run the full height and depth; top and bottom run the full depth and reach the
 * corner depth into the sides (none for a butt joint); the back reaches its joint's depth into sides, top and bottom
 * and stands the set-back in front of the rear edges. The opening ends at the back's front face.
 */
export const carcassShell = (context: CarcassContext): CarcassShell => {
  const { carcass, material, catalog } = context;
  const size = outsideSize(carcass);
  const hasBack = carcass.joints.back.kind !== 'none';
  const backStock = hasBack ? stockOf(catalog, carcass.backMaterial, carcass.id) : { material, problems: [] };
  const rearTo = size[1] - setBack(carcass);
  const stand = standHeight(context);
  const rear = { from: hasBack ? rearTo - backStock.material.thicknessMm : rearTo, to: rearTo, floor: stand };
  const joints = jointDepths(context);
  const boxes = boxesOf(size, material.thicknessMm, joints, rear);
  const outside: Box = { min: [0, 0, stand], max: size };
  const chamfered = chamferCuts(carcass.chamfers, outside, material.thicknessMm, carcass.id);
  const wheels = hasVolume(boxes.inside)
    ? wheelCuts(context, { min: [0, 0, 0], max: size }, boxes.inside, chamfered.cuts)
    : { cuts: [], problems: [] };
  const problems = [...backStock.problems, ...joints.problems, ...chamfered.problems, ...wheels.problems];
  const taken = subtract(size, subtract(boxes.inside.max, boxes.inside.min));
  const housing = joints.corner;
  if (!hasVolume(boxes.inside))
    return { boards: [], inside: null, taken, walls: NO_WALLS, housing, chamfers: [], wheels: [], outside, problems };
  const chamfers = chamfered.cuts;
  const square = shellBoards(context, backStock.material, boxes);
  const cut = (board: Board): Board =>
    notchedFor(wheels.cuts, clipBoard(board, planesFor(board.role, chamfers)) ?? board);
  const [left, right, top, bottom, back] = [square.left, square.right, square.top, square.bottom, square.back].map(
    cut,
  ) as [Board, Board, Board, Board, Board];
  const wall = (board: Board): Wall => ({ board, housing: joints.corner });
  const walls: Walls = {
    left: wall(left),
    right: wall(right),
    top: wall(top),
    bottom: wall(bottom),
    front: null,
    back: hasBack ? { board: back, housing: 0 } : null,
  };
  const boards = [left, right, top, bottom, ...(hasBack ? [back] : [])].filter(isBoard);
  return { boards, inside: boxes.inside, taken, walls, housing, chamfers, wheels: wheels.cuts, outside, problems };
};
