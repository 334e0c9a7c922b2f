import type { Box } from '../base/index.ts';
import { BACKWARD, RIGHT, UPWARD } from './axes.ts';
import type { Board } from './board.ts';
import type { CarcassContext } from './context.ts';
import { outsideSize } from './frames.ts';
import type { FitProblem } from './parts.ts';
import { stockOf } from './stock.ts';

/** How much of the outside height of a carcass is what it stands on. */
export const standHeight = ({ carcass, catalog }: CarcassContext): number => {
  const { stand } = carcass;
  if (stand.kind === 'none') return 0;
  return stand.kind === 'riser' ? stand.heightMm : stockOf(catalog, stand.material, carcass.id).material.thicknessMm;
};

/** Where the runners of a riser begin across: one flush with each side, the rest shared out between. */
const runnerStarts = (count: number, width: number, thickness: number): readonly number[] =>
  Array.from({ length: count }, (_, i) => ((width - thickness) * i) / (count - 1));

/** The boards under a carcass, each over its whole depth; they stand under its bottom and reach into nothing. */
export const standBoards = (
  context: CarcassContext,
): { readonly boards: readonly Board[]; readonly problems: readonly FitProblem[] } => {
  const { carcass, material, catalog } = context;
  const { stand } = carcass;
  if (stand.kind === 'none') return { boards: [], problems: [] };
  const [width, depth] = outsideSize(carcass);
  const high = standHeight(context);
  const owner = carcass.name === '' ? carcass.id : carcass.name;
  const board = (role: string, name: string, box: Box, rest: Pick<Board, 'along' | 'face' | 'material'>): Board => ({
    id: `${carcass.id}/${role}`,
    origin: carcass.id,
    role: role.replace(/-\d+$/, ''),
    name: `${owner} ${name}`,
    box,
    seat: 'dado',
    side: null,
    band: null,
    ...rest,
  });
  if (stand.kind === 'sub-floor') {
    const stock = stockOf(catalog, stand.material, carcass.id);
    const box: Box = { min: [0, 0, 0], max: [width, depth, high] };
    return {
      boards: [board('sub-floor', 'sub-floor', box, { along: RIGHT, face: UPWARD, material: stock.material })],
      problems: stock.problems,
    };
  }
  const t = material.thicknessMm;
  const boards = runnerStarts(stand.runners, width, t).map((from, i) =>
    board(
      `runner-${i + 1}`,
      `runner ${i + 1}`,
      { min: [from, 0, 0], max: [from + t, depth, high] },
      { along: BACKWARD, face: RIGHT, material },
    ),
  );
  return { boards, problems: [] };
};
