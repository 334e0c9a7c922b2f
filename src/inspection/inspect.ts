import type { Design } from '../design/index.ts';
import type { Finding, Inspection } from './finding.ts';
import { type InspectionInput, makeJob } from './job.ts';
import { weighIn } from './loads/index.ts';
import { orderFindings } from './order-findings.ts';
import { RULE_IDS, type RuleId } from './rule-ids.ts';
import { runRules } from './rules/index.ts';

/** The finding's place in the design's list of what is let stand, by its rule and its parts. */
export const findingKey = (rule: string, parts: readonly string[]): string => [rule, ...parts].join(' ');

const withAccepted = (findings: readonly Finding[], design: Design): readonly Finding[] => {
  const byKey = new Map(design.accepted.map((entry) => [findingKey(entry.rule, entry.parts), entry]));
  return findings.map((finding) => {
    const entry = byKey.get(findingKey(finding.rule, finding.parts));
    return entry ? { ...finding, accepted: { who: entry.who, why: entry.why, on: entry.on } } : finding;
  });
};

const pairsOfMovers = (movers: number): number => (movers < 2 ? 0 : (movers * (movers - 1)) / 2);

/**
 * All checks of a design: what is wrong, what was measured, what each loading case weighs. Accepted findings stay in
 * the list with their severity and who lets them stand. Ways out are left empty here; `findWaysOut` adds them.
 */
export const inspect = (input: InspectionInput): Inspection => {
  const job = makeJob(input);
  const runs = runRules(job);
  const verdicts = runs.map(({ verdict }) => verdict);
  return {
    findings: orderFindings(
      withAccepted(
        verdicts.flatMap((verdict) => verdict.findings),
        input.design,
      ),
    ),
    measured: verdicts.flatMap((verdict) => verdict.measured),
    consulted: Object.fromEntries(runs.map(({ rule, consulted }) => [rule, consulted])),
    weighed: input.design.vehicle.built && weighIn(input.design.vehicle.built, job.cases, input.rules),
    cases: job.cases.flatMap(({ result }) => (result === null ? [] : [result])),
    checked: {
      rules: RULE_IDS.length,
      bodies: job.standing.length,
      pairs: verdicts.reduce((sum, verdict) => sum + verdict.pairs, 0),
      movers: input.fitout.movers.length,
      moverPairs: pairsOfMovers(input.fitout.movers.length),
    },
  };
};

/** Rules about how well the vehicle is known: a panel is not cut to a room that was not measured. */
const SURVEY_HOLDS: ReadonlySet<string> = new Set<RuleId>(['start-values', 'survey-misread', 'survey-closure-error']);

/** Open stops of the survey: while one stands, the packet is not released for cutting. */
export const releaseHolds = (inspection: Inspection): readonly Finding[] =>
  openStops(inspection).filter(({ rule }) => SURVEY_HOLDS.has(rule));

/** Stops that nobody has accepted: what keeps the packet from being released. */
export const openStops = (inspection: Inspection): readonly Finding[] =>
  inspection.findings.filter((finding) => finding.severity === 'stop' && finding.accepted === null);
