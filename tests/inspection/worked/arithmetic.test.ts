import { describe, expect, it } from 'vitest';
import { cabinetScene, drawerBox, SIDE } from '../scenes/cabinet.ts';
import { printed, readWords } from './arithmetic.ts';
import { example, worked } from './example.ts';
import { faultsOf } from './faults.ts';

describe('readWords', () => {
  it('reads numbers as the pages print them', () => {
    expect(readWords('3,004 of 3,000 kg, 4.2 %, M8, 0.95').numbers.map(({ value }) => value)).toEqual([
      3004, 3000, 0.042, 8, 0.95,
    ]);
    // Half of the last place.
    expect([printed('4.2 %').half, printed('0.95').half, printed('3,004').half]).toEqual([
      expect.closeTo(0.0005, 12),
      expect.closeTo(0.005, 12),
      0.5,
    ]);
  });

  it.each([
    ['2 √(1.5² + 2² + 1²) = 5.4'],
    ['4 − 10 = −6'],
    ['1,200 / 2 / 700 = 0.857'],
    ['atan((1,786 − 800 − 500) / (300 + 600 / 2)) = 39.0°'],
    ['2 π · 132.6 / (1 − 2 · 100 / (3 · 200)) = 1,250 N'],
    ['200 / 3,000 = 6.7 %'],
    ['5 · 800³ / 12 = 213,333,333'],
  ])('finds that %s', (sum) => {
    expect(readWords(sum).wrong).toEqual([]);
    expect(readWords(sum).sums).toHaveLength(1);
  });

  it.each([
    ['2 √(1.5² + 2² + 1²) = 5.5'],
    ['4 − 10 = 6'],
    ['600 − 590 = 11'],
    ['200 / 3,000 = 6.6 %'],
    // What cannot be read is no sum either.
    ['12 12 = 24'],
    ['3 + = 3'],
    ['(3 + 1 = 4'],
  ])('does not find that %s', (sum) => {
    expect(readWords(sum).wrong).toHaveLength(1);
    expect(readWords(sum).sums).toEqual([]);
  });

  it('takes what only has a name as it is', () => {
    expect(readWords('x = 62 and u = 5.4')).toMatchObject({ sums: [], wrong: [] });
  });
});

describe('faultsOf', () => {
  const own = {
    given: { side: 18, box: 20 },
    run: ({ side, box }: { readonly side: number; readonly box: number }) =>
      cabinetScene([{ ...SIDE, max: [600, side, 800] }, drawerBox(box)]),
    words: 'a side up to 18, a box from 20 on: 20 − 18 = 2 of 3: caution',
    expects: { severity: 'caution', value: '2', limit: '3' },
  } as const;
  const faults = (change: object, rest: object = {}) =>
    faultsOf(example('moving-gap', [worked({ ...own, ...change })], rest));

  it('has nothing to say of an example that holds', () => {
    expect(faults({})).toEqual([]);
  });

  it('names a number that is neither given nor a result, and a sum that is wrong', () => {
    expect(faults({ words: `${own.words}, 7` })).toEqual(['7 is neither given nor a result']);
    expect(faults({ words: own.words.replace('= 2', '= 2.5') })).toEqual([
      'wrong sum: 20 − 18 = 2.5: 2',
      '2.5 is neither given nor a result',
      '2 is a result and not said',
    ]);
  });

  it('names what is given and not said, or decides nothing', () => {
    expect(faults({ given: { ...own.given, far: 900 }, words: `${own.words}, 900` })).toEqual([
      'far is given and decides nothing',
    ]);
    expect(faults({ words: own.words.replace('a side up to 18, a', 'a').replace('20 − 18 = 2', '2') })).toEqual([
      'side, 18, is given and not said',
    ]);
  });

  it('names a severity, a value, a limit and a text that the rule does not find', () => {
    expect(
      faults({ expects: { ...own.expects, severity: 'stop' }, words: own.words.replace('caution', 'stop') }),
    ).toEqual(['finds caution box+carcass-1/side 2 and not one stop']);
    expect(
      faults({ expects: { ...own.expects, severity: 'nothing' }, words: own.words.replace('caution', 'nothing') }),
    ).toEqual(['finds caution box+carcass-1/side 2']);
    expect(faults({ expects: { ...own.expects, limit: '4' }, words: own.words.replace('of 3', 'of 4') })).toEqual([
      'limit is 3 and not 4',
    ]);
    expect(faults({ expects: { ...own.expects, told: { relation: 'none' } } })).toEqual([
      expect.stringMatching(/^relation is .* and not none$/),
    ]);
  });

  it('names figures that are declared and not said', () => {
    expect(faults({}, { house: ['gap-trim'], formula: [12] })).toEqual(['6 is not said', '12 stands in no sum']);
  });
});
