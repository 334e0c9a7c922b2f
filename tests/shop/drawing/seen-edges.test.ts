import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Box, cross, dot, unit, type Vec2, type Vec3 } from '../../../src/base/index.ts';
import { boxShape } from '../../../src/bodies/index.ts';
import { type Sight, seenAt } from '../../../src/shop/drawing/projection.ts';
import { lookAt } from '../../../src/shop/drawing/seen-edges.ts';

const sightAlong = (way: Vec3): Sight => {
  const away = unit(way);
  const right = unit(cross(away, [0, 0, 1]));
  return { origin: [0, 0, 0], right, up: cross(right, away), away };
};
const FORWARD = sightAlong([1, 0, 0]);
const lengthOf = (edges: readonly { readonly from: Vec2; readonly to: Vec2 }[]): number =>
  edges.reduce((sum, { from, to }) => sum + Math.hypot(to[0] - from[0], to[1] - from[1]), 0);
const solid = (item: string, min: Vec3, max: Vec3) => ({ item, shape: boxShape({ min, max }) });

describe('edges in sight', () => {
  it('of a box are the nine beside its three faces, seen aslant', () => {
    const { edges } = lookAt([solid('b', [0, 0, 0], [100, 100, 100])], sightAlong([1, 0.4, -0.5]));
    expect(edges).toHaveLength(9);
  });

  it('end where a nearer box begins, and leave out a box that is covered whole', () => {
    const back = solid('back', [50, -100, 0], [60, 100, 100]);
    const front = solid('front', [0, -40, -20], [10, 40, 120]);
    const { edges, sees } = lookAt([back, front, solid('lost', [20, -10, 10], [30, 10, 90])], FORWARD);
    // Of the back's face, 2 · (200 + 100) less the 80 of its upper and of its lower edge that the front covers.
    expect(lengthOf(edges.filter(({ item }) => item === 'back'))).toBeCloseTo(600 - 160, 1);
    expect(edges.filter(({ item }) => item === 'lost')).toEqual([]);
    expect(sees([50, 90, 50], 'back')).toBe(true);
    expect(sees([50, 0, 50], 'back')).toBe(false);
  });

  it('keep an edge that lies in the face of a neighbour', () => {
    const { edges } = lookAt([solid('a', [0, 0, 0], [10, 50, 50]), solid('b', [0, 50, 0], [10, 90, 50])], FORWARD);
    expect(lengthOf(edges)).toBeCloseTo(2 * (50 + 50) + 2 * (40 + 50), 6);
  });

  it('draw lines on a face that looks at the eye, and none on one that looks away', () => {
    const face = (normal: Vec3) => ({ from: [0, 10, 10] as Vec3, to: [0, 40, 10] as Vec3, normal });
    const shape = boxShape({ min: [0, 0, 0], max: [10, 50, 50] });
    const lines = [face([-1, 0, 0]), face([1, 0, 0])];
    expect(lookAt([{ item: 'a', shape, lines }], FORWARD).edges).toHaveLength(5);
  });
});

/** Whether the line from a point to the eye passes through the inside of a box: the slabs of its three axes. */
const throughBox = (point: Vec3, toEye: Vec3, { min, max }: Box): boolean => {
  let [enter, leave] = [1e-3, Number.POSITIVE_INFINITY];
  for (const axis of [0, 1, 2] as const) {
    const [low, high] = [min[axis] + 1e-2 - point[axis], max[axis] - 1e-2 - point[axis]];
    if (Math.abs(toEye[axis]) < 1e-12) {
      if (low >= 0 || high <= 0) return false;
      continue;
    }
    const [a, b] = [low / toEye[axis], high / toEye[axis]].sort((p, q) => p - q) as [number, number];
    [enter, leave] = [Math.max(enter, a), Math.min(leave, b)];
  }
  return leave > enter;
};

describe('law of hidden lines', () => {
  it('a point of an edge is drawn just where no box lies between it and the eye', () => {
    const side = fc.integer({ min: -150, max: 150 });
    const size = fc.integer({ min: 15, max: 120 });
    const box = fc
      .tuple(side, side, side, size, size, size)
      .map(([x, y, z, a, b, c]): Box => ({ min: [x, y, z], max: [x + a, y + b, z + c] }));
    const way = fc.tuple(
      fc.constant(1),
      fc.double({ min: -0.9, max: 0.9, noNaN: true }),
      fc.double({ min: -0.9, max: -0.1, noNaN: true }),
    );
    let [hidden, seen] = [0, 0];
    fc.assert(
      fc.property(fc.array(box, { minLength: 2, maxLength: 6 }), way, (boxes, [x, y, z]) => {
        const sight = sightAlong([x, y, z]);
        const toEye: Vec3 = [-sight.away[0], -sight.away[1], -sight.away[2]];
        const solids = boxes.map((each, i) => ({ item: i, shape: boxShape(each) }));
        const { edges } = lookAt(solids, sight);
        // The near edge along x of each box: its two faces that look at the eye meet there.
        boxes.forEach(({ min, max }, i) => {
          const start: Vec3 = [min[0], y > 0 ? min[1] : max[1], max[2]];
          for (let step = 1; step < 20; step++) {
            const point: Vec3 = [start[0] + ((max[0] - min[0]) * step) / 20, start[1], start[2]];
            const at = seenAt(sight, point);
            // Near a corner of a shadow both answers are right.
            const off = [-0.5, 0.5].map((mm): Vec3 => [point[0] + mm, point[1], point[2]]);
            const answers = [point, ...off].map((each) =>
              boxes.some((other, k) => k !== i && throughBox(each, toEye, other)),
            );
            if (new Set(answers).size > 1) continue;
            const drawn = edges.some(({ item, from, to }) => {
              if (item !== i) return false;
              const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
              const along = ((at[0] - from[0]) * (to[0] - from[0]) + (at[1] - from[1]) * (to[1] - from[1])) / long;
              const aside = ((at[0] - from[0]) * (to[1] - from[1]) - (at[1] - from[1]) * (to[0] - from[0])) / long;
              return Math.abs(aside) < 1e-6 && along > -1e-6 && along < long + 1e-6;
            });
            if (answers[0]) hidden++;
            else seen++;
            expect(drawn).toBe(!answers[0]);
          }
        });
        expect(dot(sight.right, sight.away)).toBeCloseTo(0, 12);
      }),
      { seed: 299_792, numRuns: 120 },
    );
    expect(Math.min(hidden, seen)).toBeGreaterThan(300);
  });
});
