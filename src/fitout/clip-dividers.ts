import type { Board } from './board.ts';
import type { CarcassShell } from './carcass-boards.ts';
import { clipBoard, clippedOutline } from './clip-board.ts';
import type { CarcassContext } from './context.ts';
import { notchBoard } from './notch-board.ts';
import type { FitProblem } from './parts.ts';
import { badJoint } from './problem.ts';
import type { AssemblyBoards } from './solved.ts';
import { steepEdges } from './steep-edges.ts';

/**
 * Dividers, shelves and partitions of a carcass cut along its chamfers and round its wheelhouses. One that lies wholly in a cut-off corner is
 * left out and said, and so is an edge that the saw cannot tilt to.
 */
export const clipDividers = (
  assemblies: readonly AssemblyBoards[],
  shell: CarcassShell,
  context: CarcassContext,
): { readonly assemblies: readonly AssemblyBoards[]; readonly problems: readonly FitProblem[] } => {
  if (shell.chamfers.length + shell.wheels.length === 0) return { assemblies, problems: [] };
  const planes = shell.chamfers.map(({ inner }) => inner);
  const problems: FitProblem[] = [];
  const cut = assemblies.map((each): AssemblyBoards => {
    if (each.mover !== null) return each;
    const boards = each.boards.flatMap((board) => {
      const left = shell.wheels.reduce<Board | null>(
        (wood, { taken }) => wood && notchBoard(wood, taken),
        clipBoard(board, planes),
      );
      if (!left) problems.push(badJoint(board.origin, [`${board.name} lies in a corner that is cut off`]));
      if (!left || left === board) return left ?? [];
      problems.push(...steepEdges(context, board, clippedOutline(left).bevels));
      return left;
    });
    return { ...each, boards };
  });
  return { assemblies: cut.filter(({ boards }) => boards.length > 0), problems };
};
