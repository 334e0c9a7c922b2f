import { describe, expect, test } from 'vitest';
import type { Vec3 } from '../../../src/base/index.ts';
import { gearListSchema } from '../../../src/design/index.ts';
import { findingsOf, inspectScene, linesOf } from '../fixture.ts';
import { ROOM, stowedScene } from '../scenes/cabinet.ts';

describe('gear-in-room', () => {
  test.each<[string, Vec3, Vec3, readonly string[]]>([
    ['with spare all round', [50, 50, 0], [300, 500, 250], []],
    ['sticks out 20 to the right', [50, 0, 0], [370, 500, 250], ['stop gear-1+opening-1 -20']],
    [
      'sticks out 15 before the face and 5 above: the worse',
      [50, -15, 0],
      [300, 500, 305],
      ['stop gear-1+opening-1 -15'],
    ],
    // Across 400 − 396 = 4: 2 on each side of the 3 wanted, wherever it stands.
    ['tight across', [4, 50, 0], [396, 500, 250], ['caution gear-1+opening-1 2']],
    ['3 on each side is enough', [0, 50, 0], [394, 500, 250], []],
    // Upright it stands on the floor: all the spare is above.
    ['tight above', [50, 50, 0], [300, 500, 298], ['caution gear-1+opening-1 2']],
    ['3 above is enough', [50, 50, 0], [300, 500, 297], []],
  ])('%s', (_, from, size, expected) => {
    expect(linesOf(stowedScene(from, size), 'gear-in-room')).toEqual(expected);
  });

  test('the place runs from the gear to the wall of the room, in vehicle axes', () => {
    const [finding] = findingsOf(stowedScene([50, 0, 0], [370, 500, 250]), 'gear-in-room');
    // Right face of the gear at 420, of the room at 400; the middle of the gear at 250 deep and 125 up; room at [10, 20, 30].
    expect(finding?.at).toEqual([
      [430, 270, 155],
      [410, 270, 155],
    ]);
    expect(finding?.facts).toMatchObject({ axis: 'across', what: 'sticks-out' });
  });

  test('a bracket holds tight on purpose, but does not hold what is too big', () => {
    expect(linesOf(stowedScene([0, 0, 0], ROOM, 'bracket'), 'gear-in-room')).toEqual([]);
    expect(linesOf(stowedScene([0, 0, 0], [400, 600, 310], 'bracket'), 'gear-in-room')).toEqual([
      'stop gear-1+opening-1 -10',
    ]);
  });
});

describe('gear-unplaced', () => {
  test('a note for each item without a place', () => {
    const row = { name: 'Bag', sizeMm: [1, 1, 1], massKg: 1, massFrom: 'measured' };
    const gear = gearListSchema.parse([
      { id: 'gear-1', ...row, firstDue: true },
      { id: 'gear-2', ...row, place: { opening: 'opening-1', at: [0, 0, 0] } },
    ]);
    const inspection = inspectScene({ survey: null, design: { gear } });
    expect(linesOf(inspection, 'gear-unplaced')).toEqual(['note gear-1 0']);
    expect(findingsOf(inspection, 'gear-unplaced')[0]?.facts).toEqual({ gear: 'Bag', firstDue: 'yes' });
  });
});
