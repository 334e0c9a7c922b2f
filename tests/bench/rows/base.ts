import { after, parseLength, polygonHolds, seededRandom, turnAbout, type Vec2 } from '../../../src/base/index.ts';
import type { BenchRow } from '../harness.ts';

export const rows: readonly BenchRow[] = [
  {
    name: 'base: read a length in feet, inches and a fraction',
    make: () => () => parseLength('1\' 6 1/2"', 'in'),
  },
  {
    name: 'base: one pose after another',
    make: () => {
      const [a, b] = [turnAbout([1, 2, 3], [1, 1, 0], 0.3), turnAbout([5, 0, 1], [0, 1, 2], 1.1)];
      return () => after(a, b);
    },
  },
  {
    name: 'base: a point in a polygon of 40 corners',
    make: () => {
      const random = seededRandom(2);
      const corners = Array.from({ length: 40 }, (_, i): Vec2 => {
        const turn = (i / 40) * 2 * Math.PI;
        const out = 500 + 100 * random();
        return [out * Math.cos(turn), out * Math.sin(turn)];
      });
      return () => polygonHolds(corners, [490, 20]);
    },
  },
];
