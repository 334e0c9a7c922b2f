import type { Job } from '../job.ts';
import { judgedSurvey } from '../judged-survey.ts';
import { panelRestsOn } from '../panel-rests-on.ts';
import { found, type Limit, NOTHING, type Verdict } from '../verdict.ts';

const ONE_SURVEY: Limit = { value: 1, unit: 'count', source: 'survey of the design', status: 'design' };
const NONE_LEFT: Limit = { ...ONE_SURVEY, value: 0 };

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
 * Start values of a vehicle class are for a first sketch and never to be cut from: a stop as soon as a panel stands
 * where one shapes the room. Of a survey that is partly measured, the stations, obstacles and closures that still hold
 * some are named.
 */
export const startValues = (job: Job): Verdict => {
  const { survey } = job.design;
  const left = judgedSurvey(survey, job.rules).facts.filter(({ code }) => code === 'survey-start-value');
  if (!survey.startValues && left.length === 0) return NOTHING;
  const all = survey.stations.length + survey.obstacles.length + survey.closures.length;
  const named = left.length === all ? [] : left.flatMap((fact) => fact.parts);
  const severity = left.some((fact) => panelRestsOn(job, fact)) ? 'stop' : 'caution';
  const facts = { openingOnly: left.length === 0 ? 1 : 0 };
  return {
    ...NOTHING,
    findings: [found('start-values', { severity, parts: named, value: left.length, limit: NONE_LEFT, facts })],
  };
};
