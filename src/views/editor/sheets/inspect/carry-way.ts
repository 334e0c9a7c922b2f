import { distance } from '../../../../base/index.ts';
import type { CarryPath, CarryPose } from '../../../../inspection/index.ts';
import { type CarryStep, carrySteps } from '../../../../says/index.ts';

/** A turn of one radian is played as slowly as this many millimetres. */
const MM_PER_RAD = 600;
/** How fast two people are played to carry, and the least and the most time of one step. */
const MM_PER_MS = 0.35;
const STEP_MS = { least: 700, most: 3500 } as const;

export type WayOf = 'in' | 'out';

/** A way with its steps on a clock. */
export interface TimedWay {
  readonly steps: readonly CarryStep[];
  /** When each step ends. */
  readonly endsMs: readonly number[];
  readonly wholeMs: number;
}

const stepMs = ({ from, to }: CarryStep): number => {
  const turned =
    Math.abs(to.pitchRad - from.pitchRad) + Math.abs(to.rollRad - from.rollRad) + Math.abs(to.yawRad - from.yawRad);
  const ms = (distance(from.shift, to.shift) + turned * MM_PER_RAD) / MM_PER_MS;
  return Math.min(STEP_MS.most, Math.max(STEP_MS.least, ms));
};

/** The way with its steps on a clock, in or out. */
export const timedWay = (path: CarryPath, way: WayOf): TimedWay => {
  const steps = carrySteps(path, way, 'mm');
  const endsMs: number[] = [];
  for (const step of steps) endsMs.push((endsMs.at(-1) ?? 0) + stepMs(step));
  return { steps, endsMs, wholeMs: endsMs.at(-1) ?? 0 };
};

/** The step that is under way at a time; the last one at the end. */
export const stepAt = ({ endsMs }: TimedWay, ms: number): number => {
  const at = endsMs.findIndex((end) => ms < end);
  return at === -1 ? endsMs.length - 1 : at;
};

/** Where what is carried stands at a time of its way. */
export const poseAtTime = (way: TimedWay, ms: number): CarryPose | null => {
  const i = stepAt(way, ms);
  const step = way.steps[i];
  if (!step) return null;
  const [began, ends] = [way.endsMs[i - 1] ?? 0, way.endsMs[i] ?? 0];
  const share = ends > began ? Math.min(1, Math.max(0, (ms - began) / (ends - began))) : 1;
  const mix = (from: number, to: number): number => from + (to - from) * share;
  const { from, to } = step;
  return {
    shift: [mix(from.shift[0], to.shift[0]), mix(from.shift[1], to.shift[1]), mix(from.shift[2], to.shift[2])],
    pitchRad: mix(from.pitchRad, to.pitchRad),
    rollRad: mix(from.rollRad, to.rollRad),
    yawRad: mix(from.yawRad, to.yawRad),
  };
};
