import fc from 'fast-check';
import { expect, test } from 'vitest';
import { spreadLabels } from '../../../src/views/editor/bay/overlay/spread.ts';

const place = fc.record({
  x: fc.integer({ min: 0, max: 300 }),
  // Fractions of a pixel: rounding once left two labels meeting for ever.
  y: fc.double({ min: 0, max: 300, noNaN: true }),
  width: fc.integer({ min: 10, max: 120 }),
  height: fc.constant(16),
});

test('no label covers another, none moves sideways, none moves down', () => {
  fc.assert(
    fc.property(fc.array(place, { maxLength: 14 }), (wanted) => {
      const spread = spreadLabels(wanted);
      const clear = spread.every((a, i) =>
        spread.every(
          (b, j) =>
            i === j || a.x >= b.x + b.width || b.x >= a.x + a.width || a.y >= b.y + b.height || b.y >= a.y + a.height,
        ),
      );
      return clear && spread.every((a, i) => a.x === wanted[i]?.x && a.y <= (wanted[i]?.y ?? 0));
    }),
    { seed: 4, numRuns: 200 },
  );
});

test('labels that are apart stay where they are', () => {
  const apart = [
    { x: 0, y: 0, width: 50, height: 16 },
    { x: 0, y: 100, width: 50, height: 16 },
  ];
  expect(spreadLabels(apart)).toEqual(apart);
});
