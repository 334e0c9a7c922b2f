import { gapWithin, shapeBox } from '../../bodies/index.ts';
import type { PlacedZone } from '../../envelope/index.ts';
import { wholePart } from '../../fitout/index.ts';
import { nearBetween } from '../broad-phase.ts';
import type { Job } from '../job.ts';
import { type Limit, limitAt, ruleLimit, type Verdict } from '../verdict.ts';
import { judgeGaps, type Nearness, segmentOf } from './nearness.ts';

const CLEAR_SIGHT: Limit = { value: 0, unit: 'mm', source: 'sight line of the survey', status: 'design' };

/** Zones that keep bodies out, with the gap they ask for. Holes are another rule's business. */
const limitOf = (zone: PlacedZone, job: Job): Limit | null => {
  if (zone.rule === 'nothing-stands') return ruleLimit(job.rules, 'gap-airbag');
  if (zone.rule === 'seat-travel') return limitAt(ruleLimit(job.rules, 'gap-seat'), 0, 'mm');
  if (zone.rule === 'sight-line') return CLEAR_SIGHT;
  return null;
};

/**
 * Every body of the cabinet against the zones where nothing may stand (clear by the airbag gap) and those that a seat
 * sweeps or a person looks through (clear at all: the zone was drawn as far as the seat comes, as wide as the view is).
 */
export const bodyZone = (job: Job): Verdict => {
  const zones = (job.space?.zones ?? []).flatMap((zone) => {
    const limit = limitOf(zone, job);
    return limit ? [{ zone, limit, box: shapeBox(zone.shape) }] : [];
  });
  const inside = job.standing.filter(({ closure }) => closure === null);
  const reach = Math.max(0, ...zones.map(({ limit }) => limit.value)) + job.gapUncertainty;
  const seen: Nearness[] = [];
  let pairs = 0;
  nearBetween(
    inside.map(({ box }) => box),
    zones.map(({ box }) => box),
    reach,
    (a, b) => {
      const [standing, kept] = [inside[a], zones[b]];
      if (!standing || !kept) return;
      pairs++;
      const gap = gapWithin(standing.body.shape, kept.zone.shape, reach);
      if (!gap) return;
      seen.push({
        parts: [standing.subject, kept.zone.id],
        value: gap.distance,
        limit: kept.limit,
        uncertainty: job.gapUncertainty,
        at: segmentOf(gap),
        facts: {
          body: wholePart(standing.body.id),
          bodyName: standing.body.name,
          zone: kept.zone.name,
          zoneRule: kept.zone.rule,
        },
      });
    },
  );
  return judgeGaps('body-zone', 'gap', seen, pairs);
};
