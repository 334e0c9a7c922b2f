/** Shares of the full sharpness that a moving picture may fall to, the best first. */
export const SHARPNESS = [1, 0.7, 0.5] as const;

/** A frame that takes longer than this is seen to stutter; one that takes less leaves room for more. */
const SLOW_MS = 48;
const QUICK_MS = 20;
/** Frames looked at before sharpness is changed: a single slow one says nothing. */
const SLOW_FRAMES = 4;
const QUICK_FRAMES = 30;

/** How sharp the picture is drawn while it moves, by how long its frames take on this machine. */
export interface Pace {
  /** Hears how long a frame of a moving picture took; gives the share of sharpness for the next ones. */
  readonly moving: (frameMs: number) => number;
}

/** Starts sharp; what it has learnt of the machine holds for the next movement too. */
export const createPace = (): Pace => {
  let level = 0;
  let slow = 0;
  let quick = 0;
  return {
    moving: (frameMs) => {
      slow = frameMs > SLOW_MS ? slow + 1 : 0;
      quick = frameMs < QUICK_MS ? quick + 1 : 0;
      if (slow >= SLOW_FRAMES && level < SHARPNESS.length - 1) {
        level += 1;
        slow = 0;
      } else if (quick >= QUICK_FRAMES && level > 0) {
        level -= 1;
        quick = 0;
      }
      return SHARPNESS[level] ?? 1;
    },
  };
};
