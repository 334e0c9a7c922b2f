import type { Box } from '../../base/index.ts';
import type { Material } from '../../catalog/index.ts';
import type { NodeId } from '../../design/index.ts';
import { BACKWARD, LEFT, RIGHT, TO_FACE, UPWARD } from '../axes.ts';
import type { Board } from '../board.ts';

export interface TrayJob {
  readonly opening: NodeId;
  readonly name: string;
  /** Outside of the tray in plan, from the lower face of the deck to the room's ceiling. */
  readonly box: Box;
  readonly deckSheet: Material;
  readonly lipSheet: Material;
  /** Height of the sides from the lower face of the deck; zero for none. */
  readonly sideHeight: number;
  /** Height of front and back lip over the deck; zero for none. */
  readonly lipHeight: number;
  /** How far the deck reaches into the sides. */
  readonly housing: number;
}

export interface TrayBoards {
  readonly deck: Board;
  readonly left: Board | null;
  readonly right: Board | null;
  readonly all: readonly Board[];
  /** Clear room above the deck between the lips, up to the ceiling. */
  readonly inside: Box;
}

/**
 * A deck between two sides, in a rabbet along the lower edge of each, with a lip in front and behind that stands on
 * the deck. Without sides the deck takes the full width.
 */
export const trayBoards = (job: TrayJob): TrayBoards => {
  const { opening, name, box, deckSheet, lipSheet, sideHeight, lipHeight } = job;
  const { min, max } = box;
  const t = lipSheet.thicknessMm;
  const [sides, lips] = [sideHeight > 0, lipHeight > 0];
  const [x0, x1] = sides ? [min[0] + t, max[0] - t] : [min[0], max[0]];
  const [y0, y1] = lips ? [min[1] + t, max[1] - t] : [min[1], max[1]];
  const into = sides ? job.housing : 0;
  const upper = min[2] + deckSheet.thicknessMm;
  const board = (role: string, at: Box, rest: Pick<Board, 'along' | 'face'> & Partial<Board>): Board => ({
    id: `${opening}/${role}`,
    origin: opening,
    role,
    name: `${name} ${role.replaceAll('-', ' ')}`,
    material: lipSheet,
    box: at,
    seat: 'rabbet',
    side: null,
    band: null,
    ...rest,
  });
  const side = (role: 'tray-side-left' | 'tray-side-right', from: number, to: number): Board =>
    board(
      role,
      { min: [from, min[1], min[2]], max: [to, max[1], min[2] + sideHeight] },
      role === 'tray-side-left'
        ? { along: BACKWARD, face: RIGHT, side: 'left' }
        : { along: BACKWARD, face: LEFT, side: 'right' },
    );
  const lip = (role: string, from: number, to: number): Board =>
    board(role, { min: [x0, from, upper], max: [x1, to, upper + lipHeight] }, { along: RIGHT, face: TO_FACE });
  const left = sides ? side('tray-side-left', min[0], x0) : null;
  const right = sides ? side('tray-side-right', x1, max[0]) : null;
  const deck = board(
    'deck',
    { min: [x0 - into, min[1], min[2]], max: [x1 + into, max[1], upper] },
    { along: BACKWARD, face: UPWARD, material: deckSheet },
  );
  const ends = lips ? [lip('lip-front', min[1], y0), lip('lip-back', y1, max[1])] : [];
  return {
    deck,
    left,
    right,
    all: [...(left ? [left] : []), ...(right ? [right] : []), deck, ...ends],
    inside: { min: [x0, y0, upper], max: [x1, y1, max[2]] },
  };
};
