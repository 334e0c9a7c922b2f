import type { Box } from '../../base/index.ts';
import type { Material } from '../../catalog/index.ts';
import type { FittingByKind, NodeId } from '../../design/index.ts';
import { BACKWARD, LEFT, RIGHT, TO_FACE, UPWARD } from '../axes.ts';
import type { Board } from '../board.ts';
import type { CarcassContext } from '../context.ts';

/** Joints of a drawer box, from the house rules and the box's own sheet. */
export interface BoxJoints {
  /** How far front and back reach into the sides; zero for a butt joint. */
  readonly corner: number;
  /**
   * How far the bottom reaches into all four, and how high its groove starts above their lower edges. Below them
   * there is no groove: the bottom lies under all four and is as large as the box.
   */
  readonly groove: number;
  readonly bottomUp: number;
  readonly below: boolean;
}

export const boxJoints = (
  fitting: FittingByKind['drawer'],
  thickness: number,
  { rule }: Pick<CarcassContext, 'rule'>,
): BoxJoints => {
  const below = fitting.bottomJoint === 'below';
  return {
    corner: fitting.boxJoint === 'rabbet' ? rule('rabbet-depth-share') * thickness : 0,
    groove: below ? 0 : Math.min(rule('drawer-bottom-groove-depth'), thickness / 2),
    bottomUp: below ? 0 : rule('drawer-bottom-groove-up'),
    below,
  };
};

export interface BoxJob {
  readonly opening: NodeId;
  readonly name: string;
  /** Outside of the box. */
  readonly box: Box;
  readonly sheet: Material;
  readonly bottomSheet: Material;
  readonly joints: BoxJoints;
}

export interface DrawerBox {
  readonly left: Board;
  readonly right: Board;
  readonly front: Board;
  readonly back: Board;
  readonly bottom: Board;
  /** The clear room above the bottom, up to the upper edges. */
  readonly inside: Box;
}

/**
 * The five boards of a drawer box. Sides run the full length; front and back stand between them, reaching the corner
 * depth into each; the bottom is captured in a groove on all four sides, or lies under them.
 */
export const drawerBox = ({ opening, name, box, sheet, bottomSheet, joints }: BoxJob): DrawerBox => {
  const { min, max } = box;
  const t = sheet.thicknessMm;
  const { corner, groove, bottomUp, below } = joints;
  const [x0, x1, y0, y1] = [min[0] + t, max[0] - t, min[1] + t, max[1] - t];
  const [floor, upper] = [min[2] + bottomUp, min[2] + bottomUp + bottomSheet.thicknessMm];
  const board = (role: string, at: Box, rest: Pick<Board, 'along' | 'face'> & Partial<Board>): Board => ({
    id: `${opening}/${role}`,
    origin: opening,
    role,
    name: `${name} ${role.replaceAll('-', ' ')}`,
    material: sheet,
    box: at,
    seat: 'rabbet',
    side: null,
    band: null,
    ...rest,
  });
  const foot = below ? upper : min[2];
  const across = (from: number, to: number): Box => ({
    min: [x0 - corner, from, foot],
    max: [x1 + corner, to, max[2]],
  });
  const left: Box = { min: [min[0], min[1], foot], max: [x0, max[1], max[2]] };
  const right: Box = { min: [x1, min[1], foot], max };
  const bottom: Box = below
    ? { min, max: [max[0], max[1], upper] }
    : { min: [x0 - groove, y0 - groove, floor], max: [x1 + groove, y1 + groove, upper] };
  return {
    left: board('box-side-left', left, { along: BACKWARD, face: RIGHT, side: 'left' }),
    right: board('box-side-right', right, { along: BACKWARD, face: LEFT, side: 'right' }),
    front: board('box-front', across(min[1], y0), { along: RIGHT, face: BACKWARD }),
    back: board('box-back', across(y1, max[1]), { along: RIGHT, face: TO_FACE }),
    bottom: board('box-bottom', bottom, { along: BACKWARD, face: UPWARD, material: bottomSheet, seat: 'groove' }),
    inside: { min: [x0, y0, upper], max: [x1, y1, max[2]] },
  };
};
