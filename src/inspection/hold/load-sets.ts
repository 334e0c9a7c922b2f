import type { Vec3 } from '../../base/index.ts';
import type { HouseRules } from '../../catalog/index.ts';
import type { HoldSet } from '../../design/index.ts';

/** Ways in which what is aboard is thrown: forward when the vehicle brakes or strikes something. */
export const WAYS_THROWN = ['forward', 'rear', 'left', 'right', 'up'] as const;
export type WayThrown = (typeof WAYS_THROWN)[number];

/** Vehicle axes: x forward, y left, z up. */
export const THROWN: Readonly<Record<WayThrown, Vec3>> = {
  forward: [1, 0, 0],
  rear: [-1, 0, 0],
  left: [0, 1, 0],
  right: [0, -1, 0],
  up: [0, 0, 1],
};

const RULES_OF: Readonly<Record<HoldSet, Readonly<Record<WayThrown, string | null>>>> = {
  road: {
    forward: 'hold-road-forward',
    rear: 'hold-road-rear',
    left: 'hold-road-side',
    right: 'hold-road-side',
    up: null,
  },
  'crew-area': {
    forward: 'hold-crew-long',
    rear: 'hold-crew-long',
    left: 'hold-crew-other',
    right: 'hold-crew-other',
    up: 'hold-crew-other',
  },
  ambulance: {
    forward: 'hold-ambulance',
    rear: 'hold-ambulance',
    left: 'hold-ambulance',
    right: 'hold-ambulance',
    up: 'hold-ambulance',
  },
  own: {
    forward: 'hold-own-forward',
    rear: 'hold-own-rear',
    left: 'hold-own-side',
    right: 'hold-own-side',
    up: 'hold-own-up',
  },
};

/** Acceleration in multiples of g and the house rule that it comes from. */
export interface Thrown {
  readonly way: WayThrown;
  readonly g: number;
  readonly rule: string;
}

/** For each way the greatest acceleration of the sets that the design is held to; ways that none speaks of are left out. */
export const thrownBy = (sets: readonly HoldSet[], rules: HouseRules): readonly Thrown[] =>
  WAYS_THROWN.flatMap((way) => {
    const asked = sets.flatMap((set) => {
      const rule = RULES_OF[set][way];
      return rule === null ? [] : [{ way, g: rules.value(rule), rule }];
    });
    const [most] = asked.toSorted((a, b) => b.g - a.g);
    return most && most.g > 0 ? [most] : [];
  });

/** The way of the vehicle that a direction points, by its longest component. */
export const wayOf = ([x, y, z]: Vec3): WayThrown => {
  if (Math.abs(z) >= Math.abs(x) && Math.abs(z) >= Math.abs(y)) return 'up';
  if (Math.abs(x) >= Math.abs(y)) return x > 0 ? 'forward' : 'rear';
  return y > 0 ? 'left' : 'right';
};
