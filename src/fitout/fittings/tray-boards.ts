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
  /** Height of the front lip over the deck; zero for none. */
  readonly frontLip: number;
  /** Height of the back lip over the deck, and of both on a second one; zero for none. */
  readonly lipHeight: number;
  /** How far the deck reaches into the sides. */
  readonly housing: number;
}

export interface TrayBoards {
  readonly deck: Board;
  readonly left: Board | null;
  readonly right: Board | null;
  /** The front lip, or null where there is none. */
  readonly front: Board | null;
  readonly all: readonly Board[];
  /** Clear room above the deck between the lips, up to the ceiling. */
  readonly inside: Box;
}

const trayBoard = (
  job: TrayJob,
  role: string,
  box: Box,
  rest: Pick<Board, 'along' | 'face'> & Partial<Board>,
): Board => ({
  id: `${job.opening}/${role}`,
  origin: job.opening,
  role,
  name: `${job.name} ${role.replaceAll('-', ' ')}`,
  material: job.lipSheet,
  box,
  seat: 'rabbet',
  side: null,
  band: null,
  ...rest,
});

/** The two sides of a tray, or none where they have no height. */
const traySides = (
  job: TrayJob,
  x0: number,
  x1: number,
): { readonly left: Board | null; readonly right: Board | null } => {
  const { min, max } = job.box;
  if (job.sideHeight <= 0) return { left: null, right: null };
  const between = (from: number, to: number): Box => ({
    min: [from, min[1], min[2]],
    max: [to, max[1], min[2] + job.sideHeight],
  });
  return {
    left: trayBoard(job, 'tray-side-left', between(min[0], x0), { along: BACKWARD, face: RIGHT, side: 'left' }),
    right: trayBoard(job, 'tray-side-right', between(x1, max[0]), { along: BACKWARD, face: LEFT, side: 'right' }),
  };
};

/**
 * A deck between two sides, in a rabbet along the lower edge of each, with a lip in front and behind that stands on
 * the deck. Without sides the deck takes the full width.
 */
export const trayBoards = (job: TrayJob): TrayBoards => {
  const { box, deckSheet, lipSheet, sideHeight } = job;
  const { min, max } = box;
  const sideThick = sideHeight > 0 ? lipSheet.thicknessMm : 0;
  const [frontThick, backThick] = [job.frontLip, job.lipHeight].map((height) =>
    height > 0 ? lipSheet.thicknessMm : 0,
  );
  const [x0, x1] = [min[0] + sideThick, max[0] - sideThick];
  const [y0, y1] = [min[1] + (frontThick ?? 0), max[1] - (backThick ?? 0)];
  const into = sideHeight > 0 ? job.housing : 0;
  const upper = min[2] + deckSheet.thicknessMm;
  const { left, right } = traySides(job, x0, x1);
  const deck = trayBoard(
    job,
    'deck',
    { min: [x0 - into, min[1], min[2]], max: [x1 + into, max[1], upper] },
    { along: BACKWARD, face: UPWARD, material: deckSheet },
  );
  const lip = (role: string, from: number, to: number, height: number): Board | null => {
    const standing: Box = { min: [x0, from, upper], max: [x1, to, upper + height] };
    return height > 0 ? trayBoard(job, role, standing, { along: RIGHT, face: TO_FACE }) : null;
  };
  const front = lip('lip-front', min[1], y0, job.frontLip);
  const back = lip('lip-back', y1, max[1], job.lipHeight);
  const all = [left, right, deck, front, back].filter((board) => board !== null);
  return { deck, left, right, front, all, inside: { min: [x0, y0, upper], max: [x1, y1, max[2]] } };
};
