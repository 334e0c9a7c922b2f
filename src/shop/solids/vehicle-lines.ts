import { add, distance, scale, subtract, type Vec2, type Vec3 } from '../../base/index.ts';
import type { CargoSpace } from '../../envelope/index.ts';
import type { LineData } from './mesh-data.ts';

type Section = CargoSpace['sections'][number];

/** Directions in which lengthwise lines run along the skin, as turns from straight up, both sides alike. */
const LENGTHWISE_DEG: readonly number[] = [0, 35, 62, 90, 112, 135, -35, -62, -90, -112, -135];
/** Dash and gap of a lengthwise line. */
const DASH_MM = 26;
const GAP_MM = 20;

/** Station rings as line pieces. */
export const stationRings = (sections: readonly Section[]): LineData =>
  sections.flatMap(({ x, ring }) =>
    ring.flatMap(([y, z], i) => {
      const [toY, toZ] = ring[(i + 1) % ring.length] ?? [y, z];
      return [x, y, z, x, toY, toZ];
    }),
  );

const middleOf = (ring: readonly Vec2[]): Vec2 => {
  const [ys, zs] = [ring.map(([y]) => y), ring.map(([, z]) => z)];
  return [(Math.min(...ys) + Math.max(...ys)) / 2, (Math.min(...zs) + Math.max(...zs)) / 2];
};

/** Where the line from the middle of a ring in a direction leaves it last, or null when it never meets it. */
export const ringPoint = (ring: readonly Vec2[], turnRad: number): Vec2 | null => {
  const [cy, cz] = middleOf(ring);
  const [dy, dz] = [Math.sin(turnRad), Math.cos(turnRad)];
  let farthest: number | null = null;
  ring.forEach(([y, z], i) => {
    const [toY, toZ] = ring[(i + 1) % ring.length] ?? [y, z];
    const [ey, ez] = [toY - y, toZ - z];
    const turn = dy * ez - dz * ey;
    if (turn === 0) return;
    const far = ((y - cy) * ez - (z - cz) * ey) / turn;
    const along = ((y - cy) * dz - (z - cz) * dy) / turn;
    if (far >= 0 && along >= 0 && along <= 1) farthest = Math.max(farthest ?? 0, far);
  });
  return farthest === null ? null : [cy + dy * farthest, cz + dz * farthest];
};

/** Cuts a line through points into dashes of real length, so that they stay the same from near and far. */
export const dashed = (points: readonly Vec3[], dash = DASH_MM, gap = GAP_MM): LineData => {
  const lines: LineData = [];
  let run = 0;
  points.slice(1).forEach((to, i) => {
    const from = points[i] ?? to;
    const long = distance(from, to);
    const at = (along: number): Vec3 => add(from, scale(subtract(to, from), along / long));
    let done = 0;
    while (done < long) {
      const phase = run % (dash + gap);
      const drawing = phase < dash;
      const step = Math.min(long - done, drawing ? dash - phase : dash + gap - phase);
      if (drawing) lines.push(...at(done), ...at(done + step));
      done += step;
      run += step;
    }
  });
  return lines;
};

/** Dashed lines from station to station along the skin. */
export const lengthwiseLines = (sections: readonly Section[]): LineData =>
  LENGTHWISE_DEG.flatMap((deg) => {
    const points = sections.flatMap(({ x, ring }): readonly Vec3[] => {
      const point = ringPoint(ring, (deg * Math.PI) / 180);
      return point ? [[x, ...point]] : [];
    });
    return dashed(points);
  });
