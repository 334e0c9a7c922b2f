import type { Finding, Measured } from '../finding.ts';
import type { Job } from '../job.ts';
import { bayHeats, powerPlan } from '../power/index.ts';
import { found, type Limit, limitAt, measured, NOTHING, ruleLimit, type Verdict } from '../verdict.ts';

/** Hours parked on standby until the usable share of the battery is gone. */
export const batteryHours = (job: Job): Verdict => {
  const limit = ruleLimit(job.rules, 'parked-hours');
  const { parkedHours, standbyA } = powerPlan(job);
  if (parkedHours === null) return NOTHING;
  const what = { parts: [], value: parkedHours, limit, margin: 'power' } as const;
  const taken = [measured('battery-hours', { ...what, sense: 'at least' })];
  if (parkedHours >= limit.value) return { findings: [], measured: taken, pairs: 0 };
  const facts = { standbyA, batteryAh: job.design.vehicle.power.batteryAh ?? 0 };
  return { findings: [found('battery-hours', { ...what, severity: 'caution', facts })], measured: taken, pairs: 0 };
};

/** Everything running, radios sending for their share, against what the alternator has to spare at idle. */
export const alternator = (job: Job): Verdict => {
  const { meanA, mostA, spareA } = powerPlan(job);
  if (spareA === null || meanA === 0) return NOTHING;
  const limit: Limit = { value: spareA, unit: 'A', source: 'figures of the vehicle', status: 'design' };
  const what = { parts: [], value: meanA, limit, margin: 'power' } as const;
  const taken = [measured('alternator', { ...what, sense: 'at most' })];
  if (meanA <= spareA) return { findings: [], measured: taken, pairs: 0 };
  return {
    findings: [found('alternator', { ...what, severity: 'caution', facts: { mostA } })],
    measured: taken,
    pairs: 0,
  };
};

/** Every device finds a wire that carries its fuse, and that loses no more voltage than it can bear. */
export const wireAndFuse = (job: Job): Verdict => {
  const findings: Finding[] = [];
  const taken: Measured[] = [];
  for (const { device, name, mostA, wire, dropShare, dropLimit } of powerPlan(job).circuits) {
    if (wire === null) {
      const limit = limitAt(ruleLimit(job.rules, 'wire-amps-10'), job.rules.value('wire-amps-10'), 'A');
      findings.push(found('wire-fuse', { severity: 'caution', parts: [device], value: mostA, limit, facts: { name } }));
      continue;
    }
    if (dropShare === null) continue;
    const rule = dropLimit === job.rules.value('wire-drop-share') ? 'wire-drop-share' : 'wire-drop-other-share';
    const what = { parts: [device], value: dropShare, limit: ruleLimit(job.rules, rule), margin: 'power' } as const;
    taken.push(measured('wire-drop', { ...what, sense: 'at most' }));
    if (dropShare > dropLimit)
      findings.push(found('wire-drop', { ...what, severity: 'caution', facts: { name, gauge: wire.gauge, mostA } }));
  }
  return { findings, measured: taken, pairs: 0 };
};

/** Closed bays of devices stay cool enough, or have vents, under a fan only if that moves enough air. */
export const bayHeat = (job: Job): Verdict => {
  const limit = ruleLimit(job.rules, 'heat-rise');
  const findings = bayHeats(job).flatMap(
    ({ opening, watts, riseK, fanM3h, ventMm2, freeMm2, movedM3h }): readonly Finding[] =>
      riseK <= limit.value
        ? []
        : [
            found('bay-heat', {
              severity: 'caution',
              parts: [opening],
              value: riseK,
              limit,
              facts: { watts, fanM3h, ventMm2, freeMm2, movedM3h },
            }),
          ],
  );
  return { ...NOTHING, findings };
};

/** Figures of the vehicle that the checks of power wait for, one note for all. */
export const powerUnknown = (job: Job): Verdict => {
  const { circuits } = powerPlan(job);
  const { batteryAh, alternatorSpareA, feedLoopM } = job.design.vehicle.power;
  const missing = [
    ...(batteryAh === null ? ['battery'] : []),
    ...(alternatorSpareA === null ? ['alternator'] : []),
    ...(feedLoopM === null ? ['feed'] : []),
  ];
  if (circuits.length === 0 || missing.length === 0) return NOTHING;
  const limit: Limit = { value: 3, unit: 'count', source: 'figures of the vehicle', status: 'design' };
  const value = limit.value - missing.length;
  const what = { severity: 'note', parts: ['power'], value, limit, facts: { missing: missing.join(' ') } } as const;
  return { ...NOTHING, findings: [found('power-unknown', what)] };
};
