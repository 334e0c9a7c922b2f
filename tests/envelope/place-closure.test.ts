import { describe, expect, test } from 'vitest';
import { placed, turnAbout, type Vec3 } from '../../src/base/index.ts';
import { shapeBox } from '../../src/bodies/index.ts';
import { placeClosure } from '../../src/envelope/place-closure.ts';
import { boxSurvey, HATCH } from './surveys.ts';

const read = (change: Record<string, unknown> = {}) => {
  const [closure] = boxSurvey({ closures: [{ ...HATCH, ...change }] }).closures;
  if (!closure) throw new Error('no closure');
  return placeClosure(closure, 'survey.closures[0]');
};
const place = (change: Record<string, unknown> = {}) => {
  const result = read(change);
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
};
const problems = (change: Record<string, unknown>): readonly string[] => {
  const result = read(change);
  return result.ok ? [] : result.error.map(({ at, code }) => `${at} ${code}`);
};

/** Volume of a closed faceted shape: the sum of the tetrahedra from the origin to a fan over each face. */
const volumeOf = (shape: ReturnType<typeof place>['pieces'][number]): number => {
  const at = (i: number): Vec3 => shape.vertices[i] ?? [0, 0, 0];
  let six = 0;
  for (const face of shape.faces)
    for (let i = 1; i + 1 < face.length; i++) {
      const [a, b, c] = [at(face[0] ?? 0), at(face[i] ?? 0), at(face[i + 1] ?? 0)];
      six +=
        a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) + a[2] * (b[0] * c[1] - b[1] * c[0]);
    }
  return six / 6;
};

describe('placeClosure', () => {
  test('a lift hatch opens rearward by a positive turn, whichever way its hinge line was taped', () => {
    for (const hinge of [HATCH.hinge, { from: HATCH.hinge.to, to: HATCH.hinge.from }]) {
      const { placed: mover, pieces } = place({ hinge });
      expect(mover.axis).toEqual([0, 1, 0]);
      expect(mover.opensRad).toBeCloseTo(Math.PI / 2, 12);
      // The free edge hangs 900 below the hinge; a quarter turn brings it 900 behind the hinge at its height.
      const open = placed(turnAbout(mover.point, mover.axis, mover.opensRad), [-20, 0, 0]);
      expect(open[0]).toBeCloseTo(-920, 9);
      expect(open[2]).toBeCloseTo(900, 9);
      // From the trim 40 outward, between the ends of the hinge line: 40 × 1,100 × 900 mm.
      expect(pieces.map((shape) => shapeBox(shape))).toEqual([{ min: [-60, -550, 0], max: [-20, 550, 900] }]);
      expect(pieces.map(volumeOf)).toEqual([expect.closeTo(40 * 1100 * 900, 3)]);
    }
  });

  test.each<[string, Record<string, unknown>, Vec3, Vec3]>([
    [
      'a tailgate, hinged at the floor',
      { hinge: { from: [-20, -550, 0], to: [-20, 550, 0] }, hangs: 'up' },
      [0, -1, 0],
      [-1, 0, 0],
    ],
    [
      'a barn door hinged on the left side',
      { hinge: { from: [-20, 600, 0], to: [-20, 600, 900] }, hangs: 'right' },
      [0, 0, -1],
      [-1, 0, 0],
    ],
    [
      'a side door on the right, hinged at its front',
      { hinge: { from: [900, -650, 0], to: [900, -650, 900] }, hangs: 'rearward', outward: 'right' },
      [0, 0, 1],
      [0, -1, 0],
    ],
    [
      'a cap door on the left, hinged at the roof',
      { hinge: { from: [0, 650, 900], to: [900, 650, 900] }, hangs: 'down', outward: 'left' },
      [1, 0, 0],
      [0, 1, 0],
    ],
  ])('%s first moves outward', (_, change, axis, outward) => {
    const { placed: mover, pieces } = place(change);
    mover.axis.forEach((part, i) => {
      expect(part).toBeCloseTo(axis[i] ?? 0, 12);
    });
    const small = turnAbout(mover.point, mover.axis, 0.001);
    const box = shapeBox(pieces[0] ?? { vertices: [], faces: [], radius: 0 });
    const centre: Vec3 = [(box.min[0] + box.max[0]) / 2, (box.min[1] + box.max[1]) / 2, (box.min[2] + box.max[2]) / 2];
    const moved = placed(small, centre);
    // 450 from the hinge, turned by 0.001: 0.45 mm, nearly all of it outward.
    const along = moved.reduce((sum, part, i) => sum + (part - (centre[i] ?? 0)) * (outward[i] ?? 0), 0);
    expect(along).toBeCloseTo(0.45, 2);
    expect(volumeOf(pieces[0] ?? { vertices: [], faces: [], radius: 0 })).toBeGreaterThan(0);
  });

  test('one convex piece a straight part of the profile; a step of the trim is closed by the piece on its inner level', () => {
    const { pieces } = place({
      innerProfile: [
        [0, 0],
        [500, 60],
        [500, 10],
        [900, 10],
      ],
    });
    // 0 to 500: inner face leans in by 60; outer face from −40 at the hinge to 10 − 40 = −30 at the step.
    // 500 to 900: 10 − 40 = −30 outside to 10 inside. Areas 500 × (40 + 90) / 2 = 32,500 and 400 × 40 = 16,000.
    expect(pieces.map(volumeOf)).toEqual([expect.closeTo(32_500 * 1100, 3), expect.closeTo(16_000 * 1100, 3)]);
    expect(pieces.map((shape) => shapeBox(shape).max[0])).toEqual([expect.closeTo(40, 9), expect.closeTo(-10, 9)]);
  });

  test.each<[Record<string, unknown>, string]>([
    [{ hinge: { from: [0, 1, 2], to: [0, 1, 2] } }, 'survey.closures[0].hinge.to no-size'],
    [{ hangs: 'left' }, 'survey.closures[0].hangs along-hinge'],
    [{ outward: 'left' }, 'survey.closures[0].outward cannot-open'],
    [
      {
        innerProfile: [
          [0, 0],
          [0, 50],
        ],
      },
      'survey.closures[0].innerProfile no-area',
    ],
  ])('refuses %j', (change, expected) => {
    expect(problems(change)).toEqual([expected]);
  });
});
