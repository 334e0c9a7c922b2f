import { degrees } from '../../base/index.ts';
import { readsAngle } from '../../design/index.ts';
import { closureEdge, type ExtraReading, type SurveyFact, type SurveyFactCode } from '../../envelope/index.ts';
import type { Finding, FindingFacts } from '../finding.ts';
import type { Job } from '../job.ts';
import { type JudgedSurvey, judgedSurvey } from '../judged-survey.ts';
import { hasPanels, panelRestsOn } from '../panel-rests-on.ts';
import { found, type Limit, NOTHING, ruleLimit, type Verdict } from '../verdict.ts';

const factsOf = ({ facts }: JudgedSurvey, code: SurveyFactCode): readonly SurveyFact[] =>
  facts.filter((fact) => fact.code === code);

const judge = ({ design, rules }: Job): JudgedSurvey => judgedSurvey(design.survey, rules);

/** Without a cabinet nothing is told apart by what depends on it: a survey that contradicts itself is a stop. */
const severityOf = (job: Job, fact: SurveyFact): 'stop' | 'caution' =>
  fact.holds && (!hasPanels(job) || panelRestsOn(job, fact)) ? 'stop' : 'caution';

/** Half width at 95 % of a normal spread, in standard deviations. */
const SIGMAS = 2;

/**
 * What was read, what the rest makes it, and how well. With one suspect its own redundancy r says how well the others
 * know it: σ √((1 − r) / r). With several that no longer holds, and nothing is claimed.
 */
const misreadFacts = (job: Job, { read: { verdict } }: JudgedSurvey, id: string): FindingFacts => {
  const suspect = verdict?.suspects.find((one) => one.id === id);
  const row = verdict?.adjustment.readings.find((one) => one.id === id);
  if (!verdict || !suspect || !row) return {};
  const angle = readsAngle(job.design.survey.readings.find((one) => one.id === id)?.kind ?? 'distance');
  const shown = (value: number): number => (angle ? degrees(value) : value);
  // w = v / (σ √r), so σ √((1 − r) / r) = (v / w) √(1 − r) / r.
  const alone = verdict.suspects.length === 1 && row.redundancy > 0 && row.w !== 0;
  const spread = alone ? ((row.residual / row.w) * Math.sqrt(1 - row.redundancy)) / row.redundancy : 0;
  return {
    readUnit: angle ? 'deg' : 'mm',
    read: shown(suspect.read),
    made: shown(suspect.others),
    spread: shown(SIGMAS * spread),
    others: verdict.adjustment.readings.length - verdict.suspects.length,
    slip: suspect.slip ?? '',
  };
};

/** A reading that the others contradict beyond chance, and that they can name. */
export const surveyMisread = (job: Job): Verdict => {
  const judged = judge(job);
  return {
    ...NOTHING,
    findings: factsOf(judged, 'survey-misreading').map((fact) =>
      found('survey-misread', {
        severity: severityOf(job, fact),
        parts: fact.parts,
        value: fact.valueMm,
        limit: ruleLimit(job.rules, fact.rule),
        at: fact.at,
        facts: misreadFacts(job, judged, fact.parts[0] ?? ''),
      }),
    ),
  };
};

const extraFacts = (extra: ExtraReading | null): FindingFacts =>
  extra ? { tellKind: extra.kind, tellFrom: extra.from, tellTo: extra.to ?? '', tellRepeats: extra.repeats ?? '' } : {};

/**
 * Readings that disagree: those of which one is wrong and none can be named, and single ones too far from the rest. A
 * wrong reading draws the honest ones away from their places, so these count only once none is named or in doubt.
 */
export const surveyClosureError = (job: Job): Verdict => {
  const judged = judge(job);
  const apart = judged.read.verdict?.consistent ? factsOf(judged, 'survey-closure-error') : [];
  return {
    ...NOTHING,
    findings: [
      ...[...factsOf(judged, 'survey-undecided'), ...apart].map((fact) =>
        found('survey-closure-error', {
          severity: severityOf(job, fact),
          parts: fact.parts,
          value: fact.valueMm,
          limit: ruleLimit(job.rules, fact.rule),
          at: fact.at,
          facts: extraFacts(fact.wouldTell),
        }),
      ),
      ...edgesOff(job),
    ],
  };
};

/** A taped lowest edge that does not fit hinge, trim and angle. The vehicle stands on springs and tyres: a caution. */
const edgesOff = ({ design, space, rules }: Job): readonly Finding[] =>
  design.survey.closures.flatMap(({ id }) => {
    const edge = space ? closureEdge(space, design.survey, id, design.vehicle.floorAboveGroundMm, rules) : null;
    if (!edge?.off || edge.tapedMm === null) return [];
    return [
      found('survey-closure-error', {
        severity: 'caution',
        parts: [id],
        value: Math.abs(edge.tapedMm - edge.madeMm),
        limit: ruleLimit(rules, 'lowest-edge-agree'),
        facts: { edgeTaped: edge.tapedMm, edgeMade: edge.madeMm },
      }),
    ];
  });

const NONE_ALONE: Limit = { value: 0, unit: 'count', source: 'readings of the design', status: 'design' };

/** Readings that no other checks, in one note: a survey half done has many. */
export const surveySingleReading = (job: Job): Verdict => {
  const parts = factsOf(judge(job), 'survey-single-reading').flatMap((fact) => fact.parts);
  if (parts.length === 0) return NOTHING;
  return {
    ...NOTHING,
    findings: [found('survey-single-reading', { severity: 'note', parts, value: parts.length, limit: NONE_ALONE })],
  };
};
