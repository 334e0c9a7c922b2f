import type { Design } from '../design/index.ts';
import type { Finding, Inspection, WayOut } from './finding.ts';
import { findingKey, openStops } from './inspect.ts';
import { isRuleId } from './rule-ids.ts';
import { type Candidate, WAY_KINDS } from './ways-out/candidate.ts';
import { WAYS } from './ways-out/index.ts';

/** Inspects a copy of the design. */
export type TryDesign = (design: Design) => Inspection;

/** Stops looked at, the worst first; ways offered for each; and copies tried in all, since each costs an inspection. */
const MOST_STOPS = 12;
const MOST_WAYS = 3;
const MOST_TRIES = 60;

const keyOf = (finding: Finding): string => findingKey(finding.rule, finding.parts);

const stopKeys = (inspection: Inspection): ReadonlySet<string> =>
  new Set(inspection.findings.filter((finding) => finding.severity === 'stop').map(keyOf));

const byLeastChange = (a: Candidate, b: Candidate): number =>
  WAY_KINDS.indexOf(a.kind) - WAY_KINDS.indexOf(b.kind) || a.change - b.change;

interface Tried {
  readonly way: WayOut;
  /** True when nothing is left to say about the same parts, not even a caution. */
  readonly whole: boolean;
}

/** The value that the same check has after the edit; the limit where nothing is measured there any more. */
const valueAfter = (finding: Finding, after: Inspection): number => {
  const key = keyOf(finding);
  const same = (own: { readonly rule: string; readonly parts: readonly string[] }): boolean =>
    findingKey(own.rule, own.parts) === key;
  return after.findings.find(same)?.value ?? after.measured.find(same)?.value ?? finding.limit;
};

/** The edit tried on a copy: null unless the finding is no longer a stop and no stop is new. */
const tryOut = (
  finding: Finding,
  candidate: Candidate,
  before: ReadonlySet<string>,
  tryDesign: TryDesign,
): Tried | null => {
  const after = tryDesign(candidate.design);
  const stops = stopKeys(after);
  const key = keyOf(finding);
  if (stops.has(key) || [...stops].some((stop) => !before.has(stop))) return null;
  const { kind, facts, design } = candidate;
  return {
    way: { kind, facts, design, valueAfter: valueAfter(finding, after) },
    whole: !after.findings.some((own) => keyOf(own) === key),
  };
};

const waysFor = (
  finding: Finding,
  design: Design,
  before: ReadonlySet<string>,
  spend: () => boolean,
  tryDesign: TryDesign,
): readonly WayOut[] => {
  if (!isRuleId(finding.rule)) return [];
  const kept: Tried[] = [];
  const done = new Set<string>();
  for (const candidate of WAYS[finding.rule](finding, design).toSorted(byLeastChange)) {
    if (candidate.group !== null && done.has(candidate.group)) continue;
    if (kept.length >= MOST_WAYS || !spend()) break;
    const tried = tryOut(finding, candidate, before, tryDesign);
    if (!tried) continue;
    kept.push(tried);
    if (candidate.group !== null) done.add(candidate.group);
  }
  // An edit that leaves nothing to say comes before one that leaves a caution; within each the least change first.
  return [...kept.filter(({ whole }) => whole), ...kept.filter(({ whole }) => !whole)].map(({ way }) => way);
};

/**
 * The same inspection with ways out for its open stops: edits that were tried on a copy by `tryDesign`, clear the stop
 * and make no new one, best first. Looks at the first stops only and tries a bounded number of copies.
 */
export const findWaysOut = (inspection: Inspection, design: Design, tryDesign: TryDesign): Inspection => {
  const before = stopKeys(inspection);
  let tries = 0;
  const spend = (): boolean => tries++ < MOST_TRIES;
  const ways = new Map(
    openStops(inspection)
      .slice(0, MOST_STOPS)
      .map((finding) => [finding, waysFor(finding, design, before, spend, tryDesign)] as const),
  );
  return {
    ...inspection,
    findings: inspection.findings.map((finding) => {
      const waysOut = ways.get(finding) ?? [];
      return waysOut.length === 0 ? finding : { ...finding, waysOut };
    }),
  };
};
