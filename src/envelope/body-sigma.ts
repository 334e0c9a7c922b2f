import type { HouseRules } from '../catalog/index.ts';
import type { Closure } from '../design/index.ts';
import type { SurveyRead } from './read-survey.ts';
import type { VehicleBody } from './space.ts';

/** The worst axis of the marks that carry the closure, or null when none does. */
const sigmaOfMarks = (closure: Closure, read: SurveyRead): number | null => {
  const sigmas = Object.values(closure.marks ?? {}).flatMap((mark) => {
    const covariance = mark !== null && read.points.has(mark) ? read.verdict?.adjustment.covarianceOf(mark) : null;
    return covariance ? [Math.sqrt(Math.max(covariance[0], covariance[3], covariance[5]))] : [];
  });
  return sigmas.length === 0 ? null : Math.max(...sigmas);
};

/**
 * One standard deviation of the place of every obstacle and closure, by body: how it was measured, and one vehicle
 * against the next. A closure that hangs on adjusted marks is known as its worst mark, open edge included; it is never
 * taken for better known than a typed one, since its profile was taped.
 */
export const bodySigmas = (
  read: SurveyRead,
  bodies: readonly VehicleBody[],
  rules: HouseRules,
): Readonly<Record<string, number>> => {
  const { survey } = read;
  const vehicle = rules.value('vehicle-allowance-sigma');
  const start = Math.max(rules.value('start-value-sigma'), survey.sigmaMm);
  const obstacles = new Map(survey.obstacles.map((obstacle) => [obstacle.id as string, obstacle]));
  const closures = new Map(survey.closures.map((closure) => [closure.id as string, closure]));
  const ownSigma = (body: VehicleBody): number => {
    const item = obstacles.get(body.origin) ?? closures.get(body.origin);
    if (item?.startValues ?? survey.startValues) return start;
    const closure = closures.get(body.closure ?? '');
    return Math.max(survey.sigmaMm, closure ? (sigmaOfMarks(closure, read) ?? 0) : 0);
  };
  return Object.fromEntries(bodies.map((body) => [body.id, Math.hypot(ownSigma(body), vehicle)]));
};
