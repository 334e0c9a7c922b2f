import { describe, expect, test } from 'vitest';
import { findingsOf, linesOf } from '../fixture.ts';
import { partScene, problemScene, TOO_SMALL, UNKNOWN } from '../scenes/making.ts';

describe('part-too-small', () => {
  test.each<[number, number, readonly string[]]>([
    [60, 40, []],
    [40, 60, []],
    [59, 50, ['caution part 59']],
    [200, 39, ['caution part 39']],
    // Both too small: the side that lacks more.
    [50, 39, ['caution part 50']],
  ])('%d × %d', (length, width, expected) => {
    expect(linesOf(partScene(length, width), 'part-too-small')).toEqual(expected);
  });
});

describe('part-too-big', () => {
  test('as large as the trimmed sheet fits; a hair more does not', () => {
    expect(linesOf(partScene(2420, 1200), 'part-too-big')).toEqual([]);
    expect(findingsOf(partScene(2421, 500), 'part-too-big')).toMatchObject([
      { severity: 'stop', value: 2421, limit: 2420, facts: { trim: 10, sheet: 'sheet' } },
    ]);
  });
  test('across the grain it is turned only where the grain lets it', () => {
    expect(findingsOf(partScene(500, 1300), 'part-too-big')).toMatchObject([{ value: 1300, limit: 1200 }]);
    expect(linesOf(partScene(500, 1300, 'any'), 'part-too-big')).toEqual([]);
  });
});

describe('cabinet-solves', () => {
  test('every problem of the fit-out is a stop with what is needed and there', () => {
    const inspection = problemScene([TOO_SMALL, UNKNOWN]);
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
