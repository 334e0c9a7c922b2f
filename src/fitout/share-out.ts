import { ROUNDING_MM, sameLength } from '../base/index.ts';
import type { SizeRule } from '../design/index.ts';

/** One part of a division: its rule and the room that its content needs along the division (used where it hugs). */
export interface PartAsk {
  readonly rule: SizeRule;
  readonly need: number;
}

export interface ShareOut {
  /** One size for each part; never negative, and together the room. */
  readonly sizes: readonly number[];
  /** Set when the rules cannot all hold: what the stated sizes need and what there is. */
  readonly fight: { readonly need: number; readonly have: number } | null;
}

const total = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

/** The size that a rule states, or null for a share and for a part that hugs nothing. */
const statedSize = ({ rule, need }: PartAsk): number | null => {
  if (rule.rule === 'fixed') return rule.mm;
  return rule.rule === 'hug' && need > ROUNDING_MM ? need : null;
};

const weightOf = ({ rule }: PartAsk): number => (rule.rule === 'share' ? rule.weight : 1);

/** A picture for rules that fight: stated sizes in proportion, shares as if the stated sizes left them their part. */
const squeezed = (asks: readonly PartAsk[], room: number): readonly number[] => {
  const average = room / asks.length;
  const weights = asks.map((ask) => statedSize(ask) ?? weightOf(ask) * average);
  return weights.map((weight) => (weight / total(weights)) * room);
};

/** Room given to parts that state no size, by weight. */
const shared = (asks: readonly PartAsk[], rest: number): readonly number[] => {
  const weights = total(asks.map((ask) => (statedSize(ask) === null ? weightOf(ask) : 0)));
  return asks.map((ask) => statedSize(ask) ?? (rest * weightOf(ask)) / weights);
};

/**
 * Sizes of the parts of a division along a room (dividers already taken off). Fixed parts and parts that hug take
 * what they state and shares divide the rest by weight. The rules fight when stated sizes leave no share anything,
 * when they do not fill the room and nothing shares, or when a part hugs nothing; the sizes are then a best effort.
 */
export const shareOut = (asks: readonly PartAsk[], room: number): ShareOut => {
  if (room <= ROUNDING_MM) {
    const need = total(asks.map((ask) => statedSize(ask) ?? 0));
    return { sizes: asks.map(() => Math.max(0, room) / asks.length), fight: { need, have: room } };
  }
  const stated = total(asks.map((ask) => statedSize(ask) ?? 0));
  const fight = { need: stated, have: room };
  if (asks.some((ask) => statedSize(ask) === null)) {
    if (room - stated <= ROUNDING_MM) return { sizes: squeezed(asks, room), fight };
    const hugsNothing = asks.some((ask) => ask.rule.rule === 'hug' && statedSize(ask) === null);
    return { sizes: shared(asks, room - stated), fight: hugsNothing ? fight : null };
  }
  if (stated > room + ROUNDING_MM) return { sizes: squeezed(asks, room), fight };
  const others = asks.slice(0, -1).map((ask) => statedSize(ask) ?? 0);
  const sizes = [...others, Math.max(0, room - total(others))];
  return { sizes, fight: sameLength(stated, room) ? null : fight };
};

/**
 * The least room along a division in which every part gets what it needs: stated sizes, and shares so large that the
 * neediest share is served. `need` of a share is its content's least.
 */
export const leastAlong = (asks: readonly PartAsk[]): number => {
  const stated = total(asks.map((ask) => (ask.rule.rule === 'share' ? 0 : (statedSize(ask) ?? 0))));
  const shares = asks.filter((ask) => ask.rule.rule === 'share');
  const perWeight = Math.max(0, ...shares.map((ask) => ask.need / weightOf(ask)));
  return stated + perWeight * total(shares.map(weightOf));
};
