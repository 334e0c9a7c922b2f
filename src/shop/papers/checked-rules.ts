import { type Finding, type Inspection, type Measured, RULE_IDS, type RuleId } from '../../inspection/index.ts';

/** What one rule came to: everything that it found, and of what it measured the check with least to spare. */
export interface CheckedRule {
  readonly rule: RuleId;
  readonly findings: readonly Finding[];
  /** How many things it measured; a rule that answers yes or no measures none. */
  readonly checks: number;
  readonly worst: Measured | null;
}

/** How much is to spare as a part of the limit, so that checks in different units can be compared. */
const spareShare = ({ slack, limit, value }: Measured): number => slack / (Math.abs(limit) || Math.abs(value) || 1);

/** Every rule of the inspection in its order, whether it found anything or not. */
export const checkedRules = ({ findings, measured }: Inspection): readonly CheckedRule[] =>
  RULE_IDS.map((rule) => {
    const taken = measured.filter((each) => each.rule === rule);
    return {
      rule,
      findings: findings.filter((each) => each.rule === rule),
      checks: taken.length,
      worst: taken.reduce<Measured | null>(
        (worst, each) => (worst === null || spareShare(each) < spareShare(worst) ? each : worst),
        null,
      ),
    };
  });
