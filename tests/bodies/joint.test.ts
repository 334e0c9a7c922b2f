import { describe, expect, it } from 'vitest';
import { boxAt, radians, type Vec3 } from '../../src/base/index.ts';
import {
  boxShape,
  type ConvexShape,
  gapBetween,
  type JointResult,
  jointTravel,
  type Motion,
  type Mover,
  motionPose,
  motionSpan,
  shapeAt,
} from '../../src/bodies/index.ts';

const box = (at: Vec3, size: Vec3): ConvexShape => boxShape(boxAt(at, size));
const slider = (along: Vec3, toMm: number, ...shapes: readonly ConvexShape[]): Mover => ({
  motion: { kind: 'slide', along, fromMm: 0, toMm },
  shapes,
});
const door = (toRad: number, shape: ConvexShape): Mover => ({
  motion: { kind: 'turn', point: [0, 0, 0], axis: [0, 0, 1], fromRad: 0, toRad },
  shapes: [shape],
});

/** The validator of every result: cells fill the square once, and each is what a closer look at it says. */
const expectCells = ({ cells }: JointResult, first: Mover, second: Mover, required: number): void => {
  const area = cells.reduce((sum, c) => sum + (c.first[1] - c.first[0]) * (c.second[1] - c.second[0]), 0);
  expect(area).toBeCloseTo(1, 12);
  const place = ({ motion, shapes }: Mover, share: number): readonly ConvexShape[] => {
    const [from, to] = motionSpan(motion);
    return shapes.map((shape) => shapeAt(shape, motionPose(motion as Motion, from + (to - from) * share)));
  };
  for (const cell of cells.filter((_, i) => i % 7 === 0))
    for (const u of [0, 0.5, 1])
      for (const v of [0, 0.5, 1]) {
        const as = place(first, cell.first[0] + (cell.first[1] - cell.first[0]) * u);
        const bs = place(second, cell.second[0] + (cell.second[1] - cell.second[0]) * v);
        const gap = Math.min(...as.flatMap((a) => bs.map((b) => gapBetween(a, b).distance)));
        if (cell.state === 'free') expect(gap).toBeGreaterThanOrEqual(required);
        if (cell.state === 'blocked') expect(gap).toBeLessThan(required);
      }
};

const judged = (first: Mover, second: Mover, required = 0): JointResult => {
  const result = jointTravel(first, second, required);
  expectCells(result, first, second, required);
  return result;
};

describe('jointTravel', () => {
  it('leaves two drawers in lanes of their own alone, with one cell', () => {
    const upper = slider([-1, 0, 0], 500, box([0, 0, 120], [400, 300, 100]));
    const lower = slider([-1, 0, 0], 500, box([0, 0, 0], [400, 300, 100]));
    const result = judged(upper, lower, 2);
    expect(result.verdict).toBe('always-free');
    expect(result.cells).toEqual([{ first: [0, 1], second: [0, 1], state: 'free' }]);
  });

  it('makes a door open before the drawer behind it, and close after it', () => {
    // The closed door stands in front of the drawer, hinged at the origin; it opens 110° away from it.
    const inward = door(radians(-110), box([-18, 0, 0], [18, 400, 300]));
    const drawer = slider([-1, 0, 0], 450, box([2, 30, 20], [400, 340, 200]));
    expect(judged(inward, drawer).verdict).toBe('never-together'); // it swings into the drawer, the drawer runs into it
    const away = door(radians(110), box([-18, 0, 0], [18, 400, 300]));
    const result = judged(away, drawer);
    expect(result.verdict).toBe('first-leads');
    expect(result.secondTravels[0].reaches).toBeCloseTo(2, 4); // with the door shut: 2 mm to its inner face
    expect(result.secondTravels[1].clear).toBe(true);
    expect(judged(drawer, away).verdict).toBe('second-leads');
  });

  it('finds that two which end in one place can never both be out', () => {
    const east = slider([1, 0, 0], 300, box([-400, -50, 0], [350, 100, 50]));
    const north = slider([0, 1, 0], 300, box([-50, -400, 0], [100, 350, 50]));
    const result = judged(east, north);
    expect(result.verdict).toBe('never-together');
    expect(result.firstTravels[0].clear).toBe(true);
    expect(result.secondTravels[0].clear).toBe(true);
  });

  it('lets two cross a junction one after the other in either order', () => {
    const east = slider([1, 0, 0], 600, box([-350, -50, 0], [100, 100, 50]));
    const north = slider([0, 1, 0], 600, box([-50, -350, 0], [100, 100, 50]));
    expect(judged(east, north).verdict).toBe('either-first');
  });

  it('sees a mover carried between two jaws of the other: only in step', () => {
    const load = slider([1, 0, 0], 300, box([0, 0, 0], [20, 20, 20]));
    const jaws = slider([1, 0, 0], 300, box([-60, 0, 0], [20, 20, 20]), box([60, 0, 0], [20, 20, 20]));
    expect(judged(load, jaws).verdict).toBe('in-step');
  });

  it('tells two that already meet where they begin', () => {
    const a = slider([1, 0, 0], 300, box([0, 0, 0], [20, 20, 20]));
    const b = slider([0, 1, 0], 300, box([10, 0, 0], [20, 20, 20]));
    expect(judged(a, b).verdict).toBe('at-odds');
  });

  it('keeps a required gap, and carries what rides on a held mover', () => {
    const a = slider([1, 0, 0], 100, box([0, 0, 0], [20, 20, 20]));
    const b = slider([1, 0, 0], 100, box([0, 30, 0], [20, 20, 20]));
    expect(judged(a, b, 9).verdict).toBe('always-free'); // 10 between the lanes
    expect(judged(a, b, 11).verdict).toBe('at-odds');
    const lifted: Mover = {
      ...b,
      carriers: [{ motion: { kind: 'slide', along: [0, 1, 0], fromMm: 0, toMm: 9 }, at: 5 }],
    };
    expect(jointTravel(a, lifted, 11).verdict).toBe('always-free'); // 15 now
  });
});
