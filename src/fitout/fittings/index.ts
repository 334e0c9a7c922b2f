import type { Fitting, FittingByKind, FittingKind } from '../../design/index.ts';
import { apparatusBracketSolver } from './apparatus-bracket.ts';
import { boardSolver } from './board.ts';
import { doorSolver } from './door.ts';
import { drawerSolver } from './drawer.ts';
import { faceplateSolver } from './faceplate.ts';
import { openStorageSolver } from './open-storage.ts';
import { slideOutSolver } from './slide-out.ts';
import type { FittingSolver } from './solver.ts';

/** How each kind of fitting is built. A new kind is added here; everything else asks this table. */
export const FITTING_SOLVERS: { readonly [Kind in FittingKind]: FittingSolver<FittingByKind[Kind]> } = {
  drawer: drawerSolver,
  'slide-out': slideOutSolver,
  'open-storage': openStorageSolver,
  faceplate: faceplateSolver,
  'apparatus-bracket': apparatusBracketSolver,
  door: doorSolver,
  board: boardSolver,
};

/** The solver for a fitting. Its methods take that fitting and no other. */
export const solverOf = (fitting: Fitting): FittingSolver<Fitting> => FITTING_SOLVERS[fitting.kind];
