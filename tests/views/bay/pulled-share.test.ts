import { describe, expect, test } from 'vitest';
import type { Vec2, Vec3 } from '../../../src/base/index.ts';
import type { CameraState } from '../../../src/views/camera-state.ts';
import { projected, type View } from '../../../src/views/editor/bay/camera/view.ts';
import { type Pull, pulledShare } from '../../../src/views/editor/bay/motion/pulled-share.ts';
import { pullPath } from '../../../src/views/editor/bay/pointer/pull-path.ts';
import { motionPose } from '../../../src/views/motion-pose.ts';

const looking = (camera: CameraState): View => ({ camera, fieldRad: 0.8, width: 1000, height: 800 });
const fromTheSide = looking({ target: [0, 0, 0], azimuthRad: -Math.PI / 2, elevationRad: 0, distance: 2000 });
const grip: Vec3 = [0, 0, 0];

const pullOf = (view: View, pathAt: Pull['pathAt'], startShare = 0, startPointer: Vec2 = [500, 400]): Pull => ({
  pathAt,
  project: (point) => projected(view, point),
  startShare,
  startPointer,
});
const at = (view: View, point: Vec3): Vec2 => {
  const pixel = projected(view, point);
  if (!pixel) throw new Error('behind the eye');
  return pixel;
};

const slide = pullPath(
  { motion: { kind: 'slide', direction: [-1, 0, 0], travel: 600 }, carriedBy: null },
  new Map(),
  grip,
);
const swing = pullPath(
  { motion: { kind: 'turn', point: [0, 0, 400], axis: [0, 1, 0], travelRad: Math.PI / 2 }, carriedBy: null },
  new Map(),
  grip,
);

describe('pulledShare', () => {
  test('the pointer over a place of a slide asks for that place', () => {
    for (const share of [0, 0.2, 0.55, 1])
      expect(pulledShare(pullOf(fromTheSide, slide), at(fromTheSide, slide(share)), share)).toBeCloseTo(share, 6);
  });

  test('beside the path counts as the nearest place on it', () => {
    const [x, y] = at(fromTheSide, slide(0.5));
    expect(pulledShare(pullOf(fromTheSide, slide), [x, y + 60], 0.5)).toBeCloseTo(0.5, 6);
  });

  test('beyond an end stays at the end', () => {
    const [x, y] = at(fromTheSide, slide(1));
    const outward = x > 500 ? 300 : -300;
    expect(pulledShare(pullOf(fromTheSide, slide), [x + outward, y], 0.9)).toBe(1);
    expect(pulledShare(pullOf(fromTheSide, slide), [500 - outward, y], 0.1)).toBe(0);
  });

  test('an arc is followed all the way round', () => {
    let present = 0;
    for (let i = 1; i <= 20; i++) {
      present = pulledShare(pullOf(fromTheSide, swing), at(fromTheSide, swing(i / 20)), present);
      // A straight piece of the path stands for 1/48 of the arc, so it errs by far less than one of its pieces.
      expect(Math.abs(present - i / 20)).toBeLessThan(1 / 48);
    }
  });

  test('a travel straight at the eye is pulled down the screen', () => {
    const head = looking({ target: [0, 0, 0], azimuthRad: Math.PI, elevationRad: 0, distance: 2000 });
    const pull = pullOf(head, slide, 0.25, [500, 400]);
    // 0.25 + 130 px of the 260 px that stand for the whole travel
    expect(pulledShare(pull, [500, 530], 0.25)).toBeCloseTo(0.75, 9);
    expect(pulledShare(pull, [500, 0], 0.25)).toBe(0);
  });

  test('a carrier that stands out takes the path along', () => {
    const poses = new Map([['tray', motionPose({ kind: 'slide', direction: [0, 0, 1], travel: 100 }, 1)]]);
    const carried = pullPath(
      { motion: { kind: 'slide', direction: [-1, 0, 0], travel: 600 }, carriedBy: 'tray' },
      poses,
      grip,
    );
    expect(carried(0.5)).toEqual([-300, 0, 100]);
  });
});
