import { describe, expect, test } from 'vitest';
import { catalog, findingsOf, inspectScene, linesOf, node, panel } from '../fixture.ts';

const ply = catalog.materials.get('birch-ply-18');
if (!ply) throw new Error('the catalog has no 18 mm birch');
/** One stock sheet of 2,440 × 1,220; 10 mm trimmed off each edge leave 2,420 × 1,200. */
const oneSheet = {
  ...catalog,
  materials: new Map([
    ['birch-ply-18', { ...ply, sheets: [{ name: 'sheet', lengthMm: 2440, widthMm: 1220, price: 1 }] }],
  ]),
};

const check = (length: number, width: number, grain: 'length' | 'any' = 'length') =>
  inspectScene({ survey: null, from: oneSheet, fitout: { panels: [panel('part', length, width, { grain })] } });

describe('part-too-small', () => {
  test.each<[number, number, readonly string[]]>([
    [60, 40, []],
    [40, 60, []],
    [59, 50, ['caution part 59']],
    [200, 39, ['caution part 39']],
    // Both too small: the side that lacks more.
    [50, 39, ['caution part 50']],
  ])('%d × %d', (length, width, expected) => {
    expect(linesOf(check(length, width), 'part-too-small')).toEqual(expected);
  });
});

describe('part-too-big', () => {
  test('as large as the trimmed sheet fits; a hair more does not', () => {
    expect(linesOf(check(2420, 1200), 'part-too-big')).toEqual([]);
    expect(findingsOf(check(2421, 500), 'part-too-big')).toMatchObject([
      { severity: 'stop', value: 2421, limit: 2420, facts: { trim: 10, sheet: 'sheet' } },
    ]);
  });
  test('across the grain it is turned only where the grain lets it', () => {
    expect(findingsOf(check(500, 1300), 'part-too-big')).toMatchObject([{ value: 1300, limit: 1200 }]);
    expect(linesOf(check(500, 1300, 'any'), 'part-too-big')).toEqual([]);
  });
});

describe('cabinet-solves', () => {
  test('every problem of the fit-out is a stop with what is needed and there', () => {
    const inspection = inspectScene({
      survey: null,
      fitout: {
        problems: [
          {
            code: 'too-small',
            at: node('opening-3'),
            axis: 'across',
            needMm: 320,
            haveMm: 280,
            because: ['slide 45 kg', 'box'],
          },
          {
            code: 'unknown-material',
            at: node('carcass-1'),
            axis: null,
            needMm: null,
            haveMm: null,
            because: ['oak-18'],
          },
        ],
      },
    });
    expect(findingsOf(inspection, 'cabinet-solves')).toMatchObject([
      {
        severity: 'stop',
        parts: ['opening-3'],
        value: 280,
        limit: 320,
        facts: { because: 'slide 45 kg; box', sized: 'yes' },
      },
      { severity: 'stop', parts: ['carcass-1'], facts: { code: 'unknown-material', because: 'oak-18', sized: 'no' } },
    ]);
  });
});
