import type { Fitting, FittingByKind, FittingKind } from '../../design/index.ts';
import { apparatusBracketSolver } from './apparatus-bracket.ts';
import { boardSolver } from './board.ts';
import { chargerBaySolver } from './charger-bay.ts';
import { cylinderClampSolver } from './cylinder-clamp.ts';
import { doorSolver } from './door.ts';
import { drawerSolver } from './drawer.ts';
import { extinguisherCradleSolver } from './extinguisher-cradle.ts';
import { faceplateSolver } from './faceplate.ts';
import { mapSlotSolver } from './map-slot.ts';
import { openStorageSolver } from './open-storage.ts';
import { passThroughSolver } from './pass-through.ts';
import { slideOutSolver } from './slide-out.ts';
import type { FittingSolver } from './solver.ts';
import { tabletMountSolver } from './tablet-mount.ts';
import { toolClampSolver } from './tool-clamp.ts';
import { trimSolver } from './trim.ts';
import { valuablesSolver } from './valuables.ts';

/** How each kind of fitting is built. A new kind is added here; everything else asks this table. */
export const FITTING_SOLVERS: { readonly [Kind in FittingKind]: FittingSolver<FittingByKind[Kind]> } = {
  drawer: drawerSolver,
  'slide-out': slideOutSolver,
  'open-storage': openStorageSolver,
  faceplate: faceplateSolver,
  'apparatus-bracket': apparatusBracketSolver,
  door: doorSolver,
  board: boardSolver,
  'extinguisher-cradle': extinguisherCradleSolver,
  'cylinder-clamp': cylinderClampSolver,
  'tool-clamp': toolClampSolver,
  'pass-through': passThroughSolver,
  'charger-bay': chargerBaySolver,
  valuables: valuablesSolver,
  'map-slot': mapSlotSolver,
  'tablet-mount': tabletMountSolver,
  trim: trimSolver,
};

/** The solver for a fitting. Its methods take that fitting and no other. */
export const solverOf = (fitting: Fitting): FittingSolver<Fitting> => FITTING_SOLVERS[fitting.kind];
