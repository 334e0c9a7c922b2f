import { describe, expect, test } from 'vitest';
import { seededRandom } from '../../../src/base/index.ts';
import type { Piece } from '../../../src/shop/layout/engine/problem.ts';
import { ROOM_BITS, SideRanks } from '../../../src/shop/layout/engine/side-ranks.ts';

const piece = (length: number, width: number, straight: boolean, turned: boolean): Piece => ({
  length,
  width,
  area: length * width,
  straight,
  turned,
  type: 0,
  matched: false,
});

const fits = (rest: number, need: number): boolean => ((rest - need) & ROOM_BITS) === ROOM_BITS;

describe('SideRanks', () => {
  test('says of 200,000 pairs what comparing the sides says', () => {
    const random = seededRandom(5);
    const upTo = (most: number): number => 1 + Math.floor(random() * most);
    const wrong: unknown[] = [];
    for (const most of [10, 997, 2_440_000])
      for (let round = 0; round < 10; round++) {
        const pieces = Array.from({ length: 60 }, () => piece(upTo(most), upTo(most), random() < 0.7, random() < 0.7));
        const ranks = new SideRanks(pieces);
        for (let i = 0; i < 112; i++) {
          // Now and then a rest that is to the unit as long as a piece.
          const [length, width] = [random() < 0.3 ? (pieces[i % 60]?.length ?? 1) : upTo(most * 1.2), upTo(most * 1.2)];
          const code = ranks.codeOfRest(length, width);
          pieces.forEach((one, number) => {
            const lies = one.straight && one.length <= length && one.width <= width;
            const turned = one.turned && one.length !== one.width && one.width <= length && one.length <= width;
            if (fits(code, ranks.straight[number] ?? 0) !== lies) wrong.push([one, length, width]);
            if (fits(code, ranks.turned[number] ?? 0) !== turned) wrong.push([one, length, width, 'turned']);
            const either = ranks.either[number] ?? -1;
            if (one.straight && one.turned && fits(ranks.sortedCode(code), either) !== (lies || turned))
              wrong.push([one, length, width, 'either']);
          });
        }
      }
    expect(wrong).toEqual([]); // 3 × 10 × 112 × 60 = 201,600
  });
});
