import { ROUNDING_MM } from '../base/index.ts';
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
const MOST_HALVINGS = 8;

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

/** Keys of the stops, and of all findings, of the design as it is. */
interface Before {
  readonly stops: ReadonlySet<string>;
  readonly all: ReadonlySet<string>;
}

interface Tried {
  readonly way: WayOut;
  /** True when nothing is left to say about the same parts, not even a caution. */
  readonly whole: boolean;
}

/**
 * The value that the same check has after the edit: of a mover that ran into something how far it goes now; the limit
 * where nothing is measured there any more.
 */
const valueAfter = (finding: Finding, after: Inspection): Pick<WayOut, 'valueAfter' | 'keepsLimit'> => {
  const { rule, parts, unit, facts } = finding;
  const key = keyOf(finding);
  const same = (own: Pick<Finding, 'rule' | 'parts'>): boolean => findingKey(own.rule, own.parts) === key;
  const left = after.findings.find(same);
  // A mover that is free of what it met is measured for itself, against whatever it comes nearest to.
  const free = after.measured.find((own) => own.rule === rule && own.parts.join() === parts[0]);
  if (facts.what === 'meets' && left?.facts.what !== 'meets' && free?.travel !== undefined)
    return { valueAfter: free.travel, keepsLimit: false };
  const now = left ?? after.measured.find(same) ?? (facts.what === 'close' ? free : undefined);
  return now?.unit === unit
    ? { valueAfter: now.value, keepsLimit: false }
    : { valueAfter: finding.limit, keepsLimit: true };
};

/** The edit tried on a copy: null unless the finding is cleared by a severity at least and no stop is new. */
const tryOut = (
  finding: Finding,
  candidate: Candidate,
  { stops: before, all: known }: Before,
  tryDesign: TryDesign,
): Tried | null => {
  const after = tryDesign(candidate.design, finding.rule === 'carry-in');
  const stops = stopKeys(after);
  const key = keyOf(finding);
  const left = after.findings.find((own) => keyOf(own) === key)?.severity ?? null;
  // What is free of one panel and in the way of the next one is not cleared: the same check of the same part, come anew.
  const other = after.findings.some(
    (own) =>
      own.rule === finding.rule &&
      own.parts[0] === finding.parts[0] &&
      own.severity !== 'note' &&
      !known.has(keyOf(own)),
  );
  const isCleared = finding.severity === 'stop' ? left !== 'stop' : (left === null || left === 'note') && !other;
  if (!isCleared || [...stops].some((stop) => !before.has(stop))) return null;
  const { kind, facts, design } = candidate;
  return {
    way: { kind, facts, design, ...valueAfter(finding, after) },
    whole: !other && !after.findings.some((own) => keyOf(own) === key),
  };
};

const waysFor = (
  finding: Finding,
  design: Design,
  before: Before,
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
    // What leaves a caution at least keeps the limit by its own amount: a smaller one would not.
    if (!candidate.sized || !tried.whole) return tried;
    const { amount, step, of } = candidate.sized;
    const fell = failed.get(candidate.group ?? '') ?? 0;
    let [low, high, best] = [fell < amount ? fell : 0, amount, tried];
    for (let i = 0; i < MOST_HALVINGS && high - low > step + ROUNDING_MM; i++) {
      // Most amounts are what lacks and no more, so a step less is asked first.
      const middle = i === 0 ? high - step : Math.round((low + high) / 2 / step) * step;
      const smaller = middle > low && middle < high ? of(middle) : null;
      if (!smaller || !spend()) break;
      const again = attempt(smaller);
      if (again?.whole) [high, best] = [middle, again];
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
  const before: Before = { stops: stopKeys(inspection), all: new Set(inspection.findings.map(keyOf)) };
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
