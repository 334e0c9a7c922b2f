import { seededRandom } from '../../../src/base/index.ts';
import type { BenchRow } from '../harness.ts';

/** The row that all others are divided by: pure arithmetic on a thousand doubles, no allocation, nothing of ours. */
export const BASELINE = 'a thousand square roots';

export const rows: readonly BenchRow[] = [
  {
    name: BASELINE,
    make: () => {
      const random = seededRandom(1);
      const numbers = Float64Array.from({ length: 1000 }, () => 1 + random());
      return () => {
        let sum = 0;
        for (const number of numbers) sum += Math.sqrt(number);
        return sum;
      };
    },
  },
];
