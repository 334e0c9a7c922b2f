import type { Polygon, Vec2 } from '../../base/index.ts';
import type { Stroke } from './drawing.ts';
import { line } from './shapes.ts';

/** Where the line x − y = c crosses the ring, as x coordinates in ascending order; corners count once. */
const crossings = (ring: Polygon, c: number): readonly number[] =>
  ring
    .flatMap((a, i) => {
      const b = ring[(i + 1) % ring.length] ?? a;
      const [da, db] = [a[0] - a[1] - c, b[0] - b[1] - c];
      if (da > 0 === db > 0) return [];
      return [a[0] + ((b[0] - a[0]) * da) / (da - db)];
    })
    .sort((p, q) => p - q);

/** Lines at 45° through the inside of a ring, `spacing` apart along x: what is cut through, in a section. */
export const hatching = (ring: Polygon, spacing: number): readonly Stroke[] => {
  const offsets = ring.map(([x, y]) => x - y);
  const strokes: Stroke[] = [];
  const first = Math.ceil(Math.min(...offsets) / spacing);
  const last = Math.floor(Math.max(...offsets) / spacing);
  for (let step = first; step <= last; step++) {
    const c = step * spacing;
    const xs = crossings(ring, c);
    for (let i = 0; i + 1 < xs.length; i += 2) {
      const [from, to] = [xs[i] ?? 0, xs[i + 1] ?? 0];
      const at = (x: number): Vec2 => [x, x - c];
      strokes.push(line('hatch', at(from), at(to)));
    }
  }
  return strokes;
};
