import type { NodeId } from '../design/index.ts';
import { type Axis, axisName } from './axes.ts';
import type { FitProblem } from './parts.ts';

/** A length for people, to a tenth of a millimetre: 210, 17.7. */
const TENTHS = 10;
export const mmWords = (mm: number): string => `${Math.round(mm * TENTHS) / TENTHS} mm`;

export const badJoint = (
  at: NodeId,
  because: readonly string[],
  needMm: number | null = null,
  haveMm: number | null = null,
): FitProblem => ({ code: 'bad-joint', at, axis: null, needMm, haveMm, because });

export const tooSmall = (
  at: NodeId,
  axis: Axis,
  needMm: number,
  haveMm: number,
  because: readonly string[],
): FitProblem => ({ code: 'too-small', at, axis: axisName(axis), needMm, haveMm, because });

export const rulesFight = (
  at: NodeId,
  axis: Axis,
  needMm: number,
  haveMm: number,
  because: readonly string[],
): FitProblem => ({ code: 'rules-fight', at, axis: axisName(axis), needMm, haveMm, because });
