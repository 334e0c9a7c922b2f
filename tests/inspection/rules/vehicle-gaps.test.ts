import { describe, expect, test } from 'vitest';
import { boxSurvey, HATCH } from '../../envelope/surveys.ts';
import { type BodyRow, findingsOf, linesOf } from '../fixture.ts';
import { BLOCK, inspectBoxes, obstacle, zone } from '../scenes/vehicle.ts';

const check = (rest: Record<string, unknown>, rows: readonly BodyRow[]) => inspectBoxes(rows, boxSurvey(rest));

describe('body-obstacle', () => {
  test.each<[string, number, string, readonly string[]]>([
    // Half width 5.385: a seat-back is kept off by 20, so 26 is clear, 24 is too close to tell, 14 is too near.
    ['seat-back', 926, 'gap-seat', []],
    ['seat-back', 924, 'gap-seat', ['caution carcass-1+thing 24']],
    ['seat-back', 914, 'gap-seat', ['stop carcass-1+thing 14']],
    // Trim by 6.
    ['latch', 914, 'gap-trim', []],
    ['latch', 905, 'gap-trim', ['caution carcass-1+thing 5']],
    ['latch', 880, 'gap-trim', ['stop carcass-1+thing -20']],
  ])('%s at x %d', (kind, x, rule, expected) => {
    const inspection = check({ obstacles: [obstacle('thing', kind, [x, -300, 100], [x + 100, 300, 500])] }, [BLOCK]);
    expect(linesOf(inspection, 'body-obstacle')).toEqual(expected);
    const limit = rule === 'gap-seat' ? 20 : 6;
    for (const finding of findingsOf(inspection, 'body-obstacle')) expect(finding.limit).toBe(limit);
  });

  test('what a carcass stands over bears it; a tie-down that rises into it does not', () => {
    const over = check({ obstacles: [obstacle('rib', 'other', [400, -100, -10], [500, 100, 0])] }, [BLOCK]);
    expect(linesOf(over, 'body-obstacle')).toEqual([]);
    const into = check({ obstacles: [obstacle('ring', 'tie-down', [400, 250, 0], [440, 290, 35])] }, [BLOCK]);
    // The shortest way apart is 35 up, out of the floor.
    expect(linesOf(into, 'body-obstacle')).toEqual(['stop carcass-1+ring -35']);
  });

  test('the worst body of each carcass and each obstacle', () => {
    const inspection = check(
      {
        obstacles: [
          obstacle('one', 'trim', [903, -300, 0], [950, 300, 600]),
          obstacle('two', 'trim', [300, 304, 0], [900, 350, 600]),
        ],
      },
      [BLOCK, { id: 'thin', min: [300, 300, 0], max: [900, 302, 600] }],
    );
    expect(linesOf(inspection, 'body-obstacle')).toEqual(['caution carcass-1+two 2', 'caution carcass-1+one 3']);
  });
});

describe('body-zone', () => {
  test('an airbag zone is kept off by its gap, a seat zone and a sight line are only not entered, a no-hole zone does not matter', () => {
    const zones = [
      zone('curtain', 'nothing-stands', [0, 340, 300], [1500, 600, 900]),
      zone('seat', 'seat-travel', [899, -300, 0], [1200, 300, 600]),
      zone('near-seat', 'seat-travel', [300, -500, 0], [900, -303, 600]),
      zone('floor', 'no-hole', [0, -600, -10], [1500, 600, 10]),
      zone('sight', 'sight-line', [0, -600, 700], [1500, 600, 900]),
      zone('view', 'sight-line', [500, -600, 598], [1500, 600, 900]),
    ];
    // 40 of 50 to the curtain: 10 short, more than 5.385. One millimetre into the seat's zone. 3 beside the other one:
    // the limit is 0 and the uncertainty 5.385. Two millimetres into the view; the sight line at 700 is 100 clear.
    expect(linesOf(check({ zones }, [BLOCK]), 'body-zone')).toEqual([
      'stop carcass-1+view -2',
      'stop carcass-1+seat -1',
      'stop carcass-1+curtain 40',
      'caution carcass-1+near-seat 3',
    ]);
  });
});

