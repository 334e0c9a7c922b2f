import { bad, good, type Result, type Vec2 } from '../../base/index.ts';
import type { Station } from '../../design/index.ts';
import type { ScanLine } from './cut-scan.ts';

/** Where a level line through the cut meets it on one side, nearest to the middle; null where the scan has a hole. */
const wallAt = (lines: readonly ScanLine[], up: number, sign: 1 | -1): number | null => {
  let nearest: number | null = null;
  for (const { points, closed } of lines)
    for (let i = 0; i + (closed ? 0 : 1) < points.length; i++) {
      const [a, b] = [points[i], points[(i + 1) % points.length]];
      if (!a || !b || a[1] > up === b[1] > up) continue;
      const y = a[0] + ((up - a[1]) / (b[1] - a[1])) * (b[0] - a[0]);
      if (sign * y > 0 && (nearest === null || sign * y < nearest)) nearest = sign * y;
    }
  return nearest;
};

/** Where an upright line beside the middle meets the cut: lowest and highest. */
const floorAndRoof = (lines: readonly ScanLine[], y: number): readonly [number, number] | null => {
  const hits: number[] = [];
  for (const { points, closed } of lines)
    for (let i = 0; i + (closed ? 0 : 1) < points.length; i++) {
      const [a, b] = [points[i], points[(i + 1) % points.length]];
      if (!a || !b || a[0] > y === b[0] > y) continue;
      hits.push(a[1] + ((y - a[0]) / (b[0] - a[0])) * (b[1] - a[1]));
    }
  return hits.length < 2 ? null : [Math.min(...hits), Math.max(...hits)];
};

const sideOf = (lines: readonly ScanLine[], heights: readonly number[], sign: 1 | -1): readonly Vec2[] =>
  heights.flatMap((up): readonly Vec2[] => {
    const out = wallAt(lines, up, sign);
    return out === null ? [] : [[out, up]];
  });

/** A hair inside floor and roof, where a level line still meets the wall. */
const INSIDE_SHARE = 0.002;

/**
 * A station taken from a cut of the scan: on each side the wall at `count` heights from floor to roof, nearest to the
 * middle, marked as coming from the scan. Refused where the cut shows no floor and roof, or too little of a wall.
 */
export const stationFromScan = (
  lines: readonly ScanLine[],
  depth: number,
  count: number,
): Result<Omit<Station, 'id'>> => {
  const ends = floorAndRoof(lines, 0);
  if (!ends) return bad([{ at: 'scan', code: 'no-floor-or-roof', expected: 'floor and roof over the centre line' }]);
  const [floor, roof] = ends;
  const hair = (roof - floor) * INSIDE_SHARE;
  const heights = Array.from({ length: count }, (_, i) => floor + hair + ((roof - floor - 2 * hair) * i) / (count - 1));
  const [left, right] = [sideOf(lines, heights, 1), sideOf(lines, heights, -1)];
  if (left.length < 3 || right.length < 3)
    return bad([{ at: 'scan', code: 'holes', expected: 'both walls at three heights or more' }]);
  return good({
    xMm: depth,
    left: left.map(([out, up]) => [out, up] as const),
    right: right.map(([out, up]) => [out, up] as const),
    source: 'scan',
  });
};
