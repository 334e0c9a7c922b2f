import { compareMarks, compareText } from '../../base/index.ts';
import { wholePart } from '../../fitout/index.ts';
import type { Finding, FindingFacts, Measured, Severity } from '../finding.ts';
import type { BodyPair } from '../pairs.ts';
import type { RuleId } from '../rule-ids.ts';
import type { CabinetBody, StandingBody } from '../standing.ts';
import { found, type Limit, measured, type Verdict } from '../verdict.ts';

/** What a person asks about first. */
const RANK: Readonly<Record<CabinetBody['kind'], number>> = {
  gear: 0,
  device: 1,
  'plug-room': 2,
  hardware: 3,
  panel: 4,
};

const isBoard = ({ body }: StandingBody): boolean => body.kind === 'panel' || body.kind === 'hardware';

/** Of two carcasses the carcass is named, within one the panel; gear and devices always by themselves. */
const nameIn = (pair: BodyPair, standing: StandingBody): string =>
  isBoard(standing) && pair.relation !== 'two-carcasses' ? wholePart(standing.body.id) : standing.subject;

const ordered = (pair: BodyPair): readonly [StandingBody, StandingBody] => {
  const rank =
    RANK[pair.a.body.kind] - RANK[pair.b.body.kind] || compareMarks(nameIn(pair, pair.a), nameIn(pair, pair.b));
  return rank <= 0 ? [pair.a, pair.b] : [pair.b, pair.a];
};

const factsOf = (pair: BodyPair): FindingFacts => {
  const [first, second] = ordered(pair);
  return {
    first: wholePart(first.body.id),
    firstName: first.body.name,
    firstKind: first.body.kind,
    second: wholePart(second.body.id),
    secondName: second.body.name,
    secondKind: second.body.kind,
    relation: pair.relation,
  };
};

/**
 * Findings and margins of a rule about pairs of cabinet bodies: of all pairs about the same two parts the closest one
 * speaks. `severityOf` gives null for a pair that is as it should be; such a pair is no
 * margin either, since reveals and spares are built to their limits and would hide the gaps to the vehicle.
 */
export const judgePairs = (
  rule: RuleId,
  pairs: readonly BodyPair[],
  limitOf: (pair: BodyPair) => Limit,
  severityOf: (pair: BodyPair, limit: Limit) => Severity | null,
): Verdict => {
  const worst = new Map<
    string,
    { readonly pair: BodyPair; readonly parts: readonly string[]; readonly limit: Limit }
  >();
  for (const pair of pairs) {
    const parts = ordered(pair).map((standing) => nameIn(pair, standing));
    const limit = limitOf(pair);
    const before = worst.get(parts.join(' '));
    if (!before || pair.gap.distance - limit.value < before.pair.gap.distance - before.limit.value)
      worst.set(parts.join(' '), { pair, parts, limit });
  }
  const kept = [...worst].toSorted(([a], [b]) => compareText(a, b)).map(([, value]) => value);
  const judged = kept.flatMap(({ pair, parts, limit }): readonly { finding: Finding; taken: Measured }[] => {
    const severity = severityOf(pair, limit);
    if (severity === null) return [];
    const [value, at] = [pair.gap.distance, [pair.gap.from, pair.gap.to] as const];
    return [
      {
        finding: found(rule, { severity, parts, value, limit, at, margin: 'gap', facts: factsOf(pair) }),
        taken: measured(rule, { margin: 'gap', parts, value, limit, sense: 'at least', at }),
      },
    ];
  });
  return {
    findings: judged.map(({ finding }) => finding),
    measured: judged.map(({ taken }) => taken),
    pairs: pairs.length,
  };
};
