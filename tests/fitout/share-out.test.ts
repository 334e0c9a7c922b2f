import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastAlong, type PartAsk, shareOut } from '../../src/fitout/share-out.ts';

const fixed = (mm: number): PartAsk => ({ rule: { rule: 'fixed', mm }, need: 0 });
const share = (weight: number, need = 0): PartAsk => ({ rule: { rule: 'share', weight }, need });
const hug = (need: number): PartAsk => ({ rule: { rule: 'hug' }, need });

describe('sharing out a room', () => {
  it('gives fixed parts and hugging parts what they state, and shares the rest by weight', () => {
    // 1000 − 100 − 250 = 650 over weights 1 + 3.
    expect(shareOut([fixed(100), share(1), hug(250), share(3)], 1000)).toEqual({
      sizes: [100, 162.5, 250, 487.5],
      fight: null,
    });
  });

  it('takes parts that fill the room exactly', () => {
    expect(shareOut([fixed(100), hug(250)], 350).fight).toBeNull();
    expect(shareOut([fixed(100), fixed(250)], 350 + 5e-7).fight).toBeNull();
  });

  it('gives the last part what is left over, and says that the rules fight', () => {
    expect(shareOut([fixed(100), fixed(250)], 400)).toEqual({ sizes: [100, 300], fight: { need: 350, have: 400 } });
  });

  it('shows rules that need too much in proportion', () => {
    // 190 + 210 in 380: each 380/400 of what it states.
    const { sizes, fight } = shareOut([fixed(190), hug(210)], 380);
    expect(sizes[0]).toBeCloseTo(180.5, 9);
    expect(sizes[1]).toBeCloseTo(199.5, 9);
    expect(fight).toEqual({ need: 400, have: 380 });
  });

  it('shows a share even where stated sizes leave it nothing', () => {
    // The share counts as its part of an even split, 300/3 = 100: weights 200, 200, 100 of 500 in 300.
    expect(shareOut([fixed(200), fixed(200), share(1)], 300)).toEqual({
      sizes: [120, 120, 60],
      fight: { need: 400, have: 300 },
    });
  });

  it('names a part that hugs nothing, and shows it as a share', () => {
    expect(shareOut([fixed(100), hug(0)], 300)).toEqual({ sizes: [100, 200], fight: { need: 100, have: 300 } });
  });

  it('always fills the room with sizes that are not negative', () => {
    const ask = fc.oneof(
      fc.double({ min: 0.1, max: 500, noNaN: true }).map(fixed),
      fc.double({ min: 0.01, max: 50, noNaN: true }).map((weight) => share(weight)),
      fc.double({ min: 0, max: 500, noNaN: true }).map(hug),
    );
    fc.assert(
      fc.property(
        fc.array(ask, { minLength: 2, maxLength: 40 }),
        fc.double({ min: -100, max: 3000, noNaN: true }),
        (asks, room) => {
          const { sizes, fight } = shareOut(asks, room);
          expect(sizes.every((size) => size >= 0)).toBe(true);
          const sum = sizes.reduce((total, size) => total + size, 0);
          expect(Math.abs(sum - Math.max(0, room))).toBeLessThan(1e-6);
          if (fight) return;
          asks.forEach(({ rule, need }, i) => {
            if (rule.rule === 'fixed') expect(sizes[i]).toBeCloseTo(rule.mm, 5);
            if (rule.rule === 'hug') expect(sizes[i]).toBeCloseTo(need, 5);
          });
        },
      ),
      { seed: 7, numRuns: 500 },
    );
  });

  it('knows the least room in which every share gets what it needs', () => {
    // Stated 100 + 250; the neediest share needs 60 for weight 1, so 4 weights need 240.
    expect(leastAlong([fixed(100), share(1, 60), hug(250), share(3, 90)])).toBe(590);
    const asks = [fixed(100), share(1, 60), hug(250), share(3, 90)];
    expect(shareOut(asks, 590).sizes).toEqual([100, 60, 250, 180]);
  });
});
