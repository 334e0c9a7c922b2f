import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placed, sameLength, type Vec3 } from '../../../src/base/index.ts';
import { type Moving, motionPose, moverPoses } from '../../../src/views/motion-pose.ts';

const near = (a: Vec3, b: Vec3): boolean => a.every((value, i) => sameLength(value, b[i] ?? Number.NaN));
const poseOf = (movers: readonly Moving[], shares: Record<string, number>, id: string) => {
  const pose = moverPoses(movers, shares).get(id);
  if (!pose) throw new Error(`no pose for ${id}`);
  return pose;
};

const tray: Moving = { id: 'tray', motion: { kind: 'slide', direction: [-1, 0, 0], travel: 600 }, carriedBy: null };
const lid: Moving = {
  id: 'lid',
  motion: { kind: 'turn', point: [100, 0, 200], axis: [0, 1, 0], travelRad: Math.PI / 2 },
  carriedBy: 'tray',
};

describe('motionPose', () => {
  test('a slide goes its share of the travel along its direction', () => {
    // 0.25 × 600 mm rearward: 50 − 150
    expect(placed(motionPose(tray.motion, 0.25), [50, 7, 9])).toEqual([-100, 7, 9]);
  });

  test('a turn goes its share of the angle about its line, right-handed', () => {
    // A quarter turn about +y takes +z to +x: the point 30 above the line comes to stand 30 forward of it.
    expect(near(placed(motionPose(lid.motion, 1), [100, 5, 230]), [130, 5, 200])).toBe(true);
  });
});

describe('moverPoses', () => {
  test('what is carried goes with its carrier', () => {
    // First the quarter turn: [100, 0, 230] → [130, 0, 200]; then half of 600 mm rearward.
    const pose = poseOf([tray, lid], { tray: 0.5, lid: 1 }, 'lid');
    expect(near(placed(pose, [100, 0, 230]), [-170, 0, 200])).toBe(true);
  });

  test('the order in which movers are named does not matter', () => {
    const shares = { tray: 0.3, lid: 0.7 };
    expect(moverPoses([lid, tray], shares).get('lid')).toEqual(moverPoses([tray, lid], shares).get('lid'));
  });

  test('a mover without a share stands stowed', () => {
    expect(placed(poseOf([tray, lid], {}, 'lid'), [1, 2, 3])).toEqual([1, 2, 3]);
  });

  test('movers that carry each other in a circle are placed without end', () => {
    const hurt: readonly Moving[] = [
      { ...tray, carriedBy: 'lid' },
      { ...lid, carriedBy: 'tray' },
    ];
    expect(moverPoses(hurt, { tray: 1, lid: 1 }).size).toBe(2);
  });

  test('distances on one mover never change', () => {
    const point = fc.tuple(
      fc.double({ min: -2000, max: 2000, noNaN: true }),
      fc.double({ min: -2000, max: 2000, noNaN: true }),
      fc.double({ min: -2000, max: 2000, noNaN: true }),
    );
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(point, point, share, share, (a, b, first, second) => {
        const pose = poseOf([tray, lid], { tray: first, lid: second }, 'lid');
        const [p, q] = [placed(pose, a), placed(pose, b)];
        const before = Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
        return sameLength(Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]), before);
      }),
      { seed: 11, numRuns: 200 },
    );
  });
});
