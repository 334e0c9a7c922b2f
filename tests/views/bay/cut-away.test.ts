import { expect, test } from 'vitest';
import { keptOf } from '../../../src/views/editor/bay/cut-away.ts';

const room = { min: [0, -600, 0], max: [1000, 600, 900] } as const;
const keeps = (
  side: 'left' | 'right' | 'top' | 'rear' | 'front',
  share: number,
  point: readonly [number, number, number],
) => {
  const kept = keptOf({ side, share }, room);
  if (!kept) return true;
  return kept.normal[0] * point[0] + kept.normal[1] * point[1] + kept.normal[2] * point[2] <= kept.reach;
};

test('nothing is cut while nothing is asked for', () => {
  expect(keptOf(null, room)).toBeNull();
  expect(keptOf({ side: 'left', share: 0 }, room)).toBeNull();
});

test('each side is opened from its own outside inward', () => {
  // Half open: just outside the middle is gone, just inside it stays.
  expect(keeps('left', 0.5, [500, 10, 400])).toBe(false);
  expect(keeps('left', 0.5, [500, -10, 400])).toBe(true);
  expect(keeps('right', 0.5, [500, -10, 400])).toBe(false);
  expect(keeps('right', 0.5, [500, 10, 400])).toBe(true);
  expect(keeps('top', 0.5, [500, 0, 460])).toBe(false);
  expect(keeps('rear', 0.5, [490, 0, 400])).toBe(false);
  expect(keeps('front', 0.5, [510, 0, 400])).toBe(false);
});

test('wholly open leaves nothing of the room', () => {
  for (const side of ['left', 'right', 'top', 'rear', 'front'] as const)
    for (const corner of [room.min, room.max]) expect(keeps(side, 1, [...corner])).toBe(false);
});
