import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type SlideGearInput, slideGear } from '../../../src/views/editor/sheets/cabinet/inside/slide-gear.ts';

const input = (change: Partial<SlideGearInput>): SlideGearInput => ({
  wanted: [100, 100],
  size: [80, 60],
  room: [400, 500],
  others: [],
  gap: 5,
  reach: 8,
  grid: 1,
  ...change,
});

describe('slideGear', () => {
  test('comes to rest a gap off the walls', () => {
    expect(slideGear(input({ wanted: [2, 2] }))).toEqual([5, 5]);
    // 400 − 80 − 5 and 500 − 60 − 5
    expect(slideGear(input({ wanted: [318, 432] }))).toEqual([315, 435]);
  });

  test('comes to rest against its neighbour, and in line with it', () => {
    const others = [{ across: 200, deep: 40, width: 100, depth: 60 }];
    // to its left: 200 − 80 − 5; in line with its front at 40
    expect(slideGear(input({ wanted: [112, 43], others }))).toEqual([115, 40]);
  });

  test('comes to rest in the middle', () => {
    // (400 − 80) / 2 and (500 − 60) / 2
    expect(slideGear(input({ wanted: [157, 223] }))).toEqual([160, 220]);
  });

  test('without reach it goes by the grid', () => {
    expect(slideGear(input({ wanted: [157.3, 223.4], reach: 0 }))).toEqual([157, 223]);
  });

  test('never leaves its room', () => {
    const place = fc.double({ min: -900, max: 900, noNaN: true });
    fc.assert(
      fc.property(place, place, (x, y) => {
        const [across, deep] = slideGear(input({ wanted: [x, y] }));
        return across >= 0 && across <= 320 && deep >= 0 && deep <= 440;
      }),
      { seed: 9, numRuns: 200 },
    );
  });
});
