import { type SurveyFact, surveyHolds } from '../envelope/index.ts';
import type { Job } from './job.ts';
import type { StandingBody } from './standing.ts';

const panelsOf = ({ standing }: Job): readonly StandingBody[] => standing.filter(({ body }) => body.kind === 'panel');

export const hasPanels = (job: Job): boolean => panelsOf(job).length > 0;

/** True when a panel stands within the depths that the fact holds: it must not be cut before the fact is settled. */
export const panelRestsOn = (job: Job, fact: SurveyFact): boolean =>
  panelsOf(job).some(({ box }) => surveyHolds([fact], box.min[0], box.max[0]).length > 0);
