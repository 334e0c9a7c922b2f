import { ROUNDING_KG } from '../../base/index.ts';
import type { Finding, MarginName, Measured } from '../finding.ts';
import type { SolvedCase } from '../loads/index.ts';
import type { RuleId } from '../rule-ids.ts';
import { found, type Limit, limitAt, measured, NOTHING, type Verdict } from '../verdict.ts';

/** One weight in one loading case, with its half width at 95 %. */
export interface Weighed {
  readonly id: SolvedCase['id'];
  readonly kg: number;
  readonly spreadKg: number;
}

export interface RatedCheck {
  readonly rule: RuleId;
  readonly margin: MarginName;
  readonly rating: Limit;
  /** What the shop wants to keep free under the rating, as a mass, with its house rule. */
  readonly reserve: Limit;
  readonly weights: readonly Weighed[];
}

/** The heaviest case, which for one rating is the worst; null for no cases. */
const heaviest = (weights: readonly Weighed[]): Weighed | null =>
  weights.reduce<Weighed | null>((worst, own) => (worst === null || own.kg > worst.kg ? own : worst), null);

const verdictFor = (check: RatedCheck, worst: Weighed): readonly Finding[] => {
  const { rule, margin, rating, reserve, weights } = check;
  const over = weights.filter((own) => own.kg > rating.value + ROUNDING_KG).map((own) => own.id);
  const facts = {
    case: worst.id,
    casesOver: over.join(' '),
    ratingKg: rating.value,
    leftKg: rating.value - worst.kg,
    wantedKg: reserve.value,
  };
  const what = { parts: [worst.id], value: worst.kg, uncertainty: worst.spreadKg, margin, facts };
  if (over.length > 0) return [found(rule, { ...what, severity: 'stop', limit: rating })];
  const wanted = limitAt(reserve, rating.value - reserve.value, 'kg');
  if (worst.kg > wanted.value + ROUNDING_KG || worst.kg + worst.spreadKg > rating.value + ROUNDING_KG)
    return [found(rule, { ...what, severity: 'caution', limit: wanted })];
  return [];
};

/**
 * A weight against its rating in every loading case; the heaviest case speaks. Over the rating: stop. Within what the
 * shop wants to keep free, or within the spread of the masses of the rating: caution, against the limit with the
 * reserve taken off.
 */
export const judgeRating = (check: RatedCheck): Verdict => {
  const worst = heaviest(check.weights);
  if (!worst) return NOTHING;
  const { rule, margin, rating } = check;
  const taken = check.weights.map(
    (own): Measured =>
      measured(rule, {
        margin,
        parts: [own.id],
        value: own.kg,
        limit: rating,
        uncertainty: own.spreadKg,
        sense: 'at most',
      }),
  );
  return { findings: verdictFor(check, worst), measured: taken, pairs: 0 };
};
