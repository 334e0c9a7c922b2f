import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { polygonHolds } from '../../../src/base/index.ts';
import { spreadApart, strokesOf } from '../../../src/shop/drawing/dimensions.ts';
import type { Dimension, Text } from '../../../src/shop/drawing/drawing.ts';
import { hatching } from '../../../src/shop/drawing/hatch.ts';
import { fitted, textWidth } from '../../../src/shop/drawing/text-width.ts';

describe('spreadApart', () => {
  it('leaves what has room where it is', () => {
    expect(spreadApart([0, 10, 25], 3)).toEqual([0, 10, 25]);
  });

  it('moves two that are too close by the same amount', () => {
    // 10 and 11 with room 3: their middle 10.5 stays, so 9 and 12.
    expect(spreadApart([10, 11], 3)).toEqual([9, 12]);
  });

  it('keeps the order, the room and the middle, whatever it is given', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 50, noNaN: true }), { minLength: 1, maxLength: 12 }), (values) => {
        const places = [...values].sort((a, b) => a - b);
        const spread = spreadApart(places, 3);
        const sum = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0);
        expect(sum(spread)).toBeCloseTo(sum(places), 6);
        for (let i = 1; i < spread.length; i++)
          expect((spread[i] ?? 0) - (spread[i - 1] ?? 0)).toBeGreaterThanOrEqual(3 - 1e-9);
      }),
      { seed: 27_182, numRuns: 200 },
    );
  });
});

describe('dimensions', () => {
  const dimension: Dimension = {
    kind: 'dimension',
    layer: 'dimension',
    axis: 'across',
    from: [10, 50],
    to: [70, 50],
    lineAt: 40,
    label: '300',
    textHeight: 2.5,
  };
  const textIn = (shape: Dimension): Text => {
    const found = strokesOf([shape]).find((stroke): stroke is Text => stroke.kind === 'text');
    if (!found) throw new Error('no text');
    return found;
  };

  it('write the figure over the middle of the line', () => {
    expect(textIn(dimension).at[0]).toBe(40);
    expect(textIn({ ...dimension, from: dimension.to, to: dimension.from }).at[0]).toBe(40);
  });

  it('write it beyond the end where the line is shorter than the figure', () => {
    expect(textIn({ ...dimension, to: [12, 50] }).at[0]).toBeGreaterThan(12 + textWidth('300', 2.5) / 2);
  });

  it('turn it to be read from the right on an upright line', () => {
    const upright = textIn({ ...dimension, axis: 'up', from: [50, 10], to: [50, 70] });
    expect(upright.turnRad).toBe(Math.PI / 2);
    expect(upright.at).toEqual([39.2, 40]);
  });
});

describe('hatching', () => {
  it('stays inside the section', () => {
    const ring = [
      [0, 0],
      [40, 0],
      [40, 18],
      [26, 18],
      [26, 12],
      [8, 12],
      [8, 18],
      [0, 18],
    ] as const;
    const lines = hatching(ring, 2);
    expect(lines.length).toBeGreaterThan(20);
    for (const stroke of lines) {
      if (stroke.kind !== 'line') throw new Error(stroke.kind);
      for (const share of [0.02, 0.25, 0.5, 0.75, 0.98]) {
        const x = stroke.from[0] + (stroke.to[0] - stroke.from[0]) * share;
        const y = stroke.from[1] + (stroke.to[1] - stroke.from[1]) * share;
        expect(polygonHolds(ring, [x, y])).toBe(true);
      }
    }
  });
});

describe('fitted', () => {
  it('shortens what is too wide and leaves what fits', () => {
    expect(fitted('side', 2, 50)).toBe('side');
    const short = fitted('a very long name of a part that nobody would give', 2, 20);
    expect(short.endsWith('…')).toBe(true);
    expect(textWidth(short, 2)).toBeLessThanOrEqual(20);
  });
});