describe('hatch-closed', () => {
  const glass = {
    ...HATCH,
    id: 'glass',
    name: 'Glass',
    kind: 'hatch-glass',
    carriedBy: 'hatch',
    innerProfile: [
      [0, 0],
      [300, 0],
    ],
  };
  const at = (x: number, row: Partial<BodyRow> = {}): BodyRow => ({
    id: 'face',
    min: [x, -300, 0],
    max: [900, 300, 500],
    ...row,
  });

  test.each<[string, number, readonly string[]]>([
    // Inner trim at x = −20, hanging from 900 down to 0. Gap 15, half width 5.385.
    ['21 clear', 1, []],
    ['20: 5 over, too close to tell', 0, ['caution carcass-1+hatch 20']],
    ['9: 6 short', -11, ['stop carcass-1+hatch 9']],
    ['into the trim by 10', -30, ['stop carcass-1+hatch -10']],
  ])('%s', (_, x, expected) => {
    expect(linesOf(check({ closures: [HATCH] }, [at(x)]), 'hatch-closed')).toEqual(expected);
  });

  test('a clear hatch is measured too, however far it stands', () => {
    const inspection = check({ closures: [HATCH] }, [at(230), at(400, { id: 'behind' })]);
    expect(linesOf(inspection, 'hatch-closed')).toEqual([]);
    // From the trim at −20 to the nearer face at 230.
    expect(inspection.measured.filter(({ rule }) => rule === 'hatch-closed')).toMatchObject([
      {
        margin: 'hatch',
        parts: ['carcass-1', 'hatch'],
        value: expect.closeTo(250, 9),
        limit: 15,
        slack: expect.closeTo(235, 9),
      },
    ]);
  });

  test('glass and struts have limits of their own, and a carried obstacle counts with its closure', () => {
    const inspection = check(
      {
        closures: [HATCH, glass],
        obstacles: [
          obstacle('pull', 'latch', [-20, -50, 300], [10, 50, 340], 'hatch'),
          obstacle('strut', 'strut', [-20, 280, 700], [0, 300, 720], 'hatch'),
        ],
      },
      [at(40), { id: 'gear-1', kind: 'gear', min: [22, -100, 650], max: [300, 100, 800] }],
    );
    // Pull: 40 − 10 = 30 of 15, clear. Glass at −20 from 900 down to 600: 42 of 20 to the gear, clear. Hatch: 60 of 15.
    expect(linesOf(inspection, 'hatch-closed')).toEqual([]);
    const nearer = check({ closures: [HATCH, glass] }, [
      { id: 'gear-1', kind: 'gear', min: [2, -100, 650], max: [300, 100, 800] },
    ]);
    // 22 to both: 7 over the trim's 15, 2 over the glass's 20.
    expect(linesOf(nearer, 'hatch-closed')).toEqual(['caution gear-1+glass 22']);
  });

  test('what hangs on a closure is not held against it or its kin', () => {
    const speaker: BodyRow = {
      id: 'speaker',
      kind: 'device',
      carcass: null,
      mover: 'glass',
      min: [-20, 0, 700],
      max: [20, 80, 780],
    };
    expect(linesOf(check({ closures: [HATCH, glass] }, [speaker]), 'hatch-closed')).toEqual([]);
    const second = {
      ...HATCH,
      id: 'gate',
      name: 'Gate',
      hangs: 'up',
      hinge: { from: [-25, -550, 0], to: [-25, 550, 0] },
    };
    // The gate stands 25 behind the sill up to 900 as well: the speaker reaches through it.
    expect(linesOf(check({ closures: [HATCH, glass, second] }, [speaker]), 'hatch-closed')).toEqual([
      'stop speaker+gate 5',
    ]);
  });
});
