import { describe, expect, it } from 'vitest';
import { adjust } from '../../../src/envelope/adjust/adjust.ts';
import type { Network, NetworkMark } from '../../../src/envelope/adjust/network.ts';
import reference from '../../reference/tape-networks.json' with { type: 'json' };

/** A and B lie on the x axis, as the reference fixes them; the others start on the side of the cargo space. */
const START: Readonly<Record<string, readonly [number, number]>> = {
  A: [0, 0],
  B: [1200, 0],
  C: [1200, 1000],
  D: [0, 1000],
  E: [0, 500],
  F: [1200, 500],
};

const networkOf = (readings: (typeof reference.cases)[number]['readings']): Network => ({
  marks: Object.keys(START)
    .filter((id) => readings.some((reading) => reading.from === id || reading.to === id))
    .map((id): NetworkMark => {
      const [x, y] = START[id] ?? [0, 0];
      return { id, start: [x, y, 0], fixed: [id === 'A', id === 'A' || id === 'B', true] };
    }),
  readings: readings.map(({ id, from, to, mm, sigma }) => ({ kind: 'distance', id, from, to, value: mm, sigma })),
});

describe('the reference tape networks', () => {
  for (const { name, readings, expect: wanted } of reference.cases)
    it(name, () => {
      const result = adjust(networkOf(readings));
      expect(result.converged).toBe(true);
      expect(result.redundancy).toBe(wanted.redundancy);
      expect(Math.abs(result.weightedSquareSum - wanted.weightedSquareSum)).toBeLessThan(reference.tolerance.mm);
      for (const [id, point] of Object.entries(wanted.points)) {
        expect(Math.abs((result.points.get(id)?.[0] ?? Number.NaN) - (point[0] ?? 0)), id).toBeLessThan(
          reference.tolerance.mm,
        );
        expect(Math.abs((result.points.get(id)?.[1] ?? Number.NaN) - (point[1] ?? 0)), id).toBeLessThan(
          reference.tolerance.mm,
        );
      }
      wanted.readings.forEach((row, i) => {
        const got = result.readings[i];
        expect(got?.id).toBe(row.id);
        expect(Math.abs((got?.adjusted ?? Number.NaN) - row.adjusted), row.id).toBeLessThan(reference.tolerance.mm);
        expect(Math.abs((got?.redundancy ?? Number.NaN) - row.redundancy), row.id).toBeLessThan(reference.tolerance.w);
        expect(Math.abs((got?.w ?? Number.NaN) - row.w), row.id).toBeLessThan(reference.tolerance.w);
      });
    });
});
