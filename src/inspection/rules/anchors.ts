import { ROUNDING_MM, type Vec3 } from '../../base/index.ts';
import { shapeBox } from '../../bodies/index.ts';
import type { Finding, FindingFacts, Measured, Severity } from '../finding.ts';
import { type AnchorWorst, type CarcassHold, type GroupHold, groupHolds } from '../hold/index.ts';
import type { Job } from '../job.ts';
import { SIGMAS_AT_95 } from '../loads/index.ts';
import { found, type Limit, measured, NOTHING, ruleLimit, type Verdict } from '../verdict.ts';

/** One point, where a finding has a place but nothing is measured along a line. */
const spot = (at: Vec3): readonly [Vec3, Vec3] => [at, at];

/** A carcass is held by as many anchors as the shop wants at least. None at all: stop. */
export const anchorCount = (job: Job): Verdict => {
  const limit = ruleLimit(job.rules, 'anchor-count-min');
  const findings = job.fitout.carcasses.flatMap(({ id, pose }): readonly Finding[] => {
    const value = job.fitout.anchors.filter(({ carcass }) => carcass === id).length;
    if (value >= limit.value) return [];
    const severity = value === 0 ? 'stop' : 'caution';
    return [found('anchor-count', { severity, parts: [id], value, limit, at: spot(pose.at) })];
  });
  return { ...NOTHING, findings };
};

const inside = (at: Vec3, min: Vec3, max: Vec3): boolean =>
  ([0, 1] as const).every((i) => at[i] > min[i] + ROUNDING_MM && at[i] < max[i] - ROUNDING_MM);

/** No anchor is drilled where the survey says that no hole may be: tank, lines, wires. */
export const anchorNoHole = (job: Job): Verdict => {
  const limit: Limit = { value: 0, unit: 'count', source: 'survey of the design', status: 'design' };
  const zones = (job.space?.zones ?? []).filter(({ rule }) => rule === 'no-hole');
  const findings = job.fitout.anchors.flatMap((anchor) =>
    zones
      .filter(({ shape }) => {
        const { min, max } = shapeBox(shape);
        const reach = job.catalog.hardware.get(anchor.bolt)?.sizeMm?.[0] ?? 0;
        return inside(anchor.at, min, max) && anchor.at[2] > min[2] - reach && anchor.at[2] < max[2] + reach;
      })
      .map((zone) =>
        found('anchor-no-hole', {
          severity: 'stop',
          parts: [anchor.carcass, anchor.id, zone.id],
          value: 1,
          limit,
          at: spot(anchor.at),
          facts: { zone: zone.name },
        }),
      ),
  );
  return { ...NOTHING, findings };
};

/** Anchors keep their distance to the edges of their panel; one beside it holds nothing. */
export const anchorEdge = (job: Job): Verdict => {
  const limit = ruleLimit(job.rules, 'anchor-edge');
  const findings = job.fitout.anchors
    .filter(({ edgeMm }) => edgeMm < limit.value - ROUNDING_MM)
    .map(({ id, carcass, edgeMm }) =>
      found('anchor-edge', {
        severity: edgeMm <= 0 ? 'stop' : 'caution',
        parts: [carcass, id],
        value: edgeMm,
        limit,
      }),
    );
  return { ...NOTHING, findings };
};

const halfWidth = ({ carcass }: CarcassHold, use: number): number =>
  carcass.kg > 0 ? (SIGMAS_AT_95 * use * carcass.sigmaKg) / carcass.kg : 0;

const factsOf = (hold: CarcassHold, { anchor, link, thrown, pull }: AnchorWorst) => ({
  kg: hold.carcass.kg,
  way: thrown.way,
  g: thrown.g,
  link,
  anchor: anchor.id,
  tensionN: pull.tensionN,
  shearN: pull.shearN,
});

/** A stop of a carcass alone beside its braced group: only a caution where the group holds, named by its braces. */
interface Braced {
  readonly severity: Severity;
  /** The braces at the carcass, where it hangs on them. */
  readonly braces: readonly string[];
  readonly facts: FindingFacts;
}

