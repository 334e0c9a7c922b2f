import { type Box, boxSize, ROUNDING_MM } from '../base/index.ts';
import { AXES, common, withSpan } from './axes.ts';
import { type Board, boardSize, inPanel } from './board.ts';
import type { FaceRect } from './pieces-around.ts';

/**
 * A board with a box taken out of it through its whole thickness: drawn in where the box takes a whole end of it, else
 * notched. Null where nothing is left; the board itself where the box does not meet it.
 */
export const notchBoard = (board: Board, box: Box): Board | null => {
  const shared = common(board.box, box);
  if (!shared) return board;
  const { axis: through } = board.face;
  const faces = AXES.filter((axis) => axis !== through);
  const whole = faces.filter((axis) => boxSize(shared)[axis] >= boxSize(board.box)[axis] - ROUNDING_MM);
  if (whole.length === faces.length) return null;
  const [over] = faces.filter((axis) => !whole.includes(axis));
  if (whole.length === 1 && over !== undefined) {
    const [low, high] = [board.box.min[over], board.box.max[over]];
    if (shared.min[over] <= low + ROUNDING_MM)
      return { ...board, box: withSpan(board.box, over, shared.max[over], high) };
    if (shared.max[over] >= high - ROUNDING_MM)
      return { ...board, box: withSpan(board.box, over, low, shared.min[over]) };
  }
  const notch = withSpan(shared, through, board.box.min[through], board.box.max[through]);
  return { ...board, notches: [...(board.notches ?? []), notch] };
};

/** What is notched out of a board, on its face in panel coordinates. */
export const notchesInPanel = (board: Board): readonly FaceRect[] => {
  const [length, width] = boardSize(board);
  return (board.notches ?? []).map((notch) => {
    const { min, max } = inPanel(board, notch);
    return {
      from: [Math.max(0, min[0]), Math.max(0, min[1])],
      to: [Math.min(length, max[0]), Math.min(width, max[1])],
    };
  });
};
