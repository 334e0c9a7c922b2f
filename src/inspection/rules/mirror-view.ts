import type { Box, Vec3 } from '../../base/index.ts';
import type { RearView } from '../../design/index.ts';
import type { Job } from '../job.ts';
import { found, NOTHING, ruleLimit, type Verdict } from '../verdict.ts';

/** Rays from the mirror to the rear glass: across and up. */
const ACROSS = 24;
const UP = 12;

/** Whether the straight line between two points passes through a box. */
const passes = ({ min, max }: Box, from: Vec3, to: Vec3): boolean => {
  let [start, end] = [0, 1];
  for (const axis of [0, 1, 2] as const) {
    const way = to[axis] - from[axis];
    if (way === 0) {
      if (from[axis] <= min[axis] || from[axis] >= max[axis]) return false;
      continue;
    }
    const [a, b] = [(min[axis] - from[axis]) / way, (max[axis] - from[axis]) / way];
    start = Math.max(start, Math.min(a, b));
    end = Math.min(end, Math.max(a, b));
  }
  return start < end;
};

/** Points all over the rear glass, each for the same share of it. */
const pointsOn = ({ glassForwardMm, glassLowMm, glassHighMm, glassWidthMm }: RearView): readonly Vec3[] =>
  Array.from({ length: ACROSS * UP }, (_, i): Vec3 => {
    const [across, up] = [((i % ACROSS) + 0.5) / ACROSS, (Math.floor(i / ACROSS) + 0.5) / UP];
    return [glassForwardMm, (across - 0.5) * glassWidthMm, glassLowMm + up * (glassHighMm - glassLowMm)];
  });

/**
 * How much of the rear glass the cabinet and its gear cover as the inside mirror sees it, all movers stowed. A rear camera
 * and outside mirrors are judged by other rules of other people.
 */
export const mirrorView = (job: Job): Verdict => {
  const { rearView } = job.design.vehicle;
  if (rearView === null) return NOTHING;
  const limit = ruleLimit(job.rules, 'mirror-loss-share');
  const solid = job.standing.filter(({ body, closure }) => body.kind !== 'plug-room' && closure === null);
  const points = pointsOn(rearView);
  const hidden = points.flatMap((point) => solid.find(({ box }) => passes(box, rearView.mirror, point)) ?? []);
  const value = hidden.length / points.length;
  if (value <= limit.value) return NOTHING;
  const counts = new Map<string, number>();
  for (const { body } of hidden) {
    const of = body.carcass ?? body.origin;
    counts.set(of, (counts.get(of) ?? 0) + 1);
  }
  const [worst] = [...counts].toSorted((a, b) => b[1] - a[1]);
  return {
    ...NOTHING,
    findings: [found('mirror-view', { severity: 'caution', parts: worst ? [worst[0]] : [], value, limit })],
  };
};
