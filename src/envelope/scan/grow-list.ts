/** Numbers of which nobody knows beforehand how many there will be, in one typed array that doubles as it fills. */
export interface GrowList {
  push: (value: number) => void;
  readonly length: () => number;
  readonly floats: () => Float64Array;
  readonly indices: () => Uint32Array;
}

const FIRST_SIZE = 4096;

export const growList = (): GrowList => {
  let held = new Float64Array(FIRST_SIZE);
  let count = 0;
  return {
    push: (value) => {
      if (count === held.length) {
        const wider = new Float64Array(2 * count);
        wider.set(held);
        held = wider;
      }
      held[count++] = value;
    },
    length: () => count,
    floats: () => held.slice(0, count),
    indices: () => Uint32Array.from(held.subarray(0, count)),
  };
};
