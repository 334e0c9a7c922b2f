import type { Job } from '../job.ts';
import { judgedSurvey } from '../judged-survey.ts';
import { found, type Limit, NOTHING, type Verdict } from '../verdict.ts';

const ONE_SURVEY: Limit = { value: 1, unit: 'count', source: 'survey of the design', status: 'design' };

/** Without a cargo space nothing can be said about fit; the inspection says so and does not stay silent. */
export const spaceMissing = (job: Job): Verdict => {
  if (job.space !== null) return NOTHING;
  const facts = { stations: job.design.survey.stations.length, bodies: job.standing.length };
  const severity = job.standing.length > 0 ? 'caution' : 'note';
  return {
    ...NOTHING,
    findings: [found('space-missing', { severity, parts: [], value: 0, limit: ONE_SURVEY, facts })],
  };
};

/**
 * Start values of a vehicle class are for a first sketch and never to be cut from. Of a survey that is otherwise
 * measured, the stations, obstacles and closures that still hold some are named.
 */
export const startValues = ({ design, rules }: Job): Verdict => {
  const { startValues: whole } = design.survey;
  const left = judgedSurvey(design.survey, rules).facts.filter(({ code }) => code === 'survey-start-value');
  if (!whole && left.length === 0) return NOTHING;
  const parts = whole ? [] : left.flatMap((fact) => fact.parts);
  return { ...NOTHING, findings: [found('start-values', { severity: 'caution', parts, value: 0, limit: ONE_SURVEY })] };
};
