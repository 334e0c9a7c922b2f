import { describe, expect, it } from 'vitest';
import { carcassLetter, markParts } from '../../src/shop/marks.ts';
import { fitOutOf, node, opening, panel, twoColumns } from './fixture.ts';

const marksOf = (fitout: Parameters<typeof markParts>[0]): Record<string, string> =>
  Object.fromEntries(markParts(fitout).markOf);

describe('marks', () => {
  it('letters carcasses without I and O, and goes on with two letters', () => {
    // 24 letters: the ninth is J, the 24th Z, the 25th AA, the 48th AZ, the 49th BA.
    expect([0, 8, 13, 23, 24, 47, 48].map(carcassLetter)).toEqual(['A', 'J', 'P', 'Z', 'AA', 'AZ', 'BA']);
  });

  it('numbers sides, top, bottom, back, divider, shelf in that order', () => {
    expect(marksOf(twoColumns())).toEqual({
      'side-left': 'A1',
      'side-right': 'A2',
      // Top and bottom are cut alike: one mark.
      top: 'A3',
      bottom: 'A3',
      back: 'A4',
      divider: 'A5',
      shelf: 'A6',
    });
  });

  it('does not depend on the order in which the fit-out lists panels of different roles', () => {
    const fitout = twoColumns();
    const shuffled = { ...fitout, panels: [...fitout.panels].reverse() };
    // Top and bottom share a mark, so that their own order does not show.
    expect(marksOf(shuffled)).toEqual(marksOf(fitout));
  });

  it('puts parts of fittings after the carcass, by the order of their openings', () => {
    const of = (id: string, origin: string, length: number) =>
      panel(id, { origin: node(origin), role: 'box-front', length });
    const fitout = fitOutOf(
      [of('late', 'opening-9', 300), of('early', 'opening-2', 310), panel('top', { role: 'top' })],
      {
        openings: [opening('opening-2'), opening('opening-9')],
      },
    );
    expect(marksOf(fitout)).toEqual({ top: 'A1', early: 'A2', late: 'A3' });
  });

  it('marks each carcass for itself', () => {
    const fitout = fitOutOf([panel('p'), panel('q', { carcass: node('carcass-2') })]);
    expect(marksOf(fitout)).toEqual({ p: 'A1', q: 'B1' });
  });
});

describe('parts that are cut alike', () => {
  const hole = (x: number, y: number, face: 'a' | 'b' = 'a', depth: number | null = 10) =>
    ({ kind: 'hole', face, at: [x, y], diameter: 5, depth, why: 'pin' }) as const;
  const shareMark = (a: Partial<Parameters<typeof panel>[1]>, b: Partial<Parameters<typeof panel>[1]>): boolean => {
    const marks = marksOf(fitOutOf([panel('one', a), panel('two', b)]));
    return marks.one === marks.two;
  };

  it('count together when one is the other turned half round or turned over', () => {
    // 700 × 600: (50, 40) goes to (650, 560) half round; to (50, 560) on the other face when turned over.
    expect(shareMark({ cuts: [hole(50, 40)] }, { cuts: [hole(650, 560)] })).toBe(true);
    expect(shareMark({ cuts: [hole(50, 40)] }, { cuts: [hole(50, 560, 'b')] })).toBe(true);
    expect(shareMark({ cuts: [hole(50, 40)] }, { cuts: [hole(650, 40, 'b')] })).toBe(true);
  });

  it('stay two when one is the mirror image of the other', () => {
    expect(shareMark({ cuts: [hole(50, 40)] }, { cuts: [hole(50, 560)] })).toBe(false);
    expect(shareMark({ cuts: [hole(50, 40)] }, { cuts: [hole(650, 40)] })).toBe(false);
    expect(shareMark({ cuts: [hole(50, 40)] }, { cuts: [hole(50, 40, 'b')] })).toBe(false);
  });

  it('do not ask for the face of a hole that goes through', () => {
    expect(shareMark({ cuts: [hole(50, 40, 'a', null)] }, { cuts: [hole(50, 560, 'b', null)] })).toBe(true);
    // Seen through, a mirrored through hole is the same part turned over.
    expect(shareMark({ cuts: [hole(50, 40, 'a', null)] }, { cuts: [hole(50, 560, 'a', null)] })).toBe(true);
  });

  it('carry their bands round with them', () => {
    const bands = { l1: 'band-1', l2: null, w1: null, w2: null };
    const turned = { l1: null, l2: 'band-1', w1: null, w2: null };
    expect(shareMark({ bands, cuts: [hole(50, 40)] }, { bands: turned, cuts: [hole(650, 560)] })).toBe(true);
    expect(shareMark({ bands, cuts: [hole(50, 40)] }, { bands, cuts: [hole(650, 560)] })).toBe(false);
  });

  it('may differ by rounding noise and no more', () => {
    expect(shareMark({ length: 0.1 + 0.2 + 300 }, { length: 300.3 })).toBe(true);
    expect(shareMark({ length: 300.3 }, { length: 300.31 })).toBe(false);
  });

  it('differ when anything that is cut, chosen or sided differs', () => {
    const plain = { cuts: [hole(50, 40)] };
    expect(shareMark(plain, { cuts: [hole(50, 40), hole(60, 40)] })).toBe(false);
    expect(shareMark({ cuts: [hole(50, 40), hole(50, 40)] }, { cuts: [hole(50, 40), hole(60, 40)] })).toBe(false);
    expect(shareMark(plain, { ...plain, material: 'ply-12' })).toBe(false);
    expect(shareMark(plain, { ...plain, grain: 'any' })).toBe(false);
    expect(shareMark({ ...plain, hand: 'left' }, { ...plain, hand: 'right' })).toBe(false);
    expect(
      shareMark(plain, {
        ...plain,
        outline: [
          [0, 0],
          [700, 0],
          [700, 600],
        ],
      }),
    ).toBe(false);
  });

  it('may list one outline from another corner, the other way round', () => {
    const outline = [
      [0, 0],
      [700, 0],
      [700, 600],
      [100, 600],
    ] as const;
    const relisted = [
      [700, 600],
      [700, 0],
      [0, 0],
      [100, 600],
    ] as const;
    const other = [
      [0, 0],
      [700, 0],
      [700, 600],
      [120, 600],
    ] as const;
    expect(shareMark({ outline }, { outline: relisted })).toBe(true);
    expect(shareMark({ outline }, { outline: other })).toBe(false);
  });
});
