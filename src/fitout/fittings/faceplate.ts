import type { FittingByKind } from '../../design/index.ts';
import { NO_PARTS } from '../solved.ts';
import type { FittingSolver } from './solver.ts';

export const faceplateSolver: FittingSolver<FittingByKind['faceplate']> = {
  leastRoom: () => [0, 0, 0],
  solve: () => NO_PARTS,
};
