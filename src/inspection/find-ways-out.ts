import type { Design } from '../design/index.ts';
import type { Finding, Inspection, WayOut } from './finding.ts';
import { findingKey, openStops } from './inspect.ts';
import { isRuleId, type RuleId } from './rule-ids.ts';
import { type Candidate, WAY_KINDS } from './ways-out/candidate.ts';
import { WAYS } from './ways-out/index.ts';

/** Inspects a copy of the design; `carries` where the finding is of the carrying in, which is searched for. */
export type TryDesign = (design: Design, carries: boolean) => Inspection;

/** Findings looked at, the worst first; ways offered for each; and copies tried in all, since each costs an inspection. */
const MOST_STOPS = 12;
const MOST_CAUTIONS = 10;
const MOST_WAYS = 3;
const MOST_TRIES = 60;
const MOST_CAUTION_TRIES = 40;
/** Copies tried to make an edit that works smaller. */
const MOST_HALVINGS = 5;

/** What moves, is reached and is carried asks for a way out as a caution too: nobody builds a drawer that nearly opens. */
const OF_MOTION: ReadonlySet<string> = new Set<RuleId>([
  'mover-travel',
  'mover-pairs',
  'working-triple',
  'closure-swing',
  'hatch-closed',
  'low-roof',
  'hand-room',
  'device-out',
  'gear-out',
  'first-due',
  'carry-in',
]);

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

/** The edit tried on a copy: null unless the finding is cleared by a severity at least and no stop is new. */
const tryOut = (
  finding: Finding,
  candidate: Candidate,
  before: ReadonlySet<string>,
  tryDesign: TryDesign,
): Tried | null => {
  const after = tryDesign(candidate.design, finding.rule === 'carry-in');
  const stops = stopKeys(after);
  const key = keyOf(finding);
  const left = after.findings.find((own) => keyOf(own) === key)?.severity ?? null;
  const isCleared = left === null || left === 'note' || (left === 'caution' && finding.severity === 'stop');
  if (!isCleared || [...stops].some((stop) => !before.has(stop))) return null;
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
  const failed = new Map<string, number>();
  const attempt = (candidate: Candidate): Tried | null => tryOut(finding, candidate, before, tryDesign);
  // Halving between what did not do and what did, on the steps of the edit.
  const smallest = (candidate: Candidate, tried: Tried): Tried => {
    if (!candidate.sized) return tried;
    const { amount, step, of } = candidate.sized;
    let [low, high, best] = [failed.get(candidate.group ?? '') ?? 0, amount, tried];
    for (let i = 0; i < MOST_HALVINGS && high - low > step; i++) {
      const middle = Math.round((low + high) / 2 / step) * step;
      const smaller = middle > low && middle < high ? of(middle) : null;
      if (!smaller || !spend()) break;
      const again = attempt(smaller);
      if (again && (again.whole || !best.whole)) [high, best] = [middle, again];
      else low = middle;
    }
    return best;
  };
  for (const candidate of WAYS[finding.rule](finding, design).toSorted(byLeastChange)) {
    if (candidate.group !== null && done.has(candidate.group)) continue;
    if (kept.length >= MOST_WAYS || !spend()) break;
    const tried = attempt(candidate);
    if (!tried) {
      if (candidate.sized && candidate.group !== null) failed.set(candidate.group, candidate.sized.amount);
      continue;
    }
    kept.push(smallest(candidate, tried));
    if (candidate.group !== null) done.add(candidate.group);
  }
  // An edit that leaves nothing to say comes before one that leaves a caution; within each the least change first.
  return [...kept.filter(({ whole }) => whole), ...kept.filter(({ whole }) => !whole)].map(({ way }) => way);
};

/**
 * The same inspection with ways out for its open stops, and for its open cautions of motion: edits that were tried on a
 * copy by `tryDesign`, clear the finding and make no new stop, best first and each as small as it may be. Looks at the
 * first of each only and tries a bounded number of copies. `of`: the stops alone take a fraction of the time.
 */
export const findWaysOut = (
  inspection: Inspection,
  design: Design,
  tryDesign: TryDesign,
  of: 'stops' | 'stops and motion' = 'stops and motion',
): Inspection => {
  const before = stopKeys(inspection);
  const within = (most: number): (() => boolean) => {
    let tries = 0;
    return () => tries++ < most;
  };
  const waysOf = (findings: readonly Finding[], spend: () => boolean) =>
    findings.map((finding) => [finding, waysFor(finding, design, before, spend, tryDesign)] as const);
  const cautions = inspection.findings.filter(
    ({ rule, severity, accepted }) =>
      of === 'stops and motion' && severity === 'caution' && accepted === null && OF_MOTION.has(rule),
  );
  const ways = new Map([
    ...waysOf(openStops(inspection).slice(0, MOST_STOPS), within(MOST_TRIES)),
    ...waysOf(cautions.slice(0, MOST_CAUTIONS), within(MOST_CAUTION_TRIES)),
  ]);
  return {
    ...inspection,
    findings: inspection.findings.map((finding) => {
      const waysOut = ways.get(finding) ?? [];
      return waysOut.length === 0 ? finding : { ...finding, waysOut };
    }),
  };
};
