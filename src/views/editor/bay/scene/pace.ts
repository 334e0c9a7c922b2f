/** Shares of the full sharpness that a moving picture may fall to, the best first. */
export const SHARPNESS = [1, 0.7, 0.5, 0.4] as const;

/** Frames that take longer than this on the average are seen to stutter; less than that leaves room for more. */
const SLOW_MS = 45;
const QUICK_MS = 19;
/** Far too slow: no use going down step by step. */
const HOPELESS_MS = 150;
/** Frames looked at before sharpness is changed again. */
const SLOW_FRAMES = 4;
const QUICK_FRAMES = 30;
/** Weight of the newest frame: some come in pairs, a long one and a short one. */
const NEWEST = 0.4;

/** How sharp the picture is drawn while it moves, by how long its frames take on this machine. */
export interface Pace {
  /** Hears how long a frame of a moving picture took; gives the share of sharpness for the next ones. */
  readonly moving: (frameMs: number) => number;
  /** What a frame takes on the average, 0 before the first. */
  readonly frameMs: () => number;
}

/** Starts sharp; what it has learnt of the machine holds for the next movement too. */
export const createPace = (): Pace => {
  const last = SHARPNESS.length - 1;
  let level = 0;
  let average = 0;
  let seen = 0;
  const change = (to: number): void => {
    level = to;
    seen = 0;
  };
  return {
    moving: (frameMs) => {
      average = average === 0 ? frameMs : average + (frameMs - average) * NEWEST;
      seen += 1;
      if (average > SLOW_MS && seen >= SLOW_FRAMES && level < last) change(average > HOPELESS_MS ? last : level + 1);
      else if (average < QUICK_MS && seen >= QUICK_FRAMES && level > 0) change(level - 1);
      return SHARPNESS[level] ?? 1;
    },
    frameMs: () => average,
  };
};
