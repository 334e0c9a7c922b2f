/** A repeatable source of numbers in [0, 1). The same seed gives the same run on every machine. */
export type Random = () => number;

/** Mulberry32 (public domain): 32 bits of state, period 2³², good enough for search and for test data. */
export const seededRandom = (seed: number): Random => {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
};
