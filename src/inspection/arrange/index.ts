// takes: what is stowed where, what may change places, a solver of linear programs
// gives: arrangements with better balance, lifts and reach, as designs to choose from
// knows: which of them the inspection lets stand
export { type ArrangedItem, type Arrangement, type ArrangePlan, arrange } from './arrange.ts';
export type { ArrangeWishes, Staying } from './berths.ts';
export type { ArrangeFigures } from './figures.ts';
export { ARRANGE_FIRST, type ArrangeFirst } from './goals.ts';
export { highsProgram } from './highs-program.ts';
export type { ProgramSolver } from './program.ts';
