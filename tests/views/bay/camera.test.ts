import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Box, boxCorners, distance, type Vec3 } from '../../../src/base/index.ts';
import { type CameraState, cameraBetween, eyeOf, orbited, panned, zoomed } from '../../../src/views/camera-state.ts';
import { projected, rayThroughPixel, type View } from '../../../src/views/editor/bay/camera/view.ts';
import {
  cameraLimits,
  cameraOn,
  type Scene,
  viewpointCamera,
} from '../../../src/views/editor/bay/camera/viewpoints.ts';
import { VIEWPOINTS } from '../../../src/views/editor/state/store.ts';

const room: Box = { min: [0, -650, 0], max: [1200, 650, 900] };
const scene: Scene = { room, floorUp: 800 };
const limits = cameraLimits(scene);
const camera: CameraState = { target: [600, 0, 450], azimuthRad: Math.PI, elevationRad: 0.3, distance: 2000 };
const view: View = { camera, fieldRad: 0.82, width: 900, height: 700 };
const lens = { fieldRad: 0.82, aspect: 900 / 700 };

describe('viewpoints', () => {
  test('at the hatch the eye stands behind the sill at 1.65 m above the ground', () => {
    const [x, y, z] = eyeOf(viewpointCamera('hatch', scene, lens));
    expect(x).toBeLessThan(0);
    expect(y).toBeCloseTo(0, 6);
    // 1650 − 800 above the floor; the fit of distance and height settles to a few millimetres
    expect(Math.abs(z - 850)).toBeLessThan(10);
  });

  test('from the hatch, above, left and right the mouth of the room is in the picture', () => {
    const mouth: Box = { min: room.min, max: [300, 650, 900] };
    for (const name of VIEWPOINTS.filter((one) => one !== 'seat'))
      for (const corner of boxCorners(mouth)) {
        const at = projected({ ...view, camera: viewpointCamera(name, scene, lens) }, corner);
        expect(at, `${name} ${corner.join()}`).not.toBeNull();
        expect(at?.[0]).toBeGreaterThanOrEqual(0);
        expect(at?.[0]).toBeLessThanOrEqual(900);
        expect(at?.[1]).toBeGreaterThanOrEqual(0);
        expect(at?.[1]).toBeLessThanOrEqual(700);
      }
  });

  test('left of the vehicle is its left side, the rear seat looks back', () => {
    expect(eyeOf(viewpointCamera('left', scene, lens))[1]).toBeGreaterThan(650);
    expect(eyeOf(viewpointCamera('right', scene, lens))[1]).toBeLessThan(-650);
    expect(eyeOf(viewpointCamera('seat', scene, lens))[0]).toBeGreaterThan(1200);
  });
});

describe('the eye', () => {
  test('walking, sliding and coming near never leave the limits', () => {
    const step = fc.record({
      turn: fc.double({ min: -3, max: 3, noNaN: true }),
      rise: fc.double({ min: -3, max: 3, noNaN: true }),
      right: fc.double({ min: -4000, max: 4000, noNaN: true }),
      factor: fc.double({ min: 0.1, max: 10, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(step, { maxLength: 12 }), (steps) => {
        let eye = camera;
        for (const { turn, rise, right, factor } of steps) {
          eye = orbited(eye, turn, rise, limits);
          eye = panned(eye, right, right / 2, limits);
          eye = zoomed(eye, factor, [0, 0, 0], limits);
        }
        const inside = eye.target.every(
          (value, i) => value >= (limits.within.min[i] ?? 0) && value <= (limits.within.max[i] ?? 0),
        );
        return inside && eye.distance >= limits.nearest && eye.distance <= limits.farthest && eye.elevationRad < 1.57;
      }),
      { seed: 3, numRuns: 200 },
    );
  });

  test('a point keeps its place on the screen when the eye comes nearer to it', () => {
    const point: Vec3 = [300, 200, 300];
    const nearer = zoomed(camera, 0.8, point, limits);
    const [before, after] = [projected(view, point), projected({ ...view, camera: nearer }, point)];
    expect(after?.[0]).toBeCloseTo(before?.[0] ?? Number.NaN, 6);
    expect(after?.[1]).toBeCloseTo(before?.[1] ?? Number.NaN, 6);
  });

  test('a flight starts and lands exactly and takes the short way round', () => {
    const from = { ...camera, azimuthRad: 3 };
    const to = { ...camera, azimuthRad: -3 };
    expect(cameraBetween(from, to, 0)).toEqual(from);
    // From 3 to −3 the short way leads through π: half way lies at π, not at 0.
    expect(cameraBetween(from, to, 0.5).azimuthRad).toBeCloseTo(Math.PI, 9);
    expect(distance(eyeOf(cameraBetween(from, to, 1)), eyeOf(to))).toBeCloseTo(0, 6);
  });

  test('flying to a part fits it and keeps the side', () => {
    const part: Box = { min: [100, 100, 100], max: [300, 200, 180] };
    const on = cameraOn(camera, part, lens, limits);
    expect(on.azimuthRad).toBe(camera.azimuthRad);
    expect(on.target).toEqual([200, 150, 140]);
    for (const corner of boxCorners(part)) {
      const at = projected({ ...view, camera: on }, corner);
      expect(at?.[0]).toBeGreaterThan(0);
      expect(at?.[0]).toBeLessThan(900);
    }
  });
});

describe('the picture', () => {
  test('the target lies in the middle', () => {
    const [x, y] = projected(view, camera.target) ?? [0, 0];
    expect(x).toBeCloseTo(450, 9);
    expect(y).toBeCloseTo(350, 9);
  });

  test('what lies to the right of someone at the hatch, on the vehicle’s right, lies right in the picture', () => {
    expect(projected(view, [600, -200, 450])?.[0]).toBeGreaterThan(450);
    expect(projected(view, [600, 0, 600])?.[1]).toBeLessThan(350);
  });

  test('the ray through a point’s pixel passes through the point', () => {
    const coordinate = fc.double({ min: -600, max: 1200, noNaN: true });
    fc.assert(
      fc.property(fc.tuple(coordinate, coordinate, coordinate), (point) => {
        const pixel = projected(view, point);
        if (!pixel) return true;
        const { origin, direction } = rayThroughPixel(view, pixel);
        const far = distance(origin, point);
        const reached: Vec3 = [
          origin[0] + direction[0] * far,
          origin[1] + direction[1] * far,
          origin[2] + direction[2] * far,
        ];
        return distance(reached, point) < 1e-6;
      }),
      { seed: 8, numRuns: 200 },
    );
  });

  test('behind the eye there is no place', () => {
    expect(projected(view, [-5000, 0, 450])).toBeNull();
  });
});
