import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cross, HOME, unit, type Vec2, type Vec3 } from '../../../src/base/index.ts';
import { boxShape } from '../../../src/bodies/index.ts';
import { screenGrid } from '../../../src/shop/drawing/screen-grid.ts';
import { lookAt } from '../../../src/shop/drawing/seen-edges.ts';
import { createDrawings } from '../../../src/shop/index.ts';
import { catalog, design, fitOutOf, panel, rules } from '../fixture.ts';

const coordinate = fc.integer({ min: -400, max: 400 });
const point = fc.tuple(coordinate, coordinate) as fc.Arbitrary<Vec2>;

describe('grid of the screen', () => {
  it('leaves out nothing whose rectangle a segment passes, and gives each once in order', () => {
    const thing = fc
      .tuple(point, fc.integer({ min: 0, max: 200 }), fc.integer({ min: 0, max: 200 }))
      .map(([low, wide, high]) => ({ low, high: [low[0] + wide, low[1] + high] as const }));
    fc.assert(
      fc.property(fc.array(thing, { maxLength: 60 }), point, point, (things, from, to) => {
        const found = screenGrid(things)([from, to]);
        expect(found).toEqual([...new Set(found)].toSorted((a, b) => a - b));
        // The plain twin: a hundred points of the segment, each held against every rectangle.
        things.forEach(({ low, high }, i) => {
          const passes = Array.from(
            { length: 101 },
            (_, k): Vec2 => [from[0] + ((to[0] - from[0]) * k) / 100, from[1] + ((to[1] - from[1]) * k) / 100],
          ).some(([x, y]) => x >= low[0] && x <= high[0] && y >= low[1] && y <= high[1]);
          if (passes) expect(found).toContain(i);
        });
      }),
      { seed: 137_035, numRuns: 200 },
    );
  });
});

const AWAY = unit([1, 0.4, -0.5]);
const RIGHT = unit(cross(AWAY, [0, 0, 1]));
const SIGHT = { origin: [0, 0, 0] as Vec3, right: RIGHT, up: cross(RIGHT, AWAY), away: AWAY };

describe('a look at many solids', () => {
  it('is the same as the looks at each with all that could hide it, taken one by one', () => {
    const side = fc.integer({ min: -150, max: 150 });
    const size = fc.integer({ min: 15, max: 120 });
    const box = fc.tuple(side, side, side, size, size, size);
    fc.assert(
      fc.property(fc.array(box, { minLength: 2, maxLength: 30 }), (boxes) => {
        const solids = boxes.map(([x, y, z, a, b, c], i) => ({
          item: i,
          shape: boxShape({ min: [x, y, z], max: [x + a, y + b, z + c] }),
        }));
        const { edges } = lookAt(solids, SIGHT);
        // What one other hides alone is hidden among all: with two solids there is one cell in the grid.
        const alone = solids.flatMap((solid) =>
          solids.filter((other) => other !== solid).map((other) => ({ solid, look: lookAt([solid, other], SIGHT) })),
        );
        for (const { item, from, to } of edges) {
          const middle: Vec2 = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
          for (const { solid, look } of alone) {
            if (solid.item !== item) continue;
            const there = look.edges.some((edge) => {
              if (edge.item !== item) return false;
              const [dx, dy] = [edge.to[0] - edge.from[0], edge.to[1] - edge.from[1]];
              const long = Math.hypot(dx, dy);
              const along = ((middle[0] - edge.from[0]) * dx + (middle[1] - edge.from[1]) * dy) / long;
              const aside = ((middle[0] - edge.from[0]) * dy - (middle[1] - edge.from[1]) * dx) / long;
              return Math.abs(aside) < 1e-6 && along > -1e-6 && along < long + 1e-6;
            });
            expect(there).toBe(true);
          }
        }
      }),
      { seed: 602_214, numRuns: 40 },
    );
  });

  it('draws two thousand panels apart and put together, each edge of the nearest among them', () => {
    const parts = Array.from({ length: 2000 }, (_, i) => {
      const at: Vec3 = [(i % 13) * 200, (Math.floor(i / 13) % 13) * 200, Math.floor(i / 169) * 60];
      return panel(`p${i}`, { length: 180, width: 160, pose: { ...HOME, at } });
    });
    const input = { design: design(), fitout: fitOutOf(parts), catalog, rules, space: null };
    const drawings = createDrawings(input);
    for (const name of ['exploded-carcass-1', 'assembly-carcass-1']) {
      const strokes = drawings.draw(name)?.[0]?.shapes.filter(({ layer }) => layer === 'seen') ?? [];
      // Of each of the 13 · 13 panels on top the face that looks up is in sight, with four edges.
      expect(strokes.length).toBeGreaterThan(4 * 169);
    }
  }, 120_000);
});
