import type { LengthUnits } from '../base/index.ts';
import { type Finding, isRuleId } from '../inspection/index.ts';
import { FINDING_WORDS } from './findings/index.ts';
import { RULE_NAMES } from './rule-names.ts';
import { type FindingWords, speechFor } from './words.ts';

export interface SaidFinding {
  /** One line, without a full stop. */
  readonly title: string;
  /** One or two sentences more. */
  readonly detail: string;
  /** The measured value, and what it is held against; empty where there is no figure to show. */
  readonly valueText: string;
  readonly limitText: string;
}

/** A finding of a rule that has no words of its own, from an inspection made by a newer program. */
const plainly = (finding: Finding, name: (id: string) => string): FindingWords => ({
  title: [finding.rule.replaceAll('-', ' '), ...finding.parts.map(name)].join(', '),
  detail: '',
});

/** A finding in words of the trade. `names` turns the id of a part or a node into its name (`nameOfPart`). */
export const sayFinding = (finding: Finding, units: LengthUnits, names: (id: string) => string): SaidFinding => {
  const speech = speechFor(units, names);
  const words = isRuleId(finding.rule) ? FINDING_WORDS[finding.rule](finding, speech) : plainly(finding, names);
  return {
    title: words.title,
    detail: words.detail,
    valueText: words.valueText ?? speech.amount(finding.value, finding.unit),
    limitText: words.limitText ?? `of ${speech.amount(finding.limit, finding.unit)}`,
  };
};

/** What a rule checks, as a short phrase; its id in words for one that is not known. */
export const sayRule = (rule: string): string => (isRuleId(rule) ? RULE_NAMES[rule] : rule.replaceAll('-', ' '));