const bracedStop = (job: Job, { carcass }: CarcassHold, limit: Limit): Braced => {
  const hold = job.groups.find(({ group }) => group.members.some(({ id }) => id === carcass.id));
  if (!hold) return { severity: 'stop', braces: [], facts: {} };
  const holds = groupHolds(hold, limit.value);
  const own = hold.group.braces.filter(({ carcasses }) => carcasses.some((id) => id === carcass.id));
  return {
    severity: holds ? 'caution' : 'stop',
    braces: holds ? own.map(({ id }) => id) : [],
    facts: { ...groupFacts(hold), group: holds ? 'holds' : 'gives way' },
  };
};

const groupFacts = ({ kg, worst, missing, group }: GroupHold): FindingFacts => ({
  groupCount: group.members.length,
  groupKg: kg,
  ...(worst
    ? {
        groupLink: worst.link,
        groupPart: worst.part,
        groupWay: worst.thrown.way,
        groupG: worst.thrown.g,
        ...(Number.isFinite(worst.use) ? { groupUse: worst.use } : {}),
      }
    : {}),
  ...(missing[0] === undefined ? {} : { groupMissing: missing[0] }),
});

const useFindings = (job: Job, hold: CarcassHold, limit: Limit): readonly Finding[] => {
  const [worst] = hold.anchors.toSorted((a, b) => b.use - a.use);
  if (!worst) return [];
  const uncertainty = halfWidth(hold, worst.use);
  if (worst.use + uncertainty <= limit.value) return [];
  const thrown = job.rules.record(worst.thrown.rule);
  const braced: Braced =
    worst.use > limit.value ? bracedStop(job, hold, limit) : { severity: 'caution', braces: [], facts: {} };
  return [
    found('anchor-hold', {
      severity: braced.severity,
      parts: [hold.carcass.id, ...braced.braces],
      value: worst.use,
      limit: { ...limit, source: `${thrown.about}: ${thrown.source}`, status: thrown.status },
      uncertainty,
      at: spot(worst.anchor.at),
      margin: 'hold',
      facts: { ...factsOf(hold, worst), ...braced.facts },
    }),
  ];
};

/** Anchors of the floor all on one spot or line, so that something turns about them. */
const looseFinding = (job: Job, hold: CarcassHold, limit: Limit): readonly Finding[] => {
  const { carcass, loose } = hold;
  if (loose === null || carcass.anchors.length === 0) return [];
  const braced = bracedStop(job, hold, limit);
  return [
    found('anchor-hold', {
      severity: braced.severity,
      parts: [carcass.id, ...braced.braces],
      value: carcass.anchors.length,
      limit: { ...limit, unit: 'count', value: 2 },
      at: spot(carcass.centre),
      facts: { way: loose.way, g: loose.g, kg: carcass.kg, link: 'loose', ...braced.facts },
    }),
  ];
};

/**
 * Every carcass thrown each way of the load sets that the design is held to: the worst link of the worst anchor. A
 * carcass that braces tie to others is reckoned alone all the same; what its group makes of it stands beside that.
 * Screening, not a crash test.
 */
export const anchorHold = (job: Job): Verdict => {
  const limit = ruleLimit(job.rules, 'hold-use-share');
  const holds = job.holds.filter(({ carcass }) => carcass.anchors.length > 0 && carcass.kg > 0);
  const taken = holds.flatMap(({ carcass, anchors }) =>
    anchors
      .toSorted((a, b) => b.use - a.use)
      .map(({ anchor, use }, i): Measured => {
        // The worst speaks for its carcass; the others stand for themselves.
        const parts = i === 0 ? [carcass.id] : [carcass.id, anchor.id];
        return measured('anchor-hold', {
          margin: 'hold',
          parts,
          value: use,
          limit,
          sense: 'at most',
          at: spot(anchor.at),
        });
      }),
  );
  const findings = holds.flatMap((hold) => [...looseFinding(job, hold, limit), ...useFindings(job, hold, limit)]);
  return { findings, measured: taken, pairs: 0 };
};

/** Anchors whose strength nobody gives: records without a rating, sheets that are not plywood. */
export const holdUnknown = (job: Job): Verdict => {
  const limit: Limit = { value: 1, unit: 'count', source: 'catalog', status: 'catalog' };
  const findings = job.holds.flatMap(({ carcass, missing }) =>
    missing.map((item) =>
      found('hold-unknown', { severity: 'caution', parts: [carcass.id, item], value: 0, limit, facts: { item } }),
    ),
  );
  return { ...NOTHING, findings };
};
