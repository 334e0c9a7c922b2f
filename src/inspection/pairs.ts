import { ROUNDING_MM } from '../base/index.ts';
import { type Gap, gapWithin } from '../bodies/index.ts';
import { nearPairs } from './broad-phase.ts';
import type { CabinetBody, StandingBody } from './standing.ts';

/** How two bodies stand to each other: built as one piece, in one carcass but moving apart, or in different ones. */
export type Relation = 'one-piece' | 'same-carcass' | 'two-carcasses';

/** Two bodies of the cabinet that overlap, touch or come close. */
export interface BodyPair {
  readonly a: StandingBody;
  readonly b: StandingBody;
  readonly gap: Gap;
  readonly relation: Relation;
}

export const relationOf = (a: CabinetBody, b: CabinetBody): Relation => {
  if (a.carcass !== b.carcass) return 'two-carcasses';
  return a.mover === b.mover ? 'one-piece' : 'same-carcass';
};

const isJoined = (body: CabinetBody): boolean => body.kind === 'panel' || body.kind === 'hardware';

/**
 * True where an overlap says nothing: parts of one assembly that are let into each other (panels in their dados, screws
 * in panels), a device with its own plug room or with the plate of its own node, and air with air.
 */
const meantToMeet = (a: CabinetBody, b: CabinetBody): boolean => {
  if (a.kind === 'plug-room' && b.kind === 'plug-room') return true;
  if (a.origin === b.origin && a.kind !== 'gear' && b.kind !== 'gear') return true;
  return relationOf(a, b) === 'one-piece' && isJoined(a) && isJoined(b);
};

/** Every pair of cabinet bodies that overlap or stand within `reach` of each other and are not meant to meet. */
export const closePairs = (standing: readonly StandingBody[], reach: number): readonly BodyPair[] => {
  const pairs: BodyPair[] = [];
  const boxes = standing.map(({ box }) => box);
  nearPairs(boxes, reach, (i, j) => {
    const [a, b] = [standing[i], standing[j]];
    if (!a || !b || meantToMeet(a.body, b.body)) return;
    const gap = gapWithin(a.body.shape, b.body.shape, reach);
    if (gap) pairs.push({ a, b, gap, relation: relationOf(a.body, b.body) });
  });
  return pairs;
};

export const overlaps = (pair: BodyPair): boolean => pair.gap.distance < -ROUNDING_MM;
