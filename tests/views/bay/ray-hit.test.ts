import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { unit, type Vec3 } from '../../../src/base/index.ts';
import { boxShape, capsuleShape } from '../../../src/bodies/index.ts';
import { rayThrough } from '../../../src/views/editor/bay/pick/ray-hit.ts';

const box = boxShape({ min: [0, 0, 0], max: [100, 50, 20] });

describe('rayThrough a box', () => {
  test('enters at the near face and leaves at the far one', () => {
    expect(rayThrough({ origin: [-30, 25, 10], direction: [1, 0, 0] }, box)).toEqual({ enters: 30, leaves: 130 });
  });

  test('misses beside it, and misses what lies behind', () => {
    expect(rayThrough({ origin: [-30, 60, 10], direction: [1, 0, 0] }, box)).toBeNull();
    expect(rayThrough({ origin: [130, 25, 10], direction: [1, 0, 0] }, box)).toBeNull();
  });

  test('from inside it has entered before it began', () => {
    expect(rayThrough({ origin: [40, 25, 10], direction: [1, 0, 0] }, box)).toEqual({ enters: -40, leaves: 60 });
  });

  test('both ends of every span lie on the skin of the box', () => {
    const coordinate = fc.double({ min: -300, max: 300, noNaN: true });
    const point = fc.tuple(coordinate, coordinate, coordinate);
    fc.assert(
      fc.property(point, point, (origin, towards) => {
        const way: Vec3 = [towards[0] - origin[0], towards[1] - origin[1], towards[2] - origin[2]];
        fc.pre(Math.hypot(...way) > 1);
        const direction = unit(way);
        const span = rayThrough({ origin, direction }, box);
        if (!span) return true;
        return [span.enters, span.leaves].every((t) => {
          const p = origin.map((value, i) => value + t * (direction[i] ?? 0));
          const over = Math.max(...p.map((value, i) => Math.max(-value, value - ([100, 50, 20][i] ?? 0))));
          return Math.abs(over) < 1e-6;
        });
      }),
      { seed: 5, numRuns: 300 },
    );
  });
});

describe('rayThrough a bar', () => {
  const bar = capsuleShape([0, 0, 0], [0, 0, 100], 10);

  test('across its middle it is as thick as twice its radius', () => {
    expect(rayThrough({ origin: [-50, 0, 40], direction: [1, 0, 0] }, bar)).toEqual({ enters: 40, leaves: 60 });
  });

  test('along its axis it is as long as its line with both round ends', () => {
    expect(rayThrough({ origin: [0, 0, -50], direction: [0, 0, 1] }, bar)).toEqual({ enters: 40, leaves: 160 });
  });

  test('beside it there is nothing', () => {
    expect(rayThrough({ origin: [-50, 11, 40], direction: [1, 0, 0] }, bar)).toBeNull();
  });
});
