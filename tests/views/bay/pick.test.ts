import { describe, expect, test } from 'vitest';
import { shift } from '../../../src/base/index.ts';
import { boxShape } from '../../../src/bodies/index.ts';
import { type Pickable, pickNearest } from '../../../src/views/editor/bay/pick/pick.ts';

const cube = (id: string, x: number, mover: string | null = null): Pickable => ({
  id,
  shape: boxShape({ min: [x, -10, -10], max: [x + 20, 10, 10] }),
  mover,
});
const ray = { origin: [-100, 0, 0], direction: [1, 0, 0] } as const;

describe('pickNearest', () => {
  test('the nearest of those on the ray', () => {
    const hit = pickNearest(ray, [cube('far', 300), cube('near', 40)], new Map(), null);
    expect(hit?.what.id).toBe('near');
    expect(hit?.far).toBe(140);
    expect(hit?.point).toEqual([40, 0, 0]);
  });

  test('a part is hit where its mover stands, and the point is given stowed too', () => {
    const poses = new Map([['tray', shift([-60, 0, 0])]]);
    const hit = pickNearest(ray, [cube('still', 0), cube('moved', 40, 'tray')], poses, null);
    expect(hit?.what.id).toBe('moved');
    expect(hit?.point).toEqual([-20, 0, 0]);
    expect(hit?.stowedPoint).toEqual([40, 0, 0]);
  });

  test('what is cut away is not hit, and a body cut open is hit at the cut', () => {
    // Kept: x ≥ 50, that is −x ≤ −50
    const kept = { normal: [-1, 0, 0], reach: -50 } as const;
    const hit = pickNearest(ray, [cube('gone', 0), cube('open', 40)], new Map(), kept);
    expect(hit?.what.id).toBe('open');
    expect(hit?.point[0]).toBe(50);
  });

  test('nothing on the ray gives nothing', () => {
    expect(pickNearest({ origin: [0, 500, 0], direction: [1, 0, 0] }, [cube('a', 10)], new Map(), null)).toBeNull();
  });
});
