import { ROUNDING_MM } from '../../../base/index.ts';
import type { Rectangle } from '../layout.ts';

/** Something a layout does that it may not do. `sheet` is its number from 0, or -1 for the layout as a whole. */
export interface LayoutFault {
  readonly code: LayoutFaultCode;
  readonly sheet: number;
  readonly about: string;
}

export type LayoutFaultCode =
  | 'count'
  | 'unknown-part'
  | 'wrong-size'
  | 'against-grain'
  | 'wrong-material'
  | 'outside'
  | 'too-close'
  | 'not-guillotine'
  | 'too-many-stages'
  | 'tree'
  | 'rip-limit'
  | 'first-cut'
  | 'longest-cut'
  | 'strip-too-narrow'
  | 'cut-through-part'
  | 'stock'
  | 'matched'
  | 'repeats'
  | 'totals'
  | 'bound';

/** Sums over a sheet of a few metres carry this many roundings at most. */
export const NEAR = 4 * ROUNDING_MM;

/** One thousandth of a millimetre and its rounding: what the engine's whole numbers may add to a gap. */
export const same = (a: number, b: number, within: number): boolean => Math.abs(a - b) <= within;

export const rightOf = ({ x, length }: Rectangle): number => x + length;
export const topOf = ({ y, width }: Rectangle): number => y + width;

/** True when `inner` lies in `outer`; touching its edge is inside. */
export const liesWithin = (inner: Rectangle, outer: Rectangle): boolean =>
  inner.x >= outer.x - NEAR &&
  inner.y >= outer.y - NEAR &&
  rightOf(inner) <= rightOf(outer) + NEAR &&
  topOf(inner) <= topOf(outer) + NEAR;
