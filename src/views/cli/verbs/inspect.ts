import { type Finding, openStops } from '../../../inspection/index.ts';
import { nameOfPart, sayMotions, sayReach } from '../../../says/index.ts';
import { findingCounts, orderLines } from '../../../shop/index.ts';
import { openFlow } from '../open-flow.ts';
import type { Outcome } from '../outcome.ts';
import { readDesignFile } from '../read-design-file.ts';
import { type Sayer, sayer } from '../sayer.ts';

const findingJson = (finding: Finding, say: Sayer): unknown => ({
  rule: finding.rule,
  severity: finding.severity,
  parts: finding.parts,
  value: finding.value,
  limit: finding.limit,
  unit: finding.unit,
  uncertainty: finding.uncertainty,
  at: finding.at,
  source: finding.source,
  status: finding.status,
  margin: finding.margin,
  says: say.finding(finding).title,
  detail: say.finding(finding).detail,
  remedy: say.remedy(finding),
  waysOut: finding.waysOut.map((way) => ({ kind: way.kind, says: say.wayOut(way), valueAfter: way.valueAfter })),
  accepted: finding.accepted,
});

const IN = ' '.repeat(9);

const findingLines = (finding: Finding, say: Sayer): readonly string[] => {
  const { title, detail } = say.finding(finding);
  const { accepted, severity, source, status } = finding;
  const remedy = say.remedy(finding);
  const figures = say.figures(finding);
  return [
    `${severity.toUpperCase().padEnd(IN.length)}${title}`,
    ...(detail === '' ? [] : [IN + detail]),
    `${IN}${figures === '' ? '' : `${figures}; `}source: ${source} (${status})`,
    ...(accepted === null ? [] : [`${IN}accepted by ${accepted.who}: ${accepted.why}`]),
    ...(accepted !== null || remedy === '' ? [] : [`${IN}way out: ${remedy}`]),
  ];
};

/** What is not searched for unless asked. */
const NOT_SEARCHED =
  'Not searched: how carcasses are carried in, and ways out of cautions. `--thorough` does both, in seconds.';

/**
 * `inspect DESIGN`: all checks. Stops that a named person has accepted are listed and do not count as stops. `thorough`:
 * the carrying in and ways out of cautions as well, which take seconds.
 */
export const inspect = async (path: string, thorough: boolean): Promise<Outcome> => {
  const design = readDesignFile(path);
  const flow = await openFlow();
  const begun = performance.now();
  const inspection = thorough ? flow.inspectionWithWaysOut(design) : flow.inspectionAtOnce(design);
  const order = flow.openingOrder(design);
  const ms = Math.round(performance.now() - begun);
  const say = sayer(design, flow.fitOut(design));
  const names = nameOfPart(design, flow.fitOut(design));
  const { checked, findings } = inspection;
  return {
    lines: [
      `${design.title}: ${findingCounts(findings)}`,
      `checked ${checked.rules} rules, ${checked.bodies} bodies, ${checked.pairs} pairs, ${checked.movers} movers, ${checked.moverPairs} pairs of movers in ${ms} ms`,
      ...findings.flatMap((finding) => ['', ...findingLines(finding, say)]),
      '',
      'OPENING ORDER',
      ...orderLines(order, names).map((line) => (line === '' ? '' : IN + line)),
      ...(thorough ? [] : ['', NOT_SEARCHED]),
    ],
    json: {
      findings: findings.map((finding) => findingJson(finding, say)),
      measured: inspection.measured,
      openingOrder: {
        rows: order.rows,
        gear: order.gear.map((reach) => ({ ...reach, motions: sayMotions(reach), says: sayReach(reach, names) })),
      },
      checked,
      thorough,
      ms,
    },
    exitCode: openStops(inspection).length > 0 ? 1 : 0,
  };
};
