import type { Finding, LoadingCaseResult, Measured } from '../finding.ts';
import type { Job } from '../job.ts';
import { SIGMAS_AT_95 } from '../loads/index.ts';
import { found, measured, NOTHING, ruleLimit, type Verdict } from '../verdict.ts';

interface CaseValue {
  readonly result: LoadingCaseResult;
  readonly value: number;
}

const most = (values: readonly CaseValue[]): CaseValue | null =>
  values.reduce<CaseValue | null>((worst, own) => (worst === null || own.value > worst.value ? own : worst), null);

const resultsOf = (job: Job): readonly LoadingCaseResult[] =>
  job.cases.flatMap(({ result }) => (result === null ? [] : [result]));

/**
 * Difference of the left and the right wheels over the whole weight, |2 · left share − 1|, in every loading case; the
 * worst speaks. Over the shop's limit: caution; over the screening value: stop.
 */
export const sideToSide = (job: Job): Verdict => {
  const values = resultsOf(job).flatMap((result) =>
    result.leftShare === null ? [] : [{ result, value: Math.abs(2 * result.leftShare - 1) }],
  );
  const worst = most(values);
  if (!worst) return NOTHING;
  const [aim, last] = [ruleLimit(job.rules, 'side-imbalance-share'), ruleLimit(job.rules, 'side-imbalance-stop-share')];
  const taken = values.map(
    ({ result, value }): Measured =>
      measured('side-to-side', { margin: 'side', parts: [result.id], value, limit: aim, sense: 'at most' }),
  );
  const findings: Finding[] = [];
  if (worst.value > aim.value || worst.value > last.value) {
    const stop = worst.value > last.value;
    const facts = {
      case: worst.result.id,
      heavy: (worst.result.leftShare ?? 0) > 0.5 ? 'left' : 'right',
      weighed: job.design.vehicle.slip?.leftKg === null ? 'no' : 'yes',
    };
    const { value } = worst;
    const severity = stop ? 'stop' : 'caution';
    findings.push(
      found('side-to-side', {
        severity,
        parts: [worst.result.id],
        value,
        limit: stop ? last : aim,
        margin: 'side',
        facts,
      }),
    );
  }
  return { findings, measured: taken, pairs: 0 };
};

/** Load that the fit-out takes off the front axle over its load as received: steering and braking live on it. */
export const frontUnload = (job: Job): Verdict => {
  const results = resultsOf(job);
  const received = results.find(({ id }) => id === 'received');
  if (!received || received.frontKg <= 0) return NOTHING;
  const limit = ruleLimit(job.rules, 'front-unload-share');
  const worst = most(results.map((result) => ({ result, value: 1 - result.frontKg / received.frontKg })));
  if (!worst || worst.value <= limit.value) return NOTHING;
  const { result, value } = worst;
  const facts = { case: result.id, receivedKg: received.frontKg, frontKg: result.frontKg };
  return { ...NOTHING, findings: [found('front-unload', { severity: 'caution', parts: [], value, limit, facts })] };
};

/** Share of the whole weight on the front axle, at least the shop's limit in every loading case. */
export const frontShare = (job: Job): Verdict => {
  const limit = ruleLimit(job.rules, 'front-share-min');
  const lightest = most(resultsOf(job).map((result) => ({ result, value: -result.frontKg / result.totalKg })));
  if (!lightest || -lightest.value >= limit.value) return NOTHING;
  const facts = { case: lightest.result.id, frontKg: lightest.result.frontKg, totalKg: lightest.result.totalKg };
  const value = -lightest.value;
  return { ...NOTHING, findings: [found('front-share', { severity: 'caution', parts: [], value, limit, facts })] };
};

const leastStable = (job: Job): CaseValue | null => {
  const worst = most(
    resultsOf(job).flatMap((result) => (result.ssfWorstSide === null ? [] : [{ result, value: -result.ssfWorstSide }])),
  );
  return worst && { result: worst.result, value: -worst.value };
};

/** The static stability factor on the side the load leans to, in the worst loading case. A comparison, not a chance. */
export const stability = (job: Job): Verdict => {
  const limit = ruleLimit(job.rules, 'ssf-min');
  const worst = leastStable(job);
  if (!worst || worst.value >= limit.value) return NOTHING;
  const { result, value } = worst;
  const uncertainty = SIGMAS_AT_95 * (result.ssfSigma ?? 0);
  const facts = { case: result.id, cgHeightMm: result.cgHeightMm ?? 0 };
  const what = { severity: 'caution', parts: [], value, limit, uncertainty, facts } as const;
  return { ...NOTHING, findings: [found('stability', what)] };
};

/** How much of the static stability factor as received the worst loading case costs. */
export const stabilityLoss = (job: Job): Verdict => {
  const limit = ruleLimit(job.rules, 'ssf-drop');
  const received = resultsOf(job).find(({ id }) => id === 'received')?.ssfWorstSide ?? null;
  const worst = leastStable(job);
  if (received === null || !worst || received - worst.value <= limit.value) return NOTHING;
  const facts = { case: worst.result.id, before: received, after: worst.value };
  const what = { severity: 'caution', parts: [], value: received - worst.value, limit, facts } as const;
  return { ...NOTHING, findings: [found('stability-loss', what)] };
};
