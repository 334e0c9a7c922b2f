import type { HouseRules } from '../catalog/index.ts';
import type { Survey } from '../design/index.ts';
import { readSurvey, type SurveyFact, type SurveyRead, surveyFacts } from '../envelope/index.ts';
import { type NotedRules, notedRules } from './noted-rules.ts';

export interface JudgedSurvey {
  readonly read: SurveyRead;
  /** Worst first. */
  readonly facts: readonly SurveyFact[];
}

interface Kept {
  /** The limits it was judged by; each rule of the inspection looks at them through a note of its own. */
  readonly limits: HouseRules['all'];
  readonly met: NotedRules['met'];
  readonly value: JudgedSurvey;
}

/** By survey, for as long as it is kept: it holds nothing that survey and rules do not say. */
const judged = new WeakMap<Survey, Kept>();

/**
 * The survey adjusted, with its facts; made once for the rules that ask and for copies that share the survey. Whoever
 * asks has looked up the same house rules, made anew or not.
 */
export const judgedSurvey = (survey: Survey, rules: HouseRules): JudgedSurvey => {
  const known = judged.get(survey);
  if (known?.limits === rules.all) {
    for (const id of known.met) rules.record(id);
    return known.value;
  }
  const { rules: through, met } = notedRules(rules);
  const read = readSurvey(survey, through);
  const value = { read, facts: surveyFacts(survey, through, read) };
  judged.set(survey, { limits: rules.all, met, value });
  return value;
};
