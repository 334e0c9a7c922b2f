import type { Job } from '../job.ts';
import { overlaps } from '../pairs.ts';
import { NO_OVERLAP, type Verdict } from '../verdict.ts';
import { judgePairs } from './pair-verdict.ts';

/**
 * No two solids of the cabinet stand in the same place, stowed: gear, devices, the room behind plugs, hardware, and
 * panels of different carcasses or movers. Touching is no overlap.
 */
export const bodyBody = (job: Job): Verdict =>
  judgePairs(
    'body-body',
    job.pairs.filter(overlaps),
    () => NO_OVERLAP,
    () => 'stop',
  );
