import { describe, expect, test } from 'vitest';
import type { Pose, Vec3 } from '../../../src/base/index.ts';
import { boxShape } from '../../../src/bodies/index.ts';
import type { NodeId } from '../../../src/design/index.ts';
import type { FitOut, Mover } from '../../../src/fitout/index.ts';
import { pullRange } from '../../../src/views/editor/bay/motion/pull-range.ts';
import { moverPoses } from '../../../src/views/motion-pose.ts';
import { NOTHING_SOLVED } from '../cabinet/solved-face.ts';

const drawer: Mover = {
  id: 'd/drawer',
  origin: 'd' as NodeId,
  name: 'drawer',
  motion: { kind: 'slide', direction: [-1, 0, 0], travel: 500 },
  carriedBy: null,
  rests: [],
};

const body = (
  id: string,
  min: Vec3,
  size: Vec3,
  more: Partial<FitOut['bodies'][number]> = {},
): FitOut['bodies'][number] => ({
  id,
  origin: id as NodeId,
  carcass: null,
  kind: 'panel',
  name: id,
  shape: boxShape({ min, max: [min[0] + size[0], min[1] + size[1], min[2] + size[2]] }),
  mover: null,
  ...more,
});

/** The drawer's front: from x = 0, 400 wide, 100 high, 18 thick. */
const front = body('front', [0, 0, 0], [18, 400, 100], { mover: drawer.id });

const rangeWith = (others: readonly FitOut['bodies'][number][], share = 0, movers: readonly Mover[] = [drawer]) => {
  const fitOut: FitOut = { ...NOTHING_SOLVED, bodies: [front, ...others], movers };
  const poses: ReadonlyMap<string, Pose> = moverPoses(movers, { [drawer.id]: share });
  return pullRange(drawer, share, { fitOut, space: null, movers, poses });
};

describe('pullRange', () => {
  test('with nothing in the way it goes all the way', () => {
    expect(rangeWith([])).toEqual({ low: 0, high: 1, lowStop: null, highStop: null });
  });

  test('stops where it would hit, and says on what: a post 200 mm behind the front lets out 200 of 500', () => {
    const range = rangeWith([body('post', [-250, 100, 0], [50, 50, 300])]);
    // the proof is right to 0.05 mm of 500
    expect(range.high).toBeCloseTo(0.4, 3);
    expect(range.highStop).toBe('post');
  });

  test('touching on the way is no hit', () => {
    expect(rangeWith([body('floor', [-900, 0, -20], [900, 400, 20])]).high).toBe(1);
  });

  test('from half out it may go back only as far as the way is free', () => {
    // half out the front stands at −250 … −232; a wedge at −100 … −60 lets it back by 132 mm
    const range = rangeWith([body('wedge', [-100, 0, 0], [40, 50, 50])], 0.5);
    // −232 + 132 = −100: 250 − 132 = 118 mm out of 500
    expect(range.low).toBeCloseTo(118 / 500, 3);
    expect(range.lowStop).toBe('wedge');
  });

  test('what it meets already does not lock it, and slides and latches never do', () => {
    expect(rangeWith([body('clash', [5, 0, 0], [40, 40, 40])]).high).toBe(1);
    expect(rangeWith([body('latch', [-60, 0, 0], [40, 40, 40], { kind: 'hardware' })]).high).toBe(1);
    expect(rangeWith([body('plug', [-60, 0, 0], [40, 40, 40], { kind: 'plug-room' })]).high).toBe(1);
  });

  test('gear that rides along is neither obstacle nor left behind', () => {
    const rider = body('box', [100, 50, 10], [100, 100, 150], { kind: 'gear', mover: drawer.id });
    expect(rangeWith([rider]).high).toBe(1);
    // 150 high, it meets a rail that the front passes under: rail at −100 … −50, the box begins at 100 → 150 mm
    const range = rangeWith([rider, body('rail', [-100, 0, 120], [50, 400, 20])]);
    expect(range.high).toBeCloseTo(150 / 500, 3);
    expect(range.highStop).toBe('rail');
  });
});
