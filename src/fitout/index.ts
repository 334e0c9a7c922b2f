// takes: design and catalog
// gives: the fit-out: panels, bodies, movers, masses, hardware, devices and gear rooms, all in place
// knows: what the cabinet is
export { barThickness } from './brace-bolts.ts';
export { GRILLE_HOLE } from './fittings/speaker-grille.ts';
export { foldedPanels } from './folded.ts';
export { gearSize } from './gear-size.ts';
export { wholePart } from './panels.ts';
export * from './parts.ts';
export { allowedSlideLoadKg } from './slide-load.ts';
export { createFitOutSolver, type FitOutSolver, solveFitOut } from './solve.ts';
