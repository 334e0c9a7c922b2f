import type { HouseRules } from '../catalog/index.ts';
import type { Survey } from '../design/index.ts';
import { readSurvey, type SurveyFact, type SurveyRead, surveyFacts } from '../envelope/index.ts';

export interface JudgedSurvey {
  readonly read: SurveyRead;
  /** Worst first. */
  readonly facts: readonly SurveyFact[];
}

/** By survey, for as long as it is kept: it holds nothing that survey and rules do not say. */
const judged = new WeakMap<Survey, { readonly rules: HouseRules; readonly value: JudgedSurvey }>();

/** The survey adjusted, with its facts; made once for the rules that ask and for copies that share the survey. */
export const judgedSurvey = (survey: Survey, rules: HouseRules): JudgedSurvey => {
  const known = judged.get(survey);
  if (known?.rules === rules) return known.value;
  const read = readSurvey(survey, rules);
  const value = { read, facts: surveyFacts(survey, rules, read) };
  judged.set(survey, { rules, value });
  return value;
};
